package report

import (
	"encoding/json"
	"io"

	"fettle/lang/diag"
)

type jsonReport struct {
	Manual   string         `json:"manual"`
	Counts   map[string]int `json:"counts"` // by severity; encoding/json sorts the keys
	Findings []jsonFinding  `json:"findings"`
}

type jsonFinding struct {
	Rule     string        `json:"rule"`
	Severity string        `json:"severity"`
	Message  string        `json:"message"`
	Reason   string        `json:"reason,omitempty"`
	Remedy   string        `json:"remedy,omitempty"`
	Place    *place        `json:"place"`
	Related  []jsonRelated `json:"related"`
	Fixes    []jsonFix     `json:"fixes"`
}

type jsonRelated struct {
	Message string `json:"message"`
	Place   *place `json:"place"`
}

type jsonFix struct {
	Title string     `json:"title"`
	Sure  bool       `json:"sure"`
	Edits []jsonEdit `json:"edits"`
}

type jsonEdit struct {
	Place *place `json:"place"`
	New   string `json:"new"`
}

// JSON prints findings for programs; findings.schema.json describes the form.
// Members are only ever added to it.
func JSON(w io.Writer, l diag.List, o Options) error {
	r := jsonReport{Manual: o.Manual, Counts: map[string]int{"error": 0, "doubt": 0, "advice": 0}, Findings: []jsonFinding{}}
	for _, f := range l {
		r.Counts[f.Severity.String()]++
		j := jsonFinding{Rule: f.Rule, Severity: f.Severity.String(), Message: f.Message, Reason: f.Reason, Remedy: f.Remedy,
			Place: o.place(f.Span), Related: []jsonRelated{}, Fixes: []jsonFix{}}
		for _, x := range f.Related {
			j.Related = append(j.Related, jsonRelated{x.Message, o.place(x.Span)})
		}
		for _, x := range f.Fixes {
			fix := jsonFix{x.Title, x.Sure, []jsonEdit{}}
			for _, e := range x.Edits {
				fix.Edits = append(fix.Edits, jsonEdit{o.place(e.Span), e.New})
			}
			j.Fixes = append(j.Fixes, fix)
		}
		r.Findings = append(r.Findings, j)
	}
	return encode(w, r)
}

func encode(w io.Writer, v any) error {
	enc := json.NewEncoder(w)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	return enc.Encode(v)
}
