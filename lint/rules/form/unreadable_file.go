package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnreadableFile is reported while the manual is read.
var UnreadableFile = &rule.Rule{
	Name:     "form/unreadable-file",
	Severity: diag.Error,
	Finds:    "A file that cannot be read.",
	Why:      "The manual would be checked without it.",
	Remedy:   "Give yourself leave to read it, or take it away.",
	Broken:   true,
}
