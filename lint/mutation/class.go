package mutation

import (
	"fmt"

	"fettle/lang/diag"
	"fettle/lang/source"
)

// Class is one kind of fault.
type Class struct {
	Group, Fault string   // as the design's table of fault classes names them
	Rules        []string // those that are right to find it
	Put          func(*Workshop)
}

// Classes lists them in the order of the design's table.
func Classes() []*Class {
	var all []*Class
	for _, group := range [][]*Class{
		units, values, fit, fastening, measuring, order, access, sealing, holding, safety, kit, words, media, revision,
	} {
		all = append(all, group...)
	}
	return all
}

// Mutant is a sound manual with one fault.
type Mutant struct {
	Class *Class
	Sound *Sound
	Title string // what was done
	Rules []string
	Change
}

// Workshop is where a class works on a manual.
type Workshop struct {
	*Sound
	class   *Class
	mutants []Mutant
}

// Put adds a mutant; a nil change, which could not be made, adds none.
func (w *Workshop) Put(c *Change, title string, args ...any) {
	w.PutFor(w.class.Rules, c, title, args...)
}

// PutFor is Put with other right rules than those of the class.
func (w *Workshop) PutFor(rules []string, c *Change, title string, args ...any) {
	if c != nil {
		w.mutants = append(w.mutants, Mutant{w.class, w.Sound, fmt.Sprintf(title, args...), rules, *c})
	}
}

// Mutants are all the mutants of a class in a manual, in a fixed order.
func (c *Class) Mutants(s *Sound) []Mutant {
	w := &Workshop{Sound: s, class: c}
	c.Put(w)
	return w.mutants
}

// Sample picks at most n of the mutants, spread over all of them.
func Sample(all []Mutant, n int) []Mutant {
	if n <= 0 || len(all) <= n {
		return all
	}
	picked := make([]Mutant, n)
	for i := range picked {
		picked[i] = all[i*len(all)/n]
	}
	return picked
}

// Source gives the text of every file that the mutant changes.
func (m *Mutant) Source() (map[string]string, error) {
	byFile := map[*source.File][]diag.Edit{}
	for _, e := range m.Edits {
		byFile[e.Span.File] = append(byFile[e.Span.File], e)
	}
	out := map[string]string{}
	for f, edits := range byFile {
		text, err := diag.ApplyEdits(f.Text, edits)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", m.Title, err)
		}
		out[f.Path] = text
	}
	return out, nil
}
