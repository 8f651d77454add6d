package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnknownWord is reported while the manual is read.
var UnknownWord = &rule.Rule{
	Name:     "form/unknown-word",
	Severity: diag.Error,
	Finds:    "A word that the attribute does not know.",
	Why:      "An attribute of words takes a few words only, so that a manual says the same thing everywhere.",
	Remedy:   "Use one of the words that the finding lists.",
	Bad: `part "rim" {
  name  = "Rim"
  faces = ["edge"]
}

procedure "timing" {
  title = "Mark the rim"

  mark "zero" {
    title = "Mark the rim at the pointer"
    on    = [part.rim.face.edge]
    tools = [tool.scriber]
    how   = "scratch" # want "cannot be"
  }
}
`,
	Good: `part "rim" {
  name  = "Rim"
  faces = ["edge"]
}

procedure "timing" {
  title = "Mark the rim"

  mark "zero" {
    title = "Mark the rim at the pointer"
    on    = [part.rim.face.edge]
    tools = [tool.scriber]
    how   = "scribe"
  }

  inspect "zero" {
    title     = "Look for the mark"
    on        = [part.rim]
    marks     = [mark.zero]
    criterion = "The line runs across the whole edge."
    otherwise = "Scribe it again."
  }
}
`,
	Broken: true,
}
