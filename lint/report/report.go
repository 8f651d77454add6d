// Package report prints findings: as text for people, and as JSON, SARIF 2.1.0
// and JUnit XML for programs.
//
// It decides nothing: what is found, how grave it is and in which order it
// stands is settled before. The same findings print the same bytes.
package report

import (
	"fmt"
	"strings"
	"unicode"

	"fettle/lang/diag"
	"fettle/lang/source"
)

// Options are what a report needs to know beside the findings.
type Options struct {
	Manual  string                   // the manual's title, or its folder
	Version string                   // of fettle
	Path    func(path string) string // how a path is shown; nil shows it as it is
	Colour  bool                     // text only
}

func (o Options) path(s source.Span) string {
	if o.Path == nil {
		return s.Path()
	}
	return o.Path(s.Path())
}

// Count says how many findings there are of each severity: "2 errors, 1 doubt".
func Count(l diag.List) string {
	n := map[diag.Severity]int{}
	for _, f := range l {
		n[f.Severity]++
	}
	var parts []string
	for _, s := range [...]diag.Severity{diag.Error, diag.Doubt, diag.Advice} {
		switch {
		case n[s] == 1 || n[s] > 0 && s == diag.Advice:
			parts = append(parts, fmt.Sprintf("%d %s", n[s], s))
		case n[s] > 1:
			parts = append(parts, fmt.Sprintf("%d %ss", n[s], s))
		}
	}
	if len(parts) == 0 {
		return "nothing found"
	}
	return strings.Join(parts, ", ")
}

// clean takes out what would move a terminal's cursor or hide text.
func clean(s string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r) {
			return '\uFFFD'
		}
		return r
	}, s)
}

// place is where a finding stands, counted as different readers count.
type place struct {
	File      string `json:"file"`
	Line      int    `json:"line"`      // from 1
	Column    int    `json:"column"`    // from 1, in characters
	EndLine   int    `json:"endLine"`   //
	EndColumn int    `json:"endColumn"` // after the last character
	UTF16     int    `json:"utf16"`     // from 0, in UTF-16 units
	EndUTF16  int    `json:"endUtf16"`  //
	Start     int    `json:"start"`     // byte offset
	End       int    `json:"end"`       // byte offset after the last
}

func (o Options) place(s source.Span) *place {
	if s.IsZero() {
		return nil
	}
	a, b := s.Position(), s.EndPosition()
	return &place{o.path(s), a.Line, a.Column, b.Line, b.Column, a.UTF16, b.UTF16, int(s.Start), int(s.End)}
}
