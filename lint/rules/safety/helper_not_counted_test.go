package safety

import (
	"fmt"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// Workshop sentences in a step of one person.
func TestHelperNotCounted(t *testing.T) {
	for _, c := range []struct {
		text   string
		helper bool
	}{
		{"A helper steers the lower eye while you lower the upper one.", true},
		{"Let your helper hold the bar.", true},
		{"One of you works the hoist, the other steers.", true},
		{"One person holds the load, the other person steers.", true},
		{"Both of you lift at the word.", true},
		{"A second person stays at the valve.", true},
		{"Two people lift it in.", true},
		{"Have an assistant press the pedal.", true},
		{"Three people carry it.", true},
		{"Ask somebody to hold the lamp.", true},
		{"Ask a helper to steady the shaft.", true},
		{"Have someone else hold the bar while you pull.", true},
		{"Ask someone who knows the engine.", false},
		{"If in doubt, ask a second person to look at it.", false},
		{"Somebody turns the tap off at the main.", true},
		{"Hold both probes together.", false},
		{"Send runner and shaft back to the workshop together.", false},
		{"No helper is needed.", false},
		{"You need no second person for this.", false},
		{"It is easier with a helper.", false},
		{"If you have a helper, let him hold it.", false},
		{"Keep other people out of the room.", false},
		{"Turn both shafts together by half a turn.", false},
		{"One person is enough.", false},
		{"The mating face must be dry.", false},
		{"Use the second hand of the clock.", false},
		{"Somebody else may have left a rag in there.", false},
	} {
		found := findings(t, HelperNotCounted, fmt.Sprintf(`
part "x" {
  name = "X"
}

procedure "p" {
  title = "P"

  work "w" {
    title = "Do it"
    on    = [part.x]
    text  = %q
  }
}
`, c.text))
		require.Equal(t, c.helper, len(found) > 0, c.text)
	}
}

// What messages tell to wear.
func TestAsked(t *testing.T) {
	for sentence, want := range map[string]string{
		"Wear goggles and keep a rag over the circlip.":                "eye protection",
		"Stand clear of the load and its path, and wear boots.":        "boots",
		"Wear heat-resistant gloves and clear a steel tray.":           "gloves",
		"Put on ear protection before the engine starts.":              "ear protection",
		"Keep your gloves away from your face.":                        "",
		"Never wear gloves at a turning drill.":                        "",
		"Rinse an eye with water for 15 min and see a doctor.":         "",
		"Wear the gloves, change them when they are smeared, and wash": "gloves",
	} {
		g, _ := asked(sentence)
		name := ""
		if g != nil {
			name = g.name
		}
		require.Equal(t, want, name, sentence)
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
