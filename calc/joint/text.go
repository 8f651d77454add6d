package joint

import (
	"math/big"
	"strings"
)

// quoted is what an author wrote, in quotes, with control characters left out.
func quoted(s string) string {
	return `"` + strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f {
			return -1
		}
		return r
	}, strings.ToValidUTF8(s, "\uFFFD")) + `"`
}

// decimal prints a number with as few decimals as it needs, at most six.
func decimal(r *big.Rat) string {
	s := r.FloatString(6)
	return strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}

// fold makes the words of a name comparable: lower case, one spelling, single spaces.
func fold(s string) string {
	s = strings.ToLower(strings.Join(strings.Fields(s), " "))
	return strings.NewReplacer("aluminum", "aluminium", "gray", "grey", "fiber", "fibre").Replace(s)
}

func cutSpace(s string) (before, after string, found bool) { return strings.Cut(s, " ") }

func rats(s string) []*big.Rat {
	var all []*big.Rat
	for _, f := range strings.Fields(s) {
		all = append(all, rat(f))
	}
	return all
}
