package calc

import (
	"fmt"
	"math/big"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// num reads a decimal or a fraction.
func num(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(s)
	}
	return r
}

// fitKit reads "0.10x2 0.25±0.01x4": thickness, band, number in the kit.
func fitKit(text string) []FitSize {
	var kit []FitSize
	for _, word := range strings.Fields(text) {
		thickness, stock, _ := strings.Cut(word, "x")
		nominal, band, has := strings.Cut(thickness, "±")
		s := FitSize{Label: word, Nominal: num(nominal)}
		if has {
			s.Low, s.High = new(big.Rat).Sub(s.Nominal, num(band)), new(big.Rat).Add(s.Nominal, num(band))
		}
		fmt.Sscan(stock, &s.Stock)
		kit = append(kit, s)
	}
	return kit
}

// fitOf reads a problem: kit, "min..max" pieces, "low..high" limit.
func fitOf(kit, pieces, limit string) FitProblem {
	p := FitProblem{Sizes: fitKit(kit)}
	fmt.Sscanf(pieces, "%d..%d", &p.MinPieces, &p.MaxPieces)
	low, high, _ := strings.Cut(limit, "..")
	if low != "" {
		p.Low = num(low)
	}
	if high != "" {
		p.High = num(high)
	}
	return p
}

func mustFit(t *testing.T, p FitProblem) *Fit {
	t.Helper()
	f, err := NewFit(p)
	require.NoError(t, err)
	return f
}

// The tie rule, one line for each of its words.
func TestFitTieRule(t *testing.T) {
	for _, c := range []struct {
		why                 string
		kit, pieces, limit  string
		nearest, buildUp    bool
		target, reading     string
		want                []int
		wantTotal, wantLeft string
	}{
		{why: "fewest pieces, though more come nearer",
			kit: "0.10x2 0.15x2 0.30x1", pieces: "1..3", limit: "0.05..0.15", reading: "0.36",
			want: []int{0, 0, 1}, wantTotal: "0.30", wantLeft: "0.06"},
		{why: "nearness before pieces where it is preferred", nearest: true,
			kit: "0.10x2 0.15x2 0.30x1", pieces: "1..3", limit: "0.05..0.15", reading: "0.36",
			want: []int{1, 1, 0}, wantTotal: "0.25", wantLeft: "0.11"},
		{why: "the nearest of equally many, to the middle of the limit",
			kit: "0.20x1 0.25x1 0.30x1", pieces: "1..1", limit: "0.00..0.20", reading: "0.36",
			want: []int{0, 1, 0}, wantTotal: "0.25", wantLeft: "0.11"},
		{why: "the nearest to a target off the middle", target: "0.15",
			kit: "0.20x1 0.25x1 0.30x1", pieces: "1..1", limit: "0.00..0.20", reading: "0.36",
			want: []int{1, 0, 0}, wantTotal: "0.20", wantLeft: "0.16"},
		{why: "fewest different sizes of equally many and equally near",
			kit: "0.20x2 0.30x2 0.40x2", pieces: "2..2", limit: "0.05..0.15", reading: "0.70",
			want: []int{0, 2, 0}, wantTotal: "0.60", wantLeft: "0.10"},
		{why: "fewest different sizes before thicker, of one too thick and one too thin",
			kit: "0.20x2 0.30x1", pieces: "2..2", limit: "0.00..0.20", reading: "0.55",
			want: []int{2, 0}, wantTotal: "0.40", wantLeft: "0.15"},
		{why: "thicker first, when one is too thick by as much as the other too thin",
			kit: "0.20x1 0.30x1", pieces: "1..1", limit: "0.00..0.20", reading: "0.35",
			want: []int{0, 1}, wantTotal: "0.30", wantLeft: "0.05"},
		{why: "thicker first, compared in order",
			kit: "0.10x1 0.20x1 0.40x1 0.50x1", pieces: "2..2", limit: "0.10..0.10", reading: "0.70",
			want: []int{1, 0, 0, 1}, wantTotal: "0.60", wantLeft: "0.10"},
		{why: "the first listed of two equally thick sizes",
			kit: "0.20x1 0.20x1", pieces: "1..1", limit: "0.10..0.10", reading: "0.30",
			want: []int{1, 0}, wantTotal: "0.20", wantLeft: "0.10"},
		{why: "no pieces where none are needed",
			kit: "0.10x4", pieces: "0..4", limit: "0.05..0.15", reading: "0.15",
			want: []int{0}, wantTotal: "0", wantLeft: "0.15"},
		{why: "a limit with one end: nearest to that end",
			kit: "0.10x4 0.25x2", pieces: "0..4", limit: "0.05..", reading: "0.43",
			want: []int{1, 1}, wantTotal: "0.35", wantLeft: "0.08", nearest: true},
		{why: "a limit below zero: the pack is pinched",
			kit: "0.10x4 0.25x2", pieces: "1..4", limit: "-0.10..-0.05", reading: "0.43",
			want: []int{0, 2}, wantTotal: "0.50", wantLeft: "-0.07"},
		{why: "a limit of exactly zero",
			kit: "0.10x4 0.25x2", pieces: "1..4", limit: "0..0", reading: "0.45",
			want: []int{2, 1}, wantTotal: "0.45", wantLeft: "0"},
		{why: "a pack that builds up", buildUp: true,
			kit: "0.10x4 0.25x2", pieces: "1..4", limit: "3.90..4.10", reading: "3.52",
			want: []int{0, 2}, wantTotal: "0.50", wantLeft: "4.02"},
		{why: "builds up, thicker first at equal distance", buildUp: true,
			kit: "0.20x1 0.30x1", pieces: "1..1", limit: "0.90..1.10", reading: "0.75",
			want: []int{0, 1}, wantTotal: "0.30", wantLeft: "1.05"},
		{why: "a band that reaches out of the limit gives way to one that does not",
			kit: "0.30±0.03x1 0.26±0.01x1", pieces: "1..1", limit: "0.08..0.12", reading: "0.37",
			want: []int{0, 1}, wantTotal: "0.26", wantLeft: "0.11"},
	} {
		t.Run(c.why, func(t *testing.T) {
			p := fitOf(c.kit, c.pieces, c.limit)
			p.Nearest, p.BuildUp = c.nearest, c.buildUp
			if c.target != "" {
				p.Target = num(c.target)
			}
			pick, err := mustFit(t, p).Solve(num(c.reading))
			require.NoError(t, err)
			require.Equal(t, c.want, pick.Counts)
			require.Zero(t, pick.Total.Cmp(num(c.wantTotal)), pick.Total)
			require.Zero(t, pick.Result.Cmp(num(c.wantLeft)), pick.Result)
		})
	}
}

