package html

import "strings"

// small leaves out the comments and blanks of a script that need not be there. It
// relies on what the scripts keep to: statements end with a semicolon, and a
// regular expression follows "(", "=", ",", ":" or "&".
func small(script string) string {
	var b strings.Builder
	last := byte('\n') // what was written last
	blank := false     // one was left out since
	for i := 0; i < len(script); {
		c := script[i]
		switch {
		case c == ' ' || c == '\t' || c == '\n':
			blank = true
			i++
			continue
		case strings.HasPrefix(script[i:], "//"):
			for i < len(script) && script[i] != '\n' {
				i++
			}
			continue
		}
		if blank && (word(last) && word(c) || last == c && (c == '+' || c == '-')) {
			b.WriteByte(' ')
		}
		blank = false
		n := 1
		switch {
		case c == '"' || c == '\'':
			n = quoted(script[i:], c)
		case c == '`':
			n = quoted(script[i:], c)
		case c == '/' && strings.IndexByte("(=,:&", last) >= 0:
			n = pattern(script[i:])
		case word(c):
			for i+n < len(script) && word(script[i+n]) {
				n++
			}
		}
		b.WriteString(script[i : i+n])
		last = script[i+n-1]
		i += n
	}
	return b.String()
}

func word(c byte) bool {
	return c == '_' || c == '$' || c >= 0x80 || '0' <= c && c <= '9' || 'A' <= c && c <= 'Z' || 'a' <= c && c <= 'z'
}

// quoted is the length of a string that begins with its quote.
func quoted(s string, quote byte) int {
	i := 1
	for ; i < len(s) && s[i] != quote; i++ {
		if s[i] == '\\' {
			i++
		}
	}
	return min(i+1, len(s))
}

// pattern is the length of a regular expression.
func pattern(s string) int {
	class := false
	for i := 1; i < len(s); i++ {
		switch c := s[i]; {
		case c == '\\':
			i++
		case c == '[':
			class = true
		case c == ']':
			class = false
		case c == '/' && !class:
			return i + 1
		}
	}
	return len(s)
}
