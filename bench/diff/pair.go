package diff

import (
	"cmp"
	"slices"
	"strings"

	"fettle/bench/revision"
	"fettle/lang/entry"
	"fettle/lang/model"
)

// Pairs are the blocks of two manuals that are the same thing. Pairing the
// manuals the other way round gives the same pairs.
type Pairs struct {
	old, new *model.Manual
	toNew    map[*model.Node]*model.Node
	toOld    map[*model.Node]*model.Node
}

// New is what an old block has become, or nil.
func (p *Pairs) New(old *model.Node) *model.Node { return p.toNew[old] }

// Old is what a new block was, or nil.
func (p *Pairs) Old(n *model.Node) *model.Node { return p.toOld[n] }

// NewStep is the step that an old one has become, or nil.
func (p *Pairs) NewStep(old *model.Step) *model.Step {
	if n := p.toNew[old.Node]; n != nil {
		return n.Step
	}
	return nil
}

func (p *Pairs) join(o, n *model.Node) bool {
	if o == nil || n == nil || p.toNew[o] != nil || p.toOld[n] != nil {
		return false
	}
	p.toNew[o], p.toOld[n] = n, o
	return true
}

// Pair finds what belongs together: by address first; then by former labels,
// which either side may give; entries also by part number; and steps that stand
// in another procedure by kind and label, where that is not in doubt.
func Pair(old, new *model.Manual) *Pairs {
	p := &Pairs{old, new, map[*model.Node]*model.Node{}, map[*model.Node]*model.Node{}}
	p.join(old.Node, new.Node)
	p.entries(revision.Entries(old), revision.Entries(new))
	p.procedures()
	p.steps()
	return p
}

func (p *Pairs) entries(old, new []*model.Node) {
	byAddress := map[string]*model.Node{}
	for _, n := range new {
		byAddress[n.Address] = n
	}
	for _, o := range old {
		p.join(o, byAddress[o.Address])
	}
	numbers := func(nodes []*model.Node, paired map[*model.Node]*model.Node) map[string]*model.Node {
		all := map[string]*model.Node{}
		for _, n := range nodes {
			if number := n.Plain("number"); number != "" && paired[n] == nil && n.Is(entry.Part) {
				if _, twice := all[number]; twice {
					n = nil
				}
				all[number] = n
			}
		}
		return all
	}
	was, is := numbers(old, p.toNew), numbers(new, p.toOld)
	for _, o := range old {
		if number := o.Plain("number"); was[number] == o {
			p.join(o, is[number])
		}
	}
}

func (p *Pairs) procedures() {
	for _, o := range p.old.Procedures {
		p.join(o, p.new.Find(o.Address))
	}
	var found []candidate
	link := func(from, in *model.Manual, swap bool) {
		for _, n := range from.Procedures {
			for _, label := range n.Names("was") {
				if o := in.Find("procedure." + label); o != nil && o.Step == nil {
					found = append(found, pairOf(o, n, 0, swap))
				}
			}
		}
	}
	link(p.new, p.old, false)
	link(p.old, p.new, true)
	p.take(found)
}

// candidate is a pair that a former label suggests; a lower rank is surer.
type candidate struct {
	old, new *model.Node
	rank     int
}

func pairOf(named, naming *model.Node, rank int, swap bool) candidate {
	if swap {
		return candidate{naming, named, rank}
	}
	return candidate{named, naming, rank}
}

// take joins candidates in an order that is the same from both sides.
func (p *Pairs) take(all []candidate) {
	key := func(c candidate) (string, string) {
		return min(c.old.Address, c.new.Address), max(c.old.Address, c.new.Address)
	}
	slices.SortStableFunc(all, func(a, b candidate) int {
		a1, a2 := key(a)
		b1, b2 := key(b)
		return cmp.Or(a.rank-b.rank, strings.Compare(a1, b1), strings.Compare(a2, b2))
	})
	for _, c := range all {
		p.join(c.old, c.new)
	}
}

func (p *Pairs) steps() {
	p.old.EachStep(func(o *model.Step) {
		if proc := p.toNew[o.Procedure]; proc != nil {
			if n := p.new.Find(proc.Address + "." + o.Def.Name + "." + o.ID); n != nil {
				p.join(o.Node, n)
			}
		}
	})
	var found []candidate
	p.new.EachStep(func(n *model.Step) { found = append(found, former(n, p.old, p.toOld, false)...) })
	p.old.EachStep(func(o *model.Step) { found = append(found, former(o, p.new, p.toNew, true)...) })
	p.take(found)
	p.elsewhere(func(s *model.Step) string { return s.Def.Name + " " + s.ID })
	p.elsewhere(func(s *model.Step) string { return p.home(s) + " " + s.ID }) // another kind of step
}

// home names the procedure of a step alike on both sides.
func (p *Pairs) home(s *model.Step) string {
	if o := p.toOld[s.Procedure]; o != nil {
		return o.Address
	}
	if p.toNew[s.Procedure] != nil {
		return s.Procedure.Address
	}
	return "? " + s.Procedure.Address
}

// Former lists the steps of another revision that a former label may mean, the
// surest first: in the procedure that home is there, or anywhere.
func Former(label string, s *model.Step, in *model.Manual, home *model.Node) []*model.Step {
	switch strings.Count(label, ".") {
	case 0:
	case 1:
		if home != nil {
			if n := in.Find(home.Address + "." + label); n != nil && n.Step != nil {
				return []*model.Step{n.Step}
			}
		}
		return nil
	default:
		if n := in.Find("procedure." + label); n != nil && n.Step != nil {
			return []*model.Step{n.Step}
		}
		return nil
	}
	var ranks [3][]*model.Step
	in.EachStep(func(o *model.Step) {
		switch {
		case o.ID != label:
		case o.Procedure == home && o.Kind == s.Kind:
			ranks[0] = append(ranks[0], o)
		case o.Procedure == home:
			ranks[1] = append(ranks[1], o)
		case o.Kind == s.Kind:
			ranks[2] = append(ranks[2], o)
		}
	})
	for _, found := range ranks {
		if len(found) > 0 {
			return found
		}
	}
	return nil
}

// former lists the pairs that the former labels of a step suggest.
func former(s *model.Step, in *model.Manual, home map[*model.Node]*model.Node, swap bool) []candidate {
	var found []candidate
	for _, label := range s.Names("was") {
		for _, o := range Former(label, s, in, home[s.Procedure]) {
			rank := 0
			if o.Procedure != home[s.Procedure] {
				rank = 1
			}
			found = append(found, pairOf(o.Node, s.Node, rank, swap))
		}
	}
	return found
}

// elsewhere joins steps that are left over and of which there is one on either
// side with the same key.
func (p *Pairs) elsewhere(key func(*model.Step) string) {
	left := func(m *model.Manual, paired map[*model.Node]*model.Node) map[string]*model.Step {
		all := map[string]*model.Step{}
		m.EachStep(func(s *model.Step) {
			if paired[s.Node] == nil {
				k := key(s)
				if _, twice := all[k]; twice {
					s = nil
				}
				all[k] = s
			}
		})
		return all
	}
	was, is := left(p.old, p.toNew), left(p.new, p.toOld)
	p.old.EachStep(func(o *model.Step) {
		if k := key(o); was[k] == o {
			if n := is[k]; n != nil {
				p.join(o.Node, n.Node)
			}
		}
	})
}
