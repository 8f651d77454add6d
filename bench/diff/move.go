package diff

import "fettle/lang/model"

// moves finds the paired procedures and steps that are done at another point of
// the work: those that stand elsewhere, and, of those that stand in the same
// list, as few as explain its order.
func (d *differ) moves() map[*model.Node]bool {
	moved := map[*model.Node]bool{}
	d.reordered(d.Old.Procedures, d.New.Procedures, moved)
	lists := func(m *model.Manual) map[*model.Node][]*model.Node {
		all := map[*model.Node][]*model.Node{}
		m.EachStep(func(s *model.Step) {
			home := s.Procedure
			if s.Branch != nil {
				home = s.Branch
			}
			all[home] = append(all[home], s.Node)
		})
		return all
	}
	was, is := lists(d.Old), lists(d.New)
	for home, list := range is { // each list by itself, into a map
		for _, n := range list {
			if o := d.Pairs.Old(n); o != nil && !d.sameHome(o.Step, n.Step) {
				moved[n] = true
			}
		}
		o := d.Pairs.Old(home)
		if n := home; n.Parent != nil && n.Parent.Step != nil { // an otherwise block
			if p := d.Pairs.Old(n.Parent); p != nil {
				o = nth(p, n.Def.Name, index(n))
			}
		}
		if o != nil {
			d.reordered(was[o], list, moved)
		}
	}
	return moved
}

// sameHome reports that two steps stand in the same procedure or branch.
func (d *differ) sameHome(o, n *model.Step) bool {
	if (o.Branch == nil) != (n.Branch == nil) {
		return false
	}
	if n.Branch == nil {
		return d.Pairs.Old(n.Procedure) == o.Procedure
	}
	return d.Pairs.Old(n.Branch.Parent) == o.Branch.Parent && index(o.Branch) == index(n.Branch)
}

// index is which of its like a nested block is.
func index(b *model.Node) int {
	i := 0
	for _, x := range b.Parent.Blocks {
		if x == b {
			return i
		}
		if x.Def == b.Def {
			i++
		}
	}
	return -1
}

func nth(parent *model.Node, name string, i int) *model.Node {
	for _, x := range parent.Blocks {
		if x.Def.Name == name {
			if i == 0 {
				return x
			}
			i--
		}
	}
	return nil
}

// reordered marks the new nodes that are not in the longest run that kept its order.
func (d *differ) reordered(old, new []*model.Node, moved map[*model.Node]bool) {
	at := map[*model.Node]int{}
	for i, o := range old {
		at[o] = i
	}
	var nodes []*model.Node
	var order []int
	for _, n := range new {
		if o := d.Pairs.Old(n); o != nil {
			if i, here := at[o]; here {
				nodes, order = append(nodes, n), append(order, i)
			}
		}
	}
	stays := longest(order)
	for i, n := range nodes {
		if !stays[i] {
			moved[n] = true
		}
	}
}

// longest marks a longest rising subsequence of different numbers.
func longest(order []int) []bool {
	var tops []int // of each length, the place of the lowest last number
	before := make([]int, len(order))
	for i, v := range order {
		lo, hi := 0, len(tops)
		for lo < hi {
			if mid := (lo + hi) / 2; order[tops[mid]] < v {
				lo = mid + 1
			} else {
				hi = mid
			}
		}
		before[i] = -1
		if lo > 0 {
			before[i] = tops[lo-1]
		}
		if lo == len(tops) {
			tops = append(tops, i)
		} else {
			tops[lo] = i
		}
	}
	stays := make([]bool, len(order))
	if len(tops) > 0 {
		for i := tops[len(tops)-1]; i >= 0; i = before[i] {
			stays[i] = true
		}
	}
	return stays
}

// sameOrder reports that both sides order the same procedures: what comes, goes
// or moves is told by itself.
func (d *differ) sameOrder() bool {
	was := map[*model.Node]bool{}
	for _, o := range d.Old.Procedures[:d.Old.Ordered] {
		if n := d.Pairs.New(o); n != nil {
			was[n] = true
		}
	}
	for _, n := range d.New.Procedures[:d.New.Ordered] {
		if d.Pairs.Old(n) != nil && !was[n] {
			return false
		}
		delete(was, n)
	}
	return len(was) == 0
}
