package revision

import (
	"cmp"
	"strings"
)

// Compare orders the letters of revisions as drawings do: A before B, Z before
// AA, 9 before 10, C before C.1. ok is false where letters and numbers are mixed
// in a way that has no order.
func Compare(a, b string) (order int, ok bool) {
	x, y := parts(a), parts(b)
	for i := range min(len(x), len(y)) {
		p, q := x[i], y[i]
		if isDigit(p[0]) != isDigit(q[0]) {
			return 0, false
		}
		if isDigit(p[0]) {
			p, q = strings.TrimLeft(p, "0"), strings.TrimLeft(q, "0")
		} else {
			p, q = strings.ToUpper(p), strings.ToUpper(q)
		}
		if c := cmp.Or(cmp.Compare(len(p), len(q)), strings.Compare(p, q)); c != 0 {
			return c, true
		}
	}
	return cmp.Compare(len(x), len(y)), true
}

func isDigit(b byte) bool { return '0' <= b && b <= '9' }

// parts cuts a letter into runs of digits and of other characters; blanks, dots
// and strokes only part them.
func parts(s string) []string {
	var all []string
	part := ""
	for _, r := range s {
		c := string(r)
		switch {
		case strings.ContainsAny(c, " .-_/"):
			if part != "" {
				all, part = append(all, part), ""
			}
			continue
		case part != "" && isDigit(part[0]) != isDigit(c[0]):
			all, part = append(all, part), ""
		}
		part += c
	}
	if part != "" {
		all = append(all, part)
	}
	return all
}
