package calc_test

import (
	"math/big"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/calc"
	"fettle/calc/fn"
)

// q reads a quantity as an author writes it.
func q(s string) calc.Quantity {
	l, problems := calc.ParseLiteral(s, calc.Context{AllowPlain: true})
	if len(problems) > 0 {
		panic(s + ": " + problems[0].Message)
	}
	return l.Any()
}

func lit(s string) calc.Expr { return calc.NewConst(q(s), "", calc.Span{}) }

func num(n int64) calc.Expr {
	return calc.NewConst(calc.PlainNumber(big.NewRat(n, 1)), "", calc.Span{})
}

func reading(name string, d calc.Dim) *calc.Var {
	return &calc.Var{Name: name, Of: calc.NumberOf(d)}
}

func must(e calc.Expr, p *calc.Problem) calc.Expr {
	if p != nil {
		panic(p.Message)
	}
	return e
}

func bin(op calc.Op, x, y calc.Expr) calc.Expr { return must(calc.NewBinary(op, x, y, calc.Span{})) }

func call(name string, args ...calc.Expr) calc.Expr {
	f, ok := fn.Lookup(name)
	if !ok {
		panic(name)
	}
	return must(calc.NewCall(f, args, calc.Span{}))
}

func TestNewBinaryRefuses(t *testing.T) {
	limits := calc.NewConst(calc.Limits{Low: ptr(q("1 mm")), High: ptr(q("2 mm"))}, "", calc.Span{})
	word := calc.NewConst(calc.Word("coil"), "", calc.Span{})
	truth := calc.NewConst(calc.Truth(true), "", calc.Span{})
	for _, c := range []struct {
		op      calc.Op
		x, y    calc.Expr
		rule    string
		message string
		remedy  string
	}{
		{calc.Add, lit("1 mm"), num(5), calc.RuleBareNumber, "A length and a plain number cannot be added.", `"5 mm"`},
		{calc.Sub, num(5), lit("24 N·m"), calc.RuleBareNumber, "A torque cannot be subtracted from a plain number.", `"5 N·m"`},
		{calc.Add, lit("1 mm"), lit("1 kg"), calc.RuleWrongDimension, "A length and a mass cannot be added.", ""},
		{calc.Add, lit("1 N·m"), lit("1 J"), calc.RuleEnergyTorque, "A torque and an energy cannot be added.", "N·m for a torque"},
		{calc.Add, lit("20 °C"), lit("20 °C"), calc.RuleTemperature, "Two temperatures cannot be added.", "in K"},
		{calc.Mul, num(2), lit("20 °C"), calc.RuleTemperature, "A temperature cannot be multiplied.", ""},
		{calc.Sub, lit("5 K"), lit("20 °C"), calc.RuleTemperature, "A temperature cannot be subtracted from a temperature difference.", ""},
		{calc.Less, lit("20 °C"), lit("5 K"), calc.RuleTemperature, "A temperature and a temperature difference cannot be compared.", ""},
		{calc.Greater, lit("1 mm"), num(0), calc.RuleBareNumber, "A length and a plain number cannot be compared.", `"0 mm"`},
		{calc.Add, limits, lit("1 mm"), calc.RuleNotNumber, "Limits of a length cannot be added.", ".low, .high, .target or .width"},
		{calc.Equal, limits, limits, calc.RuleNotNumber, "Limits of a length cannot be compared.", ""},
		{calc.Add, word, lit("1 mm"), calc.RuleNotNumber, "A word cannot be added.", ""},
		{calc.Less, word, word, calc.RuleNotNumber, "A word cannot be ordered.", "=="},
		{calc.Less, bin(calc.Less, num(1), num(2)), num(3), calc.RuleNotNumber, "A comparison cannot be compared again.", "&&"},
		{calc.And, truth, num(1), calc.RuleWrongType, "A condition is needed here, and this is a plain number.", ""},
		{calc.Equal, word, num(1), calc.RuleNotNumber, "A word cannot be compared.", ""},
	} {
		_, p := calc.NewBinary(c.op, c.x, c.y, calc.Span{})
		require.NotNil(t, p, c.message)
		require.Equal(t, c.rule, p.Rule, p.Message)
		require.Equal(t, c.message, p.Message)
		require.Contains(t, p.Remedy, c.remedy)
		require.NotEmpty(t, p.Reason)
	}
}

