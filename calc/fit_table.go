package calc

import (
	"cmp"
	"slices"
)

// fitStep is one size on the grid. Steps stand from the thinnest to the
// thickest; of equally thick ones the last listed comes first.
type fitStep[T any] struct {
	size      int // index in Fit.sizes
	thickness int // rank of the nominal thickness, equal for twins
	stock     int
	times     []fitBand[T] // 0, 1, 2 … pieces of it
}

type fitBand[T any] struct{ nominal, low, high T }

// fitState is a pack that can still be part of a pick.
type fitState[T any] struct {
	fitBand[T]
	pack      int32 // index in fitTable.packs
	pieces    int32
	different int32 // sizes
}

// fitPack holds a pack as a chain, thickest size first: count pieces of step,
// then those of rest. The empty pack is at index 0.
type fitPack struct{ step, count, rest int32 }

// fitTable lists, by number of pieces and by how many steps may be used, the
// packs that can still be part of a pick, by nominal total; of equal totals the
// first by the tie rule comes first. It is filled one number of pieces at a
// time, since most picks need few. What an allowed smaller number of pieces
// does as well is left out.
type fitTable[T fitNumber[T]] struct {
	steps []fitStep[T]
	twins bool // two sizes are equally thick
	packs []fitPack
	min   int               // pieces allowed
	cells [][][]fitState[T] // by pieces, by steps
	front [][]fitState[T]   // by steps: all allowed numbers of pieces so far
	work  int
	merge fitMerge[T]
}

// Limits on work and memory, reached only by kits in which hardly two packs are
// equally thick: some tenths of a second, and a hundred megabytes.
const (
	fitWorkLimit = 30_000_000
	fitPackLimit = 1_500_000
)

func newFitTable[T fitNumber[T]](steps []fitStep[T], zero T, least int) *fitTable[T] {
	t := &fitTable[T]{steps: steps, min: least, packs: make([]fitPack, 1, 256)}
	for i := 1; i < len(steps); i++ {
		t.twins = t.twins || steps[i].thickness == steps[i-1].thickness
	}
	t.cells = [][][]fitState[T]{make([][]fitState[T], len(steps)+1)}
	none := []fitState[T]{{fitBand: fitBand[T]{zero, zero, zero}}}
	t.front = make([][]fitState[T], len(steps)+1)
	for j := range t.cells[0] {
		t.cells[0][j] = none
		if least == 0 {
			t.front[j] = none
		}
	}
	return t
}

// level is the packs of exactly that many pieces.
func (t *fitTable[T]) level(pieces int) ([]fitState[T], error) {
	for k := len(t.cells); k <= pieces; k++ {
		row := make([][]fitState[T], len(t.steps)+1)
		for j, step := range t.steps {
			m := &t.merge
			m.reset()
			for c := 0; c <= min(step.stock, k); c++ {
				from := row[j]
				if c > 0 {
					from = t.cells[k-c][j]
				}
				m.add(from, c, step.times[c])
			}
			row[j+1] = t.join(int32(j), t.front[j+1])
			if k >= t.min {
				t.front[j+1] = t.append(t.front[j+1], row[j+1])
			}
			if t.work > fitWorkLimit || len(t.packs) > fitPackLimit {
				return nil, ErrTooManyPacks
			}
		}
		t.cells = append(t.cells, row)
	}
	return t.cells[pieces][len(t.steps)], nil
}

// fitMerge walks several sorted lists, each with pieces of one step to add.
type fitMerge[T fitNumber[T]] struct {
	lists []fitList[T]
	found []fitFound[T]
}

type fitList[T any] struct {
	rest  []fitState[T]
	count int
	add   fitBand[T]
	next  T // nominal total of rest[0] with the pieces added
}

// fitFound is a pack of the total at hand, not yet kept.
type fitFound[T any] struct {
	fitState[T]
	chain fitPack
}

func (m *fitMerge[T]) reset() { m.lists = m.lists[:0] }

func (m *fitMerge[T]) add(from []fitState[T], count int, band fitBand[T]) {
	if len(from) > 0 {
		m.lists = append(m.lists, fitList[T]{from, count, band, from[0].nominal.plus(band.nominal)})
	}
}

// join merges the lists prepared in t.merge, which add pieces of the step. Packs
// of fewer pieces are those in front.
func (t *fitTable[T]) join(step int32, front []fitState[T]) []fitState[T] {
	m := &t.merge
	if len(m.lists) == 1 && m.lists[0].count == 0 {
		return m.lists[0].rest
	}
	var out []fitState[T]
	for len(m.lists) > 0 {
		least := m.lists[0].next
		for _, l := range m.lists[1:] {
			if l.next.cmp(least) < 0 {
				least = l.next
			}
		}
		m.found = m.found[:0]
		open := m.lists[:0]
		for _, l := range m.lists {
			t.work++
			for len(l.rest) > 0 && l.next.cmp(least) == 0 {
				m.found = append(m.found, t.extend(l.rest[0], step, l.count, l.add))
				if l.rest = l.rest[1:]; len(l.rest) > 0 {
					l.next = l.rest[0].nominal.plus(l.add.nominal)
				}
			}
			if len(l.rest) > 0 {
				open = append(open, l)
			}
		}
		m.lists = open
		for len(front) > 0 && front[0].nominal.cmp(least) < 0 {
			front = front[1:]
		}
		same := 0
		for same < len(front) && front[same].nominal.cmp(least) == 0 {
			same++
		}
		out = t.keep(out, step, front[:same])
	}
	return out
}

