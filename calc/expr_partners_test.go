package calc_test

import (
	"encoding/json"
	"math/big"
	"testing"

	"github.com/dop251/goja"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/calc"
)

// The page shows values and limits in both systems as Style does.
func TestPageShowsBothSystems(t *testing.T) {
	vm := goja.New()
	v, err := vm.RunString(calc.PageScript + `
	((units, partners, node, first) => {
		const calc = fettleCalc(JSON.parse(units), JSON.parse(partners));
		const [a, b] = calc.both(calc.evaluate(JSON.parse(node)), first);
		return JSON.stringify([a, b || ""]);
	})`)
	require.NoError(t, err)
	run, _ := goja.AssertFunction(v)
	units := calc.Units()
	for _, s := range []string{"N·m/s", "lb/in²", "L/min", "°C"} {
		if u, ok := calc.LookUpUnit(s, "UK"); ok {
			units = append(units, u)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom(units).Draw(t, "unit")
		draw := func(name string) calc.Quantity {
			den := rapid.SampledFrom([]int64{1, 1, 2, 7, 10, 64, 1000}).Draw(t, name+" den")
			return calc.NewQuantity(big.NewRat(rapid.Int64Range(-5000, 5000).Draw(t, name), den), u, rapid.IntRange(-1, 4).Draw(t, name+" decimals"))
		}
		style := calc.Style{First: rapid.SampledFrom([]calc.System{calc.Neither, calc.Metric, calc.Inch}).Draw(t, "first"),
			Gallon: rapid.SampledFrom([]string{"US", "UK"}).Draw(t, "gallon")}
		var value calc.Value
		var want calc.Shown
		a := draw("a")
		switch rapid.IntRange(0, 3).Draw(t, "form") {
		case 0:
			value, want = a, style.Quantity(a)
		case 1:
			value, want = calc.Limits{Low: &a}, style.Limits(&a, nil)
		case 2:
			value, want = calc.Limits{High: &a}, style.Limits(nil, &a)
		default:
			b := draw("b")
			if b.Cmp(a) < 0 {
				a, b = b, a
			}
			value, want = calc.Limits{Low: &a, High: &b}, style.Limits(&a, &b)
		}
		var enc calc.Encoder
		node := enc.AppendValue(nil, value)
		partners := enc.AppendPartners(nil, style.Gallon)
		got, err := run(goja.Undefined(), vm.ToValue(string(enc.AppendUnits(nil))), vm.ToValue(string(partners)), vm.ToValue(string(node)), vm.ToValue(int(style.First)))
		require.NoError(t, err)
		var shown [2]string
		require.NoError(t, json.Unmarshal([]byte(got.String()), &shown))
		require.Equal(t, want, calc.Shown{First: shown[0], Other: shown[1]}, "%s", node)
	})
}