func TestFitRefuses(t *testing.T) {
	var limit *PieceLimitError
	_, err := NewFit(fitOf("0.10x2", "3..5", "0..1"))
	require.ErrorAs(t, err, &limit)
	require.EqualError(t, err, "at least 3 pieces are needed and the kit holds 2")

	_, err = NewFit(fitOf("0.10x2", "2..1", "0..1"))
	require.ErrorAs(t, err, &limit)
	require.EqualError(t, err, "no number of pieces is in 2..1")

	_, err = NewFit(FitProblem{Low: num("0"), High: num("1"), MinPieces: 0, MaxPieces: -1})
	require.ErrorAs(t, err, &limit)

	_, err = NewFit(fitOf("0.10x2", "1..2", ".."))
	require.ErrorIs(t, err, ErrNoLimit)
	_, err = NewFit(fitOf("0.10x2", "1..2", "2..1"))
	require.ErrorIs(t, err, ErrEmptyLimit)

	var size *FitSizeError
	_, err = NewFit(FitProblem{Sizes: []FitSize{{Stock: 1}}, MaxPieces: 1, Low: num("0")})
	require.ErrorAs(t, err, &size)
	_, err = NewFit(FitProblem{Sizes: []FitSize{{Nominal: num("1"), Low: num("2"), Stock: 1}}, MaxPieces: 1, Low: num("0")})
	require.ErrorAs(t, err, &size)
	_, err = NewFit(fitOf("0.10x-1", "0..2", "0..1"))
	require.ErrorAs(t, err, &size)

	f := mustFit(t, fitOf("0.10x2", "1..2", "0..1"))
	_, err = f.Coverage(num("2"), num("1"))
	require.ErrorIs(t, err, ErrEmptyRange)
}

// A kit of sizes that share no fine step is given up, not endured.
func TestFitGivesUpInTime(t *testing.T) {
	p := FitProblem{MaxPieces: 40, Nearest: true, Low: num("0"), High: num("1/1000")}
	for i := range int64(40) {
		p.Sizes = append(p.Sizes, FitSize{Nominal: big.NewRat(1_000_003+i*i*i*7919, 9_999_991), Stock: 40})
	}
	_, err := mustFit(t, p).Solve(num("7"))
	require.ErrorIs(t, err, ErrTooManyPacks)
}

func TestFitNeighbours(t *testing.T) {
	f := mustFit(t, fitOf("0.10x2 0.30x2", "1..4", "0.08..0.14"))
	_, err := f.Solve(num("0.35"))
	require.ErrorIs(t, err, ErrNoPack)
	thinner, thicker, err := f.Neighbours(num("0.35"))
	require.NoError(t, err)
	require.Equal(t, []int{2, 0}, thinner.Counts)
	require.Zero(t, thinner.Result.Cmp(num("0.15")))
	require.Equal(t, []int{0, 1}, thicker.Counts)
	require.Zero(t, thicker.Result.Cmp(num("0.05")))

	_, thicker, err = f.Neighbours(num("2"))
	require.NoError(t, err)
	require.Nil(t, thicker)
}

func intervals(v []FitInterval) string {
	var s []string
	for _, v := range v {
		s = append(s, v.String())
	}
	return strings.Join(s, " ")
}

