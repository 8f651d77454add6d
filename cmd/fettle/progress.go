package main

import (
	"fmt"
	"time"

	"github.com/spf13/cobra"

	"fettle/bench/logbook"
	"fettle/bench/progress"
	"fettle/bench/rework"
)

func progressCommand() *cobra.Command {
	at := ""
	c := &cobra.Command{
		Use:     "progress LOGBOOK [folder]",
		Short:   "Say where a build stands: what is done, what is next, what is open",
		Example: `  fettle progress sedge_014.log procedures/sedge_2`,
		Args:    cobra.RangeArgs(1, 2),
		RunE: func(c *cobra.Command, args []string) error {
			now := time.Now()
			if at != "" {
				var err error
				if now, err = time.Parse(time.RFC3339, at); err != nil {
					return fmt.Errorf("--at %s: write a time such as 2026-05-30T08:12:00+02:00", at)
				}
			}
			l, err := logbook.Open(args[0])
			if err != nil {
				return err
			}
			if !l.Whole() {
				return faults(c, args[0], l)
			}
			p, err := locate(c, args[1:])
			if err != nil {
				return err
			}
			m, err := p.followed(l)
			if err != nil {
				return err
			}
			issued, err := p.issued()
			if err != nil {
				return err
			}
			carried, err := rework.Carry(m, l, issued)
			if err != nil {
				return err
			}
			_, err = fmt.Fprint(c.OutOrStdout(), progress.Of(carried, now).Text())
			return err
		},
	}
	c.Flags().StringVar(&at, "at", "", "the time to look at it, such as 2026-05-30T08:12:00+02:00 (default: now)")
	return c
}
