package render

import (
	"html"
	"strings"
	"unicode/utf8"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"fettle/lang/model"
)

// A value in prose is carried through CommonMark as one character of a plane
// that no text uses: it is neither a mark nor a blank to the parser. The same
// characters in an author's text are replaced first.
const (
	firstStand = rune(0xF0000)
	lastStand  = rune(0xFFFFD)
)

var commonMark = goldmark.DefaultParser()

// prose lowers CommonMark with the values in it. Raw HTML becomes text.
func (l *lowering) prose(t *model.Text, sc *scope) []Block {
	if t == nil {
		return nil
	}
	src, values := l.flat(t, sc)
	if strings.TrimSpace(src) == "" {
		return nil
	}
	if plainParagraph(src) {
		return []Block{{Kind: Paragraph, Line: standIns(oneLine(src), values)}}
	}
	p := &proseReader{lowering: l, src: []byte(src), values: values}
	return p.blocks(commonMark.Parse(text.NewReader(p.src)))
}

// line lowers words on one line.
func (l *lowering) line(t *model.Text, sc *scope) Line {
	if t == nil {
		return nil
	}
	src, values := l.flat(t, sc)
	return standIns(oneLine(src), values)
}

// oneLine puts the lines and blanks of a text together; a no-break space stays.
func oneLine(s string) string {
	return strings.Join(strings.FieldsFunc(s, func(r rune) bool {
		return r == ' ' || r == '\n' || r == '\t' || r == '\r'
	}), " ")
}

// flat is the text with a stand-in for each value.
func (l *lowering) flat(t *model.Text, sc *scope) (string, []Inline) {
	if s, ok := t.Source.Literal(); ok {
		return withoutStandIns(s), nil
	}
	var b strings.Builder
	var values []Inline
	for _, p := range t.Source.Parts() {
		if p.X == nil {
			b.WriteString(withoutStandIns(p.Text))
			continue
		}
		if n := len(values); n < len(t.Values) && n < int(lastStand-firstStand) {
			b.WriteRune(firstStand + rune(n))
			values = append(values, l.insert(t.Values[n], sc))
		}
	}
	return b.String(), values
}

func withoutStandIns(s string) string {
	if strings.IndexByte(s, 0xF3) < 0 { // the first byte of plane 15 in UTF-8
		return s
	}
	return strings.Map(func(r rune) rune {
		if r >= firstStand && r <= lastStand {
			return utf8.RuneError
		}
		return r
	}, s)
}

// standIns cuts text at its stand-ins.
func standIns(s string, values []Inline) Line {
	if len(values) == 0 {
		return Words(s)
	}
	var line Line
	from := 0
	for i, r := range s {
		if r < firstStand || int(r-firstStand) >= len(values) {
			continue
		}
		if i > from {
			line = append(line, Inline{Kind: Text, Text: s[from:i]})
		}
		line = append(line, values[r-firstStand])
		from = i + utf8.RuneLen(r)
	}
	if from < len(s) {
		line = append(line, Inline{Kind: Text, Text: s[from:]})
	}
	return line
}

// plainParagraph reports that CommonMark makes one paragraph of plain text of s,
// which is so for most texts and saves parsing them.
func plainParagraph(s string) bool {
	for line := range strings.SplitSeq(strings.TrimRight(s, "\n"), "\n") {
		if line == "" || strings.HasSuffix(line, " ") || strings.Contains(line, "  ") {
			return false
		}
		if c := line[0]; !('A' <= c && c <= 'Z' || 'a' <= c && c <= 'z' || c >= 0x80) {
			return false
		}
	}
	return !strings.ContainsAny(s, "\\`*_[]<>&!#~|\t\r")
}

// proseReader turns a CommonMark tree into ours.
type proseReader struct {
	*lowering
	src    []byte
	values []Inline
}

