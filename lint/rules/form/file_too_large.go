package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// FileTooLarge is reported while the manual is read.
var FileTooLarge = &rule.Rule{
	Name:     "form/file-too-large",
	Severity: diag.Error,
	Finds:    "A file of more than 40 megabytes.",
	Why:      "A manual of 100,000 steps has 27; this is something else.",
	Remedy:   "Divide it into several files, or take out what does not belong to the manual.",
	Broken:   true,
}
