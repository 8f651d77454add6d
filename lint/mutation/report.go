package mutation

import (
	"fmt"
	"runtime"
	"strings"
	"sync"
)

// Measure judges mutants, a few at a time, and counts by class in the order of
// the classes.
func Measure(classes []*Class, mutants []Mutant) []*Tally {
	verdicts := make([]Verdict, len(mutants))
	next := make(chan int)
	var wg sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		wg.Go(func() {
			for i := range next {
				verdicts[i] = Judge(mutants[i])
			}
		})
	}
	for i := range mutants {
		next <- i
	}
	close(next)
	wg.Wait()
	byClass := map[*Class]*Tally{}
	tallies := make([]*Tally, len(classes))
	for i, c := range classes {
		tallies[i] = &Tally{Class: c}
		byClass[c] = tallies[i]
	}
	for _, v := range verdicts {
		byClass[v.Class].Add(v)
	}
	return tallies
}

// Table prints tallies as a Markdown table, the sum last.
func Table(tallies []*Tally) string {
	var b strings.Builder
	b.WriteString("| group | fault | mutants | right rule | wrong place | another rule | missed | extra |\n")
	b.WriteString("|---|---|---:|---:|---:|---:|---:|---:|\n")
	sum := Tally{Class: &Class{Group: "**all**", Fault: fmt.Sprintf("%d classes", len(tallies))}}
	for _, t := range tallies {
		t.row(&b)
		sum.Mutants += t.Mutants
		sum.Right += t.Right
		sum.Elsewhere += t.Elsewhere
		sum.Other += t.Other
		sum.Missed += t.Missed
		sum.Extra += t.Extra
	}
	sum.row(&b)
	return b.String()
}

func (t *Tally) row(b *strings.Builder) {
	share := "–"
	if t.Mutants > 0 {
		share = fmt.Sprintf("%d (%.0f %%)", t.Right, 100*float64(t.Right)/float64(t.Mutants))
	}
	fmt.Fprintf(b, "| %s | %s | %d | %s | %d | %d | %d | %d |\n",
		t.Class.Group, t.Class.Fault, t.Mutants, share, t.Elsewhere, t.Other, t.Missed, t.Extra)
}

// Detail tells of every mutant that was not judged as it should be.
func (t *Tally) Detail() string {
	var b strings.Builder
	for _, v := range t.Short {
		word := "extra"
		switch {
		case v.Right:
		case v.Elsewhere:
			word = "WRONG PLACE"
		case v.Other:
			word = "ANOTHER RULE"
		default:
			word = "MISSED"
		}
		fmt.Fprintf(&b, "%s · %s: %s: %s\n", t.Class.Fault, v.Sound.Name, word, v.Title)
		if !v.Right {
			for _, w := range v.Where {
				if len(v.Where) < 4 {
					fmt.Fprintf(&b, "    at %s\n", w)
				}
			}
		}
		if v.Elsewhere && v.Best != nil {
			fmt.Fprintf(&b, "    ~ %s %s: %s\n", v.Best.Span, v.Best.Rule, v.Best.Message)
		}
		for i, f := range v.Extra {
			if i == 5 {
				fmt.Fprintf(&b, "    … and %d more\n", len(v.Extra)-5)
				break
			}
			fmt.Fprintf(&b, "    + %s %s: %s\n", f.Span, f.Rule, f.Message)
		}
	}
	return b.String()
}

// Target is what is asked of every class: the share of mutants that a right rule
// finds at the right place, and the findings that may come along with each.
const (
	TargetRight = 0.95
	TargetExtra = 0.1
)

// Shortfall says by how much a class misses the target, or nothing.
func (t *Tally) Shortfall() string {
	if t.Mutants == 0 {
		return "no mutant"
	}
	n := float64(t.Mutants)
	var short []string
	if right := float64(t.Right) / n; right < TargetRight {
		short = append(short, fmt.Sprintf("%d of %d found by the right rule (%d elsewhere, %d by another rule, %d missed)", t.Right, t.Mutants, t.Elsewhere, t.Other, t.Missed))
	}
	if extra := float64(t.Extra) / n; extra > TargetExtra {
		short = append(short, fmt.Sprintf("%.2f extra findings for each mutant", extra))
	}
	return strings.Join(short, "; ")
}
