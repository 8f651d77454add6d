package values

import (
	"strings"

	"fettle/calc"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lang/values"
)

// worked are the attributes whose formulas are worked out.
var worked = []string{"is", "gap", "base", "accept", "likely", "leaves", "makes", "when", "agree_within", "pieces", "amount", "takes", "to"}

// eachWorked calls visit for every formula of the manual that rests on something, once for
// each place whose numbers differ.
func eachWorked(having func(string) []*model.Node, visit func(n *model.Node, attr string, e calc.Expr)) {
	for _, attr := range worked {
		for _, n := range having(attr) {
			if n.Step == nil {
				continue
			}
			places := values.Places(n.Step)
			for i, place := range places {
				f := n.Formula(attr, place)
				if f == nil || f.Const != nil {
					continue
				}
				if e := values.Localize(f.Expr, place); i == 0 || e != f.Expr || byPlace(n, attr) {
					visit(n, attr, e)
				}
			}
		}
	}
}

func byPlace(n *model.Node, attr string) bool {
	_, ok := n.Attr(attr).Value.(model.ByPlace)
	return ok
}

// at is where an expression stands in the file of the node that holds it.
func at(n *model.Node, s calc.Span) source.Span {
	return source.Span{File: n.File, Start: s.Start, End: s.End}
}

// with says which readings show a fault: "float is 1.02 mm and bore is 40.00 mm".
func with(found *calc.Found) string {
	var words []string
	for _, r := range found.Readings {
		name := r.Var.Label
		if name == "" {
			name = strings.TrimPrefix(r.Var.Name, "option.")
		}
		if r.Var.Place != "" {
			name += " (" + strings.ReplaceAll(r.Var.Place, "_", " ") + ")"
		}
		words = append(words, name+" is "+say(r.Value))
	}
	if n := len(words); n > 1 {
		return strings.Join(words[:n-1], ", ") + " and " + words[n-1]
	}
	return strings.Join(words, "")
}

// unbounded are the readings that e rests on, directly or not, for which nobody
// says what is likely.
func unbounded(e calc.Expr, d calc.Domain) []*calc.Var {
	var open []*calc.Var
	seen := map[string]bool{}
	var visit func(e calc.Expr)
	visit = func(e calc.Expr) {
		for _, v := range calc.Vars(e) {
			if seen[v.Key()] {
				continue
			}
			seen[v.Key()] = true
			p := d.Possible(v)
			switch {
			case p.Is != nil:
				visit(p.Is)
			case v.Of.Shape == calc.NumberShape && (p.Low == nil || p.High == nil) && p.Work == nil:
				open = append(open, v)
			}
			for _, x := range p.Rests {
				visit(x)
			}
		}
	}
	visit(e)
	return open
}
