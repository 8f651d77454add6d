package seal

import (
	"fettle/bench"
	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// housing is the little machine of most fragments: two flanges to be sealed.
const housing = `
part "housing" {
  name  = "Housing"
  faces = ["flange"]
}

part "cover" {
  name    = "Cover"
  sits_on = part.housing
  faces   = ["flange"]
}
`

// laid points at the seal.
func laid(b bench.Breach) func(*diag.Finding) {
	if n := b.Objects[0].Node; n != nil {
		return rule.Related(n.Name, "The sealant is laid here.")
	}
	return func(*diag.Finding) {}
}

// mark is what people call a mark, port or feature; a mark of a step by its title.
func mark(o bench.Object) string {
	if o.Node != nil && o.Node.Step != nil {
		return "the mark of " + rule.Called(o.Node)
	}
	return rule.CalledObject(o)
}

// service is the range of temperatures that a supply stands, as printed.
func service(supply *model.Node) string {
	l, ok := supply.Limits("service", "")
	if !ok {
		return "less"
	}
	return calc.Style{}.Limits(l.Low, l.High).First
}
