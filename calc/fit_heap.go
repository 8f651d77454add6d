package calc

import (
	"errors"
	"fmt"
	"math/big"
)

// Several places that draw on one heap of pieces, in the order of work. Each
// place takes its best pick from what the places before it have left.
//
// Four ways lead to a verdict, tried in this order:
//
//  1. Ample: if the most that any pick takes of a size, added up over the
//     places, is in the kit, no place notices the others.
//  2. Trial: all places are given readings from the same part of their ranges,
//     which is how a heap runs short in practice.
//  3. Search: place by place, every different pick is taken from every different
//     remaining stock; stocks already proved, or ample from there on, are not
//     searched again. Exact, where it ends within its limit of work.
//  4. Starving: if, for every reading, packs without a size in common would
//     together survive the loss of as many pieces as all earlier places may
//     take, none of them can starve this one.

// FitPlace is one place that draws on the heap: its own problem, and the range
// of its readings, both ends included. Sizes and stock are those of the heap.
type FitPlace struct {
	Problem   FitProblem
	Low, High *big.Rat
}

// HeapVerdict is the outcome of a heap's proof.
type HeapVerdict uint8

// Outcomes.
const (
	HeapServes    HeapVerdict = iota // every combination of readings is served
	HeapRunsShort                    // a combination is not, though each reading alone would be
	HeapUndecided                    // the work limit was reached
)

// HeapProof is what was found about a heap. Readings that even the full kit
// does not serve stop the work at their place, are found by Fit.Coverage, and
// are left out here.
type HeapProof struct {
	Verdict  HeapVerdict
	Shortage *HeapShortage // an example, when the heap runs short
	Reason   string        // when undecided
	OwnGaps  []int         // places with readings that even the full kit does not serve
	Ample    bool          // no pick can be changed by other places

	// Sizes that no place ever picks, whatever is left; nil also when not known.
	NeverUsed []int
}

// HeapShortage is a combination of readings that ends at a place without a pack.
type HeapShortage struct {
	Place    int        // index of the place that no pack fits any more
	Readings []*big.Rat // of the places up to that one, included
	Picks    []Pack     // of the places before it
	Left     []int      // pieces left when it is reached, parallel to the sizes
}

// heapWorkLimit bounds the trial, the search and the starving argument each, in
// steps of the table: some tenths of a second.
const heapWorkLimit = 6_000_000

var errHeapWork = errors.New("work limit reached")

// HeapCoverage decides whether every combination of readings of the places, in
// order, can be served from one kit. Errors are those of NewFit and Coverage,
// with the place that they concern as a *FitPlaceError.
func HeapCoverage(places []FitPlace) (HeapProof, error) {
	h, proof, err := newHeap(places)
	if err != nil || len(places) == 0 {
		return proof, err
	}
	short, ample, _ := h.ample(0, h.stock)
	if ample {
		proof.Ample, proof.NeverUsed = true, h.neverUsed()
		return proof, nil
	}
	if short == nil {
		short = h.trial()
	}
	if short == nil {
		short, err = h.searchAll(heapWorkLimit / 5)
	}
	if err != nil {
		if h.cannotStarve() {
			return proof, nil
		}
		short, err = h.searchAll(heapWorkLimit) // goes on from what is proved
	}
	switch {
	case short != nil:
		proof.Verdict, proof.Shortage = HeapRunsShort, short
	case err != nil:
		proof.Verdict = HeapUndecided
		proof.Reason = fmt.Sprintf("the %d places can leave the kit in more ways than can be tried", len(places))
	default:
		proof.NeverUsed = h.neverUsed()
	}
	return proof, nil
}

// FitPlaceError says which place an error concerns.
type FitPlaceError struct {
	Place int
	Err   error
}

func (e *FitPlaceError) Error() string { return fmt.Sprintf("place %d: %v", e.Place+1, e.Err) }

func (e *FitPlaceError) Unwrap() error { return e.Err }
