package seal

import (
	"fettle/bench"
	"fettle/calc"
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

// mark is what people call a mark, port or feature; a mark of a step by its title.
func mark(o bench.Object) string {
	if o.Node != nil && o.Node.Step != nil {
		return "the mark of " + rule.Called(o.Node)
	}
	return rule.CalledObject(o)
}

// service is the sealant behind a breach with the temperatures that it stands.
func service(b bench.Breach) string {
	for _, c := range b.Causes {
		if l, ok := c.Node.Limits("service", ""); ok && c.Attr == "service" {
			return rule.Called(c.Node) + " stands " + calc.Style{}.Limits(l.Low, l.High).First
		}
	}
	return "its sealant does not stand that"
}
