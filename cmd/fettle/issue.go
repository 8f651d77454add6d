package main

import (
	"errors"
	"fmt"
	"io/fs"
	"path"

	"github.com/spf13/cobra"

	"fettle/bench/revision"
)

func issueCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "issue [folder]",
		Short: "Freeze the current revision of a manual under issued/",
		Long: `Issue writes a snapshot of the manual's current revision, with its digest, into
the manual's folder issued/. It refuses while errors stand, and when the content
has changed under a letter that was issued before.`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			p, err := locate(c, args)
			if err != nil {
				return err
			}
			m, found, err := p.check()
			if err != nil {
				return err
			}
			snapshot, err := revision.Freeze(m, p.root.FS())
			if err != nil {
				return err
			}
			history, err := revision.History(p.root.FS(), p.dir)
			if err != nil {
				return err
			}
			if r := snapshot.MayIssue(found, history); r != nil {
				return refused(c, r.Message, r.Reason, r.Remedy)
			}
			dir := path.Join(p.dir, revision.Dir)
			if err := p.root.Mkdir(dir, 0o755); err != nil && !errors.Is(err, fs.ErrExist) {
				return err
			}
			name := path.Join(dir, snapshot.Name())
			if err := p.create(name, snapshot.Encode()); err != nil {
				return err
			}
			fmt.Fprintf(c.OutOrStdout(), "Revision %s is issued: %s\ndigest %s\n", snapshot.Revision, p.shown(name), snapshot.Digest)
			return nil
		},
	}
}

// refused says why nothing was done, and ends the command with exit code 1.
func refused(c *cobra.Command, message, reason, remedy string) error {
	fmt.Fprintf(c.ErrOrStderr(), "%s\n    why   %s\n    do    %s\n", message, reason, remedy)
	return findings{}
}
