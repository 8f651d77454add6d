package render

import "strings"

// Line is text on one line.
type Line []Inline

// Inline is a piece of a line.
type Inline struct {
	Kind   InlineKind `json:"kind"`
	Text   string     `json:"text,omitempty"` // of Text, Code and Value; the address of Link
	Line   Line       `json:"line,omitempty"` // of Emphasis, Strong and Link
	Key    string     `json:"key,omitempty"`  // of Value: the value in calc, where it is one
	Figure *Figure    `json:"figure,omitempty"`
	Live   int        `json:"-"` // of Value: its place in Live.Says, from 1; 0 for one that does not change
}

// InlineKind says what an Inline is.
type InlineKind string

// The kinds of inlines.
const (
	Text     InlineKind = "text"
	Value    InlineKind = "value" // worked out or read; calc.Blank as long as it is not known
	Emphasis InlineKind = "emphasis"
	Strong   InlineKind = "strong"
	Code     InlineKind = "code"
	Link     InlineKind = "link" // printed as text with its address; nothing leads out of a checklist
	Picture  InlineKind = "picture"
	Break    InlineKind = "break"
)

// Block is a paragraph, a list or the like.
type Block struct {
	Kind  BlockKind `json:"kind"`
	Line  Line      `json:"line,omitempty"`  // of Paragraph and Heading
	Items [][]Block `json:"items,omitempty"` // of Bullets and Numbers
	Start int       `json:"start,omitempty"` // of Numbers: the first
	Quote []Block   `json:"quote,omitempty"`
	Text  string    `json:"text,omitempty"` // of Verbatim
}

// BlockKind says what a Block is.
type BlockKind string

// The kinds of blocks.
const (
	Paragraph BlockKind = "paragraph"
	Heading   BlockKind = "heading" // printed as a strong line: headings are the document's own
	Bullets   BlockKind = "bullets"
	Numbers   BlockKind = "numbers"
	Quote     BlockKind = "quote"
	Verbatim  BlockKind = "verbatim"
	Rule      BlockKind = "rule"
)

// Plain is the line without its marks.
func (l Line) Plain() string {
	var b strings.Builder
	l.plain(&b)
	return b.String()
}

func (l Line) plain(b *strings.Builder) {
	for _, in := range l {
		switch in.Kind {
		case Emphasis, Strong:
			in.Line.plain(b)
		case Link:
			in.Line.plain(b)
			if t := in.Line.Plain(); t != in.Text && in.Text != "" {
				b.WriteString(" (" + in.Text + ")")
			}
		case Break:
			b.WriteByte(' ')
		case Picture:
			b.WriteString(in.Figure.Alt)
		default:
			b.WriteString(in.Text)
		}
	}
}

// Words is a line of plain text.
func Words(s string) Line {
	if s == "" {
		return nil
	}
	return Line{{Kind: Text, Text: s}}
}
