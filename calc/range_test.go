package calc_test

import (
	"fmt"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/calc"
)

// domain is a Domain by Var.Key.
type domain map[string]calc.Possible

func (d domain) Possible(v *calc.Var) calc.Possible { return d[v.Key()] }

func between(low, high string) calc.Possible {
	return calc.Possible{Low: ptr(q(low)), High: ptr(q(high))}
}

var (
	varA = reading("p.measure.a", calc.Length)
	varB = reading("p.measure.b", calc.Length)
	varP = reading("p.measure.ratio", calc.Plain)
	varT = reading("p.measure.oil", calc.Temperature)
	varC = reading("p.calculate.c", calc.Length)
	varW = &calc.Var{Name: "option.ignition", Of: calc.WordType}

	world = domain{
		varA.Key(): between("-0.50 mm", "1.45 mm"),
		varB.Key(): between("0.010 in", "0.200 in"),
		varP.Key(): between("-2", "3.5"),
		varT.Key(): between("-10 °C", "95 °C"),
		varC.Key(): {Is: bin(calc.Sub, bin(calc.Mul, num(2), varA), varB)},
		varW.Key(): {Words: []string{"coil", "magneto"}},
	}
)

// readings draws one possible reading for every variable.
func readings(t *rapid.T) calc.Readings {
	env := calc.Readings{varW.Key(): calc.Word(rapid.SampledFrom(world[varW.Key()].Words).Draw(t, "ignition"))}
	for _, v := range []*calc.Var{varA, varB, varP, varT} {
		p := world[v.Key()]
		n := rapid.Int64Range(0, 12).Draw(t, v.Key())
		r := new(big.Rat).Sub(p.High.In(p.Low.Unit).Num(), p.Low.Num())
		r.Mul(r, big.NewRat(n, 12)).Add(r, p.Low.Num())
		env[v.Key()] = calc.NewQuantity(r, p.Low.Unit, p.Low.Decimals+1)
	}
	c, problem := calc.Eval(world[varC.Key()].Is, env)
	if problem != nil {
		t.Fatal(problem)
	}
	env[varC.Key()] = c
	return env
}

var (
	lengths = []string{"0 mm", "1 mm", "-0.25 mm", "0.030 in", "3/8 in", "2.54 cm"}
	plains  = []string{"0", "1", "-2", "0.5", "3", "7"}
	temps   = []string{"20 °C", "68 °F", "-5 °C"}
)

// length, plain, temperature and truth draw a sound expression.
func length(t *rapid.T, depth int) calc.Expr {
	if depth == 0 {
		if rapid.Bool().Draw(t, "reading") {
			return rapid.SampledFrom([]calc.Expr{varA, varB, varC}).Draw(t, "length")
		}
		return lit(rapid.SampledFrom(lengths).Draw(t, "length"))
	}
	depth--
	sub := func() calc.Expr { return length(t, depth) }
	switch rapid.IntRange(0, 11).Draw(t, "length node") {
	case 0, 1:
		return bin(calc.Add, sub(), sub())
	case 2, 3:
		return bin(calc.Sub, sub(), sub())
	case 4:
		return bin(calc.Mul, plain(t, depth), sub())
	case 5:
		return bin(calc.Div, sub(), plain(t, depth))
	case 6:
		return must(calc.NewUnary(calc.Neg, sub(), calc.Span{}))
	case 7:
		return must(calc.NewCond(truth(t, depth), sub(), sub(), calc.Span{}))
	case 8:
		return call(rapid.SampledFrom([]string{"min", "max", "mean", "sum", "spread"}).Draw(t, "f"), sub(), sub(), sub())
	case 9:
		return call("abs", sub())
	case 10:
		f := rapid.SampledFrom([]string{"round", "round_up", "round_down"}).Draw(t, "f")
		return call(f, sub(), lit(rapid.SampledFrom([]string{"0.05 mm", "0.001 in"}).Draw(t, "step")))
	}
	return bin(calc.Div, bin(calc.Mul, sub(), sub()), sub())
}

func plain(t *rapid.T, depth int) calc.Expr {
	if depth == 0 {
		if rapid.Bool().Draw(t, "reading") {
			return varP
		}
		return lit(rapid.SampledFrom(plains).Draw(t, "plain"))
	}
	depth--
	switch rapid.IntRange(0, 5).Draw(t, "plain node") {
	case 0:
		return bin(rapid.SampledFrom([]calc.Op{calc.Add, calc.Sub, calc.Mul, calc.Div}).Draw(t, "op"), plain(t, depth), plain(t, depth))
	case 1:
		return bin(calc.Div, length(t, depth), length(t, depth))
	case 2:
		return call("cos", lit(rapid.SampledFrom([]string{"0°", "35°", "90°", "180°"}).Draw(t, "angle")), num(6))
	case 3:
		diff := bin(calc.Sub, temperature(t, depth), temperature(t, depth))
		return bin(calc.Mul, diff, lit("11.5 ppm/K"))
	}
	return call(rapid.SampledFrom([]string{"min", "max", "mean"}).Draw(t, "f"), plain(t, depth), plain(t, depth))
}

