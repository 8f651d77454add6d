package calc_test

import (
	"encoding/json"
	"fmt"
	"testing"

	"github.com/dop251/goja"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/calc"
	"fettle/calc/fn"
)

// page is a JavaScript engine with the page's script.
type page struct {
	vm  *goja.Runtime
	run goja.Callable
}

func newPage(t testing.TB) page {
	vm := goja.New()
	v, err := vm.RunString(calc.PageScript + `
	((units, node, env, parts) => {
		units = JSON.parse(units);
		const calc = fettleCalc(units), known = JSON.parse(env);
		const value = (key) => key in known ? calc.evaluate(known[key]) : undefined;
		if (parts) return calc.formula(JSON.parse(parts), JSON.parse(node), value);
		const text = (v) => v.num ? [v.num.n + "/" + v.num.d, units[v.unit][0], v.decimals, calc.show(v)].join(" ")
			: v.low !== undefined ? text(v.low) + ".." + text(v.high) : calc.show(v);
		try { return text(calc.evaluate(JSON.parse(node), value)); }
		catch (e) { if (e.problem) return e.problem; throw e; }
	})`)
	require.NoError(t, err)
	run, ok := goja.AssertFunction(v)
	require.True(t, ok)
	return page{vm, run}
}

// call runs the page on e: its value as goText writes it, or its formula.
func (p page) call(t require.TestingT, e calc.Expr, env calc.Readings, formula bool) string {
	var enc calc.Encoder
	node := enc.AppendExpr(nil, e)
	var parts []byte
	if formula {
		parts = enc.AppendFormula(nil, e)
	}
	known := map[string]json.RawMessage{}
	for key, v := range env {
		known[key] = enc.AppendValue(nil, v)
	}
	values, err := json.Marshal(known)
	require.NoError(t, err)
	got, err := p.run(goja.Undefined(), p.vm.ToValue(string(enc.AppendUnits(nil))),
		p.vm.ToValue(string(node)), p.vm.ToValue(string(values)), p.vm.ToValue(string(parts)))
	require.NoError(t, err, "%s", node)
	return got.String()
}

// goText is what Go makes of e, written as the page's test writes it.
func goText(v calc.Value, p *calc.Problem) string {
	switch v := v.(type) {
	case nil:
		return map[string]string{calc.RuleDivisionByZero: "zero", calc.RuleUnknown: "unknown",
			calc.RuleOutOfReach: "large", calc.RuleArguments: "arguments"}[p.Rule]
	case calc.Quantity:
		return fmt.Sprintf("%s/%s %s %d %s", v.Num().Num(), v.Num().Denom(), v.Unit.Name, v.Decimals, v)
	case calc.Limits:
		return goText(*v.Low, nil) + ".." + goText(*v.High, nil)
	case calc.Truth:
		if v {
			return "yes"
		}
		return "no"
	}
	panic("unexpected")
}

// Go and the page give the same number, unit, decimals and text.
func TestPageAgrees(t *testing.T) {
	p := newPage(t)
	rapid.Check(t, func(t *rapid.T) {
		e := expression(t, rapid.IntRange(0, 4).Draw(t, "depth"))
		env := readings(t)
		if rapid.IntRange(0, 9).Draw(t, "forget") == 0 {
			delete(env, varA.Key())
		}
		require.Equal(t, goText(calc.Eval(e, env)), p.call(t, e, env, false), calc.Formula(e))
		require.Equal(t, calc.FormulaWith(e, env), p.call(t, e, env, true))
	})
}

func TestPageAgreesOnFunctions(t *testing.T) {
	p := newPage(t)
	angles := []string{"0°", "1°", "30°", "45°", "89.9999999°", "90°", "135°", "-30°", "1000.5°", "1/3 turn", "0.000000001°"}
	var exprs []calc.Expr
	for _, name := range []string{"sin", "cos", "tan"} {
		for i, a := range angles {
			exprs = append(exprs, call(name, lit(a), num(int64(i*4))))
		}
		exprs = append(exprs, call(name, lit("1°"), num(41)), call(name, lit("1°"), lit("0.5")))
	}
	exprs = append(exprs,
		call("wrench_setting", lit("40 lb·ft"), lit("12 in"), lit("4 in"), lit("45°")),
		call("applied_torque", lit("60 N·m"), lit("300 mm"), lit("2 in")),
		call("preload", lit("40 lb·ft"), lit("0.18"), lit("3/8 in")),
		call("torque_for_preload", lit("20 kN"), lit("0.18"), lit("10 mm")),
		call("thermal_growth", lit("50.00 mm"), lit("11.5 ppm/K"), lit("100 Δ°F")),
		call("shrink_fit_temperature", lit("0.109 mm"), lit("11.5 ppm/K"), lit("50 mm"), lit("68 °F")),
		call("round", lit("2.5 mm"), lit("-1 mm")),
		call("round", lit("2.5 mm"), lit("1/64 in")),
		call("round", lit("3 1/16 in"), lit("1/64 in")),
		call("mean", lit("1/3 turn"), lit("45°")),
		call("spread", lit("20 °C"), lit("86 °F")),
		bin(calc.Div, lit("3/8 in"), num(7)),
		bin(calc.Mul, bin(calc.Mul, lit("3 mm"), lit("4 mm²")), lit("2 mm")),
	)
	for _, e := range exprs {
		require.Equal(t, goText(calc.Eval(e, calc.Readings{})), p.call(t, e, calc.Readings{}, false), calc.Formula(e))
	}
	require.Len(t, fn.All(), 19, "a new function belongs in this test, and in expr_page.js unless it has a body")
}

func BenchmarkPage(b *testing.B) {
	p := newPage(b)
	e := bin(calc.Sub, varA, lit("0.11 mm"))
	env := calc.Readings{varA.Key(): q("1.02 mm")}
	for b.Loop() {
		p.call(b, e, env, false)
	}
}
