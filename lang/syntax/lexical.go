package syntax

import "strings"

// commentLen gives the length of the comment that src begins with, without the
// line end of a line comment; 0 if there is none or it is not closed.
func commentLen(src string) int {
	switch {
	case lineComment(src):
		n := strings.IndexByte(src, '\n')
		if n < 0 {
			return len(src)
		}
		return len(strings.TrimSuffix(src[:n], "\r"))
	case strings.HasPrefix(src, "/*"):
		if n := strings.Index(src[2:], "*/"); n >= 0 {
			return n + 4
		}
	}
	return 0
}

// heredocOpen reads the `<<-MARKER` line that src begins with: its marker,
// whether it has the -, and its length up to and with the line end; 0 if there
// is none.
func heredocOpen(src string) (marker string, flush bool, n int) {
	if !strings.HasPrefix(src, "<<") {
		return "", false, 0
	}
	n = 2
	if strings.HasPrefix(src[n:], "-") {
		flush = true
		n++
	}
	start := n
	for n < len(src) && (class[src[n]]&namePart != 0 || src[n] >= 0x80) {
		n++
	}
	marker = src[start:n]
	if marker == "" || class[marker[0]]&nameStart == 0 && marker[0] < 0x80 {
		return "", false, 0
	}
	switch {
	case strings.HasPrefix(src[n:], "\n"):
		return marker, flush, n + 1
	case strings.HasPrefix(src[n:], "\r\n"):
		return marker, flush, n + 2
	}
	return "", false, 0
}

// line gives the first line of src with its line end.
func line(src string) string {
	if i := strings.IndexByte(src, '\n'); i >= 0 {
		return src[:i+1]
	}
	return src
}
