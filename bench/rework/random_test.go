package rework_test

import (
	"fmt"
	"math/rand/v2"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/bench/rework"
	"fettle/lang/entry"
	"fettle/lang/model"
)

// blockOf is the text of an entry or step, and its file.
func blockOf(fsys fstest.MapFS, n *model.Node) (file, text string) {
	return n.File.Path, n.File.Text[n.Extent.Start:n.Extent.End]
}

// change makes a revision by one edit of the block of a node.
func change(base fstest.MapFS, n *model.Node, re, to string) (fstest.MapFS, bool) {
	file, text := blockOf(base, n)
	next := regexp.MustCompile(re).ReplaceAllString(text, to)
	if next == text {
		return nil, false
	}
	out := fstest.MapFS{}
	for name, f := range base {
		out[name] = f
	}
	out[file] = &fstest.MapFile{Data: []byte(strings.Replace(string(base[file].Data), text, next, 1))}
	return out, true
}

// revisions are all revisions of one edit that matters to a built engine: every
// torque, every part number, every look at a part that is fitted.
func revisions(base fstest.MapFS, m *model.Manual) (names []string, all map[string]fstest.MapFS) {
	all = map[string]fstest.MapFS{}
	enter := func(name string, fsys fstest.MapFS, ok bool) {
		if ok {
			names, all[name] = append(names, name), fsys
		}
	}
	for _, n := range m.Of(entry.Fastening.Name) {
		fsys, ok := change(base, n, `torque( +)= "([0-9.]+) N·m ±`, `torque$1= "1$2 N·m ±`)
		enter("torque of "+n.ID, fsys, ok)
	}
	for _, n := range m.Of(entry.Part.Name) {
		fsys, ok := change(base, n, `(?m)^  number( +)= "([^"]+)"`, `  number$1= "$2/2"`)
		enter("number of "+n.ID, fsys, ok)
	}
	m.EachStep(func(s *model.Step) {
		if s.Branch != nil || s.Def.Name != "fit" || s.Ref("part") == nil || s.Ref("part").Step != nil || s.Flag("trial") {
			return
		}
		fsys, ok := change(base, s.Node, `\A`, fmt.Sprintf(`inspect "before_%s" {
    title     = "Look at it once more"
    on        = [part.%s]
    criterion = "It is whole."
    otherwise = "Stop."
  }

  `, s.ID, s.Ref("part").ID))
		enter("look at "+s.Key(), fsys, ok)
	})
	return names, all
}

// Every plan is one that the bench accepts, and after it nothing is asked, for
// revisions taken at random and engines built to different points.
func TestPlansForRandomRevisions(t *testing.T) {
	base := sedge(t)
	m := load(t, base)
	names, all := revisions(base, m)
	slices.Sort(names)
	r := rand.New(rand.NewPCG(7, 7))
	r.Shuffle(len(names), func(i, j int) { names[i], names[j] = names[j], names[i] })
	n := 8
	if os.Getenv("FETTLE_TEST_ALL") != "" { // half a minute
		n = len(names)
	}
	for i, name := range names[:n] {
		upto := []string{"", "barrels.measure.deck_final", "top_end.run.by_hand"}[i%3]
		t.Run(name+" "+upto, func(t *testing.T) {
			to := load(t, all[name])
			b := book(t, m, upto)
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
