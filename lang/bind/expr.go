package bind

import (
	"strings"

	"fettle/calc"
	"fettle/calc/fn"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/syntax"
)

// lowering turns one expression into the typed form, and remembers what it names.
type lowering struct {
	*decoder
	node *model.Node
	refs []model.Ref
	text bool // inside ${…}: names of entries and steps may be printed
}

// lower gives the typed form, or nil where it cannot be read; then there is a
// finding. A string is a quantity of what is wanted.
func (l *lowering) lower(e syntax.Expr, w want) calc.Expr {
	switch e := e.(type) {
	case *syntax.Paren:
		return l.lower(e.X, w)
	case *syntax.Number:
		if q, ok := plainNumber(e.Text); ok {
			return calc.NewConst(q, "", at(e.Span()))
		}
	case *syntax.Bool:
		return calc.NewConst(calc.Truth(e.Value), "", at(e.Span()))
	case *syntax.String:
		lit := l.quantity(e, w.context(l.gallon))
		if lit == nil {
			return nil
		}
		return calc.NewConst(literalValue(lit), "", at(e.Span()))
	case *syntax.Traversal:
		return l.value(e)
	case *syntax.Unary:
		return l.unary(e, w)
	case *syntax.Binary:
		return l.binary(e, w)
	case *syntax.Cond:
		return l.cond(e, w)
	case *syntax.Call:
		return l.call(e)
	case *syntax.List:
		list := make([]calc.Expr, 0, len(e.Items))
		for _, item := range e.Items {
			x := l.lower(item, w)
			if x == nil {
				return nil
			}
			list = append(list, x)
		}
		return l.checked(calc.NewList(list, at(e.Span())))
	case *syntax.Bad:
		return nil
	}
	l.find("form/wrong-value", e.Span(), "This cannot be worked out.", "An expression is made of values, addresses, + − × ÷, comparisons and functions.",
		"Write a value, an address or a formula.")
	return nil
}

func (l *lowering) checked(x calc.Expr, p *calc.Problem) calc.Expr {
	if p != nil {
		l.problem(p, l.node.File)
		return nil
	}
	return x
}

func (l *lowering) unary(e *syntax.Unary, w want) calc.Expr {
	op := calc.Neg
	if e.Op == "!" {
		op, w = calc.Not, want{}
	}
	x := l.lower(e.X, w)
	if x == nil {
		return nil
	}
	return l.checked(calc.NewUnary(op, x, at(e.Span())))
}

var operators = map[string]calc.Op{
	"+": calc.Add, "-": calc.Sub, "*": calc.Mul, "/": calc.Div, "<": calc.Less, "<=": calc.LessEqual,
	">": calc.Greater, ">=": calc.GreaterEqual, "==": calc.Equal, "!=": calc.NotEqual, "&&": calc.And, "||": calc.Or,
}

func (l *lowering) binary(e *syntax.Binary, w want) calc.Expr {
	op, ok := operators[e.Op]
	if !ok {
		l.find("form/not-in-dialect", e.OpSpan(), "`"+e.Op+"` is not used in manuals.", "A builder cannot follow it.", "Use + - * / or a function.")
		return nil
	}
	// A string takes its meaning from the other side.
	x, y := e.X, e.Y
	sx, strX := bare(x).(*syntax.String)
	sy, strY := bare(y).(*syntax.String)
	var lx, ly calc.Expr
	switch {
	case strY && !strX:
		if lx = l.lower(x, operandWant(op, w)); lx != nil {
			ly = l.beside(sy, lx, op)
		}
	case strX && !strY:
		if ly = l.lower(y, operandWant(op, w)); ly != nil {
			lx = l.beside(sx, ly, op)
		}
	default:
		lx, ly = l.lower(x, operandWant(op, w)), l.lower(y, operandWant(op, w))
	}
	if lx == nil || ly == nil {
		return nil
	}
	return l.checked(calc.NewBinary(op, lx, ly, at(e.Span())))
}

func bare(e syntax.Expr) syntax.Expr {
	for {
		p, ok := e.(*syntax.Paren)
		if !ok {
			return e
		}
		e = p.X
	}
}

// operandWant is what operands are wanted to be: known for sums of strings only.
func operandWant(op calc.Op, w want) want {
	if op == calc.Add || op == calc.Sub {
		return want{} // a temperature may stand beside a difference
	}
	return want{}
}

