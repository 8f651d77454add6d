package main

import (
	"fmt"
	"os"

	"github.com/spf13/cobra"

	"fettle/bench/diff"
	"fettle/bench/revision"
	"fettle/lang/model"
)

func diffCommand() *cobra.Command {
	format := "text"
	c := &cobra.Command{
		Use:   "diff OLD NEW",
		Short: "Say what a revision changes for the engine and for the reader",
		Long: `Diff compares two revisions of a manual: folders, or snapshots from issued/. A
step is matched by its address and by its former labels, so that one that only
moved is not one gone and one new.`,
		Example: `  fettle diff procedures/sedge_2/issued/B.json procedures/sedge_2
  fettle diff B.json C.json --format markdown`,
		Args: cobra.ExactArgs(2),
		RunE: func(c *cobra.Command, args []string) error {
			sides := make([]*model.Manual, 2)
			for i, arg := range args {
				m, err := side(c, arg)
				if err != nil {
					return err
				}
				sides[i] = m
			}
			changes := diff.Diff(sides[0], sides[1])
			w := c.OutOrStdout()
			var err error
			switch format {
			case "text":
				_, err = fmt.Fprint(w, changes.Text())
			case "markdown":
				_, err = fmt.Fprint(w, changes.Markdown())
			case "json":
				_, err = w.Write(changes.JSON())
			default:
				return fmt.Errorf("--format %s: choose text, markdown or json", format)
			}
			return err
		},
	}
	c.Flags().StringVar(&format, "format", "text", "text, markdown (a bulletin for builders) or json")
	return c
}

// side loads one side: a snapshot where arg is a file, else a folder.
func side(c *cobra.Command, arg string) (*model.Manual, error) {
	if info, err := os.Stat(arg); err == nil && !info.IsDir() {
		data, err := os.ReadFile(arg)
		if err != nil {
			return nil, err
		}
		issued, err := revision.Open(data)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", arg, err)
		}
		return issued.Model, nil
	}
	p, err := locate(c, []string{arg})
	if err != nil {
		return nil, err
	}
	m, _, err := p.current(c)
	return m, err
}
