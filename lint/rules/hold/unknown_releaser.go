package hold

import (
	"slices"
	"strings"

	"fettle/lang/diag"
	"fettle/lint/rule"
)

// UnknownReleaser compares who releases a hold with who may.
var UnknownReleaser = &rule.Rule{
	Name:     "hold/unknown-releaser",
	Severity: diag.Error,
	Finds:    "A hold released by somebody whom the manual does not name.",
	Why:      "A builder cannot tell whom to ask, and the record has no line for that signature.",
	Remedy:   "Name them in the manual's signatories, or use one of: builder, second person, supplier, inspector.",
	Bad: bore + `
procedure "close" {
  title = "Close the pump"

  inspect "bore" {
    title     = "Look down the bore"
    on        = [part.body.feature.bore]
    criterion = "The bore shows no score."
    critical  = true
    otherwise = "Ask the workshop for another body."
  }

  hold "bore" {
    title   = "Stop before the bore is covered"
    checks  = [inspect.bore]
    before  = fit.cover
    release = "harbour master" # want "“harbour master” is no signatory of this manual"
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }
}
`,
	Good: bore + `
procedure "close" {
  title = "Close the pump"

  inspect "bore" {
    title     = "Look down the bore"
    on        = [part.body.feature.bore]
    criterion = "The bore shows no score."
    critical  = true
    otherwise = "Ask the workshop for another body."
  }

  hold "bore" {
    title   = "Stop before the bore is covered"
    checks  = [inspect.bore]
    before  = fit.cover
    release = "second person"
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }
}
`,
	Run: func(p *rule.Pass) {
		named := p.Names("signatories")
		for _, n := range p.Having("release") {
			who := n.Plain("release")
			if slices.Contains(builtIn, strings.ToLower(who)) || slices.Contains(named, who) {
				continue
			}
			p.Report(n.At("release"), "“"+who+"” is no signatory of this manual.",
				rule.Related(p.At("signatories"), "The manual's signatories stand here."))
		}
	},
}

// builtIn may release a hold of any manual.
var builtIn = []string{"builder", "second person", "supplier", "inspector"}