func ptr(q calc.Quantity) *calc.Quantity { return &q }

// A chain of multiplications must not wrap the exponents round to a plain number.
func TestDimensionsDoNotOverflow(t *testing.T) {
	var e calc.Expr = lit("1 mm")
	for range 300 {
		next, p := calc.NewBinary(calc.Mul, e, lit("1 mm"), calc.Span{})
		if p != nil {
			require.Equal(t, calc.RuleWrongDimension, p.Rule)
			return
		}
		e = next
	}
	t.Fatal("300 lengths multiplied")
}

func TestNewCallRefuses(t *testing.T) {
	span := calc.Span{Start: 3, End: 9}
	for _, c := range []struct {
		name    string
		args    []calc.Expr
		rule    string
		message string
	}{
		{"wrench_setting", []calc.Expr{lit("24 N·m"), lit("300 mm")}, calc.RuleArguments, "wrench_setting misses its argument adapter_length."},
		{"abs", []calc.Expr{num(1), num(2)}, calc.RuleArguments, "abs takes no more than one argument, and this is number 2."},
		{"preload", []calc.Expr{lit("24 J"), num(1), lit("8 mm")}, calc.RuleEnergyTorque, "Argument torque of preload must be a torque, and this is an energy."},
		{"mean", []calc.Expr{lit("1 mm"), lit("1 s")}, calc.RuleWrongDimension, "The arguments of mean must be of one dimension: the first is a length, and this is a time."},
		{"mean", nil, calc.RuleArguments, "mean misses its argument values."},
		{"within", []calc.Expr{lit("20 °C"), lit("5 °C")}, calc.RuleTemperature, "The arguments of within must be of one dimension: the first is a temperature difference, and this is a temperature."},
		{"within", []calc.Expr{lit("20 mm"), lit("-5 mm")}, calc.RuleArguments, "The tolerance is below zero."},
		{"sum", []calc.Expr{lit("20 °C"), lit("5 °C")}, calc.RuleTemperature, "Temperatures cannot be added."},
	} {
		f, _ := fn.Lookup(c.name)
		_, p := calc.NewCall(f, c.args, span)
		require.NotNil(t, p, c.message)
		require.Equal(t, c.message, p.Message)
		require.Equal(t, c.rule, p.Rule)
	}
}

func TestEval(t *testing.T) {
	gap := reading("thrust_end.measure.float", calc.Length)
	env := calc.Readings{gap.Key(): q("1.02 mm")}
	for _, c := range []struct {
		e    calc.Expr
		want string
	}{
		{bin(calc.Sub, gap, lit("0.11 mm")), "0.91 mm"},
		{bin(calc.Sub, lit("0.040 in"), gap), "-0.0002 in"}, // 0.040 in is 1.016 mm
		{bin(calc.Mul, lit("0.0035"), lit("82 mm")), "0.29 mm"},
		{bin(calc.Div, lit("1.00 mm"), num(3)), "0.33 mm"},
		{bin(calc.Div, lit("1.02 mm"), num(20)), "0.051 mm"},
		{bin(calc.Mul, lit("25 mm"), lit("10 mm")), "250 mm²"},
		{bin(calc.Div, lit("40 N·m"), lit("2.0 mm")), "20.0 kN"},
		{bin(calc.Div, lit("490 lb·in"), lit("0.375 in")), "1307 lbf"},
		{bin(calc.Div, lit("40 lb·ft"), lit("0.375 in")), "1280 lbf"},
		{bin(calc.Div, lit("1.0 mm"), lit("1.00 in")), "0.0394"},
		{bin(calc.Sub, lit("80 °C"), lit("68 °F")), "60.0 °C"},
		{bin(calc.Add, lit("20 °C"), lit("9 Δ°F")), "25.0 °C"},
		{bin(calc.Add, lit("5 K"), lit("20 °C")), "25 °C"},
		{call("mean", lit("20 °C"), lit("86 °F")), "25.0 °C"},
		{call("preload", lit("45 N·m"), lit("0.20"), lit("10 mm")), "22.5 kN"},
		{must(calc.NewCond(bin(calc.Less, gap, lit("1 mm")), lit("1 mm"), gap, calc.Span{})), "1.02 mm"},
	} {
		v, p := calc.Eval(c.e, env)
		require.Nil(t, p)
		require.Equal(t, c.want, v.(calc.Quantity).String(), calc.Formula(c.e))
	}
}

