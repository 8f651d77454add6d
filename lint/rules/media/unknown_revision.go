package media

import (
	"fettle/bench/revision"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// UnknownRevision: a picture made at a revision that there has not been.
var UnknownRevision = &rule.Rule{
	Name:     "media/unknown-revision",
	Severity: diag.Doubt,
	Finds:    "A figure or film made at a revision that this manual has not had.",
	Why:      "Nobody can tell whether it shows the step as it is.",
	Remedy:   "Look at it beside the step, and write the revision at which the two agreed; a past one needs its history block.",
	Bad: `
-- m/figures/hinge.svg --
<svg xmlns="http://www.w3.org/2000/svg"/>
-- m/gate.proc.hcl --
manual "gate" {
  title    = "Gate: last look"
  units    = "metric"
  revision = "C"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.look]

  history "B" {
    issued = "2026-01-10"
    reason = "First issue. Revision C gives the gate a second hinge."
  }
}

part "gate" {
  name = "Gate"
}

figure "hinge" {
  file    = "figures/hinge.svg"
  alt     = "The upper hinge, its pin pointing up."
  made_at = "D" # want "revision D, which this manual"
  shows   = [procedure.look.inspect.swing]
}

media "film" {
  address = "Film 1 on the kit's disc"
  made_at = "A" # want "revision A, which this manual"
  shows   = [procedure.look.inspect.swing]
  governs = "The manual prevails."
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    figures   = [figure.hinge, media.film]
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
  revision = "C"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.look]

  history "B" {
    issued = "2026-01-10"
    reason = "First issue. Revision C gives the gate a second hinge."
  }
}

part "gate" {
  name = "Gate"
}

figure "hinge" {
  file    = "figures/hinge.svg"
  alt     = "The upper hinge, its pin pointing up."
  made_at = "C"
  shows   = [procedure.look.inspect.swing]
}

media "film" {
  address = "Film 1 on the kit's disc"
  made_at = "B"
  shows   = [procedure.look.inspect.swing]
  governs = "The manual prevails."
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    figures   = [figure.hinge, media.film]
    criterion = "It touches nothing."
    otherwise = "Plane off what touches."
  }
}
`,
	Run: func(p *rule.Pass) {
		past := p.Nested(entry.History)
		for _, n := range made(p.Manual) {
			at := n.Plain("made_at")
			if at == "" || known(p, past, at) {
				continue
			}
			later := false
			if order, ok := revision.Compare(at, p.Plain("revision")); ok {
				later = order > 0
			}
			// Without a history nothing is known of the past.
			if later || len(past) > 0 {
				p.Report(n.At("made_at"), rule.Called(n)+" was made at revision "+at+", which this manual has never had.",
					rule.Related(p.At("revision"), "This is revision "+p.Plain("revision")+"."))
			}
		}
	},
}

// known reports a revision that is this one, one of the history, or was issued last.
func known(p *rule.Pass, past []*model.Node, letter string) bool {
	if letter == p.Plain("revision") || p.Issued != nil && letter == p.Issued.Revision {
		return true
	}
	for _, h := range past {
		if h.ID == letter {
			return true
		}
	}
	return false
}

// made are the figures and films, in source order.
func made(m *model.Manual) []*model.Node {
	return append(m.Of(entry.Figure.Name), m.Of(entry.Media.Name)...)
}