func temperature(t *rapid.T, depth int) calc.Expr {
	if depth == 0 {
		if rapid.Bool().Draw(t, "reading") {
			return varT
		}
		return lit(rapid.SampledFrom(temps).Draw(t, "temperature"))
	}
	depth--
	switch rapid.IntRange(0, 3).Draw(t, "temperature node") {
	case 0:
		return bin(calc.Add, temperature(t, depth), bin(calc.Sub, temperature(t, depth), temperature(t, depth)))
	case 1:
		return bin(calc.Sub, temperature(t, depth), lit("10 K"))
	case 2:
		return call("round", temperature(t, depth), lit("5 K"))
	}
	return call(rapid.SampledFrom([]string{"min", "max", "mean"}).Draw(t, "f"), temperature(t, depth), temperature(t, depth))
}

var comparisons = []calc.Op{calc.Less, calc.LessEqual, calc.Greater, calc.GreaterEqual, calc.Equal, calc.NotEqual}

func truth(t *rapid.T, depth int) calc.Expr {
	if depth == 0 {
		return bin(rapid.SampledFrom([]calc.Op{calc.Equal, calc.NotEqual}).Draw(t, "op"), varW, calc.NewConst(calc.Word("coil"), "", calc.Span{}))
	}
	depth--
	switch rapid.IntRange(0, 4).Draw(t, "truth node") {
	case 0:
		return must(calc.NewUnary(calc.Not, truth(t, depth), calc.Span{}))
	case 1:
		return bin(rapid.SampledFrom([]calc.Op{calc.And, calc.Or, calc.Equal}).Draw(t, "op"), truth(t, depth), truth(t, depth))
	}
	return bin(rapid.SampledFrom(comparisons).Draw(t, "op"), length(t, depth), length(t, depth))
}

// expression draws one of any type.
func expression(t *rapid.T, depth int) calc.Expr {
	switch rapid.IntRange(0, 5).Draw(t, "type") {
	case 0:
		return plain(t, depth)
	case 1:
		return temperature(t, depth)
	case 2:
		return truth(t, depth)
	case 3:
		return call("within", length(t, depth), lit("0.010 in"))
	}
	return length(t, depth)
}

// evalLiesInRange is the property that all range findings rest on.
func evalLiesInRange(t *rapid.T) {
	e := expression(t, rapid.IntRange(0, 4).Draw(t, "depth"))
	r := calc.RangeOf(e, world)
	v, p := calc.Eval(e, readings(t))
	if p != nil {
		if p.Rule == calc.RuleDivisionByZero {
			require.NotEmpty(t, r.ZeroDivide, calc.Formula(e))
		}
		return
	}
	switch v := v.(type) {
	case calc.Quantity:
		require.True(t, r.Number.Contains(v.Base()), "%s is %s", calc.Formula(e), v)
	case calc.Truth:
		require.True(t, bool(v) && r.Yes || !bool(v) && r.No, calc.Formula(e))
	case calc.Limits:
		require.True(t, r.Number.Contains(v.Low.Base()) && r.Number.Contains(v.High.Base()))
	}
}

func TestEvalLiesInRange(t *testing.T) { rapid.Check(t, evalLiesInRange) }

// Fuzzing goes the same way with bytes for choices: no tree panics or hangs.
func FuzzEval(f *testing.F) {
	for n := range 16 {
		seed := make([]byte, 256)
		for i := range seed {
			seed[i] = byte(i*i*n + 31*i + n)
		}
		f.Add(seed)
	}
	f.Fuzz(rapid.MakeFuzz(evalLiesInRange))
}

// linear draws a sum of multiples of readings, the same ones several times.
func linear(t *rapid.T) calc.Expr {
	var e calc.Expr = lit(rapid.SampledFrom(lengths).Draw(t, "c"))
	for range rapid.IntRange(1, 8).Draw(t, "terms") {
		v := rapid.SampledFrom([]calc.Expr{varA, varB, varC}).Draw(t, "v")
		k := num(rapid.Int64Range(-3, 3).Draw(t, "k"))
		e = bin(rapid.SampledFrom([]calc.Op{calc.Add, calc.Sub}).Draw(t, "op"), e, bin(calc.Mul, k, v))
	}
	return e
}

