package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Imports point one way: calc, lang, bench, then lint and render, then cmd.
func TestImportsPointOneWay(t *testing.T) {
	below := map[string][]string{
		"calc":   {"calc"},
		"lang":   {"calc", "lang"},
		"bench":  {"calc", "lang", "bench"},
		"lint":   {"calc", "lang", "bench", "lint"},
		"render": {"calc", "lang", "bench", "render"},
		"cmd":    {"calc", "lang", "bench", "lint", "render", "procedures", "cmd"},
	}
	eachImport(t, func(file, path string) {
		ours, ok := strings.CutPrefix(path, "fettle/")
		if !ok {
			return
		}
		from, _, _ := strings.Cut(filepath.ToSlash(file), "/")
		to, _, _ := strings.Cut(ours, "/")
		require.Contains(t, below[from], to, "%s imports %s", file, path)
	})
}

// Each library has its place.
func TestLibrariesStayInTheirPlace(t *testing.T) {
	allowed := map[string][]string{
		"github.com/hashicorp/hcl/v2":     {"lang/syntax/"},
		"github.com/zclconf/go-cty":       {"lang/syntax/"},
		"github.com/yuin/goldmark":        {"lint/", "render/"},
		"github.com/spf13/cobra":          {"cmd/"},
		"github.com/agext/levenshtein":    {"lang/bind/", "lang/syntax/", "calc/", "lint/"},
		"github.com/dop251/goja":          {},
		"github.com/chromedp":             {},
		"github.com/stretchr/testify":     {},
		"pgregory.net/rapid":              {},
		"github.com/rogpeppe/go-internal": {},
	}
	eachImport(t, func(file, path string) {
		for library, places := range allowed {
			if !strings.HasPrefix(path, library) {
				continue
			}
			ok := false
			for _, p := range places {
				ok = ok || strings.HasPrefix(file, p)
			}
			require.True(t, ok, "%s imports %s", file, path)
		}
	})
}

// eachImport calls visit for every import of the program, tests left out.
func eachImport(t *testing.T, visit func(file, path string)) {
	root := "../.."
	files := 0
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && (d.Name() == "testdata" || strings.HasPrefix(d.Name(), ".") && path != root) {
			return fs.SkipDir
		}
		rel, _ := filepath.Rel(root, path)
		rel = filepath.ToSlash(rel)
		test := strings.HasSuffix(path, "_test.go") || strings.HasSuffix(filepath.Dir(rel), "test") // langtest, logtest
		if d.IsDir() || !strings.HasSuffix(path, ".go") || test {
			return nil
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		files++
		for _, i := range f.Imports {
			visit(rel, strings.Trim(i.Path.Value, `"`))
		}
		return nil
	})
	require.NoError(t, err)
	require.Greater(t, files, 50)
}
