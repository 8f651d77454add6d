package joint

import (
	"encoding/json"
	"math/big"
	"testing"

	"fettle/calc"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestWrenchSetting(t *testing.T) {
	s, p := WrenchSetting(q("300", "lb·in"), q("10", "in"), q("4", "in"), calc.Quantity{})
	require.Nil(t, p)
	require.Equal(t, "1500/7", s.Num().RatString(), cite(t, "X01")) // printed as 214
	require.Equal(t, "214", s.Num().FloatString(0), cite(t, "X01"))
	s, _ = WrenchSetting(q("40", "lb·ft"), q("12", "in"), q("4", "in"), q("0", "°"))
	same(t, "30", s, "lb·ft", cite(t, "X02"))
	a, p := AppliedTorque(q("60", "lb·in"), q("12", "in"), q("2", "in"), calc.Quantity{})
	require.Nil(t, p)
	same(t, "70", a, "lb·in", cite(t, "X05"))
	s, _ = WrenchSetting(q("60", "lb·in"), q("12", "in"), q("2", "in"), q("90", "°"))
	same(t, "60", s, "lb·in", cite(t, "X06"))
	s, _ = WrenchSetting(q("60", "lb·in"), q("12", "in"), q("2", "in"), q("180", "°")) // T L/(L − A)
	same(t, "72", s, "lb·in", cite(t, "X06"))
	s, _ = WrenchSetting(q("60", "N·m"), q("12", "in"), q("2", "in"), q("60", "°"))
	require.Equal(t, "720/13", s.Num().RatString())

	var table struct {
		Examples []struct {
			ID, Unit, Direction, Doc string
			T, Setting               json.Number
			L                        json.Number `json:"L_in"`
			A                        json.Number `json:"A_in"`
			Want                     json.Number `json:"setting_published"`
		}
	}
	published(t, "wrench_adapter.json", &table)
	n := 0
	for _, e := range table.Examples {
		if e.Want == "" {
			continue
		}
		s, p := WrenchSetting(q(number(e.T), "lb·in"), q(number(e.L), "in"), q(number(e.A), "in"), calc.Quantity{})
		require.Nil(t, p)
		require.Equal(t, number(e.Want), s.Num().FloatString(0), e.Doc)
		n++
	}
	require.Equal(t, 2, n)

	_, p = WrenchSetting(q("60", "N·m"), q("4", "in"), q("4", "in"), q("180", "°"))
	require.Contains(t, p.Message, "grip")
	_, p = WrenchSetting(q("60", "N·m"), q("4", "in"), q("4", "in"), q("180", "mm"))
	require.Contains(t, p.Message, "an angle")
	_, p = WrenchSetting(q("60", "N·m"), q("0", "in"), q("4", "in"), calc.Quantity{})
	require.NotNil(t, p)
	_, p = WrenchSetting(q("60", "J"), q("9", "in"), q("4", "in"), calc.Quantity{})
	require.NotNil(t, p)
}

func TestSettingIsUndoneByLeverage(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		mm := func(name string) calc.Quantity {
			return calc.NewQuantity(whole(rapid.IntRange(1, 600).Draw(r, name)), millimetre, 0)
		}
		torque := calc.NewQuantity(whole(rapid.IntRange(1, 500).Draw(r, "torque")), newtonMetre, 0)
		angle := calc.NewQuantity(big.NewRat(rapid.Int64Range(-7200, 7200).Draw(r, "angle"), 10), degree, 1)
		l, a := mm("wrench"), mm("adapter")
		s, p := WrenchSetting(torque, l, a, angle)
		if p != nil {
			require.True(r, a.Cmp(l) >= 0, p.Message)
			return
		}
		back, p := AppliedTorque(s, l, a, angle)
		require.Nil(r, p)
		require.Zero(r, torque.Cmp(back))
	})
}

func TestCosine(t *testing.T) {
	// Exact values of trigonometry; 45° and 36° are √2/2 and (1+√5)/4.
	for d, want := range map[int]string{0: "1", 60: "1/2", 90: "0", 120: "-1/2", 180: "-1", 270: "0", -60: "1/2", 360: "1", 720060: "1/2"} {
		require.Equal(t, want, cosine(whole(d)).RatString(), d)
	}
	const decimals = 27
	require.Equal(t, quo(root(two), two).FloatString(decimals), cosine(whole(45)).FloatString(decimals))
	require.Equal(t, quo(add(one, root(whole(5))), whole(4)).FloatString(decimals), cosine(whole(36)).FloatString(decimals))
	require.Equal(t, "-0.70710678", cosine(whole(135)).FloatString(8))
}

func TestWrenchReach(t *testing.T) {
	scale, share := band("10", "100", "N·m"), q("0.2", "")
	for torque, want := range map[string]Reach{"20": InRange, "100": InRange, "19.9999999999999999999": BelowBand, "9": BelowScale, "100.00000000000000001": AboveScale} {
		got, p := WrenchReach(q(torque, "N·m"), scale, share)
		require.Nil(t, p)
		require.Equal(t, want, got, "%s: %s", torque, cite(t, "W01"))
	}
	// a scale that starts above 20 % of its end; and one that starts at zero
	w, p := WorkingRange(band("40", "100", "N·m"), share)
	require.Nil(t, p)
	same(t, "40", w.Low, "N·m", cite(t, "W05"))
	w, p = WorkingRange(band("0", "50", "lb·ft"), share)
	require.Nil(t, p)
	same(t, "10", w.Low, "lb·ft", cite(t, "W01"))
	_, p = WorkingRange(band("100", "10", "N·m"), share)
	require.NotNil(t, p)

	for full, want := range map[string]string{"10": "0.06", "10.01": "0.04"} {
		a, p := WrenchAccuracy(q(full, "N·m"))
		require.Nil(t, p)
		same(t, want, a, "", cite(t, "W03"))
	}
}
