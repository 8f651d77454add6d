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
	for i := range all {
		if len(all[i].Under) == len(traces) {
			all[i].Under = nil
		}
	}
	return all
}

// key tells breaches apart but for place and choice.
func (b *Breach) key() string {
	k := fmt.Sprintf("%d %p %s", b.What, b.Node, b.Attr)
	for _, o := range b.Objects {
		k += fmt.Sprintf(" %p.%s.%s", o.Node, o.Sub, o.Name)
	}
	return k
}
