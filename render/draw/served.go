package draw

import (
	"fmt"
	"strings"
)

// Span is a stretch of readings, as a part of the whole range: 0 is its low end
// and 1 its high end.
type Span struct{ From, To float64 }

// Served draws the readings that a kit serves: a solid bar where a pack fits, an
// open one with a cross where none does. Gaps are in order.
func Served(gaps []Span) string {
	const width, left, top, height = 320.0, 6.0, 6.0, 18.0
	at := func(f float64) float64 { return left + f*width }
	var b strings.Builder
	fmt.Fprintf(&b, `<svg class="served" viewBox="0 0 %s 30" width="%s" height="30" aria-hidden="true" focusable="false">`, n(width+2*left), n(width+2*left))
	solid := func(from, to float64) {
		if to > from {
			fmt.Fprintf(&b, `<path fill="currentColor" d="M%s %sH%sV%sH%sz"/>`, n(at(from)), n(top), n(at(to)), n(top+height), n(at(from)))
		}
	}
	done := 0.0
	for _, g := range gaps {
		solid(done, g.From)
		from, to := at(g.From), max(at(g.To), at(g.From)+4) // a narrow gap is seen, too
		fmt.Fprintf(&b, `<path fill="none" stroke="currentColor" stroke-width="1.5" d="M%s %sH%sV%sH%szL%s %sM%s %sL%s %s"/>`,
			n(from), n(top), n(to), n(top+height), n(from), n(to), n(top+height), n(to), n(top), n(from), n(top+height))
		done = g.To
	}
	solid(done, 1)
	b.WriteString(`</svg>`)
	return b.String()
}

// Order draws procedures in their order, each with lines to those it comes after.
// After holds, for each, the places of these, from 0; others are left out.
func Order(numbers []string, after [][]int) string {
	const row, right, r = 30.0, 200.0, 12.0
	y := func(i int) float64 { return float64(i)*row + row/2 }
	var b strings.Builder
	fmt.Fprintf(&b, `<svg class="sequence" viewBox="0 0 %s %s" width="%s" height="%s" aria-hidden="true" focusable="false"><g fill="none" stroke="currentColor" stroke-width="1.5">`,
		n(right+20), n(row*float64(len(numbers))), n(right+20), n(row*float64(len(numbers))))
	for i, list := range after {
		for _, k := range list {
			if k < 0 || k >= i {
				continue
			}
			if k == i-1 { // straight down
				fmt.Fprintf(&b, `<path d="M%s %sV%s"/>`, n(right), n(y(k)+r), n(y(i)-r))
				continue
			}
			out := right - r - min(20+float64(i-k)*11, right-r-6)
			fmt.Fprintf(&b, `<path d="M%s %sH%sV%sH%s"/>`, n(right-r), n(y(k)+3), n(out), n(y(i)-3), n(right-r))
		}
	}
	b.WriteString(`</g><g stroke="currentColor" stroke-width="1.5" class="bolt">`)
	for i := range numbers {
		fmt.Fprintf(&b, `<circle cx="%s" cy="%s" r="%s"/>`, n(right), n(y(i)), n(r))
	}
	b.WriteString(`</g><g fill="currentColor" font-size="12" font-weight="700" text-anchor="middle">`)
	for i, number := range numbers {
		fmt.Fprintf(&b, `<text x="%s" y="%s">%s</text>`, n(right), n(y(i)+4.5), number)
	}
	b.WriteString(`</g></svg>`)
	return b.String()
}
