package prose

import (
	"strings"
	"sync"

	"fettle/lang/model"
)

// Read reads CommonMark.
func Read(t *model.Text) Passage {
	if t == nil {
		return Passage{}
	}
	f := newFlat(t)
	if asWritten(f.s) {
		return Passage{Sentences: paragraphs(f)}
	}
	return commonMark(f)
}

// Line reads words on one line, in which Markdown means nothing.
func Line(t *model.Text) Passage {
	if t == nil {
		return Passage{}
	}
	f := newFlat(t)
	return Passage{Sentences: sentences(nil, paragraph{flat: f, text: f.s})}
}

// Any is a quick look at what is written, before it is read: whether look likes the
// text or, where values stand in it, any piece between them.
func Any(t *model.Text, look func(string) bool) bool {
	if s, ok := t.Source.Literal(); ok {
		return look(s)
	}
	for _, p := range t.Source.Parts() {
		if p.X == nil && look(p.Text) {
			return true
		}
	}
	return false
}

// Sentences are the sentences of CommonMark.
func Sentences(t *model.Text) []Sentence { return Read(t).Sentences }

// Shelf keeps what has been read and was dear to read, for several readers at
// the same time. The zero Shelf is empty.
type Shelf struct{ read sync.Map }

// Read is Read, once for each text.
func (s *Shelf) Read(t *model.Text) Passage {
	if t == nil {
		return Passage{}
	}
	if p, ok := s.read.Load(t); ok {
		return p.(Passage)
	}
	f := newFlat(t)
	if asWritten(f.s) {
		return Passage{Sentences: paragraphs(f)}
	}
	p := commonMark(f)
	s.read.Store(t, p)
	return p
}

// mostMarkdown bounds what goes through the parser of Markdown, which takes time
// that grows with the square of some texts. It is ten printed pages.
const mostMarkdown = 1 << 15

// asWritten reports a text that is read without the parser.
func asWritten(s string) bool { return len(s) > mostMarkdown || plain(s) }

// plain reports that CommonMark makes nothing of s but paragraphs that say what
// is written, which is so for most texts and saves parsing them.
func plain(s string) bool {
	if strings.ContainsAny(s, "\\`*_[]<>&\t\r") {
		return false
	}
	for rest := s; rest != ""; {
		line, more, _ := strings.Cut(rest, "\n")
		rest = more
		if line != "" && (!opens(line) || line[len(line)-1] == ' ') {
			return false
		}
	}
	return true
}

// opens reports a line that opens or continues a paragraph, whatever stands before it.
func opens(line string) bool {
	switch c := line[0]; {
	case 'A' <= c && c <= 'Z', 'a' <= c && c <= 'z', c >= 0x80, c == '(', c == '"':
		return true
	case '0' <= c && c <= '9':
		rest := strings.TrimLeft(line, "0123456789")
		return !strings.HasPrefix(rest, ".") && !strings.HasPrefix(rest, ")")
	}
	return false
}

// paragraph is text on one line, and where it comes from.
type paragraph struct {
	flat   *flat
	text   string
	at     int     // in the flat text, where it stands there as it is
	pieces []piece // otherwise
	block  int
}

// paragraphs cuts plain text at empty lines.
func paragraphs(f *flat) []Sentence {
	var all []Sentence
	for at, block := 0, 0; at < len(f.s); {
		text, _, _ := strings.Cut(f.s[at:], "\n\n")
		if text != "" {
			all = sentences(all, paragraph{flat: f, text: strings.ReplaceAll(text, "\n", " "), at: at, block: block})
			block++
		}
		at += len(text) + len("\n\n")
	}
	return all
}
