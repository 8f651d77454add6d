package main

import (
	"fmt"
	"os"
	"slices"

	"github.com/spf13/cobra"

	"fettle/bench/revision"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lint"
	"fettle/lint/report"
	"fettle/lint/rules"
)

func checkCommand() *cobra.Command {
	format, failOn, fix := "text", "error", false
	c := &cobra.Command{
		Use:   "check [folder]",
		Short: "Prove what can be proved about a manual",
		Long: `Check reads the manual, executes it on a virtual bench for every choice of
options, and says what is wrong: where, why it matters, and what to do.

It exits with 0 when nothing at or above --fail-on is found, with 1 when
something is, and with 2 when it could not run.`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			if !slices.Contains([]string{"text", "json", "sarif", "junit"}, format) {
				return fmt.Errorf("--format %s: choose text, json, sarif or junit", format)
			}
			least, ok := severities[failOn]
			if !ok {
				return fmt.Errorf("--fail-on %s: choose error, doubt or advice", failOn)
			}
			p, err := locate(c, args)
			if err != nil {
				return err
			}
			m, found, err := p.check()
			if err != nil {
				return err
			}
			if fix {
				if m, found, err = p.fix(c, m, found); err != nil {
					return err
				}
			}
			if err := p.report(c, format, m, found); err != nil {
				return err
			}
			if w := found.Worst(); w != 0 && w <= least {
				return findings{}
			}
			return nil
		},
	}
	c.Flags().StringVar(&format, "format", "text", "text, json, sarif or junit")
	c.Flags().StringVar(&failOn, "fail-on", "error", "the least severity that makes it exit with 1: error, doubt or advice")
	c.Flags().BoolVar(&fix, "fix", false, "make the edits that are sure, then check again")
	return c
}

var severities = map[string]diag.Severity{"error": diag.Error, "doubt": diag.Doubt, "advice": diag.Advice}

// check loads the manual and runs every rule.
func (p *place) check() (*model.Manual, diag.List, error) {
	m, found, err := p.load()
	if err != nil {
		return nil, nil, err
	}
	history, err := revision.History(p.root.FS(), p.dir)
	if err != nil {
		return nil, nil, err
	}
	var last *revision.Issued
	if n := len(history); n > 0 {
		last = history[n-1]
	}
	return m, lint.Check(m, found, lint.Files(p.root.FS()), lint.Since(last)).Findings, nil
}

// fix makes sure edits until there are none left, each file whole or not at all.
func (p *place) fix(c *cobra.Command, m *model.Manual, found diag.List) (*model.Manual, diag.List, error) {
	const rounds = 8 // an edit may bring another to light, but never for ever
	for range rounds {
		edits := sure(found)
		if len(edits) == 0 {
			break
		}
		for _, f := range m.Files {
			if len(edits[f]) == 0 {
				continue
			}
			text, err := diag.ApplyEdits(f.Text, edits[f])
			if err != nil {
				return nil, nil, err
			}
			if err := p.replace(f.Path, []byte(text)); err != nil {
				return nil, nil, err
			}
			fmt.Fprintf(c.ErrOrStderr(), "%s: %d mended\n", p.shown(f.Path), len(edits[f]))
		}
		var err error
		if m, found, err = p.check(); err != nil {
			return nil, nil, err
		}
	}
	return m, found, nil
}

// sure collects the edits that may be made unseen; of edits that touch each
// other the first is taken, and the rest waits for the next round.
func sure(found diag.List) map[*source.File][]diag.Edit {
	edits := map[*source.File][]diag.Edit{}
	for _, f := range found {
		for _, fix := range f.Fixes {
			if fix.Sure && free(edits, fix.Edits) {
				for _, e := range fix.Edits {
					edits[e.Span.File] = append(edits[e.Span.File], e)
				}
				break
			}
		}
	}
	return edits
}

func free(taken map[*source.File][]diag.Edit, edits []diag.Edit) bool {
	for _, e := range edits {
		for _, t := range taken[e.Span.File] {
			if e.Span.Start <= t.Span.End && t.Span.Start <= e.Span.End {
				return false
			}
		}
	}
	return true
}

func (p *place) report(c *cobra.Command, format string, m *model.Manual, found diag.List) error {
	o := report.Options{Manual: m.Title(), Version: version, Path: p.shown, Colour: colour(c.OutOrStdout())}
	w := c.OutOrStdout()
	switch format {
	case "json":
		return report.JSON(w, found, o)
	case "sarif":
		return report.SARIF(w, found, rules.All(), o)
	case "junit":
		return report.JUnit(w, found, o)
	}
	return report.Text(w, found, o)
}

// stop prints what keeps a manual from being read, and ends the command if
// there is any.
func (p *place) stop(c *cobra.Command, m *model.Manual, found diag.List) error {
	if len(found) == 0 {
		return nil
	}
	found.Sort()
	if err := report.Text(c.ErrOrStderr(), found, report.Options{Path: p.shown, Colour: colour(c.ErrOrStderr())}); err != nil {
		return err
	}
	return findings{}
}

// colour reports whether w is a terminal that has not been asked to stay plain
// (no-color.org).
func colour(w any) bool {
	f, ok := w.(*os.File)
	if !ok || os.Getenv("NO_COLOR") != "" || os.Getenv("TERM") == "dumb" {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}
