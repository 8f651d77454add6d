package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// LinkOutOfRoot is reported while the manual is read.
var LinkOutOfRoot = &rule.Rule{
	Name:     "form/link-out-of-root",
	Severity: diag.Error,
	Finds:    "A file or folder that is a link out of the root folder.",
	Why:      "Nothing outside the root is read, so that a manual is the same on every machine.",
	Remedy:   "Copy what it points to into the root.",
	Broken:   true,
}
