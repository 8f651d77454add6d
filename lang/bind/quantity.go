package bind

import (
	"math/big"
	"strings"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/source"
	"fettle/lang/syntax"
)

// want is what an expression is wanted to be.
type want struct {
	dim    calc.Dim
	hasDim bool
	diff   bool
}

func (w want) context(gallon string) calc.Context {
	return calc.Context{Want: w.dim, HasWant: w.hasDim, Difference: w.diff, Gallon: gallon}
}

func dimension(d calc.Dim) want { return want{dim: d, hasDim: true} }

// quantity reads a string as a quantity or limits; nil where that fails.
func (d *decoder) quantity(s *syntax.String, ctx calc.Context) *calc.Literal {
	text, ok := s.Literal()
	if !ok {
		d.find("form/wrong-value", s.Span(), "A quantity cannot hold a value in ${…}.", "It is read before anything is measured.",
			"Write it out, or write an expression without quotes.")
		return nil
	}
	key := written{text, ctx}
	if lit := d.read[key]; lit != nil {
		return lit
	}
	lit, problems := calc.ParseLiteral(text, ctx)
	first := len(d.out)
	for i := range problems {
		p := &problems[i]
		f := diag.Finding{Rule: p.Rule, Message: p.Message, Reason: p.Reason, Remedy: p.Remedy,
			Span: s.Source(int(p.Span.Start), int(p.Span.End))}
		if p.Edit != nil {
			f.Fixes = []diag.Fix{{Title: "Write " + applied(text, p.Edit), Sure: p.Edit.Sure,
				Edits: []diag.Edit{{Span: s.Source(int(p.Edit.Start), int(p.Edit.End)), New: p.Edit.New}}}}
		}
		if !joined(d.out[first:], f) {
			d.add(f)
		}
		if p.Rule == calc.RuleTwoSystems {
			lit = calc.Literal{} // one of the two units is a slip, and nobody knows which
		}
	}
	if !lit.Valid() {
		return nil
	}
	if len(problems) == 0 {
		if d.read == nil {
			d.read = map[written]*calc.Literal{}
		}
		d.read[key] = &lit
	}
	return &lit
}

// written is a quantity as it stands, with what is known of its place. A manual
// writes the same few quantities over and over.
type written struct {
	text string
	ctx  calc.Context
}

// joined adds what is wrong in the same way in one quantity, such as a second
// comma, to what has been said of it.
func joined(said diag.List, f diag.Finding) bool {
	for i := range said {
		old := &said[i]
		if old.Rule != f.Rule || len(old.Fixes) != 1 || len(f.Fixes) != 1 || old.Fixes[0].Sure != f.Fixes[0].Sure {
			continue
		}
		old.Fixes[0].Title = old.Remedy
		old.Fixes[0].Edits = append(old.Fixes[0].Edits, f.Fixes[0].Edits...)
		old.Related = append(old.Related, diag.Related{Span: f.Span, Message: f.Message})
		return true
	}
	return false
}

func applied(text string, e *calc.Edit) string {
	return text[:e.Start] + e.New + text[e.End:]
}

// literalValue is a literal as a value: limits where it is limits.
func literalValue(l *calc.Literal) calc.Value {
	if l.IsLimits() {
		return l.Limits()
	}
	return *l.Nominal
}

// formula reads an attribute that is a quantity, limits or a condition.
func (d *decoder) formula(n *model.Node, def *schema.Attr, e syntax.Expr) *model.Formula {
	w := d.wanted(n, def)
	if s, ok := e.(*syntax.String); ok && def.Type != schema.Condition {
		return d.quantityAttr(n, def, s, w)
	}
	l := &lowering{decoder: d, node: n, refs: nil}
	if memo := d.types[n]; memo != nil && memo.formula != nil && memo.attr == def.Name {
		return memo.formula
	}
	x := l.lower(e, w)
	if x == nil {
		return nil
	}
	if !d.fits(n, def, x, w, e) {
		return nil
	}
	return finish(x, l.refs)
}

// finish works out at once what rests on nothing.
func finish(x calc.Expr, refs []model.Ref) *model.Formula {
	f := &model.Formula{Expr: x, Refs: refs}
	if c, ok := x.(*calc.Const); ok {
		f.Const = c.Value
	} else if len(calc.Vars(x)) == 0 {
		if v, p := calc.Eval(x, calc.Readings{}); p == nil {
			f.Const = v
		}
	}
	return f
}

