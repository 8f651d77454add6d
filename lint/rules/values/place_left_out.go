package values

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// PlaceLeftOut is reported while the manual is read.
var PlaceLeftOut = &rule.Rule{
	Name:     "values/place-left-out",
	Severity: diag.Error,
	Finds:    "A map by place that says nothing for one of the places.",
	Why:      "A builder who works there has no value.",
	Remedy:   "Add a value for every place.",
	Bad: `places "side" {
  names = ["left", "right"]
}

procedure "rest" {
  title   = "Let the castings rest"
  at_each = places.side

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = { left = "2 h" } # want "says nothing for right"
  }
}
`,
	Good: `places "side" {
  names = ["left", "right"]
}

procedure "rest" {
  title   = "Let the castings rest"
  at_each = places.side

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = { left = "2 h", right = "3 h" }
  }
}
`,
	Broken: true,
}
