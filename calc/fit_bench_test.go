package calc

import (
	"fmt"
	"math/big"
	"slices"
	"testing"
	"time"
)

// benchKit is a kit of sizes from 0.05 mm upwards. An even one steps by 0.05 mm;
// an uneven one has hardly two packs of one total.
func benchKit(sizes, stock, pieces int, even, bands bool) FitProblem {
	p := FitProblem{MinPieces: 1, MaxPieces: pieces, Low: big.NewRat(8, 100), High: big.NewRat(14, 100), Target: big.NewRat(11, 100)}
	for i := range sizes {
		n := int64(50 + 50*i)
		if !even {
			n += int64(i*i*37%49) - 20
		}
		s := FitSize{Nominal: big.NewRat(n, 1000), Stock: stock}
		if bands {
			s.Low, s.High = big.NewRat(n-1-int64(i%3), 1000), big.NewRat(n+1+int64(i%2), 1000)
		}
		p.Sizes = append(p.Sizes, s)
	}
	return p
}

func benchFit(b *testing.B, p FitProblem) *Fit {
	f, err := NewFit(p)
	if err != nil {
		b.Fatal(err)
	}
	return f
}

// BenchmarkFit measures from a new problem to the answer, and a further answer
// of the same problem. Wanted: far below 10 ms for a pick and below 100 ms for
// coverage of 12 sizes, 6 of each, up to 6 pieces.
func BenchmarkFit(b *testing.B) {
	low, high, reading := big.NewRat(55, 100), big.NewRat(345, 100), big.NewRat(2017, 1000)
	for _, kit := range []struct{ sizes, stock, pieces int }{{12, 6, 6}, {25, 10, 10}} {
		for _, kind := range []string{"even", "uneven", "bands"} {
			for _, nearest := range []bool{false, true} {
				p := benchKit(kit.sizes, kit.stock, kit.pieces, kind == "even", kind == "bands")
				p.Nearest = nearest
				name := fmt.Sprintf("%dx%d/%s/nearest=%t/", kit.sizes, kit.stock, kind, nearest)
				b.Run(name+"solve", func(b *testing.B) {
					for b.Loop() {
						if _, err := benchFit(b, p).Solve(reading); err != nil {
							b.Fatal(err)
						}
					}
				})
				b.Run(name+"solve-again", func(b *testing.B) {
					f := benchFit(b, p)
					for b.Loop() {
						f.Solve(reading)
					}
				})
				b.Run(name+"coverage", func(b *testing.B) {
					for b.Loop() {
						if _, err := benchFit(b, p).Coverage(low, high); err != nil {
							b.Fatal(err)
						}
					}
				})
			}
		}
	}
}

// BenchmarkHeap measures the proof for several places on one heap, by the way
// that decides it.
func BenchmarkHeap(b *testing.B) {
	kit := func(places, pieces int) []FitPlace {
		p := benchKit(12, 6, pieces, true, false)
		return slices.Repeat([]FitPlace{{p, big.NewRat(55, 100), big.NewRat(145, 100)}}, places)
	}
	for _, c := range []struct {
		name   string
		places []FitPlace
		want   HeapVerdict
	}{
		{"ample", kit(2, 6), HeapServes},
		{"searched", shimPlaces(4, 3), HeapServes},
		{"not-starved", shimPlaces(8, 4), HeapServes},
		{"four-packs", kit(4, 6), HeapServes},
		{"short", shimPlaces(8, 3), HeapRunsShort},
		{"undecided", kit(8, 6), HeapUndecided},
	} {
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				if proof, err := HeapCoverage(c.places); err != nil || proof.Verdict != c.want {
					b.Fatal(proof.Verdict, err)
				}
			}
		})
	}
}

// BenchmarkFitRatio gives the time of a first pick and of coverage as multiples
// of a floor measured in the same run: one walk over every pack of the kit, in
// machine words, which keeps only the fewest and nearest of one reading.
func BenchmarkFitRatio(b *testing.B) {
	for _, even := range []bool{true, false} {
		p := benchKit(12, 6, 6, even, false)
		b.Run(fmt.Sprintf("even=%t", even), func(b *testing.B) {
			var walk, solve, cover time.Duration
			for b.Loop() {
				start := time.Now()
				if walkPacks(p, 2017) == 0 {
					b.Fatal("no pack")
				}
				walk += time.Since(start)
				start = time.Now()
				if _, err := benchFit(b, p).Solve(big.NewRat(2017, 1000)); err != nil {
					b.Fatal(err)
				}
				solve += time.Since(start)
				start = time.Now()
				if _, err := benchFit(b, p).Coverage(big.NewRat(55, 100), big.NewRat(345, 100)); err != nil {
					b.Fatal(err)
				}
				cover += time.Since(start)
			}
			b.ReportMetric(float64(solve)/float64(walk), "pick/walk")
			b.ReportMetric(float64(cover)/float64(walk), "coverage/walk")
		})
	}
}

// walkPacks visits every pack for a reading in thousandths, and gives the
// fewest pieces that fit.
func walkPacks(p FitProblem, reading int64) int {
	thou := func(r *big.Rat) int64 { return new(big.Rat).Mul(r, big.NewRat(1000, 1)).Num().Int64() }
	sizes := make([]int64, len(p.Sizes))
	for i, s := range p.Sizes {
		sizes[i] = thou(s.Nominal)
	}
	low, high, target := thou(p.Low), thou(p.High), thou(p.Target)
	fewest, nearest := 0, int64(0)
	var walk func(i, pieces int, left int64)
	walk = func(i, pieces int, left int64) {
		if i == len(sizes) {
			off := max(left-target, target-left)
			if left >= low && left <= high && (fewest == 0 || pieces < fewest || pieces == fewest && off < nearest) {
				fewest, nearest = pieces, off
			}
			return
		}
		for c := 0; c <= min(p.Sizes[i].Stock, p.MaxPieces-pieces); c++ {
			walk(i+1, pieces+c, left-int64(c)*sizes[i])
		}
	}
	walk(0, 0, reading)
	return fewest
}
