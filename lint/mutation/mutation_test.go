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
	all    = flag.Bool("all", false, "judge every mutant and print the table")
	manual = flag.String("manual", "", "measure with the manual in this folder instead of the project's own")
	class  = flag.String("class", "", "only classes whose group or fault holds this")
	sample = flag.Int("sample", 2, "mutants of a class and manual, unless -all")
	detail = flag.Bool("detail", false, "tell of every mutant that falls short")
	strict = flag.Bool("strict", false, "fail where a class falls short of the target")
)

// sounds opens the manuals that faults are put into.
func sounds(t *testing.T) []*mutation.Sound {
	t.Helper()
	root := filepath.Join("..", "..")
	dirs := []string{*manual}
	if *manual == "" {
		own, err := filepath.Glob(filepath.Join(root, "testdata", "sound", "*"))
		require.NoError(t, err)
		require.NotEmpty(t, own)
		dirs = append(own, filepath.Join(root, "procedures", "sedge_2"), filepath.Join(root, "procedures", "beck"))
	}
	var opened []*mutation.Sound
	for _, dir := range dirs {
		s, err := mutation.Open(os.DirFS(filepath.Dir(filepath.Dir(filepath.Clean(dir)))), parentAndName(dir))
		require.NoError(t, err)
		opened = append(opened, s)
	}
	return opened
}

// parentAndName is a folder as seen from the one that holds its parent, so that
// the shared folders beside it are in reach.
func parentAndName(dir string) string {
	dir = filepath.Clean(dir)
	return filepath.ToSlash(filepath.Join(filepath.Base(filepath.Dir(dir)), filepath.Base(dir)))
}

func classes() []*mutation.Class {
	var picked []*mutation.Class
	for _, c := range mutation.Classes() {
		if strings.Contains(c.Group+" "+c.Fault, *class) {
			picked = append(picked, c)
		}
	}
	return picked
}

// The rules find what they are for, where it is, and say little else.
func TestFaultsAreFound(t *testing.T) {
	manuals, picked := sounds(t), classes()
	for _, s := range manuals {
		for _, f := range s.Found {
			t.Errorf("%s is sound, and yet: %s %s: %s", s.Name, f.Span, f.Rule, f.Message)
		}
	}
	n := *sample
	if *all {
		n = 0
	}
	var mutants []mutation.Mutant
	for _, c := range picked {
		for _, s := range manuals {
			mutants = append(mutants, mutation.Sample(c.Mutants(s), n)...)
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
		if short := tally.Shortfall(); short != "" {
			if *strict {
				t.Errorf("%s: %s: %s\n%s", tally.Class.Group, tally.Class.Fault, short, tally.Detail())
			} else {
				t.Logf("%s: %s: %s", tally.Class.Group, tally.Class.Fault, short)
			}
		}
	}
}

// A class names rules that there are, and says how to break the project's manuals.
func TestClasses(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range mutation.Classes() {
		require.False(t, seen[c.Group+c.Fault], "%s: %s is there twice", c.Group, c.Fault)
		seen[c.Group+c.Fault] = true
		known := false
		for _, r := range c.Rules {
			known = known || rules.Find(r) != nil
		}
		if !known {
			t.Logf("%s: %s: none of %v is a rule yet", c.Group, c.Fault, c.Rules)
		}
	}
}
