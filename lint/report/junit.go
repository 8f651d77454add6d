package report

import (
	"encoding/xml"
	"io"
	"strings"

	"fettle/lang/diag"
)

type junitSuites struct {
	XMLName  xml.Name     `xml:"testsuites"`
	Tests    int          `xml:"tests,attr"`
	Failures int          `xml:"failures,attr"`
	Suites   []junitSuite `xml:"testsuite"`
}

type junitSuite struct {
	Name     string      `xml:"name,attr"`
	Tests    int         `xml:"tests,attr"`
	Failures int         `xml:"failures,attr"`
	Cases    []junitCase `xml:"testcase"`
}

type junitCase struct {
	Class   string        `xml:"classname,attr"`
	Name    string        `xml:"name,attr"`
	Failure *junitFailure `xml:"failure"`
}

type junitFailure struct {
	Type    string `xml:"type,attr"`
	Message string `xml:"message,attr"`
	Text    string `xml:",chardata"`
}

// JUnit prints findings as JUnit XML: one test case a finding, and one that
// passes where there are none, since a suite without cases counts as not run.
func JUnit(w io.Writer, l diag.List, o Options) error {
	suite := junitSuite{Name: clean(o.Manual), Tests: max(1, len(l)), Failures: len(l)}
	for _, f := range l {
		name := f.Rule
		if !f.Span.IsZero() {
			name = (&printer{Options: o}).at(f.Span) + " " + f.Rule
		}
		suite.Cases = append(suite.Cases, junitCase{Class: "fettle." + strings.ReplaceAll(f.Rule, "/", "."), Name: name,
			Failure: &junitFailure{f.Severity.String(), clean(f.Message), clean(strings.TrimSpace(f.Reason + " " + f.Remedy))}})
	}
	if len(l) == 0 {
		suite.Cases = []junitCase{{Class: "fettle", Name: "nothing found"}}
	}
	if _, err := io.WriteString(w, xml.Header); err != nil {
		return err
	}
	enc := xml.NewEncoder(w)
	enc.Indent("", "  ")
	if err := enc.Encode(junitSuites{Tests: suite.Tests, Failures: suite.Failures, Suites: []junitSuite{suite}}); err != nil {
		return err
	}
	_, err := io.WriteString(w, "\n")
	return err
}
