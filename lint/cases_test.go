package lint_test

import (
	"os"
	"path/filepath"
	"regexp"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/tools/txtar"

	"fettle/lang/diag"
)

// A case is an archive of a little manual with a fault in it:
//
//	bad.proc.hcl     with # want comments; bad/NAME for further files of its folder
//	good.proc.hcl    the same without the fault, silent for all rules; good/NAME
//	fixed.proc.hcl   bad.proc.hcl with all sure edits made (golden)
//	likely.proc.hcl  bad.proc.hcl with the first edit of every finding made (golden)
//	NAME             any other file, seen from the root, for bad and good alike
//
// The files of a manual may come in any order; a case where that changes what
// is found says "order of files matters" before its first file.
func TestCases(t *testing.T) {
	names, err := filepath.Glob("../testdata/cases/*/*.txtar")
	require.NoError(t, err)
	for _, name := range names {
		group := filepath.Base(filepath.Dir(name))
		t.Run(group+"/"+strings.TrimSuffix(filepath.Base(name), ".txtar"), func(t *testing.T) {
			t.Parallel()
			runCase(t, name)
		})
	}
}

func runCase(t *testing.T, name string) {
	a, err := txtar.ParseFile(name)
	require.NoError(t, err)
	bad, good, golden := map[string]string{}, map[string]string{}, map[string]*txtar.File{}
	for i := range a.Files {
		f := &a.Files[i]
		text := string(f.Data)
		side, inner, nested := strings.Cut(f.Name, "/")
		switch {
		case f.Name == "bad.proc.hcl":
			bad[inManual(f.Name)] = text
		case f.Name == "good.proc.hcl":
			good[inManual(f.Name)] = text
		case f.Name == "fixed.proc.hcl" || f.Name == "likely.proc.hcl":
			golden[f.Name] = f
		case nested && side == "bad":
			bad[inManual(inner)] = text
		case nested && side == "good":
			good[inManual(inner)] = text
		default:
			bad[f.Name], good[f.Name] = text, text
		}
	}
	var wanted []*want
	for _, file := range sorted(bad) {
		wanted = append(wanted, wants(t, file, bad[file], "")...)
	}
	require.NotEmpty(t, wanted, "the case wants nothing")
	require.NotEmpty(t, good, "the case has no good half")

	m, found := check(t, folder(bad))
	compare(t, wanted, found)
	_, silence := check(t, folder(good))
	silent(t, silence)

	file := inManual("bad.proc.hcl")
	changed := false
	for _, name := range sorted(golden) {
		g := golden[name]
		got := fixed(t, found, file, bad[file], name == "fixed.proc.hcl")
		if *update && got != string(g.Data) {
			g.Data, changed = []byte(got), true
		}
		require.Equal(t, string(g.Data), got)
		if name == "fixed.proc.hcl" {
			mended := clone(bad)
			mended[file] = got
			_, left := check(t, folder(mended))
			require.Empty(t, rest(found, left), "a sure edit leaves a new finding")
		}
	}
	if changed {
		require.NoError(t, os.WriteFile(name, txtar.Format(a), 0o644))
	}
	if !m.Incomplete && !strings.Contains(string(a.Comment), "order of files matters") {
		_, shuffled := check(t, folder(backwards(bad)))
		require.Equal(t, said(found), said(shuffled), "another order of files finds something else")
	}
}

// rest is what is found after the edits and was not found before them.
func rest(before, after diag.List) []string {
	had := map[string]int{}
	for _, s := range said(before) {
		had[s]++
	}
	var more []string
	for _, s := range said(after) {
		if had[s]--; had[s] < 0 {
			more = append(more, s)
		}
	}
	return more
}

// said is what is said, whatever the file and line.
func said(found diag.List) []string {
	var all []string
	for _, f := range found {
		all = append(all, f.Rule+": "+f.Message)
	}
	sort.Strings(all)
	return all
}

func clone(files map[string]string) map[string]string {
	c := map[string]string{}
	for name, text := range files {
		c[name] = text
	}
	return c
}

var header = regexp.MustCompile(`(?m)^[a-z]`)

// backwards cuts every file of the manual at block headers and gives the blocks
// file names that turn their order round.
func backwards(files map[string]string) map[string]string {
	out := map[string]string{}
	n := 0
	for _, name := range sorted(files) {
		text := files[name]
		if !strings.HasPrefix(name, manualDir+"/") || !strings.HasSuffix(name, ".proc.hcl") {
			out[name] = text
			continue
		}
		starts := header.FindAllStringIndex(text, -1)
		for i, s := range starts {
			from, to := s[0], len(text)
			if i == 0 {
				from = 0
			}
			if i+1 < len(starts) {
				to = starts[i+1][0]
			}
			out[inManual("x"+string(rune('z'-n/26))+string(rune('z'-n%26))+".proc.hcl")] = text[from:to]
			n++
		}
	}
	if text, missing := manualBlock(files); missing {
		out[inManual("xa.proc.hcl")] = text // the order stays as it was
	}
	return out
}
