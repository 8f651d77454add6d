package bind

import (
	"math/big"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/syntax"
)

var two = big.NewRat(2, 1)

// yield is what a step gives: its dimension, and the formula it was found from.
type yield struct {
	dim     calc.Dim
	known   bool
	open    bool // being worked out: a second visit is a circle
	done    bool
	spots   []string       // the spots, where each reading counts
	attr    string         // the attribute that formula was read from
	formula *model.Formula // kept, since lowering it once is enough
}

// yields settles the places of all steps and the dimension of every value that
// a step gives, before anything refers to it from several goroutines.
func (d *decoder) yields() {
	for _, p := range d.m.Procedures {
		places := d.placesWritten(p, d.source[p])
		d.places(p.Steps, places)
	}
	for _, s := range d.steps {
		d.types[s.Node] = &yield{spots: d.spots(d.source[s.Node])}
	}
	for _, s := range d.steps {
		d.yieldOf(s)
	}
}

func (d *decoder) places(steps []*model.Step, outer *model.Node) {
	for _, s := range steps {
		s.Places, s.PerPlace = outer, outer != nil
		if own := d.placesWritten(s.Node, d.source[s.Node]); own != nil {
			if outer != nil && own != outer {
				a := d.source[s.Node].Attr("at_each")
				d.find("form/places-inside-places", a.Span, "This step has places of its own inside a procedure that is done place by place.",
					"A value would need two places to be found again.", "Write the steps out, or move them into a procedure of their own.")
			} else {
				s.Places = own
			}
		}
		for _, b := range s.Blocks {
			d.places(b.Steps, s.Places)
		}
	}
}

// yieldOf works out what a step gives.
func (d *decoder) yieldOf(s *model.Step) *yield {
	y := d.types[s.Node]
	if y.done {
		return y
	}
	if y.open {
		d.circle(s)
		y.done = true
		return y
	}
	y.open = true
	sb := d.source[s.Node]
	switch s.Kind.Yields {
	case kind.Reading:
		d.readingDim(s, sb, y)
	case kind.Pack:
		for _, name := range [...]string{"gap", "base"} {
			if a := sb.Attr(name); a != nil {
				d.formulaDim(s, a, y)
				break
			}
		}
	case kind.Number:
		if a := sb.Attr("is"); a != nil {
			d.formulaDim(s, a, y)
		}
	}
	y.open, y.done = false, true
	return y
}

func (d *decoder) circle(s *model.Step) {
	d.find("values/circular-calculation", s.Name, "`"+s.ID+"` is worked out from itself.",
		"Nothing can be worked out: each value waits for another.", "Break the circle: one of the values must be measured.")
}

func (d *decoder) formulaDim(s *model.Step, a *syntax.Attr, y *yield) {
	l := &lowering{decoder: d, node: s.Node}
	w := want{}
	if str, ok := a.Expr.(*syntax.String); ok {
		if lit := d.silently(str); lit != nil {
			y.dim, y.known = lit.Dim(), true
		}
		return
	}
	x := l.lower(a.Expr, w)
	if x == nil {
		return
	}
	if t := x.Type(); t.Shape == calc.NumberShape {
		y.dim, y.known = t.Dim, true
	}
	if !d.fits(s.Node, s.Def.Attr(a.Name), x, w, a.Expr) {
		return
	}
	y.attr, y.formula = a.Name, finish(x, l.refs)
}

// silently reads a quantity that is read again in its turn.
func (d *decoder) silently(s *syntax.String) *calc.Literal {
	text, ok := s.Literal()
	if !ok {
		return nil
	}
	lit, _ := calc.ParseLiteral(text, calc.Context{Gallon: d.gallon})
	if !lit.Valid() {
		return nil
	}
	return &lit
}

// readingDim finds what a step reads. What its one instrument reads, what it
// expects and what it accepts each have a voice, and a named limit has two, since
// a drawing stands behind it. The most agreed on counts; where they are even the
// worked examples decide, and after them the first.
func (d *decoder) readingDim(s *model.Step, sb *syntax.Block, y *yield) {
	var dims [4]calc.Dim
	var voices [4]int
	n := 0
	speak := func(dim calc.Dim, weight int) {
		for i := range n {
			if dims[i] == dim {
				voices[i] += weight
				return
			}
		}
		dims[n], voices[n] = dim, weight
		n++
	}
	if a := sb.Attr("tools"); a != nil {
		if can := d.instruments(a.Expr); len(can) == 1 {
			speak(can[0], 1)
		}
	}
	for _, name := range [...]string{"likely", "accept", "agree_within"} {
		a := sb.Attr(name)
		if a == nil {
			continue
		}
		switch e := a.Expr.(type) {
		case *syntax.String:
			lit := d.silently(e)
			if lit == nil || lit.Dim() == calc.Plain || name == "agree_within" && n > 0 && lit.Dim().Fits(calc.TemperatureDiff) {
				continue
			}
			speak(lit.Dim(), 1)
		case *syntax.Traversal:
			if e.Root == entry.Limit.Name && len(e.Steps) > 0 {
				if limit := d.m.Find("limit." + e.Steps[0].Name); limit != nil {
					if l, ok := limit.Limits("range", ""); ok {
						speak(l.Type().Dim, 2)
					}
				}
			}
		}
	}
	if n == 2 && voices[0] == voices[1] {
		d.exampleDims(s, func(dim calc.Dim) { speak(dim, 1) })
	}
	most := 0
	for i := range n {
		if voices[i] > most {
			y.dim, y.known, most = dims[i], true, voices[i]
		}
	}
}

