package safety

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lint/rule"
)

// MediaWithoutPrecedence: a film or page outside the manual with no word on which of the two prevails.
var MediaWithoutPrecedence = &rule.Rule{
	Name:     "safety/media-without-precedence",
	Severity: diag.Doubt,
	Finds:    "A film or page outside the manual with no word on which of the two prevails.",
	Why:      "The film is older than the manual or younger; where they differ, half the builders follow each.",
	Remedy:   "Give governs: \"manual\", or whatever prevails.",
	Bad: `media "film" { # want "prevails"
  address = "Film 4 on the kit's disc"
  made_at = "A"
  shows   = [procedure.wash.clean.cover]
}

part "cover" {
  name = "Cover"
}

procedure "wash" {
  title = "Wash the cover"

  clean "cover" {
    title    = "Wash the cover"
    on       = [part.cover]
    supplies = [supply.solvent]
    figures  = [media.film]
  }
}
`,
	Good: `media "film" {
  address = "Film 4 on the kit's disc"
  made_at = "A"
  shows   = [procedure.wash.clean.cover]
  governs = "manual"
}

part "cover" {
  name = "Cover"
}

procedure "wash" {
  title = "Wash the cover"

  clean "cover" {
    title    = "Wash the cover"
    on       = [part.cover]
    supplies = [supply.solvent]
    figures  = [media.film]
  }
}
`,
	Run: runMediaWithoutPrecedence,
}

func runMediaWithoutPrecedence(p *rule.Pass) {
	for _, n := range p.Of(entry.Media.Name) {
		if strings.TrimSpace(n.Plain("governs")) == "" && !n.Damaged {
			p.Report(n.Name, "Nobody says which prevails where "+rule.Called(n)+" and the manual differ.")
		}
	}
}
