package render

import (
	"strings"
	"unicode/utf8"
)

// Printable is s without characters that could make a reader see something else
// than what stands there: controls but line ends and tabs, and the marks that
// turn the direction of writing. Each becomes U+FFFD. Every format passes all
// text through it.
func Printable(s string) string {
	clean := utf8.ValidString(s)
	for _, r := range s {
		if clean = clean && !hidden(r); !clean {
			break
		}
	}
	if clean {
		return s
	}
	return strings.Map(func(r rune) rune {
		if hidden(r) {
			return utf8.RuneError
		}
		return r
	}, s)
}

func hidden(r rune) bool {
	switch {
	case r == '\n', r == '\t':
		return false
	case r < 0x20, r >= 0x7f && r < 0xa0:
		return true
	case r >= 0x202a && r <= 0x202e, r >= 0x2066 && r <= 0x2069: // Unicode bidirectional embeddings, overrides, isolates
		return true
	}
	return r == '\u2028' || r == '\u2029' || r == '\ufeff' || r == 0xfffe || r == 0xffff
}
