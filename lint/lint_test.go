package lint_test

import (
	"runtime"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lint"
)

const unread = `procedure "size" {
  title = "Size the shaft"

  measure "journal" {
    title  = "Measure the journal"
    on     = [part.shaft]
    tools  = [tool.micrometer_25]
    likely = "19.97..20.01 mm"
  }
}

part "shaft" {
  name = "Shaft"
}
`

func findings(t *testing.T, text string) lint.Result {
	t.Helper()
	m, found, err := lang.Load(folder(map[string]string{inManual("x.proc.hcl"): text}), manualDir)
	require.NoError(t, err)
	return lint.Check(m, found)
}

func rulesOf(l diag.List) map[string]string {
	said := map[string]string{}
	for _, f := range l {
		said[f.Rule] = f.Severity.String()
	}
	return said
}

func TestHouseRulesSetSeverities(t *testing.T) {
	require.Equal(t, map[string]string{"values/never-used": "doubt"}, rulesOf(findings(t, unread).Findings))
	for word, want := range map[string]map[string]string{
		"error":  {"values/never-used": "error"},
		"advice": {"values/never-used": "advice"},
		"off":    {},
		"loud":   {"values/never-used": "doubt", "form/unknown-word": "error"},
	} {
		house := "house_rules {\n  severity = { \"values/never-used\" = \"" + word + "\" }\n}\n"
		require.Equal(t, want, rulesOf(findings(t, unread+house).Findings), word)
	}
	require.Equal(t, map[string]string{"values/never-used": "doubt", "form/unknown-rule": "error"},
		rulesOf(findings(t, unread+"house_rules {\n  severity = { \"form/syntax\" = \"off\" }\n}\n").Findings), "what cannot be read cannot be waved through")
}

func TestAgreementsSilence(t *testing.T) {
	agreed := func(comment string) lint.Result {
		return findings(t, `procedure "size" {
  title = "Size the shaft"

  `+comment+`
  measure "journal" {
    title  = "Measure the journal"
    on     = [part.shaft]
    tools  = [tool.micrometer_25]
    likely = "19.97..20.01 mm"
  }
}

part "shaft" {
  name = "Shaft"
}
`)
	}
	r := agreed("# agreed values/never-used: for the workshop's own statistics")
	require.Empty(t, r.Findings)
	require.Equal(t, map[string]string{"values/never-used": "doubt"}, rulesOf(r.Silenced))
	r = agreed("# agreed values/never-used")
	require.Equal(t, map[string]string{"values/never-used": "doubt", "form/agreed-without-reason": "error"}, rulesOf(r.Findings), "no reason, no silence")
	r = agreed("# agreed values/no-example: it is short")
	require.Equal(t, map[string]string{"values/never-used": "doubt", "form/agreed-on-nothing": "advice"}, rulesOf(r.Findings))
}

// The same manual gives the same findings, on one processor and on many.
func TestChecksAreRepeatable(t *testing.T) {
	text := unread + "tool \"spare\" {\n  name = \"Spare\"\n  kind = \"tool\"\n}\n"
	want := said(findings(t, text).Findings)
	require.NotEmpty(t, want)
	before := runtime.GOMAXPROCS(1)
	defer runtime.GOMAXPROCS(before)
	for n := 1; n <= 4; n++ {
		runtime.GOMAXPROCS(n)
		require.Equal(t, want, said(findings(t, text).Findings))
	}
}
