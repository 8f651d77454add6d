package order

import (
	"slices"

	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// OtherwiseImpossible reads the ways out of a bad reading that led nowhere on the bench.
var OtherwiseImpossible = &rule.Rule{
	Name:     "order/otherwise-impossible",
	Severity: diag.Error,
	Finds:    "An `otherwise` that cannot be done from where the builder stands, or that goes back to a step which cannot be done again from there.",
	Why:      "A builder with a reading outside its limits is sent down a way that ends at a wall.",
	Remedy:   "Take off first what is in the way, go back to a step that can be reached, put what is spent into the kit twice, or say stop.",
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
		blocks := map[*model.Node]int{} // of each block the first hindrance is reported, the rest are consequences
		var first []bench.Breach
		for _, b := range p.Impossible() {
			if i, ok := blocks[b.Step.Branch]; ok {
				first[i].Causes = append(slices.Clip(first[i].Causes), bench.Cause{Act: -1, Node: b.Step.Node, Attr: b.Attr, Words: "nor can this be done"})
				continue
			}
			blocks[b.Step.Branch] = len(first)
			first = append(first, b)
		}
		for _, b := range first {
			p.Breach(b, "This cannot be done from where the builder stands: "+hindrance(b)+".")
		}
	},
}

// hindrance says what keeps a step of an otherwise block from being done.
func hindrance(b bench.Breach) string {
	name := func(i int) string {
		if i >= len(b.Objects) {
			return "something"
		}
		return rule.CalledObject(b.Objects[i])
	}
	is := rule.Is(b.Objects[0])
	switch b.What {
	case bench.RemovedFastened, bench.RemovedHeld:
		return name(1) + " still holds " + name(0)
	case bench.RemovedUnder:
		return name(1) + " still lies on " + name(0)
	case bench.NothingToLoosen, bench.LockedLoose, bench.NotAsFound:
		return name(0) + " " + is + " not as this step finds it"
	case bench.NotOn, bench.NotStarted:
		return name(0) + " " + is + " not on"
	case bench.TightenedTwice:
		return name(0) + " " + is + " tight already"
	case bench.FittedTwice:
		return name(0) + " " + is + " on already"
	case bench.SeatNotOn, bench.StackNotOn:
		return name(1) + ", which belongs under " + name(0) + ", is not on"
	case bench.SpentUsedAgain, bench.MoreThanKit:
		return "the kit holds no more of " + name(0)
	case bench.MarkNotMade, bench.MarkWiped:
		return "there is no mark of " + name(0)
	case bench.ToolElsewhere:
		return name(0) + " " + is + " in use elsewhere"
	case bench.FilledClosed:
		return name(0) + " is closed"
	}
	return name(1) + " covers " + name(0) // Covered, MarkCovered
}