func (d *decoder) quantityAttr(n *model.Node, def *schema.Attr, s *syntax.String, w want) *model.Formula {
	ctx := w.context(d.gallon)
	if def.Name == "accuracy" {
		ctx.AllowPercent = true
	}
	if def.HasDim && def.Dim == calc.Plain {
		ctx.AllowPercent, ctx.AllowPlain = true, true
	}
	lit := d.quantity(s, ctx)
	if lit == nil {
		return nil
	}
	if def.Type == schema.Amount && lit.IsLimits() && lit.Nominal == nil {
		d.find("form/wrong-value", s.Span(), "`"+def.Name+"` must be one value, and this is a range.", def.Doc, "Write one value.")
		return nil
	}
	if def.Measured && lit.Dim() == calc.Plain {
		d.find("units/bare-number", s.Inner(), "“"+s.Inner().Text()+"” has no unit.", "A builder would have to guess the unit.", "Add the unit.")
		return nil
	}
	if w.hasDim && w.dim.IsPoint() && !w.diff && frozen(lit) {
		d.find("units/temperature-for-difference", s.Inner(), "“"+s.Inner().Text()+"” is a difference, or colder than any workshop goes.",
			"80 K warmer and 80 K on the scale of kelvins are not the same thing.", "Write the temperature in °C.")
		return nil
	}
	if def.Role == schema.Duration { // "5 min" stands in thousands of steps, and nobody asks where
		f := d.durations[lit]
		if f == nil {
			v := literalValue(lit)
			f = &model.Formula{Expr: calc.NewConst(v, "", at(s.Span())), Const: v, Literal: lit}
			if d.durations == nil {
				d.durations = map[*calc.Literal]*model.Formula{}
			}
			d.durations[lit] = f
		}
		return f
	}
	v := literalValue(lit)
	return &model.Formula{Expr: calc.NewConst(v, "", at(s.Span())), Const: v, Literal: lit}
}

// frozen reports a temperature in kelvins that no workshop reaches.
func frozen(l *calc.Literal) bool {
	q := l.Any()
	return q.Unit.UCUM == "K" && q.Num().Cmp(coldest) < 0
}

// coldest is about the boiling point of nitrogen, 77 K, and well above: dry ice is
// at 195 K.
var coldest = big.NewRat(150, 1)

// wanted is what the definition, or the reading that the step takes, asks for.
func (d *decoder) wanted(n *model.Node, def *schema.Attr) want {
	w := want{dim: def.Dim, hasDim: def.HasDim, diff: def.Diff}
	if w.hasDim {
		return w
	}
	switch {
	case n.Step != nil:
		switch def.Role {
		case schema.Expected, schema.Judgement, schema.Method:
			if y := d.types[n]; y != nil && y.known {
				w.dim, w.hasDim = y.dim, true
				if def.Diff {
					w.dim = difference(y.dim)
				}
			}
			if def.Name == "pieces" {
				w.dim, w.hasDim = calc.Plain, true
			}
		}
	case n.Def == entry.Limit && def.Name == "range":
		if dim, ok := d.ahead(n, "target"); ok && dim != calc.Plain {
			w.dim, w.hasDim = dim, true
		}
	case n.Def == entry.Tool && (def.Name == "range" || def.Name == "resolution" || def.Name == "accuracy"):
		if dim, ok := d.toolReads(n); ok {
			w.dim, w.hasDim = dim, true
			if def.Diff {
				w.dim = difference(dim)
			}
		}
	case n.Def == entry.Limit && def.Name == "target":
		if r, ok := n.Limits("range", ""); ok {
			w.dim, w.hasDim = r.Type().Dim, true
		}
	}
	return w
}

func difference(d calc.Dim) calc.Dim {
	if d.IsPoint() {
		return calc.TemperatureDiff
	}
	return d
}

// fits checks that an expression is of the sort and dimension that the attribute takes.
func (d *decoder) fits(n *model.Node, def *schema.Attr, x calc.Expr, w want, e syntax.Expr) bool {
	t := x.Type()
	ok := false
	what := ""
	switch def.Type {
	case schema.Condition:
		ok, what = t.Shape == calc.TruthShape, "true or false"
	case schema.Limits, schema.Setting:
		ok, what = t.Shape == calc.LimitsShape || t.Shape == calc.NumberShape, "limits"
		if def.Role == schema.Judgement && t.Shape == calc.TruthShape {
			return true
		}
	default:
		ok, what = t.Shape == calc.NumberShape, "a value"
	}
	if !ok {
		remedy := "Write an expression that gives " + what + "."
		if t.Shape == calc.ListShape {
			remedy = "Say which place is meant in brackets, or take the largest, smallest or mean of all: max(…), min(…), mean(…)."
		}
		d.find("form/wrong-value", e.Span(), "`"+def.Name+"` must be "+what+", and this is "+t.String()+".", def.Doc, remedy)
		return false
	}
	if w.hasDim && !w.dim.Fits(t.Dim) && def.Type != schema.Condition {
		if t.Dim == calc.Plain && d.bare(n, def, w, e) {
			return false
		}
		d.find("units/wrong-dimension", e.Span(), "`"+def.Name+"` must be "+w.dim.String()+", and this is "+t.Dim.String()+".",
			"Nobody can set or read it.", "Check what the value is, and its unit.")
		return false
	}
	return true
}

