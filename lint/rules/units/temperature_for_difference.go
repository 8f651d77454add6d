package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TemperatureForDifference is reported while the manual is read.
var TemperatureForDifference = &rule.Rule{
	Name:     "units/temperature-for-difference",
	Severity: diag.Error,
	Finds:    "A temperature where a difference of two is meant, or the other way round.",
	Why:      "5 °C on the thermometer and 5 °C warmer are not the same thing.",
	Remedy:   "Write a difference in K.",
	Bad: `part "shaft" {
  name = "Shaft"
}

part "bearing" {
  name    = "Ball bearing"
  sits_on = part.shaft
  fits_by = "shrink"
}

procedure "warm" {
  title = "Fit the bearing warm"

  heat "bearing" {
    title = "Warm the bearing in the oven"
    on    = [part.bearing]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "20 °C" + "60 °C" # want "added"
  }

  fit "bearing" {
    title = "Slide the bearing on"
    part  = part.bearing
    ppe   = [ppe.heat_gloves]
  }
}
`,
	Good: `part "shaft" {
  name = "Shaft"
}

part "bearing" {
  name    = "Ball bearing"
  sits_on = part.shaft
  fits_by = "shrink"
}

procedure "warm" {
  title = "Fit the bearing warm"

  heat "bearing" {
    title = "Warm the bearing in the oven"
    on    = [part.bearing]
    tools = [tool.oven]
    ppe   = [ppe.heat_gloves]
    to    = "20 °C" + "60 K"
  }

  fit "bearing" {
    title = "Slide the bearing on"
    part  = part.bearing
    ppe   = [ppe.heat_gloves]
  }
}
`,
	Broken: true,
}
