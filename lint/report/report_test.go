package report_test

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/require"

	"fettle/lang/diag"
	"fettle/lang/source"
	"fettle/lint/report"
	"fettle/lint/rule"
)

var update = flag.Bool("update", false, "rewrite the expected reports")

// found is findings at places that are hard to count: behind a tab, behind
// characters of two columns, of two UTF-16 units and of none, and over lines.
func found() diag.List {
	f := source.New("m/a.proc.hcl", "part \"a\" {\n\tname = \"ひ𐐀e\u0301 5 mn\"\n}\n\x1b[2J\n")
	at := func(s string, in string) source.Span {
		i := bytes.Index([]byte(f.Text), []byte(in))
		return f.Span(i, i+len(s))
	}
	return diag.List{
		{Rule: "units/unknown-unit", Severity: diag.Error, Span: at("mn", "mn"), Message: "There is no unit called “mn”.",
			Reason: "Nobody can set it.", Remedy: "Did you mean mm?", Related: []diag.Related{{Span: at(`"a"`, `"a"`), Message: "of this part"}},
			Fixes: []diag.Fix{{Title: "Write mm", Edits: []diag.Edit{{Span: at("mn", "mn"), New: "mm"}}}}},
		{Rule: "kit/unused-entry", Severity: diag.Doubt, Span: f.Span(0, 12), Message: "Over\x1b[31m two lines.", Remedy: "Look."},
		{Rule: "words/vague", Severity: diag.Advice, Message: "Nowhere."},
	}
}

var options = report.Options{Manual: "Pump <A>", Version: "1.0", Path: func(p string) string { return "procedures/" + p }}

func TestReports(t *testing.T) {
	rules := []*rule.Rule{{Name: "units/unknown-unit", Severity: diag.Error, Finds: "A unit that is not known.", Why: "Nobody can set it.", Remedy: "Use a unit of the trade."}}
	colour := options
	colour.Colour = true
	for name, write := range map[string]func(*bytes.Buffer) error{
		"text.txt":   func(b *bytes.Buffer) error { return report.Text(b, found(), options) },
		"colour.txt": func(b *bytes.Buffer) error { return report.Text(b, found(), colour) },
		"none.txt":   func(b *bytes.Buffer) error { return report.Text(b, nil, options) },
		"json.json":  func(b *bytes.Buffer) error { return report.JSON(b, found(), options) },
		"none.json":  func(b *bytes.Buffer) error { return report.JSON(b, nil, options) },
		"sarif.json": func(b *bytes.Buffer) error { return report.SARIF(b, found(), rules, options) },
		"junit.xml":  func(b *bytes.Buffer) error { return report.JUnit(b, found(), options) },
		"none.xml":   func(b *bytes.Buffer) error { return report.JUnit(b, nil, options) },
	} {
		t.Run(name, func(t *testing.T) {
			var b bytes.Buffer
			require.NoError(t, write(&b))
			path := filepath.Join("testdata", name)
			if *update {
				require.NoError(t, os.MkdirAll("testdata", 0o755))
				require.NoError(t, os.WriteFile(path, b.Bytes(), 0o644))
			}
			want, err := os.ReadFile(path)
			require.NoError(t, err)
			require.Equal(t, string(want), b.String())
		})
	}
}

// The OASIS schema of SARIF 2.1.0 (errata 01), and our own for JSON.
func TestReportsMeetTheirSchemas(t *testing.T) {
	for schema, write := range map[string]func(*bytes.Buffer, diag.List) error{
		"../../testdata/published/sarif-schema-2.1.0.json": func(b *bytes.Buffer, l diag.List) error {
			return report.SARIF(b, l, nil, options)
		},
		"findings.schema.json": func(b *bytes.Buffer, l diag.List) error { return report.JSON(b, l, options) },
	} {
		compiled, err := jsonschema.NewCompiler().Compile(schema)
		require.NoError(t, err)
		for _, l := range []diag.List{found(), nil} {
			var b bytes.Buffer
			require.NoError(t, write(&b, l))
			v, err := jsonschema.UnmarshalJSON(&b)
			require.NoError(t, err)
			require.NoError(t, compiled.Validate(v))
		}
	}
}

// LSP 3.17 counts 𐐀 as two units; its example is "a𐐀b" (from the specification,
// values.json D05). SARIF counts the same way, from 1.
func TestColumnsAreUTF16(t *testing.T) {
	f := source.New("a", "a𐐀b")
	var b bytes.Buffer
	require.NoError(t, report.SARIF(&b, diag.List{{Rule: "x/y", Severity: diag.Error, Span: f.Span(5, 6)}}, nil, report.Options{}))
	var log struct {
		Runs []struct {
			Results []struct {
				Locations []struct {
					PhysicalLocation struct {
						Region struct{ StartColumn, EndColumn int }
					}
				}
			}
		}
	}
	require.NoError(t, json.Unmarshal(b.Bytes(), &log))
	r := log.Runs[0].Results[0].Locations[0].PhysicalLocation.Region
	require.Equal(t, [2]int{4, 5}, [2]int{r.StartColumn, r.EndColumn})
}

func TestJUnitIsXML(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, report.JUnit(&b, found(), options))
	var v struct {
		Failures int `xml:"failures,attr"`
	}
	require.NoError(t, xml.Unmarshal(b.Bytes(), &v))
	require.Equal(t, 3, v.Failures)
}
