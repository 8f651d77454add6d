package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// MissingFolder is reported while the manual is read.
var MissingFolder = &rule.Rule{
	Name:     "form/missing-folder",
	Severity: diag.Error,
	Finds:    "A folder that is not there.",
	Why:      "Without it there is nothing to check.",
	Remedy:   "Look for a slip in its name.",
	Broken:   true,
}
