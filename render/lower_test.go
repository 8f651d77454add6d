package render_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/lang/values"
	"fettle/render"
)

// step finds a printed step by its ID.
func step(t *testing.T, d *render.Document, id string) *render.Step {
	t.Helper()
	for _, p := range d.Procedures {
		for _, g := range p.Groups {
			for i := range g.Steps {
				if g.Steps[i].ID == id {
					return &g.Steps[i]
				}
			}
		}
	}
	t.Fatalf("no step %s", id)
	return nil
}

func TestPlaces(t *testing.T) {
	d := lower(t, "testdata", "press", values.Given{})
	// A step on its own visits all places in order and is printed once.
	s := step(t, d, "columns.clean.seat")
	require.Equal(t, []string{"left", "right"}, s.Visits)
	// Neighbours at the same places are done place by place.
	var order []string
	for _, g := range d.Procedures[0].Groups {
		for _, s := range g.Steps {
			order = append(order, s.ID)
		}
	}
	require.Equal(t, []string{"columns.fit.base", "columns.clean.seat", "columns.fit.turn_base",
		"columns.fit.column--left", "columns.measure.height--left",
		"columns.fit.column--right", "columns.measure.height--right", "columns.torque.nuts"}, order)
	require.Equal(t, "Screw in the column, right", step(t, d, "columns.fit.column--right").Heading.Plain())
	// A hold that stands at no place checks a step at each of its places.
	h := step(t, d, "ram.hold.ram").Hold
	var checks []string
	for _, c := range h.Checks {
		checks = append(checks, c.ID)
	}
	require.Equal(t, []string{"ram.inspect.ram", "columns.measure.height--left", "columns.measure.height--right"}, checks)
	require.Equal(t, "inspector of the yard", h.Signer)
	require.Equal(t, "motor.fit.motor", h.Guards.ID)
}

func TestMessagesInFullOnce(t *testing.T) {
	d := lower(t, "../procedures", "sedge_2", values.Given{})
	full := map[string]bool{}
	n := 0
	for _, p := range d.Procedures {
		for _, g := range p.Groups {
			for _, s := range g.Steps {
				rank := -1
				for _, m := range s.Messages {
					key := m.Word + m.From + m.Hazard.Plain() + m.Avoid.Plain()
					if m.From != "" {
						require.Equal(t, full[key], m.Short, "%s %s", s.ID, key)
						full[key] = true
						n++
					}
					now := strings.Index("danger warning caution notice", m.Word)
					require.GreaterOrEqual(t, now, rank, "the gravest comes first: %s", s.ID)
					rank = now
				}
			}
		}
	}
	require.Greater(t, n, 20)
}

func TestOptions(t *testing.T) {
	d := lower(t, "testdata", "press", values.Given{})
	require.Equal(t, "hand", d.Options[0].Chosen)
	require.True(t, d.Options[0].Default)
	require.Equal(t, "Not for this build (Drive: hand).", d.Procedures[2].Left)
	require.Empty(t, d.Procedures[2].Groups)
	for _, p := range d.Parts {
		require.NotEqual(t, "Motor", p.Name)
	}
	d = lower(t, "testdata", "press", values.Given{Options: map[string]string{"drive": "motor"}})
	require.Empty(t, d.Procedures[2].Left)
	require.True(t, step(t, d, "motor.fit.motor").Final)
}

// TestTorque: 40 N·m through an adapter of 100 mm on a wrench of 300 mm is set
// as 40 × 300 / (300 + 100) = 30 N·m (TM 1-1500-204-23-9 para 8-5).
func TestTorque(t *testing.T) {
	d := lower(t, "testdata", "press", values.Given{})
	s := step(t, d, "columns.torque.nuts")
	require.Len(t, s.Settings, 2)
	require.Equal(t, "Set the wrench to", s.Settings[0].Label)
	require.Equal(t, "30.0 N·m", s.Settings[0].Amount.First)
	require.Equal(t, "15.0 N·m", s.Settings[0].Stages[0].First)
	require.Equal(t, "40 N·m", s.Settings[1].Amount.First)
	require.Equal(t, "38 to 42 N·m", s.Settings[1].Allowed.First, "40 ± 5 %, rounded inward")
	require.Equal(t, "38", s.Settings[1].Allowed.Exact.Low.Value)
	require.Equal(t, []string{"1", "3", "2", "4"}, s.Pattern.Order)
	require.True(t, s.Critical)
	require.True(t, s.Record, "a critical torque goes into the record")
}

func TestBlanks(t *testing.T) {
	d := lower(t, "testdata", "press", values.Given{})
	p := step(t, d, "ram.choose.pack").Pick
	require.Equal(t, "gap − 0.02 mm", p.Start.Formula)
	require.Equal(t, "____ − 0.02 mm = ____", p.Start.Substituted)
	require.Empty(t, p.Total)
	require.Equal(t, "1 to 4", p.Pieces)
	require.Equal(t, "They leave ____. The limit is 0.05 to 0.20 mm (0.0020 to 0.0078 in).",
		step(t, d, "ram.fit.shims").Text[0].Line.Plain())
}

