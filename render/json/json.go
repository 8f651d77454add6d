// Package json writes a checklist for machines: the document tree as it stands,
// with every number as an exact decimal or fraction in ASCII beside its UCUM
// code. It is for whoever feeds another system; schema.json beside this file
// describes the form, and a test holds the two together.
//
// It refuses nothing that render.Lower gives.
package json

import (
	"encoding/json"
	"io"

	"fettle/render"
)

// Form names the form of the output. It changes when a reader of the former one
// would misread the new one.
const Form = "fettle-checklist-1"

// File is the whole output.
type File struct {
	Form     string           `json:"form"` // always Form
	Document *render.Document `json:"document"`
}

// Write writes the document, indented, with a line end at its end. The error is
// that of w.
func Write(w io.Writer, d *render.Document) error {
	e := json.NewEncoder(w)
	e.SetIndent("", "  ")
	return e.Encode(File{Form, d})
}
