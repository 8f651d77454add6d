// Package draw makes the pictures that follow from a model, as SVG in the colour
// of the text around them, and says each in words. It is for the formats of
// package render.
//
// It refuses text of authors: a picture holds numbers only, so that nothing in
// it needs escaping.
package draw

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Pattern draws the order in which fasteners are tightened: each fastener with
// its turn. Layout is "circle", "row" or "grid RxC", positions are numbered from
// the top, clockwise, or row by row. Order lists positions in the order of
// visits. ok is false for anything that cannot be drawn.
func Pattern(layout string, order []string) (svg string, ok bool) {
	turn, ok := turns(order)
	if !ok || len(turn) > 60 {
		return "", false
	}
	at, ok := places(layout, len(turn))
	if !ok {
		return "", false
	}
	const r = 15
	minX, minY, maxX, maxY := math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for _, p := range at {
		minX, maxX = math.Min(minX, p.x), math.Max(maxX, p.x)
		minY, maxY = math.Min(minY, p.y), math.Max(maxY, p.y)
	}
	var b strings.Builder
	fmt.Fprintf(&b, `<svg class="pattern" viewBox="%s %s %s %s" width="%s" height="%s" aria-hidden="true" focusable="false">`,
		n(minX-r-3), n(minY-r-3), n(maxX-minX+2*r+6), n(maxY-minY+2*r+6), n(maxX-minX+2*r+6), n(maxY-minY+2*r+6))
	b.WriteString(`<g fill="none" stroke="currentColor">`)
	b.WriteString(`<path stroke-width="1" stroke-dasharray="3 3" d="`)
	for i, p := range visited(turn, at) {
		fmt.Fprintf(&b, "%c%s %s", "ML"[min(i, 1)], n(p.x), n(p.y))
	}
	b.WriteString(`"/></g><g stroke="currentColor" stroke-width="1.5" class="bolt">`)
	for i, p := range at {
		if turn[i] == 1 { // where to start shows without colour: a double ring
			fmt.Fprintf(&b, `<circle cx="%s" cy="%s" r="%d"/>`, n(p.x), n(p.y), r+2)
		}
		fmt.Fprintf(&b, `<circle cx="%s" cy="%s" r="%d"/>`, n(p.x), n(p.y), r-1)
	}
	b.WriteString(`</g><g fill="currentColor" font-size="15" font-weight="700" text-anchor="middle">`)
	for i, p := range at {
		fmt.Fprintf(&b, `<text x="%s" y="%s">%d</text>`, n(p.x), n(p.y+5.5), turn[i])
	}
	b.WriteString(`</g></svg>`)
	return b.String(), true
}

// turns gives the turn of each position; ok is false where order does not visit
// the positions 1 to n once each.
func turns(order []string) (turn []int, ok bool) {
	turn = make([]int, len(order))
	for i, s := range order {
		p, err := strconv.Atoi(s)
		if err != nil || p < 1 || p > len(order) || turn[p-1] != 0 {
			return nil, false
		}
		turn[p-1] = i + 1
	}
	return turn, len(order) > 1
}

type point struct{ x, y float64 }

func visited(turn []int, at []point) []point {
	out := make([]point, len(at))
	for i, t := range turn {
		out[t-1] = at[i]
	}
	return out
}

// places are the positions of n fasteners. Floating point is for pixels only.
func places(layout string, count int) ([]point, bool) {
	at := make([]point, count)
	word, size, _ := strings.Cut(layout, " ")
	columns := count
	switch word {
	case "circle", "":
		radius := math.Max(46, float64(count)*44/(2*math.Pi))
		for i := range at {
			a := 2*math.Pi*float64(i)/float64(count) - math.Pi/2
			at[i] = point{radius * math.Cos(a), radius * math.Sin(a)}
		}
		return at, true
	case "grid":
		r, c, _ := strings.Cut(size, "x")
		rows, err := strconv.Atoi(r)
		if columns, _ = strconv.Atoi(c); err != nil || rows*columns != count {
			return nil, false
		}
	case "row":
	default:
		return nil, false
	}
	for i := range at {
		at[i] = point{float64(i%columns) * 46, float64(i/columns) * 46}
	}
	return at, true
}

// n writes a length in pixels.
func n(v float64) string {
	v = math.Round(v*10) / 10
	if v == 0 {
		v = 0 // no -0
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}
