package main

import (
	"bufio"
	"fmt"
	"os"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"fettle/bench/logbook"
	"fettle/bench/revision"
	"fettle/calc"
	"fettle/lang/model"
	"fettle/lang/values"
)

// givenFlags are the flags with which a caller says what is known of a build.
type givenFlags struct {
	options, readings []string
	file, logbook     string
}

func (g *givenFlags) add(c *cobra.Command) {
	c.Flags().StringArrayVar(&g.options, "option", nil, "a choice, such as ignition=coil; may be given several times")
	c.Flags().StringArrayVar(&g.readings, "reading", nil, `a reading, such as thrust_end.measure.float="1.02 mm"; may be given several times`)
	c.Flags().StringVar(&g.logbook, "logbook", "", "the logbook of a build, whose options and readings are taken")
	c.Flags().StringVar(&g.file, "readings", "", "a file of readings, one a line, written as for --reading; # begins a comment")
}

// read makes values of what was given, or says what is wrong with it.
func (g *givenFlags) read(c *cobra.Command, m *model.Manual) (values.Given, error) {
	given := values.Given{Options: map[string]string{}}
	if g.logbook != "" {
		var err error
		if given, err = onRecord(c, m, g.logbook); err != nil {
			return given, err
		}
	}
	for _, o := range g.options {
		id, choice, ok := strings.Cut(o, "=")
		if !ok {
			return given, fmt.Errorf("--option %s: write the option and its choice with = between", o)
		}
		if err := chosen(m, id, choice); err != nil {
			return given, err
		}
		given.Options[id] = choice
	}
	lines := g.readings
	if g.file != "" {
		more, err := readingsFile(g.file)
		if err != nil {
			return given, err
		}
		lines = append(more, lines...)
	}
	for _, line := range lines {
		if err := reading(c, m, &given, line); err != nil {
			return given, err
		}
	}
	return given, nil
}

// onRecord is what a logbook gives. It must follow the revision at hand.
func onRecord(c *cobra.Command, m *model.Manual, path string) (values.Given, error) {
	l, err := logbook.Open(path)
	if err != nil {
		return values.Given{}, err
	}
	if !l.Whole() {
		return values.Given{}, faults(c, path, l)
	}
	b := logbook.NewBuild(m, revision.Digest(m), l)
	if r := b.Follows(); r != nil {
		return values.Given{}, refused(c, r.Message, r.Reason, r.Remedy)
	}
	return b.Given, conflicts(c, b.State)
}

func chosen(m *model.Manual, id, choice string) error {
	o := m.Find("option." + id)
	if o == nil {
		var ids []string
		for _, n := range m.Of("option") {
			ids = append(ids, n.ID)
		}
		if len(ids) == 0 {
			return fmt.Errorf("--option %s: this manual has no options", id)
		}
		return fmt.Errorf("--option %s: there is no such option; this manual has %s", id, strings.Join(ids, ", "))
	}
	if choices := o.Names("choices"); !slices.Contains(choices, choice) {
		return fmt.Errorf("--option %s: there is no choice %q; it has %s", id, choice, strings.Join(choices, ", "))
	}
	return nil
}

func reading(c *cobra.Command, m *model.Manual, given *values.Given, line string) error {
	address, value, ok := strings.Cut(line, "=")
	if !ok {
		return fmt.Errorf("--reading %s: write the address and the value with = between", line)
	}
	value = strings.TrimSpace(value)
	if len(value) >= 2 && value[0] == '"' && value[len(value)-1] == '"' {
		value = value[1 : len(value)-1]
	}
	key, read, problem := values.ParseReading(m, strings.TrimSpace(address), value)
	switch {
	case problem != nil && key == "":
		return fmt.Errorf("%s %s %s", problem.Message, problem.Reason, problem.Remedy)
	case problem != nil:
		fmt.Fprintf(c.ErrOrStderr(), "%s %s %s\n", problem.Message, problem.Reason, problem.Remedy)
	}
	if given.Readings == nil {
		given.Readings = map[string][]calc.Quantity{}
	}
	given.Readings[key] = read
	return nil
}

func readingsFile(name string) ([]string, error) {
	f, err := os.Open(name)
	if err != nil {
		return nil, fmt.Errorf("cannot read the readings: %w", err)
	}
	defer f.Close()
	var lines []string
	for s := bufio.NewScanner(f); ; {
		if !s.Scan() {
			return lines, s.Err()
		}
		if line := strings.TrimSpace(s.Text()); line != "" && line[0] != '#' {
			lines = append(lines, line)
		}
	}
}
