package syntax

import "fettle/lang/source"

// Parse reads a file. It never fails: see Tree.
func Parse(f *source.File) *Tree { return &Tree{File: f} }
