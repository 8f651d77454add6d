package rework_test

import (
	"io/fs"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/bench/logbook/logtest"
	"fettle/bench/rework"
	"fettle/lang"
	"fettle/lang/model"
)

// others are the sound manuals besides the Sedge 2, with the folder of each.
func others(t *testing.T) map[string]fstest.MapFS {
	all := map[string]fstest.MapFS{}
	take := func(root string, dirs ...string) fstest.MapFS {
		out := fstest.MapFS{}
		for _, dir := range dirs {
			require.NoError(t, fs.WalkDir(os.DirFS(root), dir, func(name string, d fs.DirEntry, err error) error {
				if err != nil || d.IsDir() || !strings.HasSuffix(name, ".proc.hcl") {
					return err
				}
				data, err := fs.ReadFile(os.DirFS(root), name)
				out[name] = &fstest.MapFile{Data: data}
				return err
			}))
		}
		return out
	}
	all["beck"] = take("../../procedures", "beck", "shop")
	entries, err := os.ReadDir("../../testdata/sound")
	require.NoError(t, err)
	for _, e := range entries {
		if e.IsDir() {
			all[e.Name()] = take("../../testdata/sound", e.Name())
		}
	}
	return all
}

func open(dir string, fsys fs.FS) *model.Manual {
	m, _, err := lang.Load(fsys, dir)
	if err != nil || m.Incomplete {
		return nil
	}
	return m
}

// What holds for the Sedge 2 holds for other machines.
func TestPlansForOtherMachines(t *testing.T) {
	all := others(t)
	var dirs []string
	for dir := range all {
		dirs = append(dirs, dir)
	}
	slices.Sort(dirs)
	for _, dir := range dirs {
		base := all[dir]
		m := open(dir, base)
		require.NotNil(t, m, dir)
		names, revs := revisions(base, m)
		slices.Sort(names)
		whole := logtest.Start(t, m, nil)
		acts := whole.Acts()
		for i, name := range names {
			upto := ""
			if i%2 == 1 {
				upto = acts[(i*37+len(acts)/3)%len(acts)].Step.Key()
			}
			if os.Getenv("FETTLE_TEST_ALL") == "" && i%9 != len(dir)%9 { // all take a quarter of a minute
				continue
			}
			t.Run(dir+" "+name+" "+upto, func(t *testing.T) {
				to := open(dir, revs[name])
				require.NotNil(t, to)
				b := logtest.Start(t, m, nil)
				b.Upto(upto)
				p, err := rework.Make(to, b.Log, issued(m))
				require.NoError(t, err)
				if p.Stuck != nil {
					require.NotEmpty(t, p.Stuck.Why)
					return
				}
				for _, r := range p.Refused {
					t.Errorf("the bench does not accept: %s %s %v %s %v", r.What, r.Place, r.Objects, r.Node.Address, r.Causes)
				}
				if !t.Failed() {
					carryOut(t, b, p)
				}
			})
		}
	}
}
