package schedule_test

import (
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/bench"
	"fettle/bench/schedule"
	"fettle/lang"
	"fettle/lang/model"
)

func load(t require.TestingT, fsys fs.FS, dir string) *model.Manual {
	m, found, err := lang.Load(fsys, dir)
	require.NoError(t, err)
	for _, f := range found {
		require.Fail(t, f.Message, "%s", f.Span)
	}
	return m
}

// unit is an invented cover that is sealed onto its own plate of one bed: 20 min
// of work, a cure of an hour, then a look that needs a helper or not.
func unit(n int, after string, people, look int) string {
	return fmt.Sprintf(`
part "plate%[1]d" {
  name    = "Plate %[1]d"
  sits_on = part.bed
  faces   = ["top"]
}

part "cover%[1]d" {
  name    = "Cover %[1]d"
  sits_on = part.plate%[1]d
  faces   = ["rim"]
}

procedure "unit%[1]d" {
  title = "Unit %[1]d"
  after = [%[2]s]

  fit "plate" {
    title = "Put the plate on"
    part  = part.plate%[1]d
    takes = "5 min"
  }

  clean "faces" {
    title = "Clean both faces"
    on    = [part.plate%[1]d.face.top, part.cover%[1]d.face.rim]
    takes = "5 min"
  }

  seal "bead" {
    title     = "Lay a bead"
    on        = [part.plate%[1]d.face.top]
    between   = [part.plate%[1]d.face.top, part.cover%[1]d.face.rim]
    supplies  = [supply.sealant]
    closed_by = fit.cover
    takes     = "5 min"
  }

  fit "cover" {
    title = "Put the cover on"
    part  = part.cover%[1]d
    takes = "5 min"
  }

  clean "rim" {
    title = "Wipe the edge"
    on    = [part.plate%[1]d.face.top, part.cover%[1]d.face.rim]
    takes = "2 min"
  }

  wait "cure" {
    title = "Let it cure"
    until = [seal.bead]
  }

  inspect "rim" {
    title     = "Look along the edge"
    on        = [part.cover%[1]d]
    criterion = "The bead shows all round."
    otherwise = "Stop."
    people    = %[3]d
    takes     = "%[4]d min"
  }
}
`, n, after, people, look)
}

func manual(t require.TestingT, extra string, units ...string) *model.Manual {
	var order []string
	for i := range units {
		order = append(order, fmt.Sprintf("procedure.unit%d", i))
	}
	return load(t, fstest.MapFS{"m/a.proc.hcl": {Data: []byte(`manual "m" {
  title    = "Units on a bed"
  units    = "metric"
  revision = "A"
  order    = [` + strings.Join(order, ", ") + `]
}

part "bed" {
  name = "Bed"
}

supply "sealant" {
  name            = "Sealant"
  kind            = "sealant"
  assemble_within = "10 min"
  cure            = "1 h"
}
` + strings.Join(units, "") + extra)}}, "m")
}

// 22 min of work and an hour's cure, twice, one after the other: 164 min and two
// looks. Begun before the first has cured, the second costs its hands only.
func TestWorkIsDoneWhileSomethingCures(t *testing.T) {
	m := manual(t, "", unit(0, "", 1, 10), unit(1, "", 1, 10))
	p := schedule.Make(m, nil, schedule.Options{})
	// Cover on at 20, cured at 80, looked at till 90; twice the same is 180.
	require.Equal(t, 180*time.Minute, p.InTurn)
	// The second unit's 22 min lie inside the first cure: its cover is on at 22 + 20
	// = 42 and cured at 102, when the first has been looked at; done at 112.
	require.Equal(t, 112*time.Minute, p.Finish)
	require.Equal(t, 64*time.Minute, p.Work)
	wait := -1
	for i, a := range p.Acts {
		if a.Wait && wait < 0 {
			wait = i
		}
	}
	require.Len(t, p.Meanwhile(wait), 5)
	require.Contains(t, p.Text(), "1.6 Let it cure: until 1:20\n      meanwhile steps 2.1 to 2.5, 22 min of work\n")
}

func TestWhatComesAfterWaits(t *testing.T) {
	m := manual(t, "", unit(0, "", 1, 10), unit(1, "procedure.unit0", 1, 10))
	p := schedule.Make(m, nil, schedule.Options{})
	require.Equal(t, p.InTurn, p.Finish)
	require.Contains(t, p.Text(), "nothing can be brought forward: all that follows comes after it, or behind a hold")
}

func TestNothingPassesAHold(t *testing.T) {
	held := strings.Replace(unit(0, "", 1, 10), "  inspect \"rim\" {", `  hold "stop" {
    title   = "Stop before the second unit"
    checks  = [fit.cover]
    before  = procedure.unit1.fit.plate
    release = "second person"
  }

  inspect "rim" {`, 1)
	p := schedule.Make(manual(t, "", held, unit(1, "", 1, 10)), nil, schedule.Options{})
	require.Equal(t, p.InTurn, p.Finish)
}

