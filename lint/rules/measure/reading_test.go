package measure

import (
	"fmt"
	"math/big"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/calc"
	"fettle/lang"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// What an error in a reading does to a formula is what the formula says: the
// factor found by walking the formula equals the difference of its exact values.
func TestSpreadIsTheDifferenceOfValues(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		formula := affine(rt, 3)
		m, found, err := lang.Load(fstest.MapFS{"m/m.proc.hcl": {Data: []byte(manual(formula))}}, "m")
		require.NoError(rt, err)
		require.Empty(rt, found, formula)
		p := &rule.Pass{Manual: m, Index: rule.NewIndex(m)}
		s := &spread{pass: p, ranges: lazily(func() *values.Ranges { return p.Plan().Ranges() })}
		is := m.Find("p.calculate.c").Formula("is", "")
		s.follow(is.Expr, big.NewRat(1, 1))

		for _, id := range []string{"a", "b"} {
			n := m.Find("p.measure." + id)
			rise := new(big.Rat).Sub(at(rt, is.Expr, id, "3 mm"), at(rt, is.Expr, id, "2 mm"))
			rise.Quo(rise, big.NewRat(1, 1000)) // both are in metres
			rise.Abs(rise)
			factor := new(big.Rat)
			for _, r := range s.reached {
				if r.reading == n {
					factor = r.factor()
				}
			}
			require.Zero(rt, rise.Cmp(factor), "%s: %s is %s, not %s", formula, id, factor, rise)
		}
	})
}

// at is the value of e with one reading as given and the other at 5 mm.
func at(t require.TestingT, e calc.Expr, id, value string) *big.Rat {
	env := calc.Readings{}
	for _, other := range []string{"a", "b"} {
		v := "5 mm"
		if other == id {
			v = value
		}
		lit, problems := calc.ParseLiteral(v, calc.Context{})
		require.Empty(t, problems)
		env["p.measure."+other] = *lit.Nominal
	}
	v, p := calc.Eval(e, env)
	require.Nil(t, p)
	return v.(calc.Quantity).Base()
}

func affine(t *rapid.T, depth int) string {
	if depth == 0 {
		return rapid.SampledFrom([]string{"measure.a", "measure.b", `"1.5 mm"`}).Draw(t, "leaf")
	}
	x, y := affine(t, depth-1), rapid.SampledFrom([]string{"measure.a", "measure.b"}).Draw(t, "y")
	k := rapid.SampledFrom([]string{"2", "0.5", "3"}).Draw(t, "k")
	switch rapid.IntRange(0, 4).Draw(t, "op") {
	case 0:
		return fmt.Sprintf("(%s + %s)", y, x)
	case 1:
		return fmt.Sprintf("(%s - %s)", y, x)
	case 2:
		return fmt.Sprintf("(%s * (%s + %s))", k, y, x)
	case 3:
		return fmt.Sprintf("((%s + %s) / %s)", y, x, k)
	}
	return fmt.Sprintf("mean(%s, %s)", y, x)
}

func manual(formula string) string {
	return `manual "m" {
  title    = "M"
  units    = "metric"
  revision = "A"
  order    = [procedure.p]
}

part "x" {
  name = "X"
}

procedure "p" {
  title = "P"

  measure "a" {
    title  = "Measure a"
    on     = [part.x]
    likely = "1..9 mm"
  }

  measure "b" {
    title  = "Measure b"
    on     = [part.x]
    likely = "1..9 mm"
  }

  calculate "c" {
    title  = "Work it out"
    is     = ` + formula + `
    accept = "0..100 mm"
  }
}
`
}
