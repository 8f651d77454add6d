package report

import (
	"io"
	"net/url"
	"slices"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/source"
	"fettle/lint/rule"
)

// sarifSchema is the schema's own identifier.
const sarifSchema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"

// The structs hold what we use of SARIF 2.1.0 (OASIS Standard, 27 March 2020).
type sarifLog struct {
	Schema  string     `json:"$schema"`
	Version string     `json:"version"`
	Runs    []sarifRun `json:"runs"`
}

type sarifRun struct {
	Tool       sarifTool     `json:"tool"`
	ColumnKind string        `json:"columnKind"`
	Results    []sarifResult `json:"results"`
}

type sarifTool struct {
	Driver sarifDriver `json:"driver"`
}

type sarifDriver struct {
	Name    string      `json:"name"`
	Version string      `json:"version,omitempty"`
	Rules   []sarifRule `json:"rules"`
}

type sarifRule struct {
	ID      string       `json:"id"`
	Short   sarifText    `json:"shortDescription"`
	Full    sarifText    `json:"fullDescription"`
	Help    sarifText    `json:"help"`
	Default sarifDefault `json:"defaultConfiguration"`
}

type sarifDefault struct {
	Level string `json:"level"`
}

type sarifText struct {
	Text string `json:"text"`
}

type sarifResult struct {
	RuleID    string          `json:"ruleId"`
	RuleIndex int             `json:"ruleIndex"`
	Level     string          `json:"level"`
	Message   sarifText       `json:"message"`
	Locations []sarifLocation `json:"locations,omitempty"`
	Related   []sarifLocation `json:"relatedLocations,omitempty"`
	Fixes     []sarifFix      `json:"fixes,omitempty"`
}

type sarifLocation struct {
	ID       int           `json:"id,omitempty"`
	Physical sarifPhysical `json:"physicalLocation"`
	Message  *sarifText    `json:"message,omitempty"`
}

type sarifPhysical struct {
	Artifact sarifArtifact `json:"artifactLocation"`
	Region   sarifRegion   `json:"region"`
}

type sarifArtifact struct {
	URI string `json:"uri"`
}

// sarifRegion counts columns in UTF-16 units from 1, as columnKind says.
type sarifRegion struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn"`
	EndLine     int `json:"endLine"`
	EndColumn   int `json:"endColumn"`
}

type sarifFix struct {
	Description sarifText     `json:"description"`
	Changes     []sarifChange `json:"artifactChanges"`
}

type sarifChange struct {
	Artifact     sarifArtifact      `json:"artifactLocation"`
	Replacements []sarifReplacement `json:"replacements"`
}

type sarifReplacement struct {
	Deleted  sarifRegion `json:"deletedRegion"`
	Inserted sarifText   `json:"insertedContent"`
}

// SARIF prints findings as a SARIF 2.1.0 log, with the rules that may be broken.
func SARIF(w io.Writer, l diag.List, rules []*rule.Rule, o Options) error {
	run := sarifRun{ColumnKind: "utf16CodeUnits", Results: []sarifResult{},
		Tool: sarifTool{sarifDriver{Name: "fettle", Version: o.Version, Rules: []sarifRule{}}}}
	for _, r := range rules {
		run.Tool.Driver.Rules = append(run.Tool.Driver.Rules, sarifRule{r.Name, sarifText{r.Finds}, sarifText{r.Why},
			sarifText{r.Remedy}, sarifDefault{level(r.Severity)}})
	}
	for _, f := range l {
		run.Results = append(run.Results, o.result(f, rules))
	}
	return encode(w, sarifLog{sarifSchema, "2.1.0", []sarifRun{run}})
}

func (o Options) result(f diag.Finding, rules []*rule.Rule) sarifResult {
	index := slices.IndexFunc(rules, func(r *rule.Rule) bool { return r.Name == f.Rule })
	r := sarifResult{RuleID: f.Rule, RuleIndex: index, Level: level(f.Severity),
		Message: sarifText{strings.TrimSpace(f.Message + " " + f.Reason + " " + f.Remedy)}}
	if !f.Span.IsZero() {
		r.Locations = []sarifLocation{{Physical: o.physical(f.Span)}}
	}
	for i, x := range f.Related {
		if !x.Span.IsZero() {
			r.Related = append(r.Related, sarifLocation{i + 1, o.physical(x.Span), &sarifText{x.Message}})
		}
	}
	for _, x := range f.Fixes {
		fix := sarifFix{Description: sarifText{x.Title}}
		for _, e := range x.Edits {
			fix.Changes = append(fix.Changes, sarifChange{o.artifact(e.Span), []sarifReplacement{{region(e.Span), sarifText{e.New}}}})
		}
		r.Fixes = append(r.Fixes, fix)
	}
	return r
}

// level maps severities to SARIF's levels, 3.27.10.
func level(s diag.Severity) string {
	switch s {
	case diag.Error:
		return "error"
	case diag.Doubt:
		return "warning"
	}
	return "note"
}

func (o Options) physical(s source.Span) sarifPhysical {
	return sarifPhysical{o.artifact(s), region(s)}
}

func (o Options) artifact(s source.Span) sarifArtifact {
	return sarifArtifact{(&url.URL{Path: o.path(s)}).EscapedPath()}
}

func region(s source.Span) sarifRegion {
	a, b := s.Position(), s.EndPosition()
	return sarifRegion{a.Line, a.UTF16 + 1, b.Line, b.UTF16 + 1}
}
