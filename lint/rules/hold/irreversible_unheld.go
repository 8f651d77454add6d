package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// IrreversibleUnheld reads the steps that cannot be undone and that no hold let go on.
var IrreversibleUnheld = &rule.Rule{
	Name:     "hold/irreversible-unheld",
	Severity: diag.Error,
	Finds:    "A step that cannot be undone without a hold that stands before it.",
	Why:      "A slip here costs the part, and nobody looked a second time.",
	Remedy:   "Put a hold before it, with before = this step and checks = what must be right by then.",
	Bad: `
part "body" {
  name = "Pump body"
}

procedure "shorten" {
  title = "Shorten the spout"

  inspect "mark" {
    title     = "Look at the cutting mark"
    on        = [part.body]
    criterion = "The mark lies on the far side of the bore."
    otherwise = "Mark it again."
  }

  work "cut" {
    title        = "Saw the spout off at the mark"
    on           = [part.body]
    ppe          = [ppe.goggles]
    irreversible = true # want "No hold stands before this step, which cannot be undone"
  }
}
`,
	Good: `
part "body" {
  name = "Pump body"
}

procedure "shorten" {
  title = "Shorten the spout"

  inspect "mark" {
    title     = "Look at the cutting mark"
    on        = [part.body]
    criterion = "The mark lies on the far side of the bore."
    otherwise = "Mark it again."
  }

  hold "cut" {
    title   = "Stop before the body is cut"
    checks  = [inspect.mark]
    before  = work.cut
    release = "second person"
  }

  work "cut" {
    title        = "Saw the spout off at the mark"
    on           = [part.body]
    ppe          = [ppe.goggles]
    irreversible = true
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.IrreversibleUnheld) {
			p.Breach(b, "No hold stands before this step, which cannot be undone.", disturbed(b))
		}
	},
}
