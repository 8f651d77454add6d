package calc

import (
	"fmt"
	"strings"
)

// Function is one of the trade's functions, as data: the check, the readings,
// the explanation and the test all come from here. Package fn holds them.
type Function struct {
	Name     string
	Args     []Arg
	Doc      string // what it gives, in a sentence or two, with its unit
	Source   string // where the formula comes from
	Phrase   string // how a formula names it: "largest of"; "" prints Name
	Infix    string // a sign that a formula prints between two arguments instead: "±"
	Examples []Example

	// Body is the meaning in arithmetic, built from checked arguments. It must
	// use each argument once, so that calls within calls do not multiply. With a
	// Body nothing below is needed. It may return nil to fall back to Exact.
	Body func(args []Expr) (Expr, *Problem)

	// Shows is what a formula prints instead of the name, nil for the name. It
	// may use an argument more than once.
	Shows func(args []Expr) (Expr, *Problem)

	// Result is the type of the result for arguments that fit Args.
	Result func(args []Type) Type
	// Exact is the value for exact arguments, lists laid out flat. A problem's
	// span is filled in by Eval.
	Exact func(args []Value) (Value, *Problem)
	// Range holds every result for arguments within the given ranges, lists laid
	// out flat, in base units. nil says nothing is known.
	Range func(args []Interval) Interval
}

// Arg is one argument of a function.
type Arg struct {
	Name     string
	Doc      string // what to give, with its unit
	Of       Type
	Any      bool // any dimension will do
	Same     bool // the dimension must be that of the first argument, for a temperature its difference
	Variadic bool // one or more numbers, or lists of numbers; the last argument only
	Optional bool
}

// Example is a published example of a function at work, run as a test.
type Example struct {
	Call   string // as an author writes it: `mean("1.01 mm", "1.03 mm")`
	Gives  string // compared at the decimals written
	Source string // where it is published, and how it was obtained
}

// Signature shows the call with the names of its arguments:
// "wrench_setting(torque, wrench_length, adapter_length, [angle])".
func (f *Function) Signature() string {
	names := make([]string, len(f.Args))
	for i, a := range f.Args {
		switch {
		case a.Variadic:
			names[i] = a.Name + ", …"
		case a.Optional:
			names[i] = "[" + a.Name + "]"
		default:
			names[i] = a.Name
		}
	}
	return f.Name + "(" + strings.Join(names, ", ") + ")"
}

// Arg is the definition that the i-th argument of a call falls under, nil beyond
// the last.
func (f *Function) Arg(i int) *Arg {
	if last := len(f.Args) - 1; i > last && f.Args[last].Variadic {
		i = last
	}
	if i >= len(f.Args) {
		return nil
	}
	return &f.Args[i]
}

func (f *Function) check(args []Expr, at Span) *Problem {
	for i, e := range args {
		a := f.Arg(i)
		if a == nil {
			return f.arguments(fmt.Sprintf("%s takes no more than %s, and this is number %d.", f.Name, arguments(len(f.Args)), i+1), e.Span())
		}
		if p := f.checkArg(a, e, args[0].Type().Dim); p != nil {
			return p
		}
	}
	if len(args) < len(f.Args) && !f.Args[len(args)].Optional {
		return f.arguments(fmt.Sprintf("%s misses its argument %s.", f.Name, f.Args[len(args)].Name), at)
	}
	return nil
}

func (f *Function) checkArg(a *Arg, e Expr, first Dim) *Problem {
	t := e.Type()
	if t.Shape == ListShape && a.Variadic {
		t.Shape = NumberShape
	}
	if t.Shape != a.Of.Shape {
		return f.arguments(fmt.Sprintf("Argument %s of %s must be %s, and this is %s.", a.Name, f.Name, a.wants(), t), e.Span())
	}
	if want := a.Of.Dim; !a.Any && !a.Same && !want.Fits(t.Dim) {
		return misfit("Argument "+a.Name+" of "+f.Name+" must be %s, and this is %s.", want, t.Dim, e)
	}
	if a.Same && first.IsPoint() {
		first = TemperatureDiff
	}
	if (a.Same || a.Any && a.Variadic) && !first.Fits(t.Dim) {
		return misfit("The arguments of "+f.Name+" must be of one dimension: the first is %s, and this is %s.", first, t.Dim, e)
	}
	return nil
}

func (a *Arg) wants() string {
	if a.Any || a.Same {
		return a.Of.Shape.String()
	}
	return a.Of.String()
}

func arguments(n int) string {
	if n == 1 {
		return "one argument"
	}
	return fmt.Sprintf("%d arguments", n)
}

func (f *Function) arguments(message string, at Span) *Problem {
	return &Problem{Rule: RuleArguments, Span: at, Message: message,
		Reason: "It cannot be worked out from these.",
		Remedy: "Write " + f.Signature() + "."}
}
