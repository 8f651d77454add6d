package bench_test

import (
	"os"
	"reflect"
	"sort"
	"testing"
	"testing/fstest"

	"fettle/bench"
	"fettle/lang"
	"fettle/lang/model"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

const covered = "procedure \"work\" {\n  title = \"Do the work\"\n" + gearAndTab + oilNut + nutOnTight + lockNut + gasketAndCover + coverBolts + "}\n"

func TestStateTellsWhatIsOnAndCovered(t *testing.T) {
	m := load(t, covered, "", "")
	trace := bench.Run(m, nil)
	require.Empty(t, trace.Breaches)

	start := trace.Before(0)
	require.Empty(t, start.On())

	end := trace.Before(len(trace.Acts))
	var on []string
	for _, p := range end.On() {
		on = append(on, p.Object.String())
	}
	require.Equal(t, []string{"Shaft", "Gear", "Gasket", "Cover", "Cover bolt", "Tab washer", "Gear nut"}, on)
	var hidden []string
	for _, c := range end.Covered() {
		hidden = append(hidden, c.Object.String()+" < "+c.By.String())
	}
	require.Equal(t, []string{"bore of Housing < Cover", "Gear < Cover", "Gear nut < Cover"}, hidden)
	require.Equal(t, trace.End, end.Time())
}

// The way in to a nut under a cover: bolts, then cover; then nothing more.
func TestTeardownTakesOffWhatIsInTheWay(t *testing.T) {
	m := load(t, covered, "", "")
	trace := bench.Run(m, nil)
	end := trace.Before(len(trace.Acts))

	td := end.Reach(bench.Object{Node: m.Find("fastening.gear_nut")})
	require.Nil(t, td.Stuck)
	var moves []string
	for _, move := range td.Moves {
		moves = append(moves, move.Object.String())
	}
	require.Equal(t, []string{"Cover bolts", "Cover"}, moves)
	require.Empty(t, td.Renew)

	td = end.TakeOff(bench.Object{Node: m.Find("part.gear")}, bench.Object{Node: m.Find("part.gasket")})
	require.Nil(t, td.Stuck)
	moves = nil
	for _, move := range td.Moves {
		moves = append(moves, move.Object.String())
	}
	require.Equal(t, []string{"Cover bolts", "Cover", "Gear nut", "Gear", "Gasket"}, moves)
	var renew []string
	for _, n := range td.Renew {
		renew = append(renew, n.Object.String())
		require.True(t, n.Short, "the shop holds one")
	}
	require.Equal(t, []string{"Tab washer", "Gasket"}, renew)
	require.Len(t, end.On(), 7, "planning changes nothing")
}

// What a teardown takes off, the bench lets the manual's own steps put back.
func TestTeardownAndRedo(t *testing.T) {
	m := load(t, covered, "", "")
	trace := bench.Run(m, nil)
	end := trace.Before(len(trace.Acts))
	td := end.Reach(bench.Object{Node: m.Find("fastening.gear_nut")})
	end.Undo(td)
	require.Empty(t, end.InTheWay(m.Find("work.torque.nut").Step, ""))
	for _, step := range []string{"work.fit.cover", "work.fit.bolts", "work.torque.bolts"} {
		require.Empty(t, end.Do(m.Find(step).Step, ""), step)
	}
	require.Empty(t, end.Finish())
}

func TestAfterTellsWhatIsOpen(t *testing.T) {
	m := load(t, covered, "", "")
	state := bench.After(m, nil, func(s *model.Step, _ string) bool {
		return s.Index < m.Find("work.torque.nut").Step.Index
	})
	var open []string
	for _, f := range state.Fastenings() {
		if f.Grip != bench.Tight {
			open = append(open, f.Object.String()+" "+string(f.Grip))
		}
	}
	require.Equal(t, []string{"Gear nut started by hand"}, open)
}

// The trace rests on the manual, not on how it is cut into files.
func TestAnyOrderOfFilesGivesTheSameTrace(t *testing.T) {
	fsys := os.DirFS("../procedures")
	m, _, err := lang.Load(fsys, "beck")
	require.NoError(t, err)
	want := tellAll(m)
	rapid.Check(t, func(rt *rapid.T) {
		files := fstest.MapFS{}
		for _, f := range m.Files {
			name := f.Path
			if dir := name[:4]; dir == "beck" {
				name = "beck/" + rapid.StringMatching("[a-z]{8}").Draw(rt, "name") + name[5:]
			}
			files[name] = &fstest.MapFile{Data: []byte(f.Text)}
		}
		other, _, err := lang.Load(files, "beck")
		require.NoError(rt, err)
		require.True(rt, reflect.DeepEqual(want, tellAll(other)))
	})
}

// tellAll is all that a manual's traces say, without where it is written.
func tellAll(m *model.Manual) []string {
	var all []string
	for _, t := range bench.RunAll(m) {
		all = append(all, t.Choice.String())
		for _, a := range t.Acts {
			all = append(all, a.Step.Address+" "+a.Place+" "+a.Start.String()+" "+a.End.String())
		}
		var on []string
		for _, p := range t.Before(len(t.Acts)).On() {
			on = append(on, p.Object.String())
		}
		sort.Strings(on)
		all = append(all, on...)
	}
	return all
}
