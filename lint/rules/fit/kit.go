package fit

import (
	"math/big"
	"strconv"
	"strings"

	"fettle/calc"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// eachChoice calls visit for every choice at every place.
func eachChoice(p *rule.Pass, visit func(s *model.Step, place string)) {
	for _, n := range p.Having("from") {
		if values.Chooses(n.Step) && !n.Damaged {
			for _, place := range values.Places(n.Step) {
				visit(n.Step, place)
			}
		}
	}
}

// measured names what a choice measures: "gap of “Measure the float”".
func measured(sel *values.Selection) string {
	name := "gap"
	if sel.Problem.BuildUp {
		name = "base"
	}
	if v, ok := sel.Measured.(*calc.Var); ok && v.Label != "" {
		return v.Label
	}
	return name
}

// atPlace is " at left", or nothing where there is one place.
func atPlace(place string) string {
	if place == "" {
		return ""
	}
	return " at " + strings.ReplaceAll(place, "_", " ")
}

// stock says what the kit holds and a pack may have.
func stock(sel *values.Selection) string {
	n := held(sel)
	s := "The kit holds " + piecesOf(n) + " in " + sizes(len(sel.Sizes)) + ", and a pack may have "
	switch least, most := sel.Problem.MinPieces, sel.Problem.MaxPieces; {
	case least == most:
		return s + strconv.Itoa(most) + "."
	default:
		return s + strconv.Itoa(least) + " to " + strconv.Itoa(most) + "."
	}
}

func held(sel *values.Selection) int {
	n := 0
	for _, s := range sel.Problem.Sizes {
		n += s.Stock
	}
	return n
}

func piecesOf(n int) string { return counted(n, "piece") }
func sizes(n int) string    { return counted(n, "size") }

func counted(n int, what string) string {
	if n == 1 {
		return "one " + what
	}
	return strconv.Itoa(n) + " " + what + "s"
}

// quantity prints a number of the problem with the decimals it needs.
func quantity(sel *values.Selection, r *big.Rat) string {
	q := sel.Quantity(r)
	for q.Decimals != calc.Exact && q.Decimals < 6 && q.Rounded().Cmp(q) != 0 {
		q.Decimals++
	}
	return q.String()
}
