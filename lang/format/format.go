// Package format gives a file its one canonical layout: two blanks for each
// level, `=` and trailing comments in columns, at most one empty line between
// items, line ends \n and no byte order mark. It changes layout and never
// meaning, keeps every comment, and leaves a file with errors as it is.
// Formatting twice is formatting once. The conventions are those of HCL's own
// formatter, whose output of a formatted file is the same file.
package format

import (
	"fettle/lang/diag"
	"fettle/lang/source"
	"fettle/lang/syntax"
)

// Format gives src in canonical layout, or src itself and false if it has
// syntax errors.
func Format(src []byte) ([]byte, bool) {
	tree := syntax.Parse(source.New("", string(src)))
	if tree.Damaged || tree.Findings.Worst() == diag.Error {
		return src, false
	}
	return []byte(print(layOut(tokens(tree)))), true
}
