package joint

import "fmt"

// PatternFault is one place where an order of tightening is unsound.
type PatternFault struct {
	At      int    // index into the order of the place that comes wrong
	Message string // one sentence, with the numbers of the places
	Reason  string // what it does to the joint
}

const (
	tilts = "The part tilts, and the far side no longer pulls down."
	bows  = "What is tight first holds the middle off, so the part stays bowed."
)

// JudgePattern gives what is unsound about an order of tightening, first to
// last; none means sound. The order names every place once.
//
// On a circle of four or more, two neighbours never follow each other while a
// place that is no neighbour is free, and of two moves in a row one goes at
// least a third of the way round where a place so far off is free. A row or
// grid starts at the centre and works outwards: no place is tightened while one
// that lies nearer to both middle lines is free; spacings need not be known for
// that. A grid of two by two is a circle. Common practice, no source.
func JudgePattern(l Layout, order []int) []PatternFault {
	if p := l.check(); p != nil {
		return []PatternFault{{0, p.Message, p.Reason}}
	}
	if faults := everyPlaceOnce(l.Count(), order); faults != nil {
		return faults
	}
	switch {
	case l.isCircle():
		return judgeCircle(l.Columns, order, nil)
	case l.Rows == 2 && l.Columns == 2:
		return judgeCircle(4, order, []int{0, 1, 2, 4, 3}) // row by row to round the square
	}
	return judgeOutwards(l, order)
}

func everyPlaceOnce(n int, order []int) []PatternFault {
	var faults []PatternFault
	seen := make([]bool, n+1)
	for i, p := range order {
		switch {
		case p < 1 || p > n:
			faults = append(faults, PatternFault{i, fmt.Sprintf("There is no place %d: the joint has %d fasteners.", p, n), "The builder looks for a bolt that is not there."})
			continue
		case seen[p]:
			faults = append(faults, PatternFault{i, fmt.Sprintf("Place %d comes twice in one round.", p), "A bolt that is tightened twice ends tighter than the others."})
		}
		seen[p] = true
	}
	for p := 1; p <= n; p++ {
		if !seen[p] {
			faults = append(faults, PatternFault{len(order) - 1, fmt.Sprintf("Place %d is left out.", p), "One bolt stays loose."})
		}
	}
	return faults
}

// judgeCircle takes places by their position round the circle; round maps a
// place to its position, nil where they are the same.
func judgeCircle(n int, order, round []int) []PatternFault {
	if n < 4 {
		return nil
	}
	position := func(p int) int {
		if round == nil {
			return p
		}
		return round[p]
	}
	apart := func(p, q int) int {
		d := abs(position(p) - position(q))
		return min(d, n-d)
	}
	var faults []PatternFault
	short := false // the move before was short, and need not have been
	for i := 1; i < n; i++ {
		last, next := order[i-1], order[i]
		farthest := 0
		for _, q := range order[i:] {
			farthest = max(farthest, apart(last, q))
		}
		move := apart(last, next)
		if move == 1 && farthest > 1 {
			faults = append(faults, PatternFault{i, fmt.Sprintf("Places %d and %d are neighbours and are tightened one after the other.", last, next), tilts})
			short = false
			continue
		}
		thisShort := 3*move < n && 3*farthest >= n
		if thisShort && short {
			faults = append(faults, PatternFault{i, fmt.Sprintf("Places %d, %d and %d follow each other round one side.", order[i-2], last, next), tilts})
			thisShort = false
		}
		short = thisShort
	}
	return faults
}

// judgeOutwards finds places that are tightened before one nearer the centre.
func judgeOutwards(l Layout, order []int) []PatternFault {
	var faults []PatternFault
	for i, p := range order {
		r, c := l.offset(p)
		for _, q := range order[i+1:] {
			qr, qc := l.offset(q)
			if abs(qr) <= abs(r) && abs(qc) <= abs(c) && (abs(qr) < abs(r) || abs(qc) < abs(c)) {
				what := "Place %d is tightened before place %d, which lies nearer the centre."
				if i == 0 {
					what = "The order starts at place %d, and place %d lies nearer the centre."
				}
				faults = append(faults, PatternFault{i, fmt.Sprintf(what, p, q), bows})
				break
			}
		}
	}
	return faults
}