func (p *proseReader) blocks(parent ast.Node) []Block {
	var all []Block
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Paragraph, *ast.TextBlock:
			all = append(all, Block{Kind: Paragraph, Line: p.line(n)})
		case *ast.Heading:
			all = append(all, Block{Kind: Heading, Line: p.line(n)})
		case *ast.List:
			b := Block{Kind: Bullets}
			if n.IsOrdered() {
				b.Kind, b.Start = Numbers, n.Start
			}
			for item := n.FirstChild(); item != nil; item = item.NextSibling() {
				b.Items = append(b.Items, p.blocks(item))
			}
			all = append(all, b)
		case *ast.Blockquote:
			all = append(all, Block{Kind: Quote, Quote: p.blocks(n)})
		case *ast.ThematicBreak:
			all = append(all, Block{Kind: Rule})
		case *ast.HTMLBlock:
			s := p.lines(n)
			if n.HasClosure() {
				s += string(n.ClosureLine.Value(p.src))
			}
			all = append(all, Block{Kind: Paragraph, Line: p.text(strings.TrimSpace(s))})
		default: // code, and whatever else may come
			if n.Type() == ast.TypeBlock && n.Lines() != nil && n.Lines().Len() > 0 {
				all = append(all, Block{Kind: Verbatim, Text: p.text(p.lines(n)).Plain()})
			} else {
				all = append(all, p.blocks(n)...)
			}
		}
	}
	return all
}

func (p *proseReader) lines(n ast.Node) string {
	var b strings.Builder
	for i := range n.Lines().Len() {
		at := n.Lines().At(i)
		b.Write(at.Value(p.src))
	}
	return b.String()
}

func (p *proseReader) text(s string) Line { return standIns(s, p.values) }

func (p *proseReader) line(parent ast.Node) Line {
	var all Line
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Text:
			s := string(n.Segment.Value(p.src))
			if !n.IsRaw() {
				s = unescape(s)
			}
			all = append(all, p.text(s)...)
			if n.HardLineBreak() {
				all = append(all, Inline{Kind: Break})
			} else if n.SoftLineBreak() {
				all = append(all, Words(" ")...)
			}
		case *ast.String:
			all = append(all, p.text(string(n.Value))...)
		case *ast.CodeSpan:
			var b strings.Builder
			for c := n.FirstChild(); c != nil; c = c.NextSibling() {
				if t, ok := c.(*ast.Text); ok {
					b.Write(t.Segment.Value(p.src))
				}
			}
			all = append(all, Inline{Kind: Code, Text: p.text(strings.ReplaceAll(b.String(), "\n", " ")).Plain()})
		case *ast.Emphasis:
			kind := Emphasis
			if n.Level > 1 {
				kind = Strong
			}
			all = append(all, Inline{Kind: kind, Line: p.line(n)})
		case *ast.Link:
			all = append(all, Inline{Kind: Link, Text: p.text(unescape(string(n.Destination))).Plain(), Line: p.line(n)})
		case *ast.AutoLink:
			all = append(all, Inline{Kind: Link, Text: string(n.URL(p.src)), Line: Words(string(n.Label(p.src)))})
		case *ast.Image:
			f := p.picture(p.text(unescape(string(n.Destination))).Plain(), p.line(n).Plain())
			all = append(all, Inline{Kind: Picture, Figure: &f})
		case *ast.RawHTML:
			for i := range n.Segments.Len() {
				at := n.Segments.At(i)
				all = append(all, p.text(string(at.Value(p.src)))...)
			}
		default:
			all = append(all, p.line(n)...)
		}
	}
	return joined(all)
}

// joined puts neighbouring texts together.
func joined(l Line) Line {
	var out Line
	for _, in := range l {
		if k := len(out) - 1; k >= 0 && in.Kind == Text && out[k].Kind == Text {
			out[k].Text += in.Text
			continue
		}
		out = append(out, in)
	}
	return out
}

// unescape resolves backslashes and character references, once.
func unescape(s string) string {
	if !strings.ContainsAny(s, "\\&") {
		return s
	}
	var b strings.Builder
	for i := 0; i < len(s); i++ {
		switch {
		case s[i] == '\\' && i+1 < len(s) && util.IsPunct(s[i+1]):
			i++
			b.WriteByte(s[i])
		case s[i] == '&':
			end := strings.IndexByte(s[i:min(len(s), i+longestReference)], ';')
			if end < 0 {
				b.WriteByte('&')
				continue
			}
			b.WriteString(withoutStandIns(html.UnescapeString(s[i : i+end+1])))
			i += end
		default:
			b.WriteByte(s[i])
		}
	}
	return b.String()
}

// longestReference is enough for &CounterClockwiseContourIntegral; and its like.
const longestReference = 40