// beside reads a string next to an operand: a word next to a word, otherwise a
// quantity, of the same dimension unless they are multiplied.
func (l *lowering) beside(s *syntax.String, other calc.Expr, op calc.Op) calc.Expr {
	t := other.Type()
	if t.Shape == calc.WordShape {
		word, ok := s.Literal()
		if !ok {
			l.find("form/wrong-value", s.Span(), "A word to compare with cannot hold a value.", "It is compared letter by letter.", "Write it out.")
			return nil
		}
		if !l.choice(other, word, s) {
			return nil
		}
		return calc.NewConst(calc.Word(word), "", at(s.Span()))
	}
	ctx := calc.Context{Gallon: l.gallon}
	switch op {
	case calc.Mul, calc.Div:
		ctx.AllowPercent, ctx.AllowPlain = true, true
	case calc.Add, calc.Sub:
		if t.Dim.IsPoint() { // what is added to a temperature is mostly a difference
			ctx.AllowPlain = false
		} else if t.Shape == calc.NumberShape || t.Shape == calc.ListShape {
			ctx.Want, ctx.HasWant = t.Dim, true
		}
	default:
		ctx.Want, ctx.HasWant = t.Dim, t.Shape == calc.NumberShape
	}
	lit := l.quantity(s, ctx)
	if lit == nil {
		return nil
	}
	return calc.NewConst(literalValue(lit), "", at(s.Span()))
}

// choice checks that an option has the choice that it is compared with.
func (l *lowering) choice(other calc.Expr, word string, s *syntax.String) bool {
	v, ok := other.(*calc.Var)
	if !ok || !strings.HasPrefix(v.Name, "option.") {
		return true
	}
	o := l.m.Find(v.Name)
	choices := o.Names("choices")
	if contains(choices, word) {
		return true
	}
	f := diag.Finding{Rule: "values/unknown-reference", Span: s.Span(),
		Message: "`" + o.ID + "` has no choice called \"" + word + "\".",
		Reason:  "The condition would never hold.",
		Remedy:  "Its choices are: " + strings.Join(choices, ", ") + ".",
		Related: []diag.Related{{Span: o.Name, Message: "The choices stand here."}}}
	suggest(&f, word, s.Span().Sub(1, len(word)+1), choices)
	l.add(f)
	return false
}

func (l *lowering) cond(e *syntax.Cond, w want) calc.Expr {
	cond := l.lower(e.If, want{})
	then, els := l.lower(e.Then, w), l.lower(e.Else, w)
	if cond == nil || then == nil || els == nil {
		return nil
	}
	return l.checked(calc.NewCond(cond, then, els, at(e.Span())))
}

func (l *lowering) call(e *syntax.Call) calc.Expr {
	f, known := fn.Lookup(e.Name)
	if !known {
		var names []string
		for _, f := range fn.All() {
			names = append(names, f.Name)
		}
		d := diag.Finding{Rule: "values/unknown-function", Span: e.NameSpan(), Message: "There is no function `" + e.Name + "`.",
			Reason: "It cannot be worked out.", Remedy: "Use one of: " + strings.Join(names, ", ") + "."}
		suggest(&d, e.Name, e.NameSpan(), names)
		l.add(d)
		return nil
	}
	args := make([]calc.Expr, len(e.Args))
	ok := true
	for i, a := range e.Args {
		w := want{}
		if p := parameter(f, i); p != nil {
			switch {
			case (p.Same || p.Any) && i > 0 && args[0] != nil && bareString(a):
				if p.Same || p.Variadic {
					w = dimension(args[0].Type().Dim)
				}
			case !p.Any && !p.Same:
				w = dimension(p.Of.Dim)
			}
		}
		if args[i] = l.lower(a, w); args[i] == nil {
			ok = false
		}
	}
	if !ok {
		return nil
	}
	return l.checked(calc.NewCall(f, args, at(e.Span())))
}

func bareString(e syntax.Expr) bool { _, ok := bare(e).(*syntax.String); return ok }

func parameter(f *calc.Function, i int) *calc.Arg {
	if last := len(f.Args) - 1; last >= 0 && i > last && f.Args[last].Variadic {
		i = last
	}
	if i >= len(f.Args) {
		return nil
	}
	return &f.Args[i]
}

// insert lowers a value that stands in text.
func (d *decoder) insert(n *model.Node, e syntax.Expr) *model.Formula {
	l := &lowering{decoder: d, node: n, text: true}
	x := l.lower(e, want{})
	if x == nil {
		return nil
	}
	return finish(x, l.refs)
}

