package values_test

import (
	"fmt"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/calc"
	"fettle/lang/values"
)

// Whatever is read within what is likely, every value of the build lies in the
// range that was promised of it, and a pack inside its limit and the kit.
func TestValuesLieInTheirRanges(t *testing.T) {
	m := load(t, manual)
	plan := values.NewPlan(m)
	ranges := plan.Ranges()
	hundredth := func(t *rapid.T, name string, low, high int) calc.Quantity {
		n := rapid.IntRange(low, high).Draw(t, name)
		return quantity(fmt.Sprintf("%d.%02d mm", n/100, n%100))
	}
	rapid.Check(t, func(t *rapid.T) {
		given := map[string][]calc.Quantity{
			"thrust_end.measure.float":     {hundredth(t, "float", 55, 145)},
			`bores.measure.depth["left"]`:  {hundredth(t, "left", 30, 50)},
			`bores.measure.depth["right"]`: {hundredth(t, "right", 40, 60)},
		}
		env := plan.With(values.Given{Readings: given})
		for _, v := range []calc.Var{
			{Name: "thrust_end.measure.float"},
			{Name: "thrust_end.choose.pack.total"},
			{Name: "thrust_end.choose.pack.result"},
			{Name: "bores.choose.filler.total", Place: "left"},
			{Name: "bores.choose.filler.result", Place: "right"},
		} {
			v.Of = calc.NumberOf(calc.Length)
			got, ok := env.Value(&v).(calc.Quantity)
			if !ok {
				continue // no pack fits, which is said
			}
			in := calc.RangeOf(&v, ranges).Number
			require.True(t, in.Contains(got.Base()), "%s is %s", v.Key(), got)
		}
		used := map[string]int{}
		for _, at := range []struct{ key, place string }{{"thrust_end.choose.pack", ""}, {"bores.choose.filler", "left"}, {"bores.choose.filler", "right"}} {
			pack := env.Pack(step(m, at.key), at.place)
			if pack == nil {
				continue
			}
			sum := new(big.Rat)
			for _, l := range pack.Lines {
				used[l.Label] += l.Count
				sum.Add(sum, new(big.Rat).Mul(l.Is.Num(), big.NewRat(int64(l.Count), 1)))
			}
			require.Zero(t, sum.Cmp(pack.Total.Num()), "the pieces make the total")
		}
		for label, n := range used {
			require.LessOrEqual(t, n, map[string]int{"0.10 mm": 2, "0.20 mm": 2, "0.30 mm": 3}[label], label)
		}
	})
}

// Whatever somebody types is either taken or refused in words.
func FuzzParseReading(f *testing.F) {
	for _, s := range [][2]string{
		{"thrust_end.measure.float", "1.02 mm"}, {"thrust_end.measure.float", "1.01; 1.02; 1.03 mm"},
		{`bores.measure.depth["left"]`, "0.4 mm"}, {"bores.measure.depth[left]", "0,4 mm"}, {"procedure.x", "1"},
		{"", ""}, {"[", ";"}, {"thrust_end.measure.float", "9e99 mm"}, {"thrust_end.measure.float", "; mm"}, {"thrust_end.choose.pack", "1 mm"},
	} {
		f.Add(s[0], s[1])
	}
	m := load(f, manual)
	f.Fuzz(func(t *testing.T, address, value string) {
		key, read, problem := values.ParseReading(m, address, value)
		require.Equal(t, key == "", read == nil)
		if key == "" {
			require.NotEmpty(t, problem.Message)
			require.NotEmpty(t, problem.Remedy)
		}
	})
}
