package safety

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// MessageIncomplete: a danger, warning or caution without its hazard, its result or how to avoid it.
var MessageIncomplete = &rule.Rule{
	Name:     "safety/message-incomplete",
	Severity: diag.Error,
	Finds:    "A danger, warning or caution without its hazard, its result or how to avoid it.",
	Why:      "Who does not know what can happen does not take care, and who does not know how cannot.",
	Remedy:   "Say what can hurt, what it does to a person, and how not to get hurt.",
	Source:   "ANSI Z535.6: a safety message names hazard, consequence and avoidance.",
	Bad: `part "cover" {
  name  = "Cover"
  faces = ["flange"]
}

supply "thinner" {
  name = "Cellulose thinner"
  kind = "solvent"
  ppe  = [ppe.gloves]

  warning { # want "result"
    hazard = "Thinner and its vapour catch fire easily."
    avoid  = "Work with the door open, and keep flames out of the room."
  }
}

procedure "wash" {
  title = "Wash the cover"

  clean "flange" {
    title    = "Wash the flange of the cover"
    on       = [part.cover.face.flange]
    supplies = [supply.thinner]
  }
}
`,
	Good: `part "cover" {
  name  = "Cover"
  faces = ["flange"]
}

supply "thinner" {
  name = "Cellulose thinner"
  kind = "solvent"
  ppe  = [ppe.gloves]

  warning {
    hazard = "Thinner and its vapour catch fire easily."
    result = "Burns."
    avoid  = "Work with the door open, and keep flames out of the room."
  }
}

procedure "wash" {
  title = "Wash the cover"

  clean "flange" {
    title    = "Wash the flange of the cover"
    on       = [part.cover.face.flange]
    supplies = [supply.thinner]
  }
}
`,
	Run: runMessageIncomplete,
}

func runMessageIncomplete(p *rule.Pass) {
	look := func(n *model.Node) {
		for _, m := range messages(n) {
			if m.Damaged {
				continue
			}
			var lacks []string
			for _, attr := range [...]string{"hazard", "result", "avoid"} {
				if strings.TrimSpace(m.Plain(attr)) == "" {
					lacks = append(lacks, attr)
				}
			}
			if len(lacks) > 0 {
				p.Report(m.Name, "This "+m.Def.Name+" of "+rule.Called(n)+" has no "+rule.Join(lacks, "and no")+".")
			}
		}
	}
	for _, n := range p.Entries {
		look(n)
	}
	for _, s := range p.Steps() {
		look(s.Node)
	}
}