func TestEvalProblems(t *testing.T) {
	x := reading("a.measure.x", calc.Length)
	over := bin(calc.Div, num(1), bin(calc.Sub, x, lit("1.5 mm")))

	_, p := calc.Eval(over, calc.Readings{})
	require.Equal(t, x, p.Unknown)

	_, p = calc.Eval(over, calc.Readings{x.Key(): q("1.5 mm")})
	require.Equal(t, calc.RuleDivisionByZero, p.Rule)

	_, p = calc.Eval(over, calc.Readings{x.Key(): q("1.5 kg")})
	require.Equal(t, calc.RuleWrongType, p.Rule)

	// What is not taken is not asked for.
	zero := bin(calc.Equal, x, lit("1.5 mm"))
	safe := must(calc.NewCond(zero, bin(calc.Div, num(0), lit("1 mm")), over, calc.Span{}))
	v, p := calc.Eval(safe, calc.Readings{x.Key(): q("1.5 mm")})
	require.Nil(t, p)
	require.Zero(t, v.(calc.Quantity).Sign())
	unknown := bin(calc.Less, reading("y", calc.Length), x)
	v, p = calc.Eval(bin(calc.Or, zero, unknown), calc.Readings{x.Key(): q("1.5 mm")})
	require.Nil(t, p)
	require.Equal(t, calc.Truth(true), v)
}

// A long product must end in words, not in a number of a million digits.
func TestDigitsAreBounded(t *testing.T) {
	x := reading("x", calc.Plain)
	chain := calc.Expr(x)
	for range 20000 {
		chain = bin(calc.Mul, chain, x)
	}
	_, p := calc.Eval(chain, calc.Readings{"x": q("1.1")})
	require.Equal(t, calc.RuleOutOfReach, p.Rule)
	calc.RangeOf(chain, domain{"x": {Low: ptr(q("1.1")), High: ptr(q("1.2"))}})
}