// exampleDims gives the dimension that the first worked example of the step's
// procedure reads at the step.
func (d *decoder) exampleDims(s *model.Step, speak func(calc.Dim)) {
	sb := d.source[s.Procedure]
	if sb == nil {
		return
	}
	for _, child := range sb.Blocks {
		a := child.Attr("readings")
		if child.Type != entry.Example.Name || a == nil {
			continue
		}
		readings, ok := a.Expr.(*syntax.Object)
		if !ok {
			continue
		}
		for _, pair := range readings.Pairs {
			key, ok := pair.Key.(*syntax.Traversal)
			value, isString := pair.Value.(*syntax.String)
			if !ok || !isString || key.Root != s.Def.Name || len(key.Steps) == 0 || key.Steps[0].Name != s.ID {
				continue
			}
			if lit := d.silently(value); lit != nil && lit.Dim() != calc.Plain {
				speak(lit.Dim())
				return
			}
		}
	}
}

// instruments are the dimensions that the tools of a list read.
func (d *decoder) instruments(e syntax.Expr) []calc.Dim {
	var can []calc.Dim
	for _, item := range items(e) {
		t, ok := item.(*syntax.Traversal)
		if !ok || t.Root != entry.Tool.Name || len(t.Steps) == 0 {
			continue
		}
		n := d.m.Find("tool." + t.Steps[0].Name)
		if n == nil {
			continue
		}
		for _, word := range Reads(n) {
			if word == "count" {
				return nil // of anything, and per minute too
			}
			dim, ok := entry.ReadingDim(word)
			if ok && !containsDim(can, dim) {
				can = append(can, dim)
			}
		}
	}
	return can
}

// Reads says what a tool reads: what it states, or what its kind is known to.
func Reads(tool *model.Node) []string {
	if w := tool.Plain("reads"); w != "" {
		return []string{w}
	}
	reads, _ := entry.Instrument(tool.Plain("kind"))
	return reads
}

func containsDim(dims []calc.Dim, d calc.Dim) bool {
	for _, e := range dims {
		if e == d {
			return true
		}
	}
	return false
}

// spots are the named spots of a step that keeps each reading.
func (d *decoder) spots(sb *syntax.Block) []string {
	take, spots := sb.Attr("take"), sb.Attr("spots")
	if take == nil || spots == nil {
		return nil
	}
	if s, ok := take.Expr.(*syntax.String); !ok || s.Span().Text() != `"each"` {
		return nil
	}
	var names []string
	for _, item := range items(spots.Expr) {
		if s, ok := item.(*syntax.String); ok {
			name, _ := s.Literal()
			names = append(names, name)
		}
	}
	return names
}

// yielded lowers the value of a step: at one place, or as a list over all.
func (l *lowering) yielded(t *syntax.Traversal, r model.Ref, field string, rest []syntax.Step) calc.Expr {
	s := r.To.Step
	y := l.types[r.To]
	if !y.done {
		y = l.yieldOf(s)
	}
	v := calc.Var{Name: s.Key(), Label: words(s.ID), Of: calc.NumberOf(y.dim), At: at(t.Span())}
	if s.Kind.Yields == kind.Pack {
		switch field {
		case "total", "result":
			v.Name += "." + field
		case "count":
			v.Name += ".count"
			v.Of = calc.NumberOf(calc.Plain)
		case "sizes", "":
			v.Of = calc.WordType
			if field != "" {
				v.Name += ".sizes"
			}
		default:
			l.noSuchThing(l.node, r, rest[0])
			return nil
		}
		if field != "" {
			v.Label += " " + field
		}
	} else if field != "" {
		l.noSuchThing(l.node, r, rest[0])
		return nil
	}
	if v.Of.Shape == calc.NumberShape && !y.known && field != "count" {
		if !l.text {
			l.undimensioned(t, s)
			return nil
		}
		v.Of = calc.WordType
	}
	keys := l.keysOf(r.To)
	switch {
	case r.Place != "":
		v.Place = r.Place
	case len(keys) == 0:
	case s.Places != nil && l.placesOf(l.node) == s.Places:
		v.Place = model.Here
	default:
		return l.over(t, v, keys)
	}
	return &v
}

// over is the list of a value at all places.
func (l *lowering) over(t *syntax.Traversal, v calc.Var, keys []string) calc.Expr {
	list := make([]calc.Expr, len(keys))
	for i, k := range keys {
		one := v
		one.Place = k
		list[i] = &one
	}
	if v.Of.Shape != calc.NumberShape {
		if l.text {
			return list[0]
		}
		l.find("form/wrong-value", t.Span(), "This is read at several places.", "Nobody can tell which one is meant.", "Say which place is meant, in brackets.")
		return nil
	}
	return l.checked(calc.NewList(list, at(t.Span())))
}

// undimensioned is silent where the step's own attributes are at fault.
func (l *lowering) undimensioned(t *syntax.Traversal, s *model.Step) {
	if s.Kind.Yields != kind.Reading {
		return
	}
	for _, o := range l.out {
		if s.Extent.Contains(o.Span) {
			return
		}
	}
	l.find("values/not-a-number", t.Span(), "Nobody can tell what `"+s.ID+"` reads.",
		"Its instrument is not of a known kind, and it neither expects nor accepts a value with a unit.",
		"Give that step `likely` or `accept`, or give its tool `reads`.")
}