func TestHelpersAreGathered(t *testing.T) {
	// The helper looks at unit 0 and at unit 2, an hour apart, with unit 1 between.
	slow := unit(1, "", 1, 10)
	m := manual(t, "", unit(0, "", 2, 10), slow, unit(2, "procedure.unit0", 1, 10))
	apart := schedule.Make(m, nil, schedule.Options{})
	require.Len(t, apart.Helpers, 1)
	lift := func(n int) string {
		return fmt.Sprintf("\npart \"block%[1]d\" {\n  name    = \"Block %[1]d\"\n  sits_on = part.bed\n}\n\nprocedure \"unit%[1]d\" {\n  title = \"Block %[1]d\"\n\n  fit \"block\" {\n    title  = \"Lift the block on\"\n    part   = part.block%[1]d\n    people = 2\n    takes  = \"5 min\"\n  }\n}\n", n)
	}
	file := func(n int) string {
		return fmt.Sprintf("\nprocedure \"unit%[1]d\" {\n  title = \"File\"\n\n  work \"file\" {\n    title = \"File the edge\"\n    on    = [part.bed]\n    takes = \"90 min\"\n  }\n}\n", n)
	}
	m = manual(t, "", lift(0), file(1), lift(2))
	require.Len(t, schedule.Make(m, nil, schedule.Options{}).Helpers, 2)
	p := schedule.Make(m, nil, schedule.Options{Gather: true})
	require.Len(t, p.Helpers, 1)
	require.Equal(t, p.InTurn, p.Finish, "it costs no time")
	require.Contains(t, p.Text(), "WHEN A HELPER IS NEEDED\n  0:00 to 0:10: steps 1.1, 3.1\n")
}

func TestANightDoesNotCutASeal(t *testing.T) {
	// 40 min a day: filing fills 25, and the 15 min from cleaning to closing go to
	// the next morning; the 2 min of wiping and the cure follow.
	file := "\nprocedure \"unit0\" {\n  title = \"File\"\n\n  work \"file\" {\n    title = \"File the edge\"\n    on    = [part.bed]\n    takes = \"25 min\"\n  }\n}\n"
	p := schedule.Make(manual(t, "", file, unit(1, "", 1, 10)), nil, schedule.Options{Day: 40 * time.Minute})
	var at []string
	for _, a := range p.Acts {
		at = append(at, fmt.Sprintf("%s %d %s", a.Step.ID, schedule.Day(a.Start)+1, schedule.TimeOfDay(a.Start)))
	}
	require.Equal(t, []string{"file 1 0s", "plate 1 25m0s", "faces 2 0s", "bead 2 5m0s", "cover 2 10m0s", "rim 2 15m0s", "cure 2 17m0s", "rim 3 0s"}, at)
	require.Equal(t, 3, p.Days())
	require.Contains(t, p.Text(), "DAY 2\n    0:00  2.2   Clean both faces\n")
}

// Whatever is planned, it keeps what may not be broken.
func TestPlansAreSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 5).Draw(t, "units")
		var units []string
		r := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 3))
		for i := range n {
			after := ""
			if i > 0 && r.IntN(3) == 0 {
				after = fmt.Sprintf("procedure.unit%d", r.IntN(i))
			}
			units = append(units, unit(i, after, 1+r.IntN(2), 1+r.IntN(60)))
		}
		m := manual(t, "", units...)
		day := time.Duration(rapid.SampledFrom([]int{0, 30, 70, 480}).Draw(t, "day")) * time.Minute
		gather := rapid.Bool().Draw(t, "gather")
		p := schedule.Make(m, nil, schedule.Options{Day: day, Gather: gather})
		sound(t, m, p)
		require.LessOrEqual(t, p.Finish, p.InTurn)
		require.Equal(t, p.Text(), schedule.Make(m, nil, schedule.Options{Day: day, Gather: gather}).Text())
	})
}

func sound(t require.TestingT, m *model.Manual, p *schedule.Plan) {
	run := bench.Run(m, p.Choice)
	require.Len(t, p.Acts, len(run.Acts))
	at := map[[2]string]int{}
	last := map[*model.Node]int{}
	ended := time.Duration(0)
	for i, a := range p.Acts {
		key := [2]string{a.Step.Key(), a.Place}
		_, twice := at[key]
		require.False(t, twice)
		at[key] = i
		turn := run.Find(a.Step, a.Place)
		if before, ok := last[a.Step.Procedure]; ok {
			require.Greater(t, turn, before, "a procedure keeps its order")
		}
		last[a.Step.Procedure] = turn
		require.GreaterOrEqual(t, a.Start, ended, "one thing after the other")
		require.GreaterOrEqual(t, a.End, a.Start)
		ended = a.End
		if d := p.Options.Day; d > 0 && !a.Wait && a.End-a.Start <= d && len(p.Long) == 0 {
			require.LessOrEqual(t, schedule.TimeOfDay(a.Start)+a.End-a.Start, d, "%s at night", a.Step.Key())
		}
	}
	for _, proc := range m.Procedures {
		for _, r := range proc.Refs("after", "") {
			for i, a := range p.Acts {
				for j, b := range p.Acts {
					if a.Step.Procedure == proc && b.Step.Procedure == r.To {
						require.Less(t, j, i, "%s comes after %s", a.Step.Key(), b.Step.Key())
					}
				}
			}
		}
	}
	steps := make([]bench.Act, len(p.Acts))
	for i, a := range p.Acts {
		steps[i] = bench.Act{Step: a.Step, Place: a.Place}
	}
	s := bench.After(m, p.Choice, func(*model.Step, string) bool { return false })
	require.Empty(t, s.DoAll(steps))
}

func TestTheDemoManuals(t *testing.T) {
	for _, dir := range []string{"sedge_2", "beck"} {
		m, _, err := lang.Load(os.DirFS("../../procedures"), dir)
		require.NoError(t, err)
		for _, c := range bench.Choices(m, 64) {
			p := schedule.Make(m, c, schedule.Options{Day: 8 * time.Hour, Gather: true})
			sound(t, m, p)
			require.LessOrEqual(t, p.Finish, p.InTurn)
			require.NotEmpty(t, p.Helpers)
		}
	}
}

func BenchmarkMake(b *testing.B) {
	m, _, err := lang.Load(os.DirFS("../../procedures"), "sedge_2")
	require.NoError(b, err)
	for b.Loop() {
		schedule.Make(m, nil, schedule.Options{Day: 8 * time.Hour, Gather: true})
	}
}
