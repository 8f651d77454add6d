package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// TooManyFaults is reported while the manual is read.
var TooManyFaults = &rule.Rule{
	Name:     "form/too-many-faults",
	Severity: diag.Error,
	Finds:    "A file with more than 100 places that cannot be read.",
	Why:      "The rest of the file was not read.",
	Remedy:   "Mend what is listed first; much of the rest may follow from it.",
	Broken:   true,
}
