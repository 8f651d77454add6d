package main

import (
	"fmt"
	"time"

	"github.com/spf13/cobra"

	"fettle/bench/rework"
	"fettle/bench/schedule"
)

func scheduleCommand() *cobra.Command {
	var given givenFlags
	day, gather := "", false
	c := &cobra.Command{
		Use:     "schedule [folder]",
		Short:   "Plan people, time and curing",
		Example: `  fettle schedule procedures/sedge_2 --day 6h --gather`,
		Args:    cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			o := schedule.Options{Gather: gather}
			if day != "" {
				d, err := time.ParseDuration(day)
				if err != nil || d <= 0 || d > 24*time.Hour {
					return fmt.Errorf("--day %s: write the hours of work in a day, such as 6h or 6h30m", day)
				}
				o.Day = d
			}
			p, err := locate(c, args)
			if err != nil {
				return err
			}
			m, _, err := p.current(c)
			if err != nil {
				return err
			}
			g, err := given.read(c, m)
			if err != nil {
				return err
			}
			_, err = fmt.Fprint(c.OutOrStdout(), schedule.Make(m, rework.Choice(m, g), o).Text())
			return err
		},
	}
	given.add(c)
	c.Flags().StringVar(&day, "day", "", "hours of work in a day, such as 6h (default: a day without end)")
	c.Flags().BoolVar(&gather, "gather", false, "bring the times of helpers together, where that costs no time")
	return c
}
