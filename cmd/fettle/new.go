package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"fettle/procedures"
)

func newCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "new FOLDER",
		Short: "Make a small sound manual to start from",
		Long: `New makes a folder with a small manual in it: a measured gap, the shims chosen for
it, a cover tightened over them, and a first turn by hand. It passes fettle check
as it is. The folder must be new or empty.`,
		Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			if err := plant(procedures.Starter(), args[0]); err != nil {
				return err
			}
			fmt.Fprintf(c.OutOrStdout(), "A manual stands in %[1]s. Change it to your machine, and run fettle check %[1]s after each change.\n", args[0])
			return nil
		},
	}
}

// plant copies files into a folder that is new or empty, all of them or none.
func plant(files fs.FS, dir string) error {
	held, err := os.ReadDir(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
	case err != nil:
		return fmt.Errorf("cannot make a manual in %s: %w", dir, err)
	case len(held) > 0:
		return fmt.Errorf("%s holds files already, and nothing was changed; give a new folder", dir)
	}
	parent := filepath.Dir(filepath.Clean(dir))
	made, err := os.MkdirTemp(parent, ".new-*")
	if err != nil {
		return fmt.Errorf("cannot make a folder in %s: %w", parent, err)
	}
	defer os.RemoveAll(made)
	// CopyFS into a folder below: MkdirTemp's own is closed to other users.
	whole := filepath.Join(made, "manual")
	if err := os.CopyFS(whole, files); err != nil {
		return err
	}
	if err := os.Remove(dir); err != nil && !errors.Is(err, fs.ErrNotExist) { // empty: only then it goes
		return fmt.Errorf("cannot use the folder %s: %w", dir, err)
	}
	return os.Rename(whole, dir)
}