func TestFormula(t *testing.T) {
	gap := &calc.Var{Name: "thrust_end.measure.float", Of: calc.NumberOf(calc.Length)}
	left := &calc.Var{Name: "block.measure.bore", Place: "left", Label: "bore", Of: calc.NumberOf(calc.Length)}
	target := calc.NewConst(q("0.11 mm"), "target of the end float", calc.Span{})
	option := &calc.Var{Name: "option.ignition", Of: calc.WordType}
	coil := bin(calc.Equal, option, calc.NewConst(calc.Word("coil"), "", calc.Span{}))
	env := calc.Readings{gap.Key(): q("1.02 mm"), "option.ignition": calc.Word("coil")}
	for _, c := range []struct {
		e           calc.Expr
		names, nums string
	}{
		{gap, "float", "1.02 mm"},
		{bin(calc.Sub, gap, target), "float − target of the end float", "1.02 mm − 0.11 mm = 0.91 mm"},
		{bin(calc.Sub, left, target), "bore left − target of the end float", "____ − 0.11 mm = ____"},
		{bin(calc.Mul, num(2), bin(calc.Sub, gap, target)), "2 × (float − target of the end float)", "2 × (1.02 mm − 0.11 mm) = 1.82 mm"},
		{bin(calc.Sub, gap, bin(calc.Sub, gap, target)), "float − (float − target of the end float)", "1.02 mm − (1.02 mm − 0.11 mm) = 0.11 mm"},
		{bin(calc.Add, bin(calc.Add, gap, gap), bin(calc.Add, gap, gap)), "float + float + float + float", "1.02 mm + 1.02 mm + 1.02 mm + 1.02 mm = 4.08 mm"},
		{bin(calc.Sub, gap, lit("-0.05 mm")), "float − (-0.05 mm)", "1.02 mm − (-0.05 mm) = 1.07 mm"},
		{call("max", gap, left), "largest of (float, bore left)", "largest of (1.02 mm, ____) = ____"},
		{call("wrench_setting", lit("40 lb·ft"), lit("12 in"), lit("4 in")), "40 lb·ft × 12 in ÷ (12 in + 4 in)", "40 lb·ft × 12 in ÷ (12 in + 4 in) = 30 lb·ft"},
		{call("within", bin(calc.Sub, gap, lit("0.04 mm")), lit("0.01 mm")), "float − 0.04 mm ± 0.01 mm", "1.02 mm − 0.04 mm ± 0.01 mm: 0.97 to 0.99 mm"},
		{coil, "ignition is coil", "coil is coil: yes"},
		{must(calc.NewCond(coil, gap, target, calc.Span{})), "float if ignition is coil, else target of the end float", "1.02 mm if coil is coil, else 0.11 mm = 1.02 mm"},
		{bin(calc.Or, coil, bin(calc.And, coil, bin(calc.GreaterEqual, gap, target))), "ignition is coil or ignition is coil and float ≥ target of the end float", "coil is coil or coil is coil and 1.02 mm ≥ 0.11 mm: yes"},
	} {
		require.Equal(t, c.names, calc.Formula(c.e))
		require.Equal(t, c.nums, calc.FormulaWith(c.e, env))
	}
}

// formulaReader reads back what FormulaWith prints of arithmetic.
type formulaReader struct {
	t      *rapid.T
	tokens []string
}

var formulaToken = regexp.MustCompile(`\(-[\d./]+(?: \d+/\d+)?(?: ?[a-z]+)?\)|[()−]|[+×÷]|-?[\d./]+(?: \d+/\d+)?(?: ?[a-z]+)?`)

func (r *formulaReader) next(tokens ...string) string {
	if len(r.tokens) == 0 || len(tokens) > 0 && !slices.Contains(tokens, r.tokens[0]) {
		return ""
	}
	s := r.tokens[0]
	r.tokens = r.tokens[1:]
	return s
}

func (r *formulaReader) sum() calc.Expr {
	e := r.product()
	for {
		switch r.next("+", "−") {
		case "+":
			e = bin(calc.Add, e, r.product())
		case "−":
			e = bin(calc.Sub, e, r.product())
		default:
			return e
		}
	}
}

func (r *formulaReader) product() calc.Expr {
	e := r.factor()
	for {
		switch r.next("×", "÷") {
		case "×":
			e = bin(calc.Mul, e, r.factor())
		case "÷":
			e = bin(calc.Div, e, r.factor())
		default:
			return e
		}
	}
}

func (r *formulaReader) factor() calc.Expr {
	switch s := r.next(); {
	case s == "−":
		return must(calc.NewUnary(calc.Neg, r.factor(), calc.Span{}))
	case s == "(":
		e := r.sum()
		require.Equal(r.t, ")", r.next(")"))
		return e
	default:
		return lit(strings.Trim(s, "()"))
	}
}

