package mutation

import (
	"math/big"
	"regexp"
	"strconv"
	"strings"

	"fettle/calc"
	"fettle/lang/model"
)

// width is how far apart the ends of limits lie.
func width(l calc.Limits) calc.Quantity {
	d := new(big.Rat).Sub(l.High.In(l.Low.Unit).Num(), l.Low.Num())
	return calc.NewQuantity(d, l.Low.Unit, max(l.Low.Decimals, l.High.Decimals))
}

// plus is q with n times d added.
func plus(q, d calc.Quantity, n int64) calc.Quantity {
	by := new(big.Rat).Mul(d.Num(), big.NewRat(n, 1))
	return calc.NewQuantity(by.Add(by, q.In(d.Unit).Num()), d.Unit, max(q.Decimals, d.Decimals))
}

// times is q multiplied, at two more decimals.
func times(q calc.Quantity, by float64) calc.Quantity {
	f := new(big.Rat).SetFloat64(by)
	return calc.NewQuantity(f.Mul(f, q.Num()), q.Unit, max(q.Decimals, 0)+2)
}

func float(q calc.Quantity) float64 {
	f, _ := q.Base().Float64()
	return f
}

var written = regexp.MustCompile(`\d+(?:\.\d+)?(\s*%)?`)

// scale multiplies every number of a quantity but percentages. It gives nothing
// where it cannot: for fractions.
func scale(text string, by float64) string {
	if strings.Contains(text, "/") {
		return ""
	}
	return written.ReplaceAllStringFunc(text, func(m string) string {
		if strings.Contains(m, "%") {
			return m
		}
		f, _ := strconv.ParseFloat(m, 64)
		return strconv.FormatFloat(f*by, 'f', 1, 64)
	})
}

// literal is what is written between the quotes of an attribute that is one
// quantity, or nothing.
func literal(n *model.Node, attr string) string {
	if f, ok := n.Get(attr, "").(*model.Formula); !ok || f == nil || f.Literal == nil || !constant(n, attr) {
		return ""
	}
	return strings.Trim(n.ValueSpan(n.Attr(attr)).Text(), `"`)
}

// band writes a range.
func band(low, high calc.Quantity) string { return low.Value() + ".." + high.String() }
