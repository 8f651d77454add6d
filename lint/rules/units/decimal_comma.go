package units

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// DecimalComma is reported while the manual is read.
var DecimalComma = &rule.Rule{
	Name:     "units/decimal-comma",
	Severity: diag.Error,
	Finds:    "A number with a comma.",
	Why:      "A comma stands for thousands in one country and for decimals in the next; between the two lies a factor of a thousand.",
	Remedy:   "Write a point before the decimals and nothing between thousands.",
	Bad: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19,98..20.00 mm" # want "comma"
    otherwise = "Stop. Ask the workshop for another shaft."
  }
}
`,
	Good: `part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_25]
    accept    = "19.98..20.00 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }
}
`,
	Broken: true,
}
