package fastening

import (
	"fmt"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// Workshop sentences and the way they turn a right-hand nut that is tightened.
func TestTurnsTheWrongWay(t *testing.T) {
	for _, c := range []struct {
		text  string
		wrong bool
	}{
		{"Turn the nut clockwise until the wrench clicks.", false},
		{"Turn the nut anticlockwise until the wrench clicks.", true},
		{"Turn it counterclockwise in one sweep.", true},
		{"Tighten each bolt counter-clockwise.", true},
		{"Tighten the nut to the left.", true},
		{"Pull the wrench anti-clockwise until it clicks.", true},
		{"Back the nut off anticlockwise by a turn, then start again.", false},
		{"Loosen it clockwise first.", true},
		{"To loosen it, turn the nut anticlockwise.", false},
		{"Turn the crankshaft anticlockwise until the bolt is in sight.", false},
		{"Turn the flywheel to the left until the mark shows.", false},
		{"Never turn the nut anticlockwise to meet the slot.", false},
		{"Turn the nut anticlockwise, seen from behind.", false},
		{"Clockwise tightens it, anticlockwise loosens it.", false},
		{"The arrow points to the left when the nut is tight.", false},
		{"Hold the head with a spanner to the right of the bracket.", false},
		{"The nut has a left-hand thread.", true},
		{"It is no left-hand thread, whatever the old manual says.", false},
		{"Work clockwise round the flange.", false},
		{"Go round the bolts anticlockwise from the mark.", false},
	} {
		found := findings(t, TurnsTheWrongWay, fmt.Sprintf(`
part "x" {
  name = "X"
}

fastening "nut" {
  name   = "Nut"
  thread = "M10x1.5"
}

procedure "p" {
  title = "P"

  torque "t" {
    title     = "Tighten the nut"
    fastening = fastening.nut
    text      = %q
  }
}
`, c.text))
		require.Equal(t, c.wrong, len(found) > 0, c.text)
	}
}

func findings(t *testing.T, r *rule.Rule, text string) diag.List {
	t.Helper()
	m, _, err := lang.Load(fstest.MapFS{"m/m.proc.hcl": {Data: []byte(text)}}, "m")
	require.NoError(t, err)
	var out diag.List
	r.Run(&rule.Pass{Manual: m, Index: rule.NewIndex(m), Rule: r, Out: &out})
	return out
}
