package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"fettle/bench"
	"fettle/bench/rework"
	"fettle/calc"
	"fettle/calc/fn"
	"fettle/lang/reference"
	"fettle/lint/report"
	"fettle/lint/rules"
)

func explainCommand() *cobra.Command {
	var given givenFlags
	trace := ""
	c := &cobra.Command{
		Use:   "explain [name]",
		Short: "Explain a rule, a block, a kind of step, a function or a unit",
		Example: `  fettle explain fastening/never-tightened
  fettle explain torque
  fettle explain wrench_setting
  fettle explain lb·ft
  fettle explain --trace crankshaft.torque.aft_bolts procedures/sedge_2`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			if trace != "" {
				return explainTrace(c, args, trace, &given)
			}
			if len(args) == 0 {
				return explainAll(c.OutOrStdout())
			}
			text := explain(args[0])
			if text == "" {
				return fmt.Errorf("there is no rule, block, function or unit called %q; fettle explain lists them", args[0])
			}
			_, err := io.WriteString(c.OutOrStdout(), text)
			return err
		},
	}
	c.Flags().StringVar(&trace, "trace", "", "a step of the manual in the folder: show the bench at that moment")
	given.add(c)
	return c
}

// explainTrace shows what is on, what is covered and by what, when a step begins.
func explainTrace(c *cobra.Command, args []string, address string, given *givenFlags) error {
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
	name, place, _ := strings.Cut(address, "[")
	n := m.Find(name)
	if n == nil || n.Step == nil {
		return fmt.Errorf("--trace %s: this manual has no such step; write procedure.kind.label, such as close.torque.cover", address)
	}
	t := bench.Run(m, rework.Choice(m, g))
	act := t.Find(n.Step, strings.Trim(place, `"]'`))
	if act < 0 {
		return fmt.Errorf("--trace %s: the step is not done with these options", address)
	}
	_, err = io.WriteString(c.OutOrStdout(), t.Scene(act))
	return err
}

// explain gives the text that the reference pages hold under the name.
func explain(name string) string {
	if r := rules.Find(name); r != nil {
		return report.Rule(r)
	}
	if text := reference.Block(name); text != "" {
		return text
	}
	if f, ok := fn.Lookup(name); ok {
		return fn.Describe(f)
	}
	for _, gallon := range []string{"", "US"} {
		if u, ok := calc.LookUpUnit(name, gallon); ok {
			return describeUnit(u)
		}
	}
	return ""
}

func describeUnit(u *calc.Unit) string {
	var b strings.Builder
	fmt.Fprintf(&b, "## `%s`\n\nUnit of %s. UCUM code `%s`.\n\n", u.Name, u.Dim, u.UCUM)
	if u.Source != "" {
		fmt.Fprintf(&b, "Defined by: %s.\n\n", u.Source)
	}
	if len(u.Spellings) > 0 {
		fmt.Fprintf(&b, "Read as: %s.\n", strings.Join(u.Spellings, ", "))
	}
	return b.String()
}

func explainAll(w io.Writer) error {
	var b strings.Builder
	list := func(title string, names []string) {
		fmt.Fprintf(&b, "%s\n", title)
		line := " "
		for _, n := range names {
			if len(line)+1+len(n) > 78 {
				b.WriteString(line + "\n")
				line = " "
			}
			line += " " + n
		}
		b.WriteString(line + "\n\n")
	}
	list("Blocks and steps", reference.Names())
	var functions, units []string
	for _, f := range fn.All() {
		functions = append(functions, f.Name)
	}
	for _, u := range calc.Units() {
		if u.Name != "" && !slices.Contains(units, u.Name) {
			units = append(units, u.Name)
		}
	}
	list("Functions", functions)
	list("Units", units)
	b.WriteString("Rules\n")
	for _, r := range rules.All() {
		fmt.Fprintf(&b, "  %-36s %-7s %s\n", r.Name, r.Severity, r.Finds)
	}
	_, err := io.WriteString(w, b.String())
	return err
}
