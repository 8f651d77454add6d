package calc

import (
	"cmp"
	"errors"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// brute is the dialect's rule, word by word, over every pack there is.
type brute struct {
	p      FitProblem
	target *big.Rat
	packs  []Pack
}

func newBrute(p FitProblem) *brute {
	b := &brute{p: p, target: p.Target}
	switch {
	case b.target != nil:
	case p.Low != nil && p.High != nil:
		b.target = new(big.Rat).Quo(new(big.Rat).Add(p.Low, p.High), big.NewRat(2, 1))
	case p.Low != nil:
		b.target = p.Low
	default:
		b.target = p.High
	}
	counts := make([]int, len(p.Sizes))
	var walk func(i, left int)
	walk = func(i, left int) {
		if i < len(counts) {
			for c := 0; c <= min(left, p.Sizes[i].Stock); c++ {
				counts[i] = c
				walk(i+1, left-c)
			}
			counts[i] = 0
			return
		}
		pack := Pack{Counts: slices.Clone(counts), Total: new(big.Rat), TotalLow: new(big.Rat), TotalHigh: new(big.Rat)}
		for i, c := range counts {
			pack.Pieces += c
			for range c {
				pack.Total.Add(pack.Total, p.Sizes[i].Nominal)
				pack.TotalLow.Add(pack.TotalLow, p.Sizes[i].Low)
				pack.TotalHigh.Add(pack.TotalHigh, p.Sizes[i].High)
			}
		}
		if pack.Pieces >= p.MinPieces {
			b.packs = append(b.packs, pack)
		}
	}
	walk(0, p.MaxPieces)
	return b
}

func (b *brute) result(x, total *big.Rat) *big.Rat {
	if b.p.BuildUp {
		return new(big.Rat).Add(x, total)
	}
	return new(big.Rat).Sub(x, total)
}

func (b *brute) serves(x *big.Rat, p Pack) bool {
	for _, t := range []*big.Rat{p.TotalLow, p.TotalHigh} {
		r := b.result(x, t)
		if b.p.Low != nil && r.Cmp(b.p.Low) < 0 || b.p.High != nil && r.Cmp(b.p.High) > 0 {
			return false
		}
	}
	return true
}

// order compares two packs by the tie rule at a reading.
func (b *brute) order(x *big.Rat, p, q Pack) int {
	pieces := cmp.Compare(p.Pieces, q.Pieces)
	off := func(p Pack) *big.Rat {
		d := new(big.Rat).Sub(b.result(x, p.Total), b.target)
		return d.Abs(d)
	}
	near := off(p).Cmp(off(q))
	if b.p.Nearest {
		pieces, near = near, pieces
	}
	if c := cmp.Or(pieces, near, cmp.Compare(p.Different(), q.Different())); c != 0 {
		return c
	}
	spread := func(p Pack) []*big.Rat {
		var all []*big.Rat
		for i, c := range p.Counts {
			for range c {
				all = append(all, b.p.Sizes[i].Nominal)
			}
		}
		slices.SortFunc(all, func(a, b *big.Rat) int { return b.Cmp(a) })
		return all
	}
	if c := slices.CompareFunc(spread(q), spread(p), (*big.Rat).Cmp); c != 0 {
		return c
	}
	// Twins: as the problem lists them, within each thickness, the thickest first.
	order := make([]int, len(p.Counts))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int { return b.p.Sizes[j].Nominal.Cmp(b.p.Sizes[i].Nominal) })
	for _, i := range order {
		if c := cmp.Compare(q.Counts[i], p.Counts[i]); c != 0 {
			return c
		}
	}
	return 0
}

func (b *brute) solve(x *big.Rat) *Pack {
	var best *Pack
	for i := range b.packs {
		if p := &b.packs[i]; b.serves(x, *p) && (best == nil || b.order(x, *p, *best) < 0) {
			best = p
		}
	}
	return best
}

