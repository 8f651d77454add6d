package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lang/model"
)

// place is a manual's folder inside the root that no path leaves.
type place struct {
	root *os.Root
	base string // the root, as an absolute path
	dir  string // the manual's folder inside the root, slash-separated
	cwd  string
}

// locate opens the folder that a command was given; the current one by default.
func locate(c *cobra.Command, args []string) (*place, error) {
	given := "."
	if len(args) > 0 {
		given = args[0]
	}
	cwd, err := os.Getwd()
	if err != nil {
		return nil, err
	}
	abs, err := filepath.Abs(given)
	if err != nil {
		return nil, err
	}
	info, err := os.Stat(abs)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, fmt.Errorf("there is no folder %s", given)
	case err != nil:
		return nil, fmt.Errorf("cannot look into %s: %w", given, err)
	case !info.IsDir():
		return nil, fmt.Errorf("%s is a file; give the folder that holds the manual", given)
	}
	base, _ := c.Flags().GetString("root")
	switch {
	case base != "":
		if base, err = filepath.Abs(base); err != nil {
			return nil, err
		}
	case inside(cwd, abs) && cwd != abs:
		base = cwd
	default:
		base = filepath.Dir(abs)
	}
	rel, err := filepath.Rel(base, abs)
	if err != nil || !filepath.IsLocal(rel) {
		return nil, fmt.Errorf("%s lies outside the root %s", given, base)
	}
	root, err := os.OpenRoot(base)
	if err != nil {
		return nil, fmt.Errorf("cannot open the root %s: %w", base, err)
	}
	return &place{root: root, base: base, dir: filepath.ToSlash(rel), cwd: cwd}, nil
}

func inside(outer, inner string) bool {
	rel, err := filepath.Rel(outer, inner)
	return err == nil && filepath.IsLocal(rel)
}

// load reads the manual and shows paths as the caller would type them.
func (p *place) load() (*model.Manual, diag.List, error) {
	m, found, err := lang.Load(p.root.FS(), p.dir)
	if err != nil {
		return nil, nil, errors.New(strings.ReplaceAll(err.Error(), p.dir, p.shown(p.dir)))
	}
	return m, found, nil
}

// shown is a path inside the root as it is seen from the working folder.
func (p *place) shown(name string) string {
	full := filepath.Join(p.base, filepath.FromSlash(name))
	if rel, err := filepath.Rel(p.cwd, full); err == nil {
		return filepath.ToSlash(rel)
	}
	return full
}
