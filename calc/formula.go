package calc

import "strings"

// Blank stands in a formula for a value that is not known yet.
const Blank = "____"

// Formula prints e as a person reads it, with names: "float − target of the end float".
func Formula(e Expr) string {
	p := &printer{}
	p.print(e, 0)
	return p.b.String()
}

// FormulaWith prints e with the values of env in place of names, and what it
// comes to: "1.02 mm − 0.11 mm = 0.91 mm". What is not known is a Blank; a
// value alone stands alone.
func FormulaWith(e Expr, env Env) string {
	p := &printer{env: env}
	p.print(e, 0)
	result := Blank
	if v, problem := Eval(e, env); problem == nil {
		result = show(v)
	}
	left := p.b.String()
	if left == result {
		return left
	}
	return left + resultSign(e) + result
}

// resultSign stands between a formula and what it comes to.
func resultSign(e Expr) string {
	if e.Type().Shape == NumberShape {
		return " = "
	}
	return ": "
}

// show prints a value in words.
func show(v Value) string {
	switch v := v.(type) {
	case Quantity:
		return v.String()
	case Limits:
		if v.Low == nil && v.High == nil {
			return "any value"
		}
		return Style{}.Limits(v.Low, v.High).First
	case Truth:
		if v {
			return "yes"
		}
		return "no"
	case Word:
		return string(v)
	case Numbers:
		parts := make([]string, len(v))
		for i, q := range v {
			parts[i] = q.String()
		}
		return strings.Join(parts, ", ")
	}
	panic("calc: unknown value")
}

// title names the variable in a formula or at the head of a sentence.
func (v *Var) title() string {
	name := v.Label
	if name == "" {
		name = v.Name[strings.LastIndexByte(v.Name, '.')+1:]
		name = strings.ReplaceAll(name, "_", " ")
	}
	if v.Place != "" {
		name += " " + strings.ReplaceAll(v.Place, "_", " ")
	}
	return name
}

type printer struct {
	env  Env // nil prints names
	b    strings.Builder
	leaf func(e Expr, bracketed bool) // if set, takes variables and values instead of b
}

// binding is how tightly an operator holds its operands.
func binding(e Expr) int {
	switch e := e.(type) {
	case *Cond:
		return 1
	case *Binary:
		switch e.Op {
		case Or:
			return 2
		case And:
			return 3
		case Add, Sub:
			return 5
		case Mul, Div:
			return 6
		}
		return 4
	case *Unary:
		return 7
	case *Call:
		if e.Function.Infix != "" {
			return 4
		}
	}
	return 8
}

var signs = map[Op]string{Add: " + ", Sub: " − ", Mul: " × ", Div: " ÷ ", Less: " < ", LessEqual: " ≤ ",
	Greater: " > ", GreaterEqual: " ≥ ", Equal: " = ", NotEqual: " ≠ ", And: " and ", Or: " or "}

// print writes e, in brackets unless it holds its operands at least as tightly as least.
func (p *printer) print(e Expr, least int) {
	e = p.shown(e)
	if binding(e) < least {
		p.b.WriteString("(")
		defer p.b.WriteString(")")
	}
	switch e := e.(type) {
	case *Const, *Var:
		if p.leaf != nil {
			p.leaf(e, p.bracketed(least))
			return
		}
		p.name(e, least)
	case *Unary:
		if e.Op == Not {
			p.b.WriteString("not ")
		} else {
			p.b.WriteString("−")
		}
		p.print(e.X, 8)
	case *Binary:
		own := binding(e)
		right := own + 1
		if inner, ok := e.Y.(*Binary); ok && inner.Op == e.Op && (e.Op == Add || e.Op == Mul || e.Op == And || e.Op == Or) {
			right = own
		}
		sign := signs[e.Op]
		if e.X.Type().Shape == WordShape {
			sign = map[Op]string{Equal: " is ", NotEqual: " is not "}[e.Op]
		}
		p.print(e.X, own)
		p.b.WriteString(sign)
		p.print(e.Y, right)
	case *Cond:
		p.print(e.Then, 2)
		p.b.WriteString(" if ")
		p.print(e.If, 2)
		p.b.WriteString(", else ")
		p.print(e.Else, 1)
	case *Call:
		if e.Function.Infix != "" {
			p.print(e.Args[0], 5)
			p.b.WriteString(" " + e.Function.Infix + " ")
			p.print(e.Args[1], 6)
			return
		}
		name := e.Function.Phrase
		if name == "" {
			name = strings.ReplaceAll(e.Function.Name, "_", " ")
		}
		p.b.WriteString(name + " ")
		p.list(e.Args)
	case *List:
		p.list(e.Items)
	case *Between:
		p.between(e)
	}
}

// shown is what stands for a call whose function is better read as arithmetic.
// Only a call on plain values is spelled out, so that what Shows repeats stays short.
func (p *printer) shown(e Expr) Expr {
	c, ok := e.(*Call)
	if !ok || c.Function.Shows == nil {
		return e
	}
	for _, a := range c.Args {
		switch a.(type) {
		case *Const, *Var:
		default:
			return e
		}
	}
	if s, problem := c.Function.Shows(c.Args); problem == nil && s != nil {
		return s
	}
	return e
}

// name prints a variable or a constant: its name, or its value where there is an env.
func (p *printer) name(e Expr, least int) {
	var val Value
	switch e := e.(type) {
	case *Const:
		if p.env == nil && e.Label != "" {
			p.b.WriteString(e.Label)
			return
		}
		val = e.Value
	case *Var:
		if p.env == nil {
			p.b.WriteString(e.title())
			return
		}
		v, problem := evalVar(e, p.env)
		if problem != nil {
			p.b.WriteString(Blank)
			return
		}
		val = v
	}
	s := show(val)
	if q, ok := val.(Quantity); ok && q.Sign() < 0 && p.bracketed(least) {
		s = "(" + s + ")"
	}
	p.b.WriteString(s)
}

// bracketed says that a negative number here follows a sign, and takes brackets.
func (p *printer) bracketed(least int) bool {
	return least > 4 && p.b.Len() > 0 && !strings.HasSuffix(p.b.String(), "(")
}

func (p *printer) list(items []Expr) {
	p.b.WriteString("(")
	for i, e := range items {
		if i > 0 {
			p.b.WriteString(", ")
		}
		if l, ok := e.(*List); ok {
			for j, e := range l.Items {
				if j > 0 {
					p.b.WriteString(", ")
				}
				p.print(e, 0)
			}
			continue
		}
		p.print(e, 0)
	}
	p.b.WriteString(")")
}

func (p *printer) between(e *Between) {
	switch {
	case e.Low == nil:
		p.b.WriteString("at most ")
		p.print(e.High, 2)
	case e.High == nil:
		p.b.WriteString("at least ")
		p.print(e.Low, 2)
	default:
		p.print(e.Low, 2)
		p.b.WriteString(" to ")
		p.print(e.High, 2)
	}
}
