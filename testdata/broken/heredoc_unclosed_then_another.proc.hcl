part "runner" {
  name = "Runner"
}

procedure "end" {
  title = "Close the thrust end"

  fit "runner" {
    text = <<-EOT
      Push it home.
  }

  fit "cover" {
    text = <<-EOT
      And the cover.
    EOT
  }

  inspect "last" {
    title = "Look at it"
    on    = [part.runner]
  }
}

limit "float" {
  range = "0.08..0.14 mm"
}
