package main

import (
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"fettle/bench/logbook"
)

func recordCommand() *cobra.Command {
	c := &cobra.Command{
		Use:   "record",
		Short: "Add to a builder's logbook",
		Long: `Record adds one line to the logbook of a build. It refuses what the manual does
not know, and what cannot be so; nothing that is written is ever changed.`,
		Example: `  fettle record start sedge_014.log --manual procedures/sedge_2 --serial 014 --by AB
  fettle record reading sedge_014.log crankshaft.measure.float '0.93 mm' --manual procedures/sedge_2 --by AB
  fettle record release sedge_014.log crankshaft.hold.before_close --role 'second person' --manual procedures/sedge_2 --by CD`,
	}
	c.AddCommand(recordStart(), recordMerge(), recordRevision(),
		recordLine("reading LOGBOOK STEP VALUE…", "What was read at a step", 3, func(e *logbook.Entry, args []string) {
			e.Kind, e.Values = logbook.Reading, args[1:]
			address(e, args[0])
		}),
		recordLine("done LOGBOOK STEP", "A step was done; of a step that judges by eye, accepted", 2, func(e *logbook.Entry, args []string) {
			e.Kind = logbook.Done
			address(e, args[0])
		}),
		recordLine("refused LOGBOOK STEP", "A step that judges by eye was not accepted; --text says why", 2, func(e *logbook.Entry, args []string) {
			e.Kind = logbook.Refused
			address(e, args[0])
		}),
		recordLine("undone LOGBOOK STEP", "What a step did was taken back", 2, func(e *logbook.Entry, args []string) {
			e.Kind = logbook.Undone
			address(e, args[0])
		}),
		recordLine("release LOGBOOK HOLD", "A hold was released; --role says as what", 2, func(e *logbook.Entry, args []string) {
			e.Kind = logbook.Release
			address(e, args[0])
		}),
		recordLine("piece LOGBOOK PART SIZE VALUE…", "The measured values of the pieces of one size", 4, func(e *logbook.Entry, args []string) {
			e.Kind, e.Part, e.Size, e.Values = logbook.Piece, strings.TrimPrefix(args[0], "part."), args[1], args[2:]
		}),
		recordLine("correct LOGBOOK LINE [VALUE…]", "Another line was wrong: its values are these, or it never was; --text says why", 2, func(e *logbook.Entry, args []string) {
			e.Kind, e.Line, e.Values = logbook.Correction, args[0], args[1:]
		}),
		recordLine("note LOGBOOK TEXT", "Anything else worth keeping", 2, func(e *logbook.Entry, args []string) {
			e.Kind, e.Text = logbook.Note, args[0]
		}),
	)
	return c
}

// address takes crankcase.measure.bore["left"] apart.
func address(e *logbook.Entry, s string) {
	e.Step = strings.TrimPrefix(s, "procedure.")
	if i := strings.IndexByte(e.Step, '['); i >= 0 {
		e.Place = strings.Trim(e.Step[i:], `[]"'`)
		e.Step = e.Step[:i]
	}
}

// lineFlags are those that every line may have.
type lineFlags struct{ manual, by, at, text string }

func (l *lineFlags) add(c *cobra.Command) {
	c.Flags().StringVar(&l.manual, "manual", ".", "the manual's folder; the issued revision that the logbook follows is found in it")
	c.Flags().StringVar(&l.by, "by", "", "initials of who writes it")
	c.Flags().StringVar(&l.at, "at", "", "when, such as 2026-05-30T08:12:00+02:00 (default: now)")
	c.Flags().StringVar(&l.text, "text", "", "words")
}

func (l *lineFlags) fill(e *logbook.Entry) {
	e.By, e.At = l.by, l.at
	if l.text != "" {
		e.Text = l.text
	}
	if e.At == "" {
		e.At = time.Now().Format(time.RFC3339)
	}
}

func recordLine(use, short string, least int, set func(*logbook.Entry, []string)) *cobra.Command {
	var flags lineFlags
	var e logbook.Entry
	c := &cobra.Command{
		Use: use, Short: short, Args: cobra.MinimumNArgs(least),
		RunE: func(c *cobra.Command, args []string) error {
			set(&e, args[1:])
			flags.fill(&e)
			return appendLine(c, args[0], flags.manual, e)
		},
	}
	flags.add(c)
	c.Flags().StringVar(&e.Tool, "tool", "", "the instrument's label in the manual")
	c.Flags().StringVar(&e.Instrument, "instrument", "", "which instrument it was: its number, its calibration")
	c.Flags().StringVar(&e.Role, "role", "", "as what a hold is released")
	return c
}

// appendLine checks a line against the manual and adds it.
func appendLine(c *cobra.Command, path, manual string, e logbook.Entry) error {
	p, err := locate(c, []string{manual})
	if err != nil {
		return err
	}
	var stop *logbook.Refusal
	l, err := logbook.Append(path, func(l *logbook.Log) (logbook.Entry, error) {
		b, err := p.build(l)
		if err != nil {
			return e, err
		}
		notices, r := b.Check(&e)
		if stop = r; r != nil {
			return e, r
		}
		for _, n := range notices {
			fmt.Fprintf(c.ErrOrStderr(), "%s %s\n", n.Message, n.Remedy)
		}
		return e, nil
	})
	return p.recorded(c, path, l, stop, err)
}

