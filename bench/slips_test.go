package bench_test

import (
	"io/fs"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"fettle/bench"
	"fettle/lang"
	"fettle/lang/model"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// sources are a manual's files as they are, to be spoilt.
func sources(t *testing.T, root, dir string) (*model.Manual, fstest.MapFS) {
	m, _, err := lang.Load(os.DirFS(root), dir)
	require.NoError(t, err)
	files := fstest.MapFS{}
	for _, f := range m.Files {
		files[f.Path] = &fstest.MapFile{Data: []byte(f.Text)}
	}
	return m, files
}

// spoil runs a manual of which one file reads otherwise. It gives nothing where
// the change breaks a reference, which has findings of its own.
func spoil(t require.TestingT, files fstest.MapFS, dir, name, text string) []bench.Breach {
	changed := fstest.MapFS{}
	for k, v := range files {
		changed[k] = v
	}
	changed[name] = &fstest.MapFile{Data: []byte(text)}
	m, found, err := lang.Load(fs.FS(changed), dir)
	require.NoError(t, err)
	for _, f := range found {
		if strings.HasPrefix(f.Rule, "values/unknown") || strings.HasPrefix(f.Rule, "form/") {
			return nil
		}
	}
	return bench.Gather(bench.RunAll(m))
}

// One slip is one breach, whatever follows from it: each step of a sound manual
// is left out in turn, and each is put behind the next.
func TestOneSlipIsSaidOnce(t *testing.T) {
	manuals := []string{
		"air_compressor", "bench_grinder", "cart_wheel", "garden_gate", "gearbox",
		"hand_pump", "hand_winch", "line_shaft", "tank_hatch", "trailer_hub",
	}
	for _, dir := range manuals {
		slips(t, "../testdata/sound", dir)
	}
	slips(t, "../procedures", "beck")
}

func slips(t *testing.T, root, dir string) {
	t.Run(dir, func(t *testing.T) {
		t.Parallel()
		m, files := sources(t, root, dir)
		m.EachStep(func(s *model.Step) {
			text := s.File.Text
			atMostOne(t, "without "+s.Address, spoil(t, files, dir, s.File.Path, text[:s.Extent.Start]+text[s.Extent.End:]))
			if s.Branch != nil || s.Index+1 == len(s.Procedure.Steps) {
				return
			}
			next := s.Procedure.Steps[s.Index+1]
			swapped := text[:s.Extent.Start] + next.Extent.Text() + text[s.Extent.End:next.Extent.Start] + s.Extent.Text() + text[next.Extent.End:]
			atMostOne(t, s.Address+" behind "+next.Address, spoil(t, files, dir, s.File.Path, swapped))
		})
	})
}

func atMostOne(t *testing.T, slip string, breaches []bench.Breach) {
	if len(breaches) < 2 {
		return
	}
	var all []string
	for _, b := range breaches {
		all = append(all, say(b))
	}
	t.Errorf("%s:\n  %s", slip, strings.Join(all, "\n  "))
}

// However the steps stand, the bench comes to an end.
func TestAnyOrderOfStepsEnds(t *testing.T) {
	for _, dir := range []string{"gearbox", "hand_pump", "tank_hatch"} {
		m, files := sources(t, "../testdata/sound", dir)
		rapid.Check(t, func(rt *rapid.T) {
			p := rapid.SampledFrom(m.Procedures).Draw(rt, "procedure")
			text := p.File.Text
			var b strings.Builder
			b.WriteString(text[:p.Steps[0].Extent.Start])
			for _, s := range rapid.Permutation(p.Steps).Draw(rt, "steps") {
				if rapid.IntRange(0, 5).Draw(rt, "left out") > 0 {
					b.WriteString(s.Extent.Text() + "\n\n  ")
				}
			}
			b.WriteString(text[p.Steps[len(p.Steps)-1].Extent.End:])
			spoil(rt, files, dir, p.File.Path, b.String())
		})
	}
}
