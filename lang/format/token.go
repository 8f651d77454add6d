package format

import (
	"cmp"
	"slices"
	"strings"
	"unicode/utf8"

	"fettle/lang/source"
	"fettle/lang/syntax"
)

type kind uint8

const (
	newline kind = iota
	word         // a name or a number
	text         // a string, whole
	comment
	operator // and brackets and separators
)

// A token is one piece of source that layout moves and never changes, except
// for the lines inside a heredoc or a comment.
type token struct {
	kind   kind
	text   string
	string *syntax.String // for an expression's string
}

// tokens cuts a sound file into tokens. Strings and comments come from the
// tree; what is between them needs no context.
func tokens(tree *syntax.Tree) []token {
	whole := opaque(tree)
	var out []token
	src := tree.File.Text
	for at := tree.File.Body(); at < len(src); {
		if len(whole) > 0 && int(whole[0].span.Start) == at {
			out = append(out, whole[0].token)
			at = int(whole[0].span.End)
			whole = whole[1:]
			continue
		}
		switch c := src[at]; {
		case c == '\n':
			out = append(out, token{kind: newline})
			at++
		case c == ' ' || c == '\t' || c == '\r':
			at++
		case isWord(c):
			end := at + 1
			for end < len(src) && (isWord(src[end]) || src[end] == '-' || src[end] == '.' && isDigit(c) && isDigit(at2(src, end+1))) {
				if src[end] == '-' && isDigit(c) {
					break
				}
				end++
			}
			out = append(out, token{kind: word, text: src[at:end]})
			at = end
		default:
			n := 1
			if slices.Contains(long, src[at:min(at+2, len(src))]) {
				n = 2
			}
			out = append(out, token{kind: operator, text: src[at : at+n]})
			at += n
		}
	}
	return out
}

var long = []string{"==", "!=", "<=", ">=", "&&", "||"}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

func isWord(c byte) bool {
	return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || isDigit(c) || c == '_' || c >= utf8.RuneSelf
}

func at2(s string, i int) byte {
	if i < len(s) {
		return s[i]
	}
	return 0
}

// A piece is a token with its place.
type piece struct {
	span source.Span
	token
}

// opaque gives the strings, labels and comments of a file in source order.
func opaque(tree *syntax.Tree) []piece {
	var out []piece
	for _, c := range tree.Comments {
		out = append(out, piece{c.Span, token{kind: comment, text: tidy(c.Text)}})
	}
	attrs := func(attrs []syntax.Attr) {
		for _, a := range attrs {
			syntax.Walk(a.Expr, func(x syntax.Expr) bool {
				s, ok := x.(*syntax.String)
				if ok {
					out = append(out, piece{s.Span(), token{text, s.Span().Text(), s}})
				}
				return !ok
			})
		}
	}
	var blocks func([]*syntax.Block)
	blocks = func(list []*syntax.Block) {
		for _, b := range list {
			for _, l := range b.Labels {
				out = append(out, piece{l.Span, token{kind: text, text: l.Span.Text()}})
			}
			attrs(b.Attrs)
			blocks(b.Blocks)
		}
	}
	attrs(tree.Attrs)
	blocks(tree.Blocks)
	slices.SortFunc(out, func(a, b piece) int { return cmp.Compare(a.span.Start, b.span.Start) })
	// A comment inside ${…} is part of its string.
	end := int32(0)
	return slices.DeleteFunc(out, func(p piece) bool {
		inside := p.span.Start < end
		end = max(end, p.span.End)
		return inside
	})
}

// tidy takes the blanks off the line ends of a comment.
func tidy(comment string) string {
	lines := strings.Split(comment, "\n")
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " \t\r")
	}
	return strings.Join(lines, "\n")
}
