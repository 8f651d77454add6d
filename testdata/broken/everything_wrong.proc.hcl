This is not a manual.
It is a letter, and it ends here
}{][ """ <<-