// A linear expression takes its extremes where every reading is at an end.
func TestLinearRangeIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := linear(t)
		var want calc.Interval
		for n := range 4 {
			env := calc.Readings{}
			for i, v := range []*calc.Var{varA, varB} {
				p := world[v.Key()]
				env[v.Key()] = *[]*calc.Quantity{p.Low, p.High}[n>>i&1]
			}
			c, _ := calc.Eval(world[varC.Key()].Is, env)
			env[varC.Key()] = c
			v, p := calc.Eval(e, env)
			require.Nil(t, p)
			at := calc.PointInterval(v.(calc.Quantity).Base())
			if n == 0 {
				want = at
			}
			want = want.Hull(at)
		}
		got := calc.RangeOf(e, world).Number
		require.Zero(t, want.Lo.Cmp(got.Lo), "%s: %s, want %s", calc.Formula(e), got.Lo, want.Lo)
		require.Zero(t, want.Hi.Cmp(got.Hi))

		// Inside the range there is always a witness, at the ends too.
		hi := got.Hi
		found := calc.Witness(e, world, func(v calc.Value) bool { return v.(calc.Quantity).Base().Cmp(hi) >= 0 })
		require.NotNil(t, found)
	})
}

func TestRange(t *testing.T) {
	sum := bin(calc.Add, varA, varB)
	gap := &calc.Var{Name: "m.gap", Of: calc.NumberOf(calc.Length)}
	result := &calc.Var{Name: "m.choose.pack.result", Of: calc.NumberOf(calc.Length)}
	total := &calc.Var{Name: "m.choose.pack.total", Of: calc.NumberOf(calc.Length)}
	d := domain{
		varA.Key(): between("1 mm", "2 mm"), varB.Key(): between("3 mm", "5 mm"), varP.Key(): between("0", "2"),
		gap.Key(): between("0.55 mm", "1.45 mm"), result.Key(): between("0.08 mm", "0.14 mm"),
		total.Key(): {Is: bin(calc.Sub, gap, result)},
	}
	for _, c := range []struct {
		e        calc.Expr
		low, hig string
	}{
		{bin(calc.Sub, sum, varA), "3 mm", "5 mm"},
		{bin(calc.Sub, gap, total), "0.08 mm", "0.14 mm"}, // what the choice guarantees
		{total, "0.41 mm", "1.37 mm"},
		{call("max", varA, varB), "3 mm", "5 mm"},
		{call("min", bin(calc.Mul, num(2), varA), varB), "2 mm", "4 mm"},
		{call("abs", bin(calc.Sub, varA, lit("1.5 mm"))), "0 mm", "0.5 mm"},
		{call("spread", varA, varB), "1 mm", "4 mm"},
		{call("wrench_setting", lit("40 lb·ft"), lit("12 in"), lit("4 in")), "30 lb·ft", "30 lb·ft"},
		{call("applied_torque", lit("60 N·m"), bin(calc.Mul, num(100), varA), lit("100 mm")), "90 N·m", "120 N·m"},
		{bin(calc.Div, bin(calc.Mul, varA, varA), varA), "0.5 mm", "4 mm"}, // wider than possible, never narrower
		{must(calc.NewCond(bin(calc.Less, varA, varB), varA, varB, calc.Span{})), "1 mm", "2 mm"},
	} {
		r := calc.RangeOf(c.e, d)
		require.Zero(t, q(c.low).Base().Cmp(r.Number.Lo), "%s from %s", calc.Formula(c.e), r.Number.Lo)
		require.Zero(t, q(c.hig).Base().Cmp(r.Number.Hi), "%s to %s", calc.Formula(c.e), r.Number.Hi)
		require.Empty(t, r.ZeroDivide)
	}
	oil := calc.RangeOf(bin(calc.Add, varT, lit("5 K")), world).Number
	require.Equal(t, "100 °C", calc.FromBase(oil.Hi, q("1 °C").Unit, 0).String())

	at := calc.Span{Start: 7, End: 12}
	over := must(calc.NewBinary(calc.Div, varA, bin(calc.Sub, varA, lit("1.5 mm")), at))
	require.Equal(t, []calc.Span{at}, calc.RangeOf(over, d).ZeroDivide)
	require.Nil(t, calc.RangeOf(over, d).Number.Hi)
	require.Equal(t, []calc.Span{at}, calc.RangeOf(call("mean", over, num(1)), d).ZeroDivide)
	require.Empty(t, calc.RangeOf(bin(calc.Div, varA, sum), d).ZeroDivide)
}

