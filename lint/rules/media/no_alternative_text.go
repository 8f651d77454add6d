package media

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lint/rule"
)

// NoAlternativeText: a picture without words for who cannot see it.
var NoAlternativeText = &rule.Rule{
	Name:     "media/no-alternative-text",
	Severity: diag.Doubt,
	Finds:    "A figure without words that say what it shows.",
	Why:      "On paper without the picture, on a screen in the sun or read aloud, nothing is left of it.",
	Remedy:   "Say in `alt` what the picture shows, as you would on the telephone.",
	Source:   "WCAG 2.2, success criterion 1.1.1.",
	Bad: `
-- m/figures/hinge.svg --
<svg xmlns="http://www.w3.org/2000/svg"/>
-- m/gate.proc.hcl --
manual "gate" {
  title    = "Gate: last look"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.look]
}

part "gate" {
  name = "Gate"
}

figure "hinge" { # want "without words"
  file    = "figures/hinge.svg"
  made_at = "A"
  shows   = [procedure.look.inspect.swing]
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    figures   = [figure.hinge]
    text      = "Start with the gate shut: ![](figures/hinge.svg)" # want "without words"
    criterion = "It touches nothing."
    otherwise = "Plane off what touches."
  }
}
`,
	Good: `
-- m/figures/hinge.svg --
<svg xmlns="http://www.w3.org/2000/svg"/>
-- m/gate.proc.hcl --
manual "gate" {
  title    = "Gate: last look"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.look]
}

part "gate" {
  name = "Gate"
}

figure "hinge" {
  file    = "figures/hinge.svg"
  alt     = "The upper hinge, its pin pointing up."
  made_at = "A"
  shows   = [procedure.look.inspect.swing]
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    figures   = [figure.hinge]
    text      = "Start with the gate shut: ![the hinge from the yard](figures/hinge.svg)"
    criterion = "It touches nothing."
    otherwise = "Plane off what touches."
  }
}
`,
	Run: func(p *rule.Pass) {
		eachPicture(p, func(c picture) {
			if strings.TrimSpace(c.alt) == "" {
				p.Report(c.of, c.name+" stands without words that say what it shows.")
			}
		})
	},
}
