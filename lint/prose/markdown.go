package prose

import (
	"bytes"
	"html"
	"strings"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"
)

var parser = goldmark.DefaultParser()

// commonMark reads text through the tree of Markdown.
func commonMark(f *flat) Passage {
	m := markdown{flat: f, src: []byte(f.s)}
	m.blocks(parser.Parse(text.NewReader(m.src)))
	return m.out
}

type markdown struct {
	flat   *flat
	src    []byte
	out    Passage
	block  int
	b      strings.Builder
	pieces []piece
}

// blocks reads paragraphs, headings and list items, each on its own. Code blocks
// are no prose.
func (m *markdown) blocks(parent ast.Node) {
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Paragraph, *ast.TextBlock, *ast.Heading:
			m.inlines(n)
			m.flush()
		case *ast.HTMLBlock: // printed as text
			for i := range n.Lines().Len() {
				m.lineBreak(n.Lines().At(i).Start)
				m.plain(n.Lines().At(i))
			}
			m.flush()
		case *ast.CodeBlock, *ast.FencedCodeBlock:
		default:
			m.blocks(n)
		}
	}
}

func (m *markdown) inlines(parent ast.Node) {
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Text:
			if n.IsRaw() {
				m.plain(n.Segment)
			} else {
				m.unescaped(n.Segment)
			}
			if n.SoftLineBreak() || n.HardLineBreak() {
				m.lineBreak(n.Segment.Stop)
			}
		case *ast.RawHTML:
			for i := range n.Segments.Len() {
				m.plain(n.Segments.At(i))
			}
		case *ast.AutoLink:
			label := n.Label(m.src)
			if i := bytes.Index(m.src[max(n.Pos(), 0):], label); i >= 0 {
				at := max(n.Pos(), 0) + i
				m.plain(text.NewSegment(at, at+len(label)))
			}
		case *ast.Image:
			m.picture(n)
		default:
			m.inlines(n)
		}
	}
}

// picture keeps a picture with the words that stand instead of it, which are not
// part of the sentence.
func (m *markdown) picture(n *ast.Image) {
	inner := markdown{flat: m.flat, src: m.src}
	inner.inlines(n)
	at := max(n.Pos(), 0)
	end := at
	for _, close := range []string{"](", "][", "]"} {
		if i := bytes.Index(m.src[at:], []byte(close)); i >= 0 {
			end = at + i + len(close)
			if j := bytes.IndexAny(m.src[end:], ")]\n"); close != "]" && j >= 0 {
				end += j + 1
			}
			break
		}
	}
	m.out.Pictures = append(m.out.Pictures, Picture{
		File: string(n.Destination), Alt: strings.TrimSpace(inner.b.String()), Span: m.flat.span(at, end)})
}

// plain takes source as it is.
func (m *markdown) plain(s text.Segment) {
	m.take(string(s.Value(m.src)), s.Start, s.Len())
}

// take adds text that stands for size bytes of the source from from on.
func (m *markdown) take(s string, from, size int) {
	if s == "" {
		return
	}
	m.pieces = append(m.pieces, piece{int32(m.b.Len()), int32(len(s)), int32(from), int32(size)})
	m.b.WriteString(s)
}

// lineBreak adds the blank that a line break is to the reader.
func (m *markdown) lineBreak(at int) {
	if m.b.Len() > 0 {
		m.take(" ", min(at, len(m.src)), 0)
	}
}

// unescaped resolves backslashes and character references.
func (m *markdown) unescaped(s text.Segment) {
	src := s.Value(m.src)
	from := 0
	for i := 0; i < len(src); {
		size, meant := 0, ""
		switch {
		case src[i] == '\\' && i+1 < len(src) && util.IsPunct(src[i+1]):
			size, meant = 2, string(src[i+1:i+2])
		case src[i] == '&':
			if end := bytes.IndexByte(src[i:min(len(src), i+longestReference)], ';'); end >= 0 {
				size = end + 1
				if meant = html.UnescapeString(string(src[i : i+size])); strings.HasPrefix(meant, "&") && meant != "&" {
					size = 0
				}
			}
		}
		if size == 0 {
			i++
			continue
		}
		m.take(string(src[from:i]), s.Start+from, i-from)
		m.take(meant, s.Start+i, size)
		i += size
		from = i
	}
	m.take(string(src[from:]), s.Start+from, len(src)-from)
}

// longestReference is enough for &CounterClockwiseContourIntegral; and its like.
const longestReference = 40

func (m *markdown) flush() {
	if m.b.Len() > 0 {
		p := paragraph{flat: m.flat, text: strings.ReplaceAll(m.b.String(), "\n", " "), pieces: m.pieces, block: m.block}
		m.out.Sentences = sentences(m.out.Sentences, p)
		m.block++
	}
	m.b.Reset()
	m.pieces = nil
}
