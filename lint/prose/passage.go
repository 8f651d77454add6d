package prose

import (
	"sort"
	"strings"

	"fettle/lang/model"
	"fettle/lang/source"
)

// Value stands in a sentence for a value that is not known yet.
const Value = "\uFFFC"

// Passage is one text as a reader sees it.
type Passage struct {
	Sentences []Sentence
	Pictures  []Picture // in the text itself, as Markdown has them
}

// Picture is a picture in a text.
type Picture struct {
	File string // as written
	Alt  string // the words that stand instead of it
	Span source.Span
}

// Sentence is one sentence on one line: lines joined by spaces, no Markdown, and
// Value for each ${…}.
type Sentence struct {
	Text   string
	Block  int // paragraphs, headings and list items of the text, counted from 0
	at     int32
	pieces []piece // nil where the sentence stands in the flat text as it is
	flat   *flat
}

// piece says that n bytes of a paragraph from at on come from size bytes of the flat
// text from from on.
type piece struct{ at, n, from, size int32 }

// flat is a text with its values as Value, escapes and indentation resolved.
type flat struct {
	text   *model.Text
	s      string
	starts []int32 // of each part of the literal; nil where it is one
}

func newFlat(t *model.Text) *flat {
	if s, ok := t.Source.Literal(); ok {
		return &flat{text: t, s: s}
	}
	f := &flat{text: t}
	var b strings.Builder
	for _, p := range t.Source.Parts() {
		f.starts = append(f.starts, int32(b.Len()))
		if p.X != nil {
			b.WriteString(Value)
		} else {
			b.WriteString(p.Text)
		}
	}
	f.s = b.String()
	return f
}

// span is where bytes of the flat text stand in the source.
func (f *flat) span(start, end int) source.Span {
	if f.starts == nil {
		return f.text.Source.Source(start, end)
	}
	first, last := f.part(start), f.part(max(end-1, start))
	from, to := f.partSpan(first, start, end), f.partSpan(last, start, end)
	return from.To(to)
}

func (f *flat) part(at int) int {
	return max(0, sort.Search(len(f.starts), func(i int) bool { return int(f.starts[i]) > at })-1)
}

// partSpan is the source of what the part has of bytes start to end: all of a value.
func (f *flat) partSpan(i, start, end int) source.Span {
	p := f.text.Source.Parts()[i]
	if p.X != nil {
		return p.Span
	}
	at := int(f.starts[i])
	return f.text.Source.PartSource(i, start-at, end-at)
}

// Span is where the bytes start to end of the sentence stand in the source.
func (s Sentence) Span(start, end int) source.Span {
	start = min(max(start, 0), len(s.Text))
	end = min(max(end, start), len(s.Text))
	from, to := s.flatAt(start), s.flatAt(start)
	if end > start {
		to = s.flatEnd(end)
	}
	return s.flat.span(from, to)
}

// Whole is where the sentence stands in the source.
func (s Sentence) Whole() source.Span { return s.Span(0, len(s.Text)) }

// flatAt is the place in the flat text of byte i of the sentence.
func (s Sentence) flatAt(i int) int {
	at := int32(i) + s.at
	if s.pieces == nil {
		return int(at)
	}
	p := s.pieceOf(at)
	if p.n != p.size {
		return int(p.from)
	}
	return int(p.from + min(at-p.at, p.n))
}

// flatEnd is the place just after byte i-1 of the sentence.
func (s Sentence) flatEnd(i int) int {
	at := int32(i) + s.at
	if s.pieces == nil {
		return int(at)
	}
	p := s.pieceOf(at - 1)
	if p.n != p.size {
		return int(p.from + p.size)
	}
	return int(p.from + at - p.at)
}

func (s Sentence) pieceOf(at int32) piece {
	i := sort.Search(len(s.pieces), func(i int) bool { return s.pieces[i].at > at })
	return s.pieces[max(i-1, 0)]
}
