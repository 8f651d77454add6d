package calc

import (
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
)

// The sizes of E05, in inches: TM 9-2320-266-34, p. 19-7, Table 19-1 (read in
// the document). How many of each the kit holds is ours.
const publishedShims = "0.003x3 0.005x3 0.010x6"

// E01, TM 10-3930-660-34, para 16-21, p. 16-137 (read in the document): mean of
// 0.029 and 0.027 less a preload of 0.008 in gives a shim of 0.020 in. That two
// of 0.010 in make it up is computed from read inputs.
func TestPublishedShimFromTwoDepths(t *testing.T) {
	f := mustFit(t, fitOf(publishedShims, "0..4", "0.008..0.008"))
	pick, err := f.Solve(middle(num("0.029"), num("0.027")))
	require.NoError(t, err)
	require.Zero(t, pick.Total.Cmp(num("0.020")))
	require.Equal(t, []int{0, 0, 2}, pick.Counts)
}

// E02, TM 5-4210-233-14&P-2, p. 6-152, Table c (read in the document): each
// step of washer shifts the served readings by 0.010 in, and the readings
// between 0.016 and 0.017 and between 0.026 and 0.027 in have no washer. Row 1
// is printed as 'below 0.016'; a limit here includes its end. Read as limits,
// the rows leave 0.007 to 0.016 in of end play (computed from read inputs).
func TestPublishedTableHasItsGaps(t *testing.T) {
	f := mustFit(t, fitOf("0x1 0.010x1 0.020x1", "1..1", "0.007..0.016"))
	cover, err := f.Coverage(num("0.010"), num("0.040"))
	require.NoError(t, err)
	require.Len(t, cover.Gaps, 3)
	for i, want := range [][2]string{{"0.016", "0.017"}, {"0.026", "0.027"}} {
		g := cover.Gaps[i]
		require.True(t, g.LowOpen && g.HighOpen)
		require.Zero(t, g.Low.Cmp(num(want[0])))
		require.Zero(t, g.High.Cmp(num(want[1])))
	}
	last := cover.Gaps[2] // 'above 0.036: replace crankshaft'
	require.Zero(t, last.Low.Cmp(num("0.036")))
	require.True(t, last.LowOpen)
	for reading, washer := range map[string]int{"0.0159": 0, "0.017": 1, "0.026": 1, "0.027": 2, "0.036": 2} {
		pick, err := f.Solve(num(reading))
		require.NoError(t, err, reading)
		require.Equal(t, 1, pick.Counts[washer], reading)
	}
	_, err = f.Solve(num("0.037"))
	require.ErrorIs(t, err, ErrNoPack)
}

// E03, TM 5-3895-369-14, p. 5-409, Table 5-4 (read in the document): the change
// of the pack in thousandths of an inch is the new marking less the old; from
// +2 to -1 it is -3: 0.003 in come out. S4, TM 9-2320-266-34, Table 19-1, has
// the opposite sign, which is the other form of the fit.
func TestPublishedPinionMarking(t *testing.T) {
	thou := func(n int) *big.Rat { return big.NewRat(int64(n), 1000) }
	takeOut := fitOf(publishedShims, "0..3", "0..0")
	takeOut.BuildUp = true
	putIn := fitOf(publishedShims, "0..3", "0..0")

	pick, err := mustFit(t, takeOut).Solve(thou(-1 - 2))
	require.NoError(t, err)
	require.Equal(t, []int{1, 0, 0}, pick.Counts)
	require.Zero(t, pick.Total.Cmp(num("0.003")))

	// All 81 cells: served exactly where 3a + 5b + 10c is the change.
	made := map[int]bool{0: true, 3: true, 5: true, 6: true, 8: true}
	for old := -4; old <= 4; old++ {
		for marking := -4; marking <= 4; marking++ {
			change := marking - old
			p, size := putIn, change
			if change < 0 {
				p, size = takeOut, -change
			}
			pick, err := mustFit(t, p).Solve(thou(change))
			if !made[size] {
				require.ErrorIs(t, err, ErrNoPack, "%d to %d", old, marking)
				continue
			}
			require.NoError(t, err)
			require.Zero(t, pick.Total.Cmp(thou(size)))
		}
	}
}

// E07, TM 10-4320-307-24, p. 4-31 (read in the document): a start pack of 0.065
// in, shims taken out until the end play is 0.004 to 0.006 in. The gap of 0.070
// in that this pack would fill is ours.
func TestPublishedPackTrial(t *testing.T) {
	f := mustFit(t, fitOf(publishedShims, "0..10", "0.004..0.006"))
	pick, err := f.Solve(num("0.070"))
	require.NoError(t, err)
	require.Zero(t, pick.Total.Cmp(num("0.065")))
	require.Zero(t, pick.Result.Cmp(num("0.005")))

	// Sealant on the shims adds to the pack: 0.0005 in on each face of each of
	// the seven shims (thickness ours) leaves less than the limit asks.
	sealed := new(big.Rat).Add(pick.Total, num("0.007"))
	require.Negative(t, new(big.Rat).Sub(num("0.070"), sealed).Cmp(num("0.004")))
}