// value lowers an address to what it stands for.
func (l *lowering) value(t *syntax.Traversal) calc.Expr {
	if t.Root == "place" && len(t.Steps) == 0 {
		if l.placesOf(l.node) == nil && l.node.Def != entry.Procedure {
			l.find("values/unknown-reference", t.Span(), "`place` means nothing here.", "The work is not done place by place.",
				"Give the step or the procedure `at_each`.")
			return nil
		}
		return &calc.Var{Name: "place", Of: calc.WordType, At: at(t.Span())}
	}
	r, rest, ok := l.resolve(l.node, t)
	if !ok {
		return nil
	}
	if len(rest) > 1 || len(rest) == 1 && rest[0].Name == "" {
		l.noSuchThing(l.node, r, rest[0])
		return nil
	}
	field := ""
	if len(rest) == 1 {
		field = rest[0].Name
		r.End = rest[0].Span.End
	}
	x := l.field(t, r, field, rest)
	if x != nil {
		if field != "" && r.Sub == "" {
			r.Name = field
		}
		l.refs = append(l.refs, r)
	}
	return x
}

func (l *lowering) field(t *syntax.Traversal, r model.Ref, field string, rest []syntax.Step) calc.Expr {
	sp := at(t.Span())
	switch {
	case r.To.Def == entry.Limit:
		return l.limit(t, r, field, rest)
	case r.To.Def == entry.Option && field == "":
		return &calc.Var{Name: r.To.Address, Label: words(r.To.ID), Of: calc.WordType, At: sp}
	case r.To.Step != nil && r.To.Step.Kind.Yields != kind.Nothing && r.To.Step.Kind.Yields != kind.Mark:
		return l.yielded(t, r, field, rest)
	case field == "" && l.text && r.To.Step != nil:
		return calc.NewConst(calc.Word("step "+r.To.Step.Number), "", sp)
	case field == "" && l.text && r.Sub != "":
		return calc.NewConst(calc.Word(words(r.Name)), "", sp)
	case field == "" && l.text:
		l.decode(r.To)
		return calc.NewConst(calc.Word(r.To.Title()), "", sp)
	case field != "" && r.Sub == "":
		l.decode(r.To)
		if f := r.To.Formula(field, r.Place); f != nil && f.Const != nil {
			return calc.NewConst(f.Const, words(field)+" of "+r.To.Title(), sp)
		}
		if s := r.To.Plain(field); s != "" && l.text {
			return calc.NewConst(calc.Word(s), "", sp)
		}
		l.noSuchThing(l.node, r, rest[0])
		return nil
	}
	l.find("form/wrong-value", t.Span(), "`"+r.Address()+"` is not a value.",
		"Only readings, choices, calculations, limits, options and the numbers of the catalogue are values.",
		"Name a step that measures, chooses or calculates, or a limit.")
	return nil
}

// words turns a label into words.
func words(id string) string { return strings.ReplaceAll(id, "_", " ") }

func (l *lowering) limit(t *syntax.Traversal, r model.Ref, field string, rest []syntax.Step) calc.Expr {
	l.decode(r.To)
	lim, ok := r.To.Limits("range", "")
	if !ok {
		return nil // said at the limit
	}
	if q := r.To.Quantity("target", ""); q != nil {
		lim.Target = q
	}
	sp := at(t.Span())
	name := words(r.To.ID)
	missing := func(end string) calc.Expr {
		l.find("values/unknown-reference", rest[0].NameSpan(), "`"+r.To.Address+"` has no "+end+".", "The limit is open on that side.",
			"Give the limit a range with two ends, or use the end it has.")
		return nil
	}
	switch field {
	case "":
		return calc.NewConst(lim, name, sp)
	case "low":
		if lim.Low == nil {
			return missing("low end")
		}
		return calc.NewConst(*lim.Low, "low of "+name, sp)
	case "high":
		if lim.High == nil {
			return missing("high end")
		}
		return calc.NewConst(*lim.High, "high of "+name, sp)
	case "target", "width":
		if field == "target" && lim.Target != nil {
			return calc.NewConst(*lim.Target, "target of "+name, sp)
		}
		if lim.Low == nil || lim.High == nil {
			return missing(field)
		}
		q, err := span2(*lim.Low, *lim.High, field)
		if err != nil {
			return missing(field)
		}
		return calc.NewConst(q, field+" of "+name, sp)
	}
	l.noSuchThing(l.node, r, rest[0])
	return nil
}

// span2 is the width of limits, or the middle of them.
func span2(low, high calc.Quantity, field string) (calc.Quantity, error) {
	width, err := high.Sub(low)
	if err != nil || field == "width" {
		return width, err
	}
	half, err := width.Div(calc.PlainNumber(two))
	if err != nil {
		return half, err
	}
	return low.Add(half)
}