// spots are all readings at which anything can change, and one between each two.
func (b *brute) spots(low, high *big.Rat) []*big.Rat {
	spots := []*big.Rat{low, high}
	keep := func(x *big.Rat) {
		if x.Cmp(low) >= 0 && x.Cmp(high) <= 0 {
			spots = append(spots, x)
		}
	}
	at := func(result, total *big.Rat) *big.Rat { // the reading that gives the result
		if b.p.BuildUp {
			return new(big.Rat).Sub(result, total)
		}
		return new(big.Rat).Add(result, total)
	}
	for i, p := range b.packs {
		for _, limit := range []*big.Rat{b.p.Low, b.p.High} {
			if limit != nil {
				keep(at(limit, p.TotalLow))
				keep(at(limit, p.TotalHigh))
			}
		}
		for _, q := range b.packs[:i+1] {
			keep(at(b.target, middle(p.Total, q.Total)))
		}
	}
	slices.SortFunc(spots, (*big.Rat).Cmp)
	spots = slices.CompactFunc(spots, func(a, b *big.Rat) bool { return a.Cmp(b) == 0 })
	for i := len(spots) - 2; i >= 0; i-- {
		spots = slices.Insert(spots, i+1, middle(spots[i], spots[i+1]))
	}
	return spots
}

// checkAgainstBrute compares everything a Fit says with brute force.
func checkAgainstBrute(t require.TestingT, f *Fit, p FitProblem, low, high *big.Rat) {
	b := newBrute(p)
	cover, err := f.Coverage(low, high)
	require.NoError(t, err)
	used := make([]bool, len(p.Sizes))
	region := 0
	for _, x := range b.spots(low, high) {
		want := b.solve(x)
		got, err := f.Solve(x)
		if want == nil {
			require.ErrorIs(t, err, ErrNoPack, "at %s", x)
			b.checkNeighbours(t, f, x)
		} else {
			require.NoError(t, err, "at %s", x)
			require.Equal(t, want.Counts, got.Counts, "at %s", x)
			require.Equal(t, want.Pieces, got.Pieces)
			require.Zero(t, got.Total.Cmp(want.Total))
			require.Zero(t, got.TotalLow.Cmp(want.TotalLow))
			require.Zero(t, got.TotalHigh.Cmp(want.TotalHigh))
			require.Zero(t, got.Result.Cmp(b.result(x, want.Total)))
			for i, c := range want.Counts {
				used[i] = used[i] || c > 0
			}
			require.True(t, inHull(cover.Total, got.Total, got.Total))
			require.True(t, inHull(cover.TotalBand, got.TotalLow, got.TotalHigh))
			require.True(t, inHull(cover.Result, got.Result, got.Result))
			require.True(t, inHull(cover.ResultBand, got.ResultLow, got.ResultHigh))
			require.True(t, cover.MinPieces <= got.Pieces && got.Pieces <= cover.MaxPieces)
		}
		for !cover.Regions[region].Contains(x) {
			region++
		}
		if pack := cover.Regions[region].Pack; want == nil {
			require.Nil(t, pack, "region at %s", x)
		} else {
			require.NotNil(t, pack, "region at %s", x)
			require.Equal(t, want.Counts, pack.Counts, "region at %s", x)
		}
		require.Equal(t, want != nil, slices.ContainsFunc(cover.Served, func(v FitInterval) bool { return v.Contains(x) }))
		require.Equal(t, want == nil, slices.ContainsFunc(cover.Gaps, func(v FitGap) bool { return v.Contains(x) }))
	}
	for _, v := range cover.Served {
		require.False(t, v.LowOpen || v.HighOpen, "served readings are closed: %s", v)
	}
	for _, g := range cover.Gaps {
		require.True(t, g.Contains(g.Sample), "%s holds its sample %s", g, g.Sample)
	}
	for i, u := range used {
		require.Equal(t, !u, slices.Contains(cover.NeverUsed, i), "size %d", i)
	}
}

func inHull(h FitHull, low, high *big.Rat) bool {
	return h.Low.Cmp(low) <= 0 && high.Cmp(h.High) <= 0
}

