package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// FolderNamedAsFile is reported while the manual is read.
var FolderNamedAsFile = &rule.Rule{
	Name:     "form/folder-named-as-file",
	Severity: diag.Error,
	Finds:    "A folder whose name ends as those of a manual's files do.",
	Why:      "Nothing in it belongs to the manual.",
	Remedy:   "Rename the folder.",
	Broken:   true,
}
