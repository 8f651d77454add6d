package joint

import (
	"fmt"
	"sort"

	"fettle/calc"
)

// Layout is how the fasteners of one joint stand. Places are numbered from 1 in
// working order: round a circle, along a row, and through a grid row by row.
type Layout struct {
	Rows, Columns int // a circle of n is {0, n}, a row {1, n}
}

// Circle, Row and Grid are the layouts.
func Circle(n int) Layout            { return Layout{0, n} }
func Row(n int) Layout               { return Layout{1, n} }
func Grid(rows, columns int) Layout  { return Layout{rows, columns} }
func (l Layout) isCircle() bool      { return l.Rows == 0 }
func (l Layout) at(i int) (r, c int) { return (i - 1) / l.Columns, (i - 1) % l.Columns }

// Count is the number of fasteners.
func (l Layout) Count() int {
	if l.isCircle() {
		return l.Columns
	}
	return l.Rows * l.Columns
}

// mostFasteners is far beyond any joint, and keeps the work small.
const mostFasteners = 1000

func (l Layout) check() *calc.Problem {
	if l.Rows < 0 || l.Columns < 1 || l.Columns > mostFasteners || l.Rows > mostFasteners || l.Count() > mostFasteners {
		return &calc.Problem{Message: fmt.Sprintf("A pattern is worked out for 1 to %d fasteners.", mostFasteners),
			Reason: "There is no order to give for this number.", Remedy: "Correct the quantity, or split the joint."}
	}
	return nil
}

// PatternSource is where patterns come from: circles of 4, 8, 16 and 20 agree
// with the legacy cross pattern of ASME PCC-1 (from memory).
var PatternSource = Source{Status: CommonPractice}

// CrissCross is a sound order of tightening, and always the same one: on a
// circle across and a quarter round, as in 1 3 2 4; on a row and a grid from
// the centre outwards, corner to opposite corner.
func CrissCross(l Layout) ([]int, *calc.Problem) {
	if p := l.check(); p != nil {
		return nil, p
	}
	if l.isCircle() {
		return crissCrossCircle(l.Columns), nil
	}
	return centreOut(l), nil
}

// crissCrossCircle takes fours a quarter turn apart where n divides by four,
// pairs across where it is even, and a star where it is odd.
func crissCrossCircle(n int) []int {
	order := make([]int, 0, n)
	switch {
	case n%4 == 0:
		for _, s := range oddsThenEvens(n / 4) {
			order = append(order, s, s+n/2, s+n/4, s+3*n/4)
		}
	case n%2 == 0:
		starts := oddsThenEvens(n / 2)
		if n == 6 { // odds first would follow 4 with its neighbour 3
			starts = []int{1, 2, 3}
		}
		for _, s := range starts {
			order = append(order, s, s+n/2)
		}
	default:
		for i, p := 0, 0; i < n; i, p = i+1, (p+n/2)%n { // n/2 rounded down shares no factor with n
			order = append(order, p+1)
		}
	}
	return order
}

func oddsThenEvens(n int) []int {
	var order []int
	for first := 1; first <= 2; first++ {
		for i := first; i <= n; i += 2 {
			order = append(order, i)
		}
	}
	return order
}

// centreOut orders by distance from the centre, then takes each set of mirror
// images corner to opposite corner.
func centreOut(l Layout) []int {
	order := make([]int, l.Count())
	for i := range order {
		order[i] = i + 1
	}
	key := func(i int) [4]int {
		r, c := l.offset(i)
		mirror := 0 // among its mirror images: upper left, lower right, upper right, lower left
		switch {
		case r >= 0 && c > 0 || c == 0 && r > 0:
			mirror = 1
		case r < 0 && c > 0:
			mirror = 2
		case r > 0 && c < 0:
			mirror = 3
		}
		return [4]int{r*r + c*c, abs(c), abs(r), mirror}
	}
	sort.SliceStable(order, func(i, j int) bool {
		a, b := key(order[i]), key(order[j])
		for k := range a {
			if a[k] != b[k] {
				return a[k] < b[k]
			}
		}
		return order[i] < order[j]
	})
	return order
}

// offset is how far place i lies from the centre, in half pitches down and right.
func (l Layout) offset(i int) (r, c int) {
	row, column := l.at(i)
	return 2*row - (l.Rows - 1), 2*column - (l.Columns - 1)
}

func abs(n int) int { return max(n, -n) }
