package bench

import "fmt"

// Gather joins the breaches of several traces: one that happens at several
// places or under several choices is given once, as it first came up.
func Gather(traces []*Trace) []Breach {
	type seen struct {
		at     int
		traces map[int]bool
	}
	var all []Breach
	index := map[string]*seen{}
	for i, t := range traces {
		for _, b := range t.Breaches {
			k := b.key()
			s := index[k]
			if s == nil {
				s = &seen{at: len(all), traces: map[int]bool{}}
				index[k] = s
				b.Places = nil
				all = append(all, b)
			}
			g := &all[s.at]
			if b.Place != "" {
				g.Places = addName(g.Places, b.Place)
			}
			if !s.traces[i] {
				s.traces[i] = true
				g.Under = append(g.Under, t.Choice)
			}
		}
	}
	all = apart(all)
	for i := range all {
		if len(all[i].Under) == len(traces) {
			all[i].Under = nil
		}
	}
	return all
}

// apart joins breaches of one kind about one thing that never come up under the
// same choice: each choice shows the same slip at another step.
func apart(all []Breach) []Breach {
	kept := all[:0]
	first := map[string]int{}
	for _, b := range all {
		k := b.about()
		i, ok := first[k]
		if !ok || len(b.Objects) == 0 || overlap(kept[i].Under, b.Under) {
			first[k] = len(kept)
			kept = append(kept, b)
			continue
		}
		kept[i].Under = append(kept[i].Under, b.Under...)
		kept[i].Causes = append(kept[i].Causes, Cause{Act: -1, Node: b.Node, Attr: b.Attr, Place: b.Place, Words: "the same here, under another choice"})
	}
	return kept
}

func overlap(a, b []Choice) bool {
	for _, c := range a {
		for _, d := range b {
			if c.String() == d.String() {
				return true
			}
		}
	}
	return false
}

// key tells breaches apart but for place and choice.
func (b *Breach) key() string {
	return fmt.Sprintf("%p %s ", b.Node, b.Attr) + b.about()
}

// about says what a breach is of and about.
func (b *Breach) about() string {
	k := fmt.Sprint(int(b.What))
	for _, o := range b.Objects {
		k += fmt.Sprintf(" %p.%s.%s", o.Node, o.Sub, o.Name)
	}
	return k
}