func (b *brute) checkNeighbours(t require.TestingT, f *Fit, x *big.Rat) {
	var thinner, thicker *Pack
	want := b.result(x, new(big.Rat))
	want.Sub(want, b.target)
	if b.p.BuildUp {
		want.Neg(want)
	}
	for i := range b.packs {
		p := &b.packs[i]
		closer := func(best *Pack, sign int) bool {
			if best == nil {
				return true
			}
			if c := p.Total.Cmp(best.Total) * sign; c != 0 {
				return c > 0
			}
			return b.order(x, *p, *best) < 0
		}
		if p.Total.Cmp(want) <= 0 {
			if closer(thinner, 1) {
				thinner = p
			}
		} else if closer(thicker, -1) {
			thicker = p
		}
	}
	gotThinner, gotThicker, err := f.Neighbours(x)
	require.NoError(t, err)
	for _, pair := range [][2]*Pack{{thinner, gotThinner}, {thicker, gotThicker}} {
		if pair[0] == nil {
			require.Nil(t, pair[1])
			continue
		}
		require.NotNil(t, pair[1])
		require.Equal(t, pair[0].Counts, pair[1].Counts, "beside %s", x)
	}
}

func fitProperty(t *rapid.T) {
	p := drawProblem(t)
	held := 0
	for _, s := range p.Sizes {
		held += s.Stock
	}
	f, err := NewFit(p)
	var limit *PieceLimitError
	if p.MinPieces > held {
		require.True(t, errors.As(err, &limit))
		require.Equal(t, held, limit.Held)
		return
	}
	require.NoError(t, err)
	low, high := drawRange(t, p)
	checkAgainstBrute(t, f, p, low, high)
}

func TestFitEqualsBruteForce(t *testing.T) { rapid.Check(t, fitProperty) }

func FuzzFit(f *testing.F) {
	for seed := range byte(8) {
		draws := make([]byte, 1024)
		rand.NewChaCha8([32]byte{seed}).Read(draws)
		f.Add(draws)
	}
	f.Fuzz(rapid.MakeFuzz(fitProperty))
}

// Sizes that need more than a machine word give the same picks.
func TestFitOfLargeNumbersEqualsBruteForce(t *testing.T) {
	large := 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		low, high := drawRange(t, p)
		huge := new(big.Rat).SetFrac(new(big.Int).Exp(big.NewInt(10), big.NewInt(30), nil), big.NewInt(7))
		for i := range p.Sizes {
			s := &p.Sizes[i]
			for _, r := range []*big.Rat{s.Low, s.Nominal, s.High} {
				r.Mul(r, huge)
			}
		}
		for _, r := range []*big.Rat{p.Low, p.High, p.Target} {
			if r != nil {
				r.Mul(r, huge)
			}
		}
		f, err := NewFit(p)
		if err != nil {
			return
		}
		if _, ok := f.engine.(*fitEngineOf[fitLarge]); ok {
			large++
		}
		low, high = low.Mul(low, huge), high.Mul(high, huge)
		checkAgainstBrute(t, f, p, low, high)
	})
	require.Positive(t, large)
}

// Larger kits over their whole reach, where many picks follow each other.
func TestFitOfWholeKitsEqualsBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		p.Sizes = nil
		for range 4 {
			n := int64(rapid.IntRange(1, 25).Draw(t, "thickness"))
			band := int64(evenly(t, "band", 0, 0, 1))
			p.Sizes = append(p.Sizes, FitSize{
				Nominal: big.NewRat(n, 100), Low: big.NewRat(n-band, 100), High: big.NewRat(n+2*band, 100), Stock: 2,
			})
		}
		p.MinPieces, p.MaxPieces = 0, 3
		p.Low, p.High, p.Target = big.NewRat(-2, 100), big.NewRat(3, 100), nil
		f, err := NewFit(p)
		require.NoError(t, err)
		low, high := big.NewRat(-5, 100), big.NewRat(45, 100)
		if p.BuildUp {
			low, high = new(big.Rat).Neg(high), new(big.Rat).Neg(low)
		}
		checkAgainstBrute(t, f, p, low, high)
	})
}
