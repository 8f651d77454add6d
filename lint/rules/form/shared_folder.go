package form

import (
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// SharedFolder is reported while the manual is read.
var SharedFolder = &rule.Rule{
	Name:     "form/shared-folder",
	Severity: diag.Error,
	Finds:    "A shared folder that is not there, is empty, or lies outside the root.",
	Why:      "The tools and supplies in it are missing from the manual.",
	Remedy:   "Correct the path, which is seen from the manual's folder, or give fettle a root that holds both folders.",
	Bad: `-- m/rest.proc.hcl --
manual "casting" {
  title    = "Casting: rest"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  shares   = ["../shp"] # want "no shared folder shp"
  order    = [procedure.rest]
}

procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}
`,
	Good: `procedure "rest" {
  title = "Let the casting rest"

  wait "settle" {
    title = "Wait until the casting is as warm as the room"
    for   = "2 h"
  }
}
`,
	Broken: true,
}
