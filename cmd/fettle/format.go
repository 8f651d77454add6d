package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"fettle/lang/format"
	"fettle/lang/source/folder"
)

func formatCommand() *cobra.Command {
	check := false
	c := &cobra.Command{
		Use:   "format [folder]",
		Short: "Lay the files of a manual out in one way, comments kept",
		Args:  cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			p, err := locate(c, args)
			if err != nil {
				return err
			}
			sources, found := folder.Read(p.root.FS(), p.dir)
			if len(found) > 0 {
				return fmt.Errorf("%s: %s", p.shown(found[0].Span.Path()), found[0].Message)
			}
			if len(sources) == 0 {
				return fmt.Errorf("no file in %s ends with %s", p.shown(p.dir), folder.Suffix)
			}
			changed, broken := 0, 0
			for _, f := range sources {
				out, ok := format.Format([]byte(f.Text))
				switch {
				case !ok:
					broken++
					fmt.Fprintf(c.ErrOrStderr(), "%s: left alone, since it cannot be read; fettle check says why\n", p.shown(f.Path))
				case string(out) != f.Text:
					changed++
					fmt.Fprintln(c.OutOrStdout(), p.shown(f.Path))
					if !check {
						if err := p.replace(f.Path, out); err != nil {
							return err
						}
					}
				}
			}
			if broken > 0 || check && changed > 0 {
				return findings{}
			}
			return nil
		},
	}
	c.Flags().BoolVar(&check, "check", false, "change nothing; list the files that would change, and exit 1 if there are any")
	return c
}
