package report

import (
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode"

	"golang.org/x/text/width"

	"fettle/lang/diag"
	"fettle/lang/source"
)

// Text prints findings for people: the place, the line with a mark under the
// exact characters, the reason, the remedy and the other places that take part.
// It ends with a count, or says that nothing was found.
func Text(w io.Writer, l diag.List, o Options) error {
	var b strings.Builder
	p := printer{&b, o}
	for _, f := range l {
		p.finding(f)
	}
	p.paint(bold, Count(l))
	b.WriteString(".\n")
	_, err := io.WriteString(w, b.String())
	return err
}

type printer struct {
	*strings.Builder
	Options
}

// colour is a Select Graphic Rendition parameter (ECMA-48).
type colour string

const (
	bold    colour = "1"
	dim     colour = "2"
	red     colour = "1;31"
	magenta colour = "1;35"
	cyan    colour = "1;36"
)

func (p *printer) paint(c colour, s string) {
	if p.Colour {
		s = "\x1b[" + string(c) + "m" + s + "\x1b[0m"
	}
	p.WriteString(s)
}

func severityColour(s diag.Severity) colour {
	switch s {
	case diag.Error:
		return red
	case diag.Doubt:
		return magenta
	}
	return cyan
}

func (p *printer) finding(f diag.Finding) {
	c := severityColour(f.Severity)
	if !f.Span.IsZero() {
		p.paint(bold, p.at(f.Span))
		p.WriteString(": ")
	}
	p.paint(c, f.Severity.String())
	p.WriteString(": ")
	p.paint(bold, clean(f.Message))
	p.WriteString("\n")
	p.excerpt(f.Span, c)
	p.field("why", f.Reason)
	p.field("do", f.Remedy)
	for _, r := range f.Related {
		p.field("see", p.at(r.Span)+": "+r.Message)
	}
	p.field("rule", f.Rule)
	p.WriteString("\n")
}

func (p *printer) at(s source.Span) string {
	pos := s.Position()
	return fmt.Sprintf("%s:%d:%d", clean(p.path(s)), pos.Line, pos.Column)
}

func (p *printer) field(name, text string) {
	if text == "" {
		return
	}
	p.WriteString("    ")
	p.paint(dim, name+strings.Repeat(" ", 6-len(name)))
	p.WriteString(clean(text))
	p.WriteString("\n")
}

// excerpt prints the line with a mark under the span, to the end of the line
// where the span goes on.
func (p *printer) excerpt(s source.Span, c colour) {
	if s.IsZero() || s.File.Text == "" {
		return
	}
	from, to := s.Position(), s.EndPosition()
	line := s.File.Line(from.Line)
	number := strconv.Itoa(from.Line)
	p.WriteString("    ")
	p.paint(dim, number+" |")
	p.WriteString(" " + clean(strings.ReplaceAll(line, "\t", "    ")) + "\n")
	before, marked := 0, 0
	column := 1
	for _, r := range line {
		switch {
		case column < from.Column:
			before += cells(r)
		case to.Line > from.Line || column < to.Column:
			marked += cells(r)
		}
		column++
	}
	p.WriteString("    ")
	p.paint(dim, strings.Repeat(" ", len(number))+" |")
	p.WriteString(" " + strings.Repeat(" ", before))
	p.paint(c, strings.Repeat("^", max(1, marked)))
	p.WriteString("\n")
}

// cells is how many columns of a terminal a character takes.
func cells(r rune) int {
	switch {
	case r == '\t':
		return 4
	case unicode.In(r, unicode.Mn, unicode.Me):
		return 0
	}
	switch width.LookupRune(r).Kind() {
	case width.EastAsianWide, width.EastAsianFullwidth:
		return 2
	}
	return 1
}
