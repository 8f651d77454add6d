package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"fettle/lang/values"
	"fettle/render/working"
)

func calcCommand() *cobra.Command {
	var given givenFlags
	format := "text"
	c := &cobra.Command{
		Use:   "calc [folder]",
		Short: "Work out the values of a build from its readings, with the formulas",
		Example: `  fettle calc procedures/beck
  fettle calc procedures/sedge_2 --reading 'crankshaft.measure.float=1.02 mm'`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			p, err := locate(c, args)
			if err != nil {
				return err
			}
			m, found, err := p.load()
			if err != nil {
				return err
			}
			if err := p.stop(c, m, found); err != nil {
				return err
			}
			g, err := given.read(c, m)
			if err != nil {
				return err
			}
			all := working.Values(m, values.New(m, g))
			switch format {
			case "text":
				err = working.Text(c.OutOrStdout(), all)
			case "json":
				err = working.JSON(c.OutOrStdout(), all)
			default:
				return fmt.Errorf("--format %s: choose text or json", format)
			}
			if err != nil {
				return err
			}
			for _, v := range all {
				if v.Verdict == "refused" || v.Problem != "" {
					return findings{}
				}
			}
			return nil
		},
	}
	given.add(c)
	c.Flags().StringVar(&format, "format", "text", "text or json")
	return c
}
