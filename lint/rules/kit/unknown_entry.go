package kit

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnknownEntry is reported while the manual is read.
var UnknownEntry = &rule.Rule{
	Name:     "kit/unknown-entry",
	Severity: diag.Error,
	Finds:    "A part, tool, supply, piece of PPE or fastening that the catalogue does not hold.",
	Why:      "A builder would look for something that is not there.",
	Remedy:   "Add it to the catalogue, or correct the name.",
	Broken:   true,
	Bad: `
part "shaft" {
  name = "Shaft"
}

procedure "size" {
  title = "Measure the shaft"

  measure "journal" {
    title     = "Measure the journal"
    on        = [part.shaft]
    tools     = [tool.micrometer_52] # want "no tool called"
    accept    = "19.98..20.00 mm"
    otherwise = "Stop. Ask the workshop for another shaft."
  }
}
`,
	Good: `
part "shaft" {
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
}
