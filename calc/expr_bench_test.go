package calc_test

import (
	"testing"

	"fettle/calc"
)

// A typical manual: nine constants to one sum of a reading and a limit.
func BenchmarkEval(b *testing.B) {
	env := calc.Readings{varA.Key(): q("1.02 mm")}
	mixed := []calc.Expr{bin(calc.Sub, varA, lit("0.11 mm"))}
	for range 9 {
		mixed = append(mixed, lit("24 N·m"))
	}
	for _, c := range []struct {
		name  string
		exprs []calc.Expr
	}{
		{"step", mixed},
		{"sum", mixed[:1]},
		{"wrench", []calc.Expr{call("wrench_setting", lit("24 N·m"), lit("300 mm"), lit("50 mm"))}},
	} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				if _, p := calc.Eval(c.exprs[i%len(c.exprs)], env); p != nil {
					b.Fatal(p)
				}
			}
		})
	}
}

func BenchmarkRangeOf(b *testing.B) {
	e := bin(calc.Sub, bin(calc.Add, varA, varB), varC)
	b.ReportAllocs()
	for b.Loop() {
		calc.RangeOf(e, world)
	}
}

func BenchmarkWitness(b *testing.B) {
	e := bin(calc.Sub, bin(calc.Mul, varP, varA), varB)
	for b.Loop() {
		calc.Witness(e, world, func(v calc.Value) bool { return false })
	}
}

func BenchmarkFormulaWith(b *testing.B) {
	env := calc.Readings{varA.Key(): q("1.02 mm")}
	e := bin(calc.Sub, varA, lit("0.11 mm"))
	b.ReportAllocs()
	for b.Loop() {
		calc.FormulaWith(e, env)
	}
}
