// Package folder reads the files of a manual from an injected file system.
package folder

import (
	"io/fs"

	"fettle/lang/diag"
	"fettle/lang/source"
)

// Suffix ends the name of every file that belongs to a manual.
const Suffix = ".proc.hcl"

// Read gives the files that stand directly in dir, a slash path inside fsys,
// sorted by path; what could not be read is a finding. Nested folders are not
// read: they may hold manuals of their own.
func Read(fsys fs.FS, dir string) ([]*source.File, diag.List) { return nil, nil }