// What a formula prints, read by the usual rules of arithmetic, is the value.
func TestFormulaReadsBack(t *testing.T) {
	env := calc.Readings{varA.Key(): q("-0.41 mm"), varB.Key(): q("0.125 in"), varP.Key(): q("2.5")}
	var arithmetic func(t *rapid.T, depth int) calc.Expr
	arithmetic = func(t *rapid.T, depth int) calc.Expr {
		if depth == 0 {
			return rapid.SampledFrom([]calc.Expr{varA, varB, lit("-1.5 mm"), lit("3/8 in")}).Draw(t, "leaf")
		}
		sub := func() calc.Expr { return arithmetic(t, rapid.IntRange(0, depth-1).Draw(t, "depth")) }
		factor := rapid.SampledFrom([]calc.Expr{varP, lit("-2"), lit("0.5")}).Draw(t, "factor")
		switch rapid.IntRange(0, 5).Draw(t, "node") {
		case 0:
			return bin(calc.Mul, factor, sub())
		case 1:
			return bin(calc.Div, sub(), factor)
		case 2:
			return must(calc.NewUnary(calc.Neg, sub(), calc.Span{}))
		case 3:
			return bin(calc.Mul, sub(), bin(calc.Mul, factor, factor))
		}
		return bin(rapid.SampledFrom([]calc.Op{calc.Add, calc.Sub}).Draw(t, "op"), sub(), sub())
	}
	rapid.Check(t, func(t *rapid.T) {
		e := arithmetic(t, 4)
		left, _, _ := strings.Cut(calc.FormulaWith(e, env), " = ")
		r := &formulaReader{t: t, tokens: formulaToken.FindAllString(left, -1)}
		want, p := calc.Eval(e, env)
		require.Nil(t, p)
		got, p := calc.Eval(r.sum(), calc.Readings{})
		require.Nil(t, p)
		require.Empty(t, r.tokens)
		require.Zero(t, want.(calc.Quantity).Cmp(got.(calc.Quantity)), left)
	})
}

func TestLimitsParts(t *testing.T) {
	limits := calc.NewConst(calc.Limits{Low: ptr(q("0.08 mm")), High: ptr(q("0.14 mm"))}, "end float", calc.Span{})
	atLeast := calc.NewConst(calc.Limits{Low: ptr(q("5 mm"))}, "", calc.Span{})
	centred := call("within", bin(calc.Sub, varA, lit("1 mm")), lit("0.1 mm"))
	require.Equal(t, "low of end float", calc.Formula(calc.LowOf(limits)))
	require.Nil(t, calc.TargetOf(limits))
	require.Nil(t, calc.HighOf(atLeast))
	require.Nil(t, calc.WidthOf(atLeast, calc.Span{}))
	for _, c := range []struct {
		e    calc.Expr
		want string
	}{
		{calc.WidthOf(limits, calc.Span{}), "0.06 mm"},
		{calc.WidthOf(centred, calc.Span{}), "0.20 mm"},
		{calc.HighOf(centred), "0.60 mm"},
		{calc.TargetOf(centred), "0.50 mm"},
		{calc.WidthOf(call("within", lit("20 °C"), lit("2 K")), calc.Span{}), "4 °C"},
	} {
		v, p := calc.Eval(c.e, calc.Readings{varA.Key(): q("1.50 mm")})
		require.Nil(t, p)
		require.Equal(t, c.want, v.(calc.Quantity).String())
	}
	// The centre moves with the reading: what is accepted depends on it, exactly.
	d := domain{varA.Key(): between("1 mm", "2 mm")}
	inside, p := calc.Inside(bin(calc.Sub, varA, lit("0.9 mm")), centred, calc.Span{})
	require.Nil(t, p)
	r := calc.RangeOf(inside, d)
	require.True(t, r.Yes)
	require.False(t, r.No)
	_, p = calc.Inside(lit("1 s"), limits, calc.Span{})
	require.Equal(t, calc.RuleWrongDimension, p.Rule)
}

func TestVars(t *testing.T) {
	a, b := reading("a", calc.Length), reading("b", calc.Length)
	e := bin(calc.Sub, bin(calc.Add, b, a), call("max", a, b))
	require.Equal(t, []*calc.Var{b, a}, calc.Vars(e))
}