// recorded says what was written, what was lost, or why nothing was written.
func (p *place) recorded(c *cobra.Command, path string, l *logbook.Log, stop *logbook.Refusal, err error) error {
	switch {
	case stop != nil:
		return refused(c, stop.Message, stop.Reason, stop.Remedy)
	case l != nil && !l.Whole():
		return faults(c, path, l)
	case err != nil:
		return err
	}
	last := l.Lines[len(l.Lines)-1]
	fmt.Fprintf(c.OutOrStdout(), "%s: line %d, %s\n", path, last.Number, logbook.Short(last.Sum))
	return nil
}

// faults says what is wrong with a logbook.
func faults(c *cobra.Command, path string, l *logbook.Log) error {
	for _, f := range l.Faults {
		at := path
		if f.Line > 0 {
			at = fmt.Sprintf("%s:%d", path, f.Line)
		}
		_ = refused(c, at+": "+f.Message, f.Reason, f.Remedy)
	}
	return findings{}
}

func recordStart() *cobra.Command {
	var flags lineFlags
	serial, options := "", []string(nil)
	c := &cobra.Command{
		Use: "start LOGBOOK", Short: "Begin the logbook of a build", Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			p, err := locate(c, []string{flags.manual})
			if err != nil {
				return err
			}
			m, digest, err := p.current(c)
			if err != nil {
				return err
			}
			chosen := map[string]string{}
			for _, o := range options {
				id, choice, _ := strings.Cut(o, "=")
				chosen[id] = choice
			}
			e, r := logbook.StartOf(m, digest, serial, chosen)
			if r != nil {
				return refused(c, r.Message, r.Reason, r.Remedy)
			}
			if flags.by == "" {
				return refused(c, "Nobody signs this line.", "A record without a name proves nothing.", "Give your initials: --by.")
			}
			flags.fill(&e)
			l, err := logbook.Create(args[0], e)
			return p.recorded(c, args[0], l, nil, err)
		},
	}
	flags.add(c)
	c.Flags().StringVar(&serial, "serial", "", "the number on the engine")
	c.Flags().StringArrayVar(&options, "option", nil, "a choice, such as ignition=coil; may be given several times")
	return c
}

func recordRevision() *cobra.Command {
	var flags lineFlags
	c := &cobra.Command{
		Use: "revision LOGBOOK", Short: "From here on the manual's current revision is in force", Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			p, err := locate(c, []string{flags.manual})
			if err != nil {
				return err
			}
			m, digest, err := p.current(c)
			if err != nil {
				return err
			}
			if flags.by == "" {
				return refused(c, "Nobody signs this line.", "A record without a name proves nothing.", "Give your initials: --by.")
			}
			var stop *logbook.Refusal
			l, err := logbook.Append(args[0], func(l *logbook.Log) (logbook.Entry, error) {
				e, r := logbook.NewBuild(m, digest, l).RevisionOf(m, digest)
				if stop = r; r != nil {
					return e, r
				}
				flags.fill(&e)
				return e, nil
			})
			return p.recorded(c, args[0], l, stop, err)
		},
	}
	flags.add(c)
	return c
}

func recordMerge() *cobra.Command {
	return &cobra.Command{
		Use: "merge LOGBOOK OTHER", Short: "Join the copy of a logbook from another device to this one", Args: cobra.ExactArgs(2),
		RunE: func(c *cobra.Command, args []string) error {
			logs := make([]*logbook.Log, 2)
			for i, path := range args {
				l, err := logbook.Open(path)
				if err != nil {
					return err
				}
				if !l.Whole() {
					return faults(c, path, l)
				}
				logs[i] = l
			}
			merged, err := logbook.Merge(logs[0], logs[1])
			if err != nil {
				return err
			}
			if err := logbook.Replace(args[0], merged); err != nil {
				return err
			}
			fmt.Fprintf(c.OutOrStdout(), "%s: %d lines, %d of them new here\n", args[0], len(merged.Lines), len(merged.Lines)-len(logs[0].Lines))
			return conflicts(c, logbook.StateOf(merged))
		},
	}
}

// conflicts shows what two copies disagree in; nobody but the builder can say
// which is right.
func conflicts(c *cobra.Command, s *logbook.State) error {
	for _, x := range s.Conflicts {
		fmt.Fprintf(c.ErrOrStderr(), "The copies disagree about %s:\n", x.About)
		for _, line := range x.Lines {
			what := strings.Join(line.Values, "; ")
			if what == "" {
				what = string(line.Kind)
			}
			fmt.Fprintf(c.ErrOrStderr(), "    line %d, %s, %s: %s\n", line.Number, line.By, line.At, what)
		}
		fmt.Fprintln(c.ErrOrStderr(), "    do    Find out which is right, and record it: the line written after both settles it.")
	}
	if len(s.Conflicts) > 0 {
		return findings{}
	}
	return nil
}
