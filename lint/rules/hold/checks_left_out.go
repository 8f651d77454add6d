package hold

import (
	"slices"

	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// ChecksLeftOut reads the holds that check what an option leaves out.
var ChecksLeftOut = &rule.Rule{
	Name:     "hold/checks-left-out",
	Severity: diag.Error,
	Finds:    "A hold that checks a step which an option leaves out.",
	Why:      "Where it is left out the builder asks for a release, and there is nothing to release.",
	Remedy:   "Give the hold the same when, or let it check something that is always done.",
	Bad: `
option "seal" {
  name    = "Seal"
  choices = ["lip", "packing"]
}

part "body" {
  name = "Pump body"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

procedure "close" {
  title = "Close the pump"

  inspect "lip" {
    title     = "Look at the lip of the seal"
    on        = [part.cover]
    when      = option.seal == "lip"
    criterion = "The lip is whole and points inwards."
    otherwise = "Ask the workshop for another cover."
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  hold "cover" {
    title   = "Stop before the pump is handed on"
    checks  = [inspect.lip] # want "“Look at the lip of the seal”, which is left out"
    release = "second person"
  }
}
`,
	Good: `
option "seal" {
  name    = "Seal"
  choices = ["lip", "packing"]
}

part "body" {
  name = "Pump body"
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
}

procedure "close" {
  title = "Close the pump"

  inspect "lip" {
    title     = "Look at the lip of the seal"
    on        = [part.cover]
    when      = option.seal == "lip"
    criterion = "The lip is whole and points inwards."
    otherwise = "Ask the workshop for another cover."
  }

  fit "cover" {
    title = "Put the cover on the body"
    part  = part.cover
  }

  hold "cover" {
    title   = "Stop before the pump is handed on"
    checks  = [inspect.lip]
    when    = option.seal == "lip"
    release = "second person"
  }
}
`,
	Run: func(p *rule.Pass) {
		first := map[*model.Node]int{} // several holds may check one step: its condition is the one mistake
		var found []bench.Breach
		for _, b := range p.Breaches(bench.HoldChecksAbsent) {
			if i, ok := first[b.Objects[0].Node]; ok {
				found[i].Causes = append(slices.Clip(found[i].Causes), bench.Cause{Act: -1, Node: b.Node, Attr: b.Attr, Words: "this hold checks it, too"})
				continue
			}
			first[b.Objects[0].Node] = len(found)
			found = append(found, b)
		}
		for _, b := range found {
			p.Breach(b, "This hold checks "+rule.CalledObject(b.Objects[0])+", which is left out.")
		}
	},
}
