package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// PlacesInsidePlaces is reported while the manual is read.
var PlacesInsidePlaces = &rule.Rule{
	Name:     "form/places-inside-places",
	Severity: diag.Error,
	Finds:    "A step with places of its own inside a procedure that is done place by place.",
	Why:      "A value would need two places to be found again.",
	Remedy:   "Write the steps out, or move them into a procedure of their own.",
	Bad: `places "side" {
  names = ["left", "right"]
}

places "end" {
  names = ["front", "rear"]
}

procedure "rest" {
  title   = "Let the castings rest"
  at_each = places.side

  wait "settle" {
    title   = "Wait until the casting is as warm as the room"
    for     = "2 h"
    at_each = places.end # want "places of its own"
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
    for   = "2 h"
  }
}
`,
	Broken: true,
}
