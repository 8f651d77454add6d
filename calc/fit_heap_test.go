package calc

import (
	"fmt"
	"math/big"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// bruteHeap tries every reading that matters at every place, one after the other.
type bruteHeap struct {
	places []FitPlace
	spots  [][]*big.Rat // those that a full kit serves
	used   []bool
	proven map[string]bool
	picked func(place int, reading *big.Rat, p *Pack) // called with each pick
}

func newBruteHeap(places []FitPlace) *bruteHeap {
	h := &bruteHeap{places: places, used: make([]bool, len(places[0].Problem.Sizes)), proven: map[string]bool{}}
	for _, p := range places {
		b := newBrute(p.Problem)
		h.spots = append(h.spots, slices.DeleteFunc(b.spots(p.Low, p.High), func(x *big.Rat) bool { return b.solve(x) == nil }))
	}
	return h
}

// left is the problem of a place with what is left of the kit.
func (h *bruteHeap) left(place int, stock []int) *brute {
	p := h.places[place].Problem
	p.Sizes = slices.Clone(p.Sizes)
	for i := range p.Sizes {
		p.Sizes[i].Stock = stock[i]
	}
	return newBrute(p)
}

func (h *bruteHeap) serves(place int, stock []int) bool {
	key := fmt.Sprint(place, stock)
	if place == len(h.places) || h.proven[key] {
		return true
	}
	b := h.left(place, stock)
	for _, x := range h.spots[place] {
		p := b.solve(x)
		if p == nil || !h.serves(place+1, without(stock, p.Counts)) {
			return false
		}
		for i, c := range p.Counts {
			h.used[i] = h.used[i] || c > 0
		}
		if h.picked != nil {
			h.picked(place, x, p)
		}
	}
	h.proven[key] = true
	return true
}

// requireShortage follows the example with brute force.
func (h *bruteHeap) requireShortage(t require.TestingT, stock []int, s *HeapShortage) {
	require.NotNil(t, s)
	require.Len(t, s.Readings, s.Place+1)
	require.Len(t, s.Picks, s.Place)
	for i, x := range s.Readings {
		p := h.places[i]
		require.True(t, FitInterval{Low: p.Low, High: p.High}.Contains(x))
		require.NotNil(t, newBrute(p.Problem).solve(x), "a full kit serves %s", x)
		pick := h.left(i, stock).solve(x)
		if i == s.Place {
			require.Nil(t, pick)
			require.Equal(t, stock, s.Left)
			break
		}
		require.NotNil(t, pick)
		require.Equal(t, pick.Counts, s.Picks[i].Counts)
		stock = without(stock, pick.Counts)
	}
}

func heapProperty(t *rapid.T) {
	first := drawProblem(t)
	first.Sizes = first.Sizes[:min(3, len(first.Sizes))]
	first.MaxPieces = min(first.MaxPieces, 2)
	first.MinPieces = min(first.MinPieces, first.MaxPieces)
	var places []FitPlace
	for i := range rapid.IntRange(1, 3).Draw(t, "places") {
		p := first
		if i > 0 && rapid.Bool().Draw(t, "differs") {
			other := drawProblem(t)
			p.BuildUp, p.Nearest, p.Low, p.High, p.Target = other.BuildUp, other.Nearest, other.Low, other.High, other.Target
			p.MaxPieces = min(other.MaxPieces, 2)
			p.MinPieces = min(other.MinPieces, p.MaxPieces)
		}
		low, high := drawRange(t, p)
		if i > 0 && rapid.Bool().Draw(t, "same range") {
			low, high = places[0].Low, places[0].High
		}
		places = append(places, FitPlace{p, low, high})
	}
	proof, err := HeapCoverage(places)
	if err != nil {
		var limit *PieceLimitError
		require.ErrorAs(t, err, &limit)
		return
	}
	stock := make([]int, len(first.Sizes))
	for i, s := range first.Sizes {
		stock[i] = s.Stock
	}
	h := newBruteHeap(places)
	h.picked = func(place int, reading *big.Rat, pick *Pack) {
		f, err := NewFit(places[place].Problem)
		require.NoError(t, err)
		total, result, err := f.Guarantee(places[place].Low, places[place].High)
		require.NoError(t, err)
		require.True(t, inHull(total, pick.Total, pick.Total), "total %s in %v", pick.Total, total)
		r := f.result(reading, pick.Total)
		require.True(t, inHull(result, r, r), "result %s in %v", r, result)
	}
	if !h.serves(0, stock) {
		require.Equal(t, HeapRunsShort, proof.Verdict)
		h.requireShortage(t, stock, proof.Shortage)
		return
	}
	require.Equal(t, HeapServes, proof.Verdict, proof.Reason)
	for _, i := range proof.NeverUsed {
		require.False(t, h.used[i], "size %d", i)
	}
	for i, p := range places {
		f, err := NewFit(p.Problem)
		require.NoError(t, err)
		cover, err := f.Coverage(p.Low, p.High)
		require.NoError(t, err)
		require.Equal(t, len(cover.Gaps) > 0, slices.Contains(proof.OwnGaps, i))
	}
}

func TestHeapEqualsBruteForce(t *testing.T) { rapid.Check(t, heapProperty) }

// The argument that skips the search must never prove what is false.
func TestHeapThatCannotStarveServes(t *testing.T) {
	proved := 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		p.Sizes = p.Sizes[:min(3, len(p.Sizes))]
		p.MaxPieces = min(p.MaxPieces, 2)
		p.MinPieces = min(p.MinPieces, p.MaxPieces)
		low, high := drawRange(t, p)
		places := slices.Repeat([]FitPlace{{p, low, high}}, rapid.IntRange(2, 3).Draw(t, "places"))
		h, _, err := newHeap(places)
		if err != nil || !h.cannotStarve() {
			return
		}
		proved++
		require.True(t, newBruteHeap(places).serves(0, h.stock))
	})
	require.Positive(t, proved)
}

