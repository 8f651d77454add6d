// Package procedures_test keeps the history of the demo manuals: the revisions
// that were issued, and two engines built to them.
package procedures_test

import (
	"flag"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/bench/diff"
	"fettle/bench/revision"
	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint"
)

var remake = flag.Bool("remake", false, "issue the demo's revisions and record its builds anew")

// later is what each revision changed, written backwards: what stands in the
// later one, and what stood in its place.
var later = []struct {
	letter  string
	changes [][2]string
}{
	{"C", [][2]string{
		{`revision   = "D"
  issued     = "2026-10-26"`, `revision   = "C"
  issued     = "2026-08-10"`},
		{`

  history "C" {
    issued = "2026-08-10"
    reason = "Revision D tightens the camshaft nut less, and lets the crankshaft float less. It also looks at the cups of the pushrods before a cover hides them."
  }`, ``},
		{`torque       = "100 N·m ± 5 %"`, `torque       = "108 N·m ± 5 %"`},
		{`range    = "0.10..0.22 mm"`, `range    = "0.10..0.26 mm"`},
		{`  inspect "cups" {
    title     = "Look at the cups of both pushrods"
    on        = [part.rocker_gear]
    tools     = [tool.hand_lamp]
    takes     = "2 min"
    criterion = "The ball of each adjuster lies in the cup of its pushrod, and no edge of a cup is chipped."
    otherwise = "Stop. Lift the rocker gear off, and fit another pushrod."
    why       = "A ball beside its cup gives the right clearance once. It slips in at the first start, and the valve no longer opens."
  }

`, ``},
		{`Hold the tappets out with a finger as each lobe passes.`, `Hold the tappets out of the way as each lobe passes.`},
	}},
	{"B", [][2]string{
		{`revision   = "C"
  issued     = "2026-08-10"`, `revision   = "B"
  issued     = "2026-05-18"`},
		{`

  history "B" {
    issued = "2026-05-18"
    reason = "Revision C measures the backlash of the gears before the tab is bent, because a tab bends only once. What was called end play is the float everywhere."
  }`, ``},
		{`  measure "float" {`, `  measure "end_play" {`},
		{`
    was          = ["end_play"]`, ``},
		{`gap       = measure.float
`, `gap       = measure.end_play
`},
		{`readings = { measure.float = "0.93 mm" }`, `readings = { measure.end_play = "0.93 mm" }`},
		{`readings = { measure.float = "0.60 mm" }`, `readings = { measure.end_play = "0.60 mm" }`},
		{`procedure.crankshaft.measure.float,`, `procedure.crankshaft.measure.end_play,`},
		{backlash + "\n" + tab, tab + "\n" + backlash},
	}},
}

const backlash = `  measure "backlash" {
    title     = "Measure the backlash of the gears"
    on        = [part.cam_gear]
    tools     = [tool.dial_indicator]
    spots     = ["dots together", "1/4 turn on", "1/2 turn on", "3/4 turn on"]
    take      = "each"
    accept    = limit.backlash
    otherwise = "Stop. Withybrook keeps camshaft gears of two more sizes: send the four readings."
    takes     = "10 min"
    text      = "Stand the dial square on a tooth. Rock the camshaft gear while you hold the other still."
  }
`

const tab = `  lock "cam_nut" {
    title     = "Bend a tab up against a flat of the nut"
    fastening = fastening.cam_nut
    by        = part.cam_tab
    tools     = [tool.brass_drift, tool.hammer]
    takes     = "3 min"
  }
`

// edition is a revision of the Sedge 2 with the files it is made of.
type edition struct {
	letter string
	fsys   fstest.MapFS
	model  *model.Manual
}

// editions are D as it stands, and C and B made from it.
func editions(t *testing.T) []edition {
	fsys := fstest.MapFS{}
	err := fs.WalkDir(os.DirFS("."), ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasPrefix(name, "sedge_2/") && !strings.HasPrefix(name, "shop/") || strings.Contains(name, "/"+revision.Dir+"/") {
			return err
		}
		data, err := os.ReadFile(filepath.FromSlash(name))
		fsys[name] = &fstest.MapFile{Data: data}
		return err
	})
	require.NoError(t, err)
	all := []edition{{"D", fsys, load(t, fsys)}}
	for _, l := range later {
		next := fstest.MapFS{}
		for name, f := range all[len(all)-1].fsys {
			next[name] = f
		}
		for _, c := range l.changes {
			found := 0
			for name, f := range next { // changes one file
				if n := strings.Count(string(f.Data), c[0]); n > 0 {
					found += n
					next[name] = &fstest.MapFile{Data: []byte(strings.Replace(string(f.Data), c[0], c[1], 1))}
				}
			}
			require.Equal(t, 1, found, "%s: %s", l.letter, c[0])
		}
		all = append(all, edition{l.letter, next, load(t, next)})
	}
	slices.Reverse(all)
	return all
}

func load(t *testing.T, fsys fs.FS) *model.Manual {
	m, found, err := lang.Load(fsys, "sedge_2")
	require.NoError(t, err)
	require.NotEqual(t, diag.Error, found.Worst())
	return m
}

// The revisions that were issued are those that the changes above tell of, and
// each of them is sound after the one before.
func TestIssuedRevisions(t *testing.T) {
	var last *revision.Issued
	for _, e := range editions(t) {
		_, found, err := lang.Load(e.fsys, "sedge_2")
		require.NoError(t, err)
		for _, f := range lint.Check(e.model, found, lint.Files(e.fsys), lint.Since(last)).Findings {
			t.Errorf("revision %s: %s %s", e.letter, f.Rule, f.Message)
		}
		name := filepath.Join("sedge_2", revision.Dir, e.letter+".json")
		s, err := revision.Freeze(e.model, e.fsys)
		require.NoError(t, err)
		if *remake {
			require.NoError(t, os.MkdirAll(filepath.Dir(name), 0o755))
			require.NoError(t, os.WriteFile(name, s.Encode(), 0o644))
		}
		data, err := os.ReadFile(name)
		require.NoError(t, err)
		last, err = revision.Open(data)
		require.NoError(t, err)
		require.Equal(t, s.Digest, last.Digest, "revision %s is not as it was issued; where that is meant: go test ./procedures -remake", e.letter)
	}
}

// What the revisions changed, as a builder reads it.
func TestWhatTheRevisionsChanged(t *testing.T) {
	all := editions(t)
	for i, want := range [][]string{
		{
			"words procedure.crankshaft.measure.float",
			"sequence procedure.camshaft.measure.backlash",
		},
		{
			"value fastening.cam_nut",
			"safety limit.crank_float",
			"words procedure.camshaft.fit.camshaft",
			"sequence procedure.clearances.inspect.cups",
		},
	} {
		var got []string
		for _, c := range diff.Diff(all[i].model, all[i+1].model).List {
			got = append(got, c.Class.String()+" "+c.New.Address)
		}
		require.Equal(t, want, got)
	}
}