// A ring of formulas is a finding elsewhere; here it must only end.
func TestRangeOfRing(t *testing.T) {
	d := domain{varA.Key(): {Is: bin(calc.Add, varB, lit("1 mm"))}, varB.Key(): {Is: bin(calc.Add, varA, lit("1 mm"))}}
	require.Nil(t, calc.RangeOf(varA, d).Number.Lo)
	require.Nil(t, calc.Witness(varA, d, func(calc.Value) bool { return true }))
}

func TestWitness(t *testing.T) {
	d := domain{
		varA.Key(): between("0.55 mm", "1.45 mm"), varB.Key(): between("0.10 mm", "0.20 mm"),
		varP.Key(): between("0", "10"), varW.Key(): {Words: []string{"coil", "magneto"}},
	}
	above := func(s string) func(calc.Value) bool {
		return func(v calc.Value) bool { return v.(calc.Quantity).Cmp(q(s)) > 0 }
	}
	coil := bin(calc.Equal, varW, calc.NewConst(calc.Word("coil"), "", calc.Span{}))
	quadratic := bin(calc.Mul, varP, bin(calc.Sub, num(10), varP)) // 25 at 5, 0 at both ends

	for _, c := range []struct {
		e       calc.Expr
		outside func(calc.Value) bool
		want    string
	}{
		{bin(calc.Div, lit("1 mm"), bin(calc.Sub, varA, lit("1.02 mm"))), nil, "1.02 mm"},
		{bin(calc.Sub, varA, varB), above("1.34 mm"), "1.45 mm, 0.10 mm"},
		{quadratic, above("24.9"), "5"},
		{bin(calc.LessEqual, quadratic, lit("24.9")), func(v calc.Value) bool { return !bool(v.(calc.Truth)) }, "5"},
		{must(calc.NewCond(coil, lit("1 mm"), varA, calc.Span{})), above("1.44 mm"), "magneto, 1.45 mm"},
		{must(calc.NewCond(bin(calc.Equal, varA, lit("1.17 mm")), lit("9 mm"), varA, calc.Span{})), above("8 mm"), "1.17 mm"},
		// Not reached: no reading that an instrument shows is 2/3 mm.
		{bin(calc.Div, lit("1 mm"), bin(calc.Sub, bin(calc.Mul, num(3), varA), lit("2 mm"))), nil, ""},
		// The range is too wide to tell, and there is no such reading.
		{bin(calc.Sub, bin(calc.Mul, varA, varA), bin(calc.Mul, varA, varA)), func(v calc.Value) bool { return v.(calc.Quantity).Sign() != 0 }, ""},
	} {
		found := calc.Witness(c.e, d, c.outside)
		if c.want == "" {
			require.Nil(t, found, calc.Formula(c.e))
			continue
		}
		require.NotNil(t, found, calc.Formula(c.e))
		var got string
		env := calc.Readings{}
		for i, r := range found.Readings {
			if i > 0 {
				got += ", "
			}
			got += fmt.Sprint(r.Value)
			env[r.Var.Key()] = r.Value
		}
		require.Equal(t, c.want, got, calc.Formula(c.e))
		v, p := calc.Eval(c.e, env)
		require.Equal(t, found.Value, v)
		require.Equal(t, found.Problem, p)
	}
}

// What a choice only promises is not taken for a reading: its own work decides.
func TestWitnessWorksChoicesOut(t *testing.T) {
	total := &calc.Var{Name: "p.choose.pack.total", Of: calc.NumberOf(calc.Length)}
	result := &calc.Var{Name: "p.choose.pack.result", Of: calc.NumberOf(calc.Length)}
	d := domain{
		varA.Key():   between("0.50 mm", "0.60 mm"),
		result.Key(): between("0.08 mm", "0.14 mm"),
		total.Key(): {Is: bin(calc.Sub, varA, result), Rests: []calc.Expr{varA},
			Work: func(env calc.Env) (calc.Value, *calc.Problem) { return q("0.45 mm"), nil }},
	}
	above := func(s string) func(calc.Value) bool {
		return func(v calc.Value) bool { return v.(calc.Quantity).Cmp(q(s)) > 0 }
	}
	require.Zero(t, q("0.52 mm").Base().Cmp(calc.RangeOf(total, d).Number.Hi))
	require.Nil(t, calc.Witness(total, d, above("0.50 mm")))
	require.NotNil(t, calc.Witness(total, d, above("0.44 mm")))
}
