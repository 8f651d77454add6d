package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"fettle/bench/logbook"
	"fettle/bench/rework"
)

func reworkCommand() *cobra.Command {
	format, manual := "text", ""
	c := &cobra.Command{
		Use:   "rework LOGBOOK [NEW]",
		Short: "Say what a new revision asks of a build: undo, renew, redo, re-check, nothing",
		Long: `Rework compares what a logbook says was done with a new revision of its manual, a
folder or a snapshot, and plans what the new one asks: what comes off, what is
renewed, what is done or read again. It marks nothing done.`,
		Example: `  fettle rework sedge_014.log procedures/sedge_2`,
		Args:    cobra.RangeArgs(1, 2),
		RunE: func(c *cobra.Command, args []string) error {
			target := "."
			if len(args) > 1 {
				target = args[1]
			}
			if manual == "" {
				manual = target
			}
			l, err := logbook.Open(args[0])
			if err != nil {
				return err
			}
			if !l.Whole() {
				return faults(c, args[0], l)
			}
			m, err := side(c, target)
			if err != nil {
				return err
			}
			home, err := locate(c, []string{manual})
			if err != nil {
				return fmt.Errorf("%w; name the manual's folder with --manual", err)
			}
			issued, err := home.issued()
			if err != nil {
				return err
			}
			plan, err := rework.Make(m, l, issued)
			if err != nil {
				return err
			}
			switch format {
			case "text":
				_, err = fmt.Fprint(c.OutOrStdout(), plan.Text())
			case "markdown":
				_, err = fmt.Fprint(c.OutOrStdout(), plan.Markdown())
			case "json":
				_, err = c.OutOrStdout().Write(plan.JSON())
			default:
				return fmt.Errorf("--format %s: choose text, markdown or json", format)
			}
			return err
		},
	}
	c.Flags().StringVar(&format, "format", "text", "text, markdown (a work sheet with boxes) or json")
	c.Flags().StringVar(&manual, "manual", "", "the manual's folder, which holds the issued revisions (default: NEW)")
	return c
}
