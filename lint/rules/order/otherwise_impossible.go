package order

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// OtherwiseImpossible reads the ways out of a bad reading that led nowhere on the bench.
var OtherwiseImpossible = &rule.Rule{
	Name:     "order/otherwise-impossible",
	Severity: diag.Error,
	Finds:    "An `otherwise` that goes back to a step which cannot be done again from there.",
	Why:      "A builder with a reading outside its limits is sent down a way that ends at a wall.",
	Remedy:   "Go back to a step that can be reached, put what is spent into the kit twice, or say stop.",
	Bad: `
part "housing" {
  name = "Housing"
}

part "bush" {
  name    = "Bush"
  sits_on = part.housing
}

part "cap" {
  name     = "Crimped cap"
  sits_on  = part.housing
  covers   = [part.bush]
  use_once = true
}

procedure "bush" {
  title = "Fit the bush"

  fit "bush" {
    title = "Push the bush into the housing"
    part  = part.bush
  }

  fit "cap" {
    title    = "Press the cap over the bush"
    part     = part.cap
    quantity = 1
  }

  inspect "play" {
    title     = "Feel for play in the bush"
    on        = [part.housing]
    criterion = "No play can be felt."

    otherwise {
      text = "Take the cap off, turn the bush a quarter turn and press a cap on again."
      then = fit.bush # want "cannot be done again from here"
    }
  }
}
`,
	Good: `
part "housing" {
  name = "Housing"
}

part "bush" {
  name    = "Bush"
  sits_on = part.housing
}

part "cap" {
  name     = "Crimped cap"
  sits_on  = part.housing
  covers   = [part.bush]
  use_once = true
  quantity = 2
  spare    = true
}

procedure "bush" {
  title = "Fit the bush"

  fit "bush" {
    title = "Push the bush into the housing"
    part  = part.bush
  }

  fit "cap" {
    title    = "Press the cap over the bush"
    part     = part.cap
    quantity = 1
  }

  inspect "play" {
    title     = "Feel for play in the bush"
    on        = [part.housing]
    criterion = "No play can be felt."

    otherwise {
      text = "Take the cap off, turn the bush a quarter turn and press a cap on again."
      then = fit.bush
    }
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, b := range p.Breaches(bench.BranchCannotBeDone) {
			message := "This goes back to " + rule.CalledObject(b.Objects[0]) + ", which cannot be done again from here"
			if len(b.Objects) > 1 && len(b.Causes) > 0 {
				message += ": " + rule.CalledObject(b.Objects[1]) + " is in the way, " + b.Causes[0].Words
			}
			p.Breach(b, message+".")
		}
	},
}
