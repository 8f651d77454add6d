package mutation_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/lint/mutation"
	"fettle/lint/rules"
)

var (
	all    = flag.Bool("all", false, "judge every mutant, and print the table in Markdown (with -v)")
	manual = flag.String("manual", "", "measure with the manual in this folder, seen from the project's root, instead of the project's own")
	cases  = flag.Bool("cases", false, "measure with the sound halves of the fault cases and of the rules' fragments")
	class  = flag.String("class", "", "only classes whose group and fault hold this")
	sample = flag.Int("sample", 2, "mutants of each class and manual; 0 for all")
	detail = flag.Bool("detail", false, "tell of every mutant that falls short (with -v)")
	strict = flag.Bool("strict", true, "fail where a class falls short of the target")
)

// known are the classes that fall short of the target, with the reason. They are
// printed; one that no longer falls short must go.
var known = map[string]string{
	"words: title with several actions": `"Set the gap, and check the gap" is not found; of all mutants 96 % are, of the sample 93 %`,
}

// The rules find what they are for, where it is, and say little else.
func TestFaultsAreFound(t *testing.T) {
	manuals, picked := sounds(t), classes()
	for _, s := range manuals {
		for _, f := range s.Found {
			t.Errorf("%s is sound, and yet: %s %s: %s", s.Name, f.Span, f.Rule, f.Message)
		}
	}
	if *all {
		*sample = 0
	}
	var mutants []mutation.Mutant
	for _, c := range picked {
		for _, s := range manuals {
			mutants = append(mutants, mutation.Sample(c.Mutants(s), *sample)...)
		}
	}
	tallies := mutation.Measure(picked, mutants)
	if *all || *detail {
		fmt.Println(mutation.Table(tallies))
	}
	for _, tally := range tallies {
		for _, v := range tally.Short {
			require.NoError(t, v.Err)
		}
		if *detail {
			fmt.Print(tally.Detail())
		}
		name := tally.Class.Group + ": " + tally.Class.Fault
		short := tally.Shortfall()
		switch reason := known[name]; {
		case short != "" && reason != "":
			t.Logf("known shortfall: %s: %s: %s", name, short, reason)
		case short != "" && *strict:
			t.Errorf("%s: %s\n%s", name, short, tally.Detail())
		case short != "":
			t.Logf("%s: %s", name, short)
		case reason != "" && *manual == "" && !*cases && !*all && tally.Mutants > 0:
			t.Errorf("%s no longer falls short; take it off the list", name)
		}
	}
}

// Every class has a name of its own, rules that there are, and a fault to put into
// the project's manuals in two ways at least.
func TestClasses(t *testing.T) {
	seen := map[string]bool{}
	manuals := sounds(t)
	for _, c := range mutation.Classes() {
		name := c.Group + ": " + c.Fault
		require.False(t, seen[name], "%s is there twice", name)
		seen[name] = true
		for _, r := range c.Rules {
			require.NotNil(t, rules.Find(r), "%s: there is no rule %s", name, r)
		}
		if *manual != "" || *cases {
			continue
		}
		n := 0
		for _, s := range manuals {
			for _, m := range c.Mutants(s) {
				_, err := m.Source()
				require.NoError(t, err)
				n++
			}
		}
		require.GreaterOrEqual(t, n, 2, name)
	}
}

// sounds opens the manuals that faults are put into.
func sounds(t *testing.T) []*mutation.Sound {
	t.Helper()
	const root = "../.."
	if *cases {
		return littles(t, root)
	}
	dirs := []string{*manual}
	switch {
	case *manual == "":
		own, err := filepath.Glob(filepath.Join(root, "testdata", "sound", "*"))
		require.NoError(t, err)
		require.NotEmpty(t, own)
		dirs = append(own, filepath.Join(root, "procedures", "sedge_2"), filepath.Join(root, "procedures", "beck"))
	case !filepath.IsAbs(*manual):
		dirs = []string{filepath.Join(root, *manual)}
	}
	var opened []*mutation.Sound
	for _, dir := range dirs {
		dir, err := filepath.Abs(dir)
		require.NoError(t, err)
		// From the folder that holds its parent, so that shared folders beside it are in reach.
		parent := filepath.Dir(dir)
		s, err := mutation.Open(os.DirFS(filepath.Dir(parent)), filepath.Base(parent)+"/"+filepath.Base(dir))
		require.NoError(t, err)
		opened = append(opened, s)
	}
	return opened
}

// littles opens the sound halves of fault cases and fragments.
func littles(t *testing.T, root string) (opened []*mutation.Sound) {
	shop := os.DirFS(filepath.Join(root, "lint", "testdata", "shop"))
	add := func(s *mutation.Sound, err error) {
		if s != nil && err == nil { // a few are about what cannot be read whole
			opened = append(opened, s)
		}
	}
	archives, err := filepath.Glob(filepath.Join(root, "testdata", "cases", "*", "*.txtar"))
	require.NoError(t, err)
	for _, name := range archives {
		data, err := os.ReadFile(name)
		require.NoError(t, err)
		add(mutation.OpenCase(strings.TrimSuffix(filepath.Base(name), ".txtar"), data, shop))
	}
	for _, r := range rules.All() {
		add(mutation.OpenFragment(r, shop))
	}
	return opened
}

func classes() []*mutation.Class {
	var picked []*mutation.Class
	for _, c := range mutation.Classes() {
		if strings.Contains(c.Group+": "+c.Fault, *class) {
			picked = append(picked, c)
		}
	}
	return picked
}
