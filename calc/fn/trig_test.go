package fn

import (
	"math"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// Machine arithmetic agrees as far as it goes.
func TestTrigAgainstMath(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		deg := big.NewRat(rapid.Int64Range(-720_000, 720_000).Draw(t, "thousandths"), 1000)
		decimals := rapid.IntRange(0, 9).Draw(t, "decimals")
		x, _ := deg.Float64()
		x *= math.Pi / 180
		near := func(want float64, got *big.Rat, ok bool) {
			require.True(t, ok)
			f, _ := got.Float64()
			require.InDelta(t, want, f, 0.5000001*math.Pow10(-decimals)+1e-12*math.Abs(want))
			require.True(t, new(big.Rat).Mul(got, new(big.Rat).SetInt(power10(decimals))).IsInt())
		}
		s, ok := sine(deg, decimals)
		near(math.Sin(x), s, ok)
		c, ok := cosineAt(deg, decimals)
		near(math.Cos(x), c, ok)
		if r, pole, ok := tangent(deg, decimals); !pole && math.Abs(math.Tan(x)) < 1e4 {
			near(math.Tan(x), r, ok)
		}
	})
}

// Half to even where the value is a tie, and the sign of every quarter.
func TestTrigTiesAndQuarters(t *testing.T) {
	for deg, want := range map[int64][2]string{
		30: {"0", "1/2"}, 150: {"0", "1/2"}, 210: {"0", "-1/2"}, 330: {"0", "-1/2"}, -30: {"0", "-1/2"},
		0: {"0", "0"}, 90: {"1", "1"}, 180: {"0", "0"}, 270: {"-1", "-1"}, 360: {"0", "0"}, 450: {"1", "1"},
	} {
		for i, decimals := range []int{0, 1} {
			r, ok := sine(big.NewRat(deg, 1), decimals)
			require.True(t, ok)
			require.Equal(t, want[i], r.RatString(), "%d° to %d decimals", deg, decimals)
		}
	}
	for deg, want := range map[int64]string{45: "1", 135: "-1", 225: "1", -45: "-1", 180: "0"} {
		r, pole, ok := tangent(big.NewRat(deg, 1), 3)
		require.True(t, ok && !pole)
		require.Equal(t, want, r.RatString())
	}
	_, pole, _ := tangent(big.NewRat(-90, 1), 3)
	require.True(t, pole)
}

// Sines of some angles are written with √5 and √3 (Euclid XIII), which
// whole-number roots give to any number of digits.
func TestTrigClosedForms(t *testing.T) {
	const digits = 40
	root := func(n int64) *big.Int { // √n scaled by 10^(digits+10)
		v := new(big.Int).Mul(big.NewInt(n), power10(2*(digits+10)))
		return v.Sqrt(v)
	}
	unit := power10(digits + 10)
	rounded := func(v *big.Int, over int64) string {
		return roundOff(v.Quo(v, big.NewInt(over)), 10).String()
	}
	scaled := func(r *big.Rat, ok bool) string {
		require.True(t, ok)
		return new(big.Rat).Mul(r, new(big.Rat).SetInt(power10(digits))).RatString()
	}
	r, ok := sine(big.NewRat(18, 1), digits) // (√5 - 1) ÷ 4
	require.Equal(t, rounded(new(big.Int).Sub(root(5), unit), 4), scaled(r, ok))
	r, ok = cosineAt(big.NewRat(36, 1), digits) // (√5 + 1) ÷ 4
	require.Equal(t, rounded(new(big.Int).Add(root(5), unit), 4), scaled(r, ok))
	r, _, ok = tangent(big.NewRat(15, 1), digits) // 2 - √3
	require.Equal(t, rounded(new(big.Int).Sub(new(big.Int).Mul(big.NewInt(2), unit), root(3)), 1), scaled(r, ok))
	r, ok = sine(big.NewRat(60, 1), digits) // √3 ÷ 2
	require.Equal(t, rounded(root(3), 2), scaled(r, ok))
}

func BenchmarkCos(b *testing.B) {
	deg := big.NewRat(37, 1)
	for b.Loop() {
		cosineAt(deg, cosDecimals)
	}
}