func gapIntervals(v []FitGap) string {
	var s []string
	for _, v := range v {
		s = append(s, v.String()+" such as "+v.Sample.RatString())
	}
	return strings.Join(s, " ")
}

func TestFitCoverage(t *testing.T) {
	p := fitOf("2x1 5x1 9x1", "0..1", "1..2")
	f := mustFit(t, p)
	cover, err := f.Coverage(num("1"), num("12"))
	require.NoError(t, err)
	require.Equal(t, "[1, 2] [3, 4] [6, 7] [10, 11]", intervals(cover.Served))
	require.Equal(t, "]2, 3[ such as 5/2 ]4, 6[ such as 5 ]7, 10[ such as 9 ]11, 12] such as 12", gapIntervals(cover.Gaps))
	require.Empty(t, cover.NeverUsed)
	require.Equal(t, 0, cover.MinPieces)
	require.Equal(t, 1, cover.MaxPieces)
	require.Equal(t, "0..9", cover.Total.Low.RatString()+".."+cover.Total.High.RatString())
	require.Equal(t, "1..2", cover.Result.Low.RatString()+".."+cover.Result.High.RatString())
	low, high, err := f.Reach()
	require.NoError(t, err)
	require.Equal(t, "1 11", low.RatString()+" "+high.RatString())

	// The same kit building up: the picture is mirrored.
	p.BuildUp = true
	p.Low, p.High = num("-2"), num("-1")
	cover, err = mustFit(t, p).Coverage(num("-12"), num("-1"))
	require.NoError(t, err)
	require.Equal(t, "[-11, -10] [-7, -6] [-4, -3] [-2, -1]", intervals(cover.Served))

	// A size that only fills in where two others are as good is never used.
	cover, err = mustFit(t, fitOf("0.10x2 0.20x1", "1..1", "0.00..0.30")).Coverage(num("0.33"), num("0.40"))
	require.NoError(t, err)
	require.Equal(t, []int{0}, cover.NeverUsed)

	// A band narrows what is served, by its width at each end.
	cover, err = mustFit(t, fitOf("1.00±0.02x1", "1..1", "0.08..0.14")).Coverage(num("1"), num("1.2"))
	require.NoError(t, err)
	require.Equal(t, "[11/10, 28/25]", intervals(cover.Served))
	cover, err = mustFit(t, fitOf("1.00±0.03x1", "1..1", "0.08..0.14")).Coverage(num("1"), num("1.2"))
	require.NoError(t, err)
	require.Equal(t, "[111/100, 111/100]", intervals(cover.Served), "one single reading")
	cover, err = mustFit(t, fitOf("1.00±0.04x1", "1..1", "0.08..0.14")).Coverage(num("1"), num("1.2"))
	require.NoError(t, err)
	require.Empty(t, cover.Served)
	require.Nil(t, cover.Total.Low)
}

func TestHeap(t *testing.T) {
	place := func(kit, pieces, limit, low, high string) FitPlace {
		return FitPlace{fitOf(kit, pieces, limit), num(low), num(high)}
	}
	// Either place alone is served; both at 1.20 need the one thick shim.
	kit := "0.90x2 1.00x2 1.10x1"
	one := place(kit, "1..1", "0.05..0.15", "0.95", "1.25")
	proof, err := HeapCoverage([]FitPlace{one})
	require.NoError(t, err)
	require.Equal(t, HeapServes, proof.Verdict)
	require.True(t, proof.Ample)

	proof, err = HeapCoverage([]FitPlace{one, one})
	require.NoError(t, err)
	require.Equal(t, HeapRunsShort, proof.Verdict)
	require.Equal(t, 1, proof.Shortage.Place)
	require.Equal(t, []int{0, 0, 1}, proof.Shortage.Picks[0].Counts)
	require.Equal(t, []int{2, 2, 0}, proof.Shortage.Left)

	// The order of work decides: the first place may take what only the second can use.
	wide := place("1.00x1 1.10x1", "1..1", "0.00..0.20", "1.16", "1.20")
	tight := place("1.00x1 1.10x1", "1..1", "0.09..0.11", "1.20", "1.20")
	proof, err = HeapCoverage([]FitPlace{wide, tight})
	require.NoError(t, err)
	require.Equal(t, HeapRunsShort, proof.Verdict)
	proof, err = HeapCoverage([]FitPlace{tight, wide})
	require.NoError(t, err)
	require.Equal(t, HeapServes, proof.Verdict)
	require.False(t, proof.Ample)

	// What one place cannot do even alone is not the heap's fault.
	proof, err = HeapCoverage([]FitPlace{place(kit, "1..1", "0.05..0.15", "0.90", "1.00"), one})
	require.NoError(t, err)
	require.Equal(t, HeapServes, proof.Verdict)
	require.Equal(t, []int{0}, proof.OwnGaps)

	_, err = HeapCoverage([]FitPlace{one, place("0.90x1", "1..1", "0..1", "1", "2")})
	var at *FitPlaceError
	require.ErrorAs(t, err, &at)
	require.Equal(t, 1, at.Place)
}
