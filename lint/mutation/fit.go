package mutation

import (
	"fmt"
	"math/big"
	"slices"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

var fit = []*Class{
	{"fit", "readings that no pack serves", []string{"fit/not-served"}, notServed},
	{"fit", "more pieces than the kit holds", []string{"fit/more-than-kit"}, morePieces},
	{"fit", "size that no best pick uses", []string{"fit/size-never-used"}, sizeNeverUsed},
	{"fit", "piece limits that cannot be met", []string{"fit/impossible-pieces"}, impossiblePieces},
}

// choice is a selective fit as a plain problem in one unit: small enough to try
// every pack.
type choice struct {
	step        *model.Step
	part        *model.Node
	sizes       []size
	least, most int
	low, high   *big.Rat // of the limits of the result
	buildsUp    bool
	reading     *model.Step // the one reading that it rests on
	unit        *calc.Unit
}

type size struct {
	node      *model.Node
	low, high *big.Rat
	stock     int
}

// choices are those that rest on one likely reading and nothing else.
func (s *Sound) choices() []choice {
	var all []choice
	for _, st := range s.Doing(kind.Picks) {
		c := choice{step: st, part: st.Ref("from"), least: 1, most: 1}
		of, by := "gap", "leaves"
		if st.Has("base") {
			of, by, c.buildsUp = "base", "makes", true
		}
		f := st.Formula(of, "")
		l, ok := limitsOf(st.Node, by)
		if f == nil || len(f.Refs) != 1 || f.Refs[0].To.Step == nil || !ok {
			continue
		}
		c.reading = f.Refs[0].To.Step
		if f.Refs[0].Span(st.Node).Text() != st.ValueSpan(st.Attr(of)).Text() || !c.reading.Has("likely") {
			continue
		}
		c.unit, c.low, c.high = l.Low.Unit, l.Low.Num(), l.High.In(l.Low.Unit).Num()
		if p, ok := st.Limits("pieces", ""); ok && p.Low != nil && p.High != nil {
			c.least, c.most = int(p.Low.Num().Num().Int64()), int(p.High.Num().Num().Int64())
		}
		for _, n := range c.part.Nested(entry.Size) {
			z := size{node: n, stock: n.Whole("in_kit", "", 0)}
			if is, ok := n.Limits("is", ""); ok {
				z.low, z.high = is.Low.In(c.unit).Num(), is.High.In(c.unit).Num()
			} else if lit, problems := calc.ParseLiteral(n.ID, calc.Context{Want: calc.Length, HasWant: true}); len(problems) == 0 && lit.Nominal != nil {
				z.low = lit.Nominal.In(c.unit).Num()
				z.high = z.low
			} else {
				continue
			}
			c.sizes = append(c.sizes, z)
		}
		if len(c.sizes) > 0 {
			all = append(all, c)
		}
	}
	return all
}

// limitsOf are the constant limits that an attribute writes or names.
func limitsOf(n *model.Node, attr string) (calc.Limits, bool) {
	l, ok := n.Limits(attr, "")
	if f := n.Formula(attr, ""); !ok && f != nil && len(f.Refs) == 1 && f.Refs[0].To.Def == entry.Limit {
		l, ok = f.Refs[0].To.Limits("range", "")
	}
	return l, ok && l.Low != nil && l.High != nil
}

// served are the readings for which there is a pack, as sorted intervals.
func (c choice) served() [][2]*big.Rat {
	var all [][2]*big.Rat
	var take func(i, pieces int, low, high *big.Rat)
	take = func(i, pieces int, low, high *big.Rat) {
		if i == len(c.sizes) {
			if pieces < c.least {
				return
			}
			v := [2]*big.Rat{new(big.Rat).Add(high, c.low), new(big.Rat).Add(low, c.high)}
			if c.buildsUp {
				v = [2]*big.Rat{new(big.Rat).Sub(c.low, low), new(big.Rat).Sub(c.high, high)}
			}
			if v[0].Cmp(v[1]) <= 0 {
				all = append(all, v)
			}
			return
		}
		z := c.sizes[i]
		for n := 0; n <= z.stock && pieces+n <= c.most; n++ {
			k := big.NewRat(int64(n), 1)
			take(i+1, pieces+n, new(big.Rat).Add(low, new(big.Rat).Mul(k, z.low)), new(big.Rat).Add(high, new(big.Rat).Mul(k, z.high)))
		}
	}
	take(0, 0, new(big.Rat), new(big.Rat))
	slices.SortFunc(all, func(a, b [2]*big.Rat) int { return a[0].Cmp(b[0]) })
	return all
}

// covers reports whether every reading that is likely is served.
func (c choice) covers() bool {
	l, ok := c.reading.Limits("likely", "")
	if !ok || l.Low == nil || l.High == nil {
		return true
	}
	at := l.Low.In(c.unit).Num()
	for _, v := range c.served() {
		if v[0].Cmp(at) <= 0 && v[1].Cmp(at) > 0 {
			at = v[1]
		}
	}
	return at.Cmp(l.High.In(c.unit).Num()) >= 0
}

func notServed(w *Workshop) {
	for _, c := range w.choices() {
		l, _ := c.reading.Limits("likely", "")
		all := c.served()
		if l.Low == nil || l.High == nil || !constant(c.reading.Node, "likely") || len(all) == 0 {
			continue
		}
		place := []*model.Node{c.step.Node, c.reading.Node, c.part}
		last := all[0][1]
		for _, v := range all {
			if v[1].Cmp(last) > 0 {
				last = v[1]
			}
		}
		end := calc.NewQuantity(last, c.unit, l.High.Decimals)
		for _, n := range []int64{1, 3} {
			far := plus(end, times(width(l), 0.1), n)
			text := fmt.Sprintf("%q", l.Low.In(c.unit).Value()+".."+far.String())
			w.Put(Set(c.reading.Node, "likely", text).At(place...), "likely up to %s, served up to %s", far, end)
		}
		for i, z := range c.sizes {
			less := c
			less.sizes = slices.Delete(slices.Clone(c.sizes), i, i+1)
			if len(less.sizes) > 0 && !less.covers() && !w.inExample(c, z) {
				w.Put(w.Drop(z.node).At(place...), "no size %s in the kit", z.node.ID)
			}
			if z.stock > 1 {
				less.sizes = slices.Clone(c.sizes)
				less.sizes[i].stock = 1
				if !less.covers() && !w.inExample(c, z) {
					w.Put(Set(z.node, "in_kit", "1").At(place...), "one piece of %s", z.node.ID)
				}
			}
		}
		if c.most > max(c.least, 1) {
			fewer := c
			fewer.most--
			if !fewer.covers() {
				w.Put(Set(c.step.Node, "pieces", fmt.Sprintf("\"%d..%d\"", c.least, fewer.most)).At(place...), "up to %d pieces", fewer.most)
			}
		}
	}
}

// inExample reports whether the best pick of a worked example may use a size; a
// kit without it fails the example as well.
func (s *Sound) inExample(c choice, z size) bool {
	for _, e := range s.Examples {
		t, ok := e.Get("readings", "").(*model.Table)
		if !ok {
			continue
		}
		for _, p := range t.Pairs {
			if f, ok := p.Value.(*model.Formula); ok && p.Key.To == c.reading.Node && f.Quantity() != nil && slices.Contains(c.bestUse(f.Quantity().In(c.unit).Num()), z.node) {
				return true
			}
		}
	}
	return false
}

// bestUse lists the sizes in the packs of fewest pieces that serve a reading.
func (c choice) bestUse(reading *big.Rat) []*model.Node {
	for n := c.least; n <= c.most; n++ {
		exact := c
		exact.least, exact.most = n, n
		var used []*model.Node
		for i, z := range c.sizes {
			if z.stock == 0 {
				continue
			}
			with := exact // one piece of it, the rest in one less
			with.sizes = slices.Clone(c.sizes)
			with.sizes[i].stock--
			with.least, with.most = n-1, n-1
			at := new(big.Rat).Sub(reading, z.low)
			if c.buildsUp {
				at.Add(reading, z.low)
			}
			for _, v := range with.served() {
				if v[0].Cmp(at) <= 0 && at.Cmp(v[1]) <= 0 {
					used = append(used, z.node)
					break
				}
			}
		}
		if len(used) > 0 {
			return used
		}
	}
	return nil
}

func held(c choice) int {
	n := 0
	for _, z := range c.sizes {
		n += z.stock
	}
	return n
}

func morePieces(w *Workshop) {
	for _, c := range w.choices() {
		n := held(c)
		for _, more := range []int{1, 4} {
			w.Put(Set(c.step.Node, "pieces", fmt.Sprintf("\"%d..%d\"", c.least, n+more)).At(c.part), "up to %d pieces of %d", n+more, n)
		}
	}
}

func sizeNeverUsed(w *Workshop) {
	for _, c := range w.choices() {
		l, _ := c.reading.Limits("likely", "")
		if l.High == nil || l.Low == nil || w.Doing(kind.Picks, c.part) == nil || len(w.Doing(kind.Picks, c.part)) > 1 {
			continue
		}
		largest, gap := c.sizes[len(c.sizes)-1], l.High.In(c.unit).Num()
		if c.buildsUp {
			gap = new(big.Rat).Sub(c.high, l.Low.In(c.unit).Num())
		}
		for i, by := range []int64{2, 5} {
			thick := calc.NewQuantity(new(big.Rat).Mul(gap, big.NewRat(by, 1)), c.unit, 2)
			if thick.Sign() <= 0 || !digit(largest.node.ID[0]) {
				continue
			}
			line := fmt.Sprintf("  size %q { in_kit = %d }\n", thick.String(), i+1)
			w.Put(InsertAfter(largest.node, line).At(c.step.Node), "a size of %s", thick)
		}
		if low := l.Low.In(c.unit).Num(); c.most == 1 && !c.buildsUp && new(big.Rat).Sub(low, c.high).Cmp(big.NewRat(1, 50)) > 0 && digit(largest.node.ID[0]) {
			thin := calc.NewQuantity(big.NewRat(1, 100), c.unit, 2)
			w.Put(InsertAfter(largest.node, fmt.Sprintf("  size %q { in_kit = 1 }\n", thin.String())).At(c.step.Node), "a size of %s", thin)
		}
		for i, z := range c.sizes { // the likely readings end before the thickest is needed
			if len(c.sizes) < 2 || i != len(c.sizes)-1 || c.buildsUp || !constant(c.reading.Node, "likely") || w.exampleAbove(c, z) {
				continue
			}
			end := calc.NewQuantity(new(big.Rat).Add(z.low, c.low), c.unit, l.High.Decimals)
			under := plus(end, times(width(l), 0.05), -1)
			if under.Cmp(*l.Low) > 0 && under.Cmp(*l.High) < 0 {
				w.Put(Set(c.reading.Node, "likely", quote(band(*l.Low, under))).At(z.node, c.step.Node), "likely up to %s, too little for %s", under, z.node.ID)
			}
		}
	}
}

func impossiblePieces(w *Workshop) {
	for _, c := range w.choices() {
		n := held(c)
		for _, more := range []int{1, 10} {
			w.Put(Set(c.step.Node, "pieces", fmt.Sprintf("\"%d..%d\"", n+more, n+more+2)).At(c.part), "at least %d pieces of %d", n+more, n)
		}
	}
}

// exampleAbove reports whether a worked example reads more than the readings for
// which a size is too thick.
func (s *Sound) exampleAbove(c choice, z size) bool {
	for _, e := range s.Examples {
		if t, ok := e.Get("readings", "").(*model.Table); ok {
			for _, p := range t.Pairs {
				if f, ok := p.Value.(*model.Formula); ok && p.Key.To == c.reading.Node && f.Quantity() != nil && f.Quantity().In(c.unit).Num().Cmp(z.low) >= 0 {
					return true
				}
			}
		}
	}
	return false
}

func digit(b byte) bool { return '0' <= b && b <= '9' }
