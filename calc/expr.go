package calc

// Span is a half-open range of bytes of some source. calc carries it and does
// not look into it.
type Span struct{ Start, End int32 }

// Expr is one typed expression. It is one of the nodes of this file, was checked
// when it was built, and never changes: nodes may be shared between trees.
//
// Build with the New functions, which check types and dimensions. Every other
// reading (Eval, RangeOf, Formula, Encode) takes a sound tree for granted.
type Expr interface {
	Type() Type
	Span() Span
	expr()
}

// Const is a value that the author wrote, or a limit's, a size's or an option's.
type Const struct {
	Value Value
	Label string // how a formula names it: "target of the end float"; "" prints the value
	At    Span
}

// Var is a value that is known only when a reading has been taken, a pack
// chosen or an option set.
type Var struct {
	Name  string // canonical address with field: "thrust_end.choose.pack.total"
	Place string // the place it is read at, "" where there is one
	Label string // how a formula names it: "float"; "" prints the last word of Name
	Of    Type
	At    Span
}

// Unary is a negation of a number or of a truth.
type Unary struct {
	Op Op
	X  Expr
	At Span
}

// Binary is an arithmetic operation, a comparison, or the joining of two truths.
type Binary struct {
	Op   Op
	X, Y Expr
	Of   Type
	At   Span
}

// Cond is Then where If holds, and Else where it does not.
type Cond struct {
	If, Then, Else Expr
	At             Span
}

// Call is one of the trade's functions at work. Body is its meaning in
// arithmetic, nil for a function that is worked out by Function.Exact.
type Call struct {
	Function *Function
	Args     []Expr
	Body     Expr
	Of       Type
	At       Span
}

// List is several numbers of one dimension.
type List struct {
	Items []Expr
	Of    Type
	At    Span
}

// Between is limits with one end or both worked out. It stands in the body of
// a Call only. A nil end is unbounded.
type Between struct {
	Low, High, Target Expr
	At                Span
}

// Op is an operator.
type Op uint8

// Operators. Neg and Not take one operand.
const (
	Neg Op = iota
	Not
	Add
	Sub
	Mul
	Div
	Less
	LessEqual
	Greater
	GreaterEqual
	Equal
	NotEqual
	And
	Or
)

// String is the operator as HCL writes it.
func (o Op) String() string {
	return [...]string{"-", "!", "+", "-", "*", "/", "<", "<=", ">", ">=", "==", "!=", "&&", "||"}[o]
}

func (e *Const) Type() Type  { return e.Value.Type() }
func (e *Var) Type() Type    { return e.Of }
func (e *Unary) Type() Type  { return e.X.Type() }
func (e *Binary) Type() Type { return e.Of }
func (e *Cond) Type() Type   { return e.Then.Type() }
func (e *Call) Type() Type   { return e.Of }
func (e *List) Type() Type   { return e.Of }

// Type is that of the end given.
func (e *Between) Type() Type {
	if e.Low != nil {
		return LimitsOf(e.Low.Type().Dim)
	}
	return LimitsOf(e.High.Type().Dim)
}

func (e *Const) Span() Span   { return e.At }
func (e *Between) Span() Span { return e.At }
func (e *Var) Span() Span     { return e.At }
func (e *Unary) Span() Span   { return e.At }
func (e *Binary) Span() Span  { return e.At }
func (e *Cond) Span() Span    { return e.At }
func (e *Call) Span() Span    { return e.At }
func (e *List) Span() Span    { return e.At }

func (*Const) expr()   {}
func (*Between) expr() {}
func (*Var) expr()     {}
func (*Unary) expr()   {}
func (*Binary) expr()  {}
func (*Cond) expr()    {}
func (*Call) expr()    {}
func (*List) expr()    {}

// Key tells variables apart: the name, and the place in brackets.
func (v *Var) Key() string {
	if v.Place == "" {
		return v.Name
	}
	return v.Name + `["` + v.Place + `"]`
}

// Walk calls visit for e and everything below it, parents first, operands from
// left to right. Where visit returns false, what is below is left out. Of a call
// the arguments are visited, not its body.
func Walk(e Expr, visit func(Expr) bool) {
	if !visit(e) {
		return
	}
	switch e := e.(type) {
	case *Unary:
		Walk(e.X, visit)
	case *Binary:
		Walk(e.X, visit)
		Walk(e.Y, visit)
	case *Cond:
		Walk(e.If, visit)
		Walk(e.Then, visit)
		Walk(e.Else, visit)
	case *Call:
		for _, a := range e.Args {
			Walk(a, visit)
		}
	case *List:
		for _, a := range e.Items {
			Walk(a, visit)
		}
	}
}

// Vars lists the variables that e rests on, each once, in the order they stand.
func Vars(e Expr) []*Var {
	var vars []*Var
	seen := map[string]bool{}
	Walk(e, func(e Expr) bool {
		if v, ok := e.(*Var); ok && !seen[v.Key()] {
			seen[v.Key()] = true
			vars = append(vars, v)
		}
		return true
	})
	return vars
}