// TestValues: the mean of 0.46 and 0.48 is 0.47; less 0.02 it is 0.45; a pack of
// 0.25 and 0.10 leaves 0.10 exactly on the target.
func TestValues(t *testing.T) {
	d := lower(t, "testdata", "press", read(t))
	r := step(t, d, "ram.measure.gap").Readings[0]
	require.Equal(t, "0.46", r.Boxes[0].Value)
	require.Equal(t, "0.470", r.Result.Value)
	p := step(t, d, "ram.choose.pack").Pick
	require.Equal(t, "0.470 mm − 0.02 mm = 0.450 mm", p.Start.Substituted)
	require.Equal(t, "1 × 0.25 mm, 1 × 0.10 mm", p.Pack)
	require.Equal(t, "0.35", p.Total)
	require.Equal(t, "0.100", p.Result)
	require.Equal(t, []string{"1", "1"}, []string{p.Sizes[0].Take, p.Sizes[1].Take})
	require.Equal(t, render.Outside, step(t, d, "columns.measure.height--left").Readings[0].Verdict, "12.6 is above 12.5")
	require.Equal(t, render.Unknown, step(t, d, "columns.measure.height--right").Readings[0].Verdict)
	require.Equal(t, render.Inside, step(t, d, "ram.calculate.half").Computed[0].Verdict)
}

// TestTable holds the table of packs against the solver: at many readings, the
// row that a builder finds is the pack that is picked, or, on the line between
// two rows, one of the two.
func TestTable(t *testing.T) {
	blank := lower(t, "testdata", "press", values.Given{})
	table := step(t, blank, "ram.choose.pack").Pick.Table
	require.NotEmpty(t, table)
	require.Equal(t, "gap, step 2.4", step(t, blank, "ram.choose.pack").Pick.By)
	for n := 300; n <= 800; n++ {
		s := strings.Replace("0.XXX mm", "XXX", itoa(n), 1)
		q := mm(t, s)
		g := values.Given{}
		g.Readings = map[string][]quantity{"ram.measure.gap": {q}}
		pick := step(t, lower(t, "testdata", "press", g), "ram.choose.pack").Pick
		var rows []string
		for _, r := range table {
			low, high := mm(t, r.Start.Exact.Low.Value+" mm"), mm(t, r.Start.Exact.High.Value+" mm")
			if low.Cmp(q) <= 0 && q.Cmp(high) <= 0 {
				rows = append(rows, totalOf(r.Take))
			}
		}
		want := totalOf(nil)
		if pick.Pack != "" {
			var take []int
			for _, size := range pick.Sizes {
				take = append(take, atoi(t, size.Take))
			}
			want = totalOf(take)
		}
		require.NotEmpty(t, rows, s)
		require.LessOrEqual(t, len(rows), 2, s)
		require.Contains(t, rows, want, s)
	}
}

func TestTimes(t *testing.T) {
	d := lower(t, "testdata", "press", values.Given{})
	// 10 + 2 × 2 + 1 + 2 × 5 + 2 × 2 + 5 minutes.
	require.Equal(t, "34 min", d.Contents[0].Times.Work)
	require.EqualValues(t, 34*60, d.Contents[0].Times.Seconds)
	require.Equal(t, "1.1", d.Contents[0].Helpers[0].Number)
}

func TestRecord(t *testing.T) {
	d := lower(t, "testdata", "press", values.Given{})
	var all []string
	for _, r := range d.Record {
		all = append(all, strings.TrimSpace(r.Number+" "+r.Place+r.What))
	}
	require.Equal(t, []string{"1.5 left", "1.5 right", "1.6", "2.4", "2.5", "2.8", "2.9"}, all)
	require.Equal(t, []string{"Builder", "Inspector of the yard"}, d.SignOff)
}

func TestFrontMatter(t *testing.T) {
	for ext, out := range formats(t, lower(t, "testdata", "press", values.Given{})) {
		for _, want := range []string{"Local codes", "licensed person", "approves nothing for service", "Goggles",
			"WE-904", digest[7:], "2026-02-03", "Technical desk"} {
			require.Contains(t, string(out), want, ext)
		}
	}
}

func TestJSONIsExact(t *testing.T) {
	var f struct {
		Form     string
		Document struct{ Procedures []json.RawMessage }
	}
	out := formats(t, lower(t, "testdata", "press", values.Given{}))["json"]
	require.NoError(t, json.Unmarshal(out, &f))
	require.Equal(t, "fettle-checklist-1", f.Form)
	require.Contains(t, string(out), `"unit": "N.m"`)
	require.Contains(t, string(out), `"value": "0.05"`)
}