// extend adds count pieces of the step to a pack.
func (t *fitTable[T]) extend(s fitState[T], step int32, count int, add fitBand[T]) fitFound[T] {
	if count == 0 {
		return fitFound[T]{s, t.packs[s.pack]}
	}
	chain := fitPack{step, int32(count), s.pack}
	s.nominal, s.low, s.high = s.nominal.plus(add.nominal), s.low.plus(add.low), s.high.plus(add.high)
	s.pieces += int32(count)
	s.different++
	return fitFound[T]{s, chain}
}

// append merges two levels, of which the first has fewer pieces.
func (t *fitTable[T]) append(fewer, more []fitState[T]) []fitState[T] {
	t.work += len(fewer) + len(more)
	out := make([]fitState[T], 0, len(fewer)+len(more))
	for len(fewer) > 0 && len(more) > 0 {
		if fewer[0].nominal.cmp(more[0].nominal) <= 0 {
			out, fewer = append(out, fewer[0]), fewer[1:]
		} else {
			out, more = append(out, more[0]), more[1:]
		}
	}
	return append(append(out, fewer...), more...)
}

// keep appends those of the packs found that can still be a pick: for each
// other one, another comes before it and has a band of totals inside its own.
// The packs in fewer have the same total and come before all of those found.
func (t *fitTable[T]) keep(out []fitState[T], step int32, fewer []fitState[T]) []fitState[T] {
	found := t.merge.found
	if len(found) > 1 {
		t.work += len(found)
		slices.SortFunc(found, t.order)
	}
	first := len(out)
	for _, f := range found {
		inside := func(o fitState[T]) bool {
			t.work++
			return o.low.cmp(f.low) >= 0 && o.high.cmp(f.high) <= 0
		}
		if slices.ContainsFunc(fewer, inside) || slices.ContainsFunc(out[first:], inside) {
			continue
		}
		if f.chain.step == step && f.chain.count > 0 {
			f.pack = int32(len(t.packs))
			t.packs = append(t.packs, f.chain)
		}
		out = append(out, f.fitState)
	}
	return out
}

// order is the tie rule from the number of pieces on, for packs equally near to
// the target: negative when a comes first. Within one level pieces are equal.
func (t *fitTable[T]) order(a, b fitFound[T]) int {
	if c := cmp.Compare(a.pieces, b.pieces); c != 0 {
		return c
	}
	if c := cmp.Compare(a.different, b.different); c != 0 {
		return c
	}
	if t.twins {
		if c := t.thicker(a.chain, b.chain); c != 0 {
			return c
		}
	}
	// Thicker first; of equally thick sizes the one listed first.
	x, y := a.chain, b.chain
	for {
		if c := cmp.Or(cmp.Compare(y.step, x.step), cmp.Compare(y.count, x.count)); c != 0 {
			return c
		}
		if x.rest == 0 || y.rest == 0 {
			return 0
		}
		x, y = t.packs[x.rest], t.packs[y.rest]
	}
}

// thicker compares two packs of equally many pieces by thickness alone, the
// thickest pieces first.
func (t *fitTable[T]) thicker(x, y fitPack) int {
	var xs, ys fitPack // of each, pieces of one thickness
	for {
		xs, x = t.thickest(x)
		ys, y = t.thickest(y)
		if c := cmp.Or(cmp.Compare(ys.step, xs.step), cmp.Compare(ys.count, xs.count)); c != 0 || xs.count == 0 {
			return c
		}
	}
}

// thickest takes the pieces of the greatest thickness off a pack; as step it
// gives the rank of that thickness.
func (t *fitTable[T]) thickest(x fitPack) (run, rest fitPack) {
	if x.count == 0 {
		return fitPack{}, x
	}
	rank := t.steps[x.step].thickness
	run.step = int32(rank)
	for x.count > 0 && t.steps[x.step].thickness == rank {
		run.count += x.count
		x = t.packs[x.rest]
	}
	return run, x
}

// counts spells a pack out, parallel to the problem's sizes.
func (t *fitTable[T]) counts(pack int32, sizes int) []int {
	counts := make([]int, sizes)
	for p := t.packs[pack]; p.count > 0; p = t.packs[p.rest] {
		counts[t.steps[p.step].size] = int(p.count)
	}
	return counts
}