// Clearance shims, one to a place, in steps of 0.05 mm: each reading has two or
// three sizes that serve it, so it depends on the number of each in the kit
// whether as many places can all have one.
func shimPlaces(places, stock int) []FitPlace {
	p := FitProblem{MinPieces: 1, MaxPieces: 1, Low: num("0.15"), High: num("0.25")}
	for i := range int64(21) {
		p.Sizes = append(p.Sizes, FitSize{Nominal: big.NewRat(200+5*i, 100), Stock: stock})
	}
	return slices.Repeat([]FitPlace{{p, num("2.25"), num("3.15")}}, places)
}

func TestHeapOfManyPlaces(t *testing.T) {
	for _, c := range []struct {
		places, stock int
		want          HeapVerdict
		ample         bool
	}{
		{8, 8, HeapServes, true},
		{8, 4, HeapServes, false}, // twice four, of the two sizes that serve a reading
		{8, 3, HeapRunsShort, false},
		{16, 8, HeapServes, false},
		{16, 7, HeapRunsShort, false},
	} {
		proof, err := HeapCoverage(shimPlaces(c.places, c.stock))
		require.NoError(t, err)
		require.Equal(t, c.want, proof.Verdict, "%d places, %d of each: %s", c.places, c.stock, proof.Reason)
		require.Equal(t, c.ample, proof.Ample)
		if proof.Shortage != nil {
			require.Equal(t, 2*c.stock, proof.Shortage.Place)
		}
	}

	// Where neither proof nor example is found within the work allowed, it says so.
	p := benchKit(12, 6, 6, true, false)
	proof, err := HeapCoverage(slices.Repeat([]FitPlace{{p, num("0.55"), num("1.45")}}, 8))
	require.NoError(t, err)
	require.Equal(t, HeapUndecided, proof.Verdict)
	require.NotEmpty(t, proof.Reason)
}
