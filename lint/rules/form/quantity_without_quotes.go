package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// QuantityWithoutQuotes is reported while the manual is read.
var QuantityWithoutQuotes = &rule.Rule{
	Name:     "form/quantity-without-quotes",
	Severity: diag.Error,
	Finds:    "A number with a unit behind it, and no quotes round the two.",
	Why:      "Without quotes the unit is a word of its own, and the number stands alone.",
	Remedy:   "Write it as a manual prints it, between quotes: \"5 min\".",
	Bad: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = 2 h # want "stands in quotes"
  }
}
`,
	Good: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}
`,
	Broken: true,
}
