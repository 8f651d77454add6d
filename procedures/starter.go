// Package procedures holds the demo manuals as data, and the manual that a new
// author starts from.
package procedures

import (
	"embed"
	"io/fs"
)

//go:embed starter/*.proc.hcl
var starter embed.FS

// Starter is a small sound manual: one selective fit, one tightened cover, one
// first turn. Its files lie at the root.
func Starter() fs.FS {
	files, err := fs.Sub(starter, "starter")
	if err != nil {
		panic(err) // the folder is part of the program
	}
	return files
}