// bare reports a number without a unit where it was written: in the attribute, or
// in the limit that the attribute names.
func (d *decoder) bare(n *model.Node, def *schema.Attr, w want, e syntax.Expr) bool {
	const reason, remedy = "A builder would have to guess the unit.", "Add the unit."
	switch e := bare(e).(type) {
	case *syntax.Number:
		d.find("units/bare-number", e.Span(), "“"+e.Span().Text()+"” has no unit; "+w.dim.String()+" is wanted here.", reason, "Write it in quotes, with its unit.")
		return true
	case *syntax.Traversal:
		if e.Root != entry.Limit.Name || len(e.Steps) == 0 {
			return false
		}
		limit := d.m.Find("limit." + e.Steps[0].Name)
		if limit == nil || limit.Attr("range") == nil {
			return false
		}
		d.add(diag.Finding{Rule: "units/bare-number", Span: limit.At("range"), Message: "The limit “" + limit.Title() + "” has no unit, and " + w.dim.String() + " is judged by it.",
			Reason: reason, Remedy: remedy, Related: []diag.Related{{Span: e.Span(), Message: "It is used here."}}})
		return true
	}
	return false
}

func at(s source.Span) calc.Span { return calc.Span{Start: s.Start, End: s.End} }

// plain reads a bare number as it is written.
func plainNumber(text string) (calc.Quantity, bool) {
	r, ok := new(big.Rat).SetString(text)
	if !ok {
		return calc.Quantity{}, false
	}
	decimals := 0
	if i := strings.IndexByte(text, '.'); i >= 0 {
		decimals = len(text) - i - 1
	} else {
		decimals = calc.Exact
	}
	return calc.NewQuantity(r, calc.One, decimals), true
}

// sizeLabel reads the label of a size as its value, where `is` does not say.
func (d *decoder) sizeLabel(n *model.Node) {
	if len(n.ID) == 0 {
		return
	}
	lit, problems := calc.ParseLiteral(n.ID, calc.Context{Gallon: d.gallon})
	if !lit.Valid() {
		p := problems[0]
		d.add(diag.Finding{Rule: p.Rule, Span: n.Name, Message: p.Message,
			Reason: "A size is labelled with its value, or says it with `is`.", Remedy: `Write size "0.20 mm" { … }, or add is = "0.20 mm".`})
		n.Damaged = true
		return
	}
	for _, p := range problems {
		d.find(p.Rule, n.Name, p.Message, p.Reason, p.Remedy)
	}
	if lit.Dim() == calc.Plain {
		d.find("units/bare-number", n.Name, "“"+n.ID+"” has no unit.", "A size is labelled with its value, and a builder would have to guess the unit.",
			`Add the unit, or say with is = "…" how large a piece of that name is.`)
		n.Damaged = true
		return
	}
	v := literalValue(&lit)
	f := &model.Formula{Expr: calc.NewConst(v, "", at(n.Name)), Const: v, Literal: &lit}
	n.Attrs = append(n.Attrs, model.NewAttr(entry.Size.Attr("is"), f, n.Name, n.Name))
}

// times reads a time, or times at temperatures.
func (d *decoder) times(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	var times model.Times
	for _, item := range items(e) {
		s, ok := item.(*syntax.String)
		if !ok {
			d.wrong(n, def, item, "`"+def.Name+"` must be a time in quotes.", `Write "24 h", or "24 h at 20 °C".`)
			continue
		}
		text, plain := s.Literal()
		if !plain {
			d.wrong(n, def, item, "`"+def.Name+"` cannot hold a value in ${…}.", "Write it out.")
			continue
		}
		if t, ok := d.timeAt(s, text); ok {
			times = append(times, t)
		}
	}
	if len(times) == 0 {
		return nil
	}
	return times
}

func (d *decoder) timeAt(s *syntax.String, text string) (model.Time, bool) {
	var t model.Time
	part := func(from, to int, dim calc.Dim) *calc.Quantity {
		lit, problems := calc.ParseLiteral(text[from:to], calc.Context{Want: dim, HasWant: true})
		for _, p := range problems {
			d.find(p.Rule, s.Source(from+int(p.Span.Start), from+int(p.Span.End)), p.Message, p.Reason, p.Remedy)
		}
		if !lit.Valid() {
			return nil
		}
		if lit.Nominal == nil {
			d.find("form/wrong-value", s.Source(from, to), "This must be one value, and it is a range.", "The clock runs for one time.", "Write one value.")
			return nil
		}
		return lit.Nominal
	}
	i := strings.Index(text, " at ")
	if i < 0 {
		t.For = part(0, len(text), calc.Time)
		return t, t.For != nil
	}
	t.For = part(0, i, calc.Time)
	t.At = part(i+len(" at "), len(text), calc.Temperature)
	return t, t.For != nil && t.At != nil
}
