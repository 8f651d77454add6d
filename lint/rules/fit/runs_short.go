package fit

import (
	"strconv"
	"strings"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// RunsShort proves the choices that draw on one heap of pieces together.
var RunsShort = &rule.Rule{
	Name:     "fit/runs-short",
	Severity: diag.Error,
	Finds:    "Several choices that draw on the same pieces, where the earlier ones can leave too few for a later one.",
	Why:      "Each place alone is served, and a builder whose places read alike runs out of pieces at the last one.",
	Remedy:   "Put more pieces of the size into the kit.",
	Bad: `
places "side" {
  names = ["left", "right"]
}

limit "float" {
  name  = "Axial float of the shaft"
  range = "0.04..0.14 mm"
  basis = "Drawing BK-040"
}

part "shaft" {
  name = "Shaft"
}

part "shim" {
  name    = "Thrust shim"
  sits_on = part.shaft
  size "0.10 mm" { in_kit = 1 }
  size "0.20 mm" { in_kit = 2 }
}

procedure "shim" {
  title   = "Shim the shaft at the ${place}"
  at_each = places.side

  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.19..0.34 mm"
  }

  choose "pack" { # want "right"
    title  = "Choose the shim"
    from   = part.shim
    gap    = measure.float
    leaves = limit.float
  }

  fit "pack" {
    title = "Slide the shim on: ${choose.pack}"
    part  = choose.pack
  }

  example "one" {
    readings = { measure.float["left"] = "0.21 mm" }
    gives    = { choose.pack["left"].result = "0.11 mm" }
  }
}
`,
	Good: `
places "side" {
  names = ["left", "right"]
}

limit "float" {
  name  = "Axial float of the shaft"
  range = "0.04..0.14 mm"
  basis = "Drawing BK-040"
}

part "shaft" {
  name = "Shaft"
}

part "shim" {
  name    = "Thrust shim"
  sits_on = part.shaft
  size "0.10 mm" { in_kit = 2 }
  size "0.20 mm" { in_kit = 2 }
}

procedure "shim" {
  title   = "Shim the shaft at the ${place}"
  at_each = places.side

  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.19..0.34 mm"
  }

  choose "pack" {
    title  = "Choose the shim"
    from   = part.shim
    gap    = measure.float
    leaves = limit.float
  }

  fit "pack" {
    title = "Slide the shim on: ${choose.pack}"
    part  = choose.pack
  }

  example "one" {
    readings = { measure.float["left"] = "0.21 mm" }
    gives    = { choose.pack["left"].result = "0.11 mm" }
  }
}
`,
	Run: func(p *rule.Pass) {
		for _, part := range p.Plan().Graded() {
			for _, h := range p.Plan().Heaps(part) {
				if h.Err == nil && h.Proof.Verdict == calc.HeapRunsShort && len(h.Proof.OwnGaps) == 0 {
					runsShort(p, h)
					break
				}
			}
		}
	},
}

func runsShort(p *rule.Pass, h values.Heap) {
	short := h.Proof.Shortage
	here := h.Covers[short.Place]
	unit := h.Covers[0].Selection
	var before []string
	about := []func(*diag.Finding){}
	for i, pick := range short.Picks {
		c := h.Covers[i]
		before = append(before, rule.Called(c.Step.Node)+atPlace(c.Place)+" takes "+packed(unit, pick)+" for "+quantity(unit, short.Readings[i]))
		if c.Step != here.Step {
			about = append(about, rule.Related(c.Step.Name, "This draws on the same pieces."))
		}
	}
	var left []string
	for i, n := range short.Left {
		if n > 0 {
			left = append(left, strconv.Itoa(n)+" × "+unit.Sizes[i].ID)
		}
	}
	if left == nil {
		left = []string{"nothing"}
	}
	about = append(about,
		rule.Reason("It happens when "+rule.Join(before, "and")+"; then the kit holds "+strings.Join(left, ", ")+"."),
		rule.Related(h.Part.Name, "The kit's pieces stand here."))
	p.Report(here.Step.Name, "The kit can run short of "+rule.Called(h.Part)+atPlace(here.Place)+": nothing fits a "+measured(here.Selection)+" of "+
		quantity(unit, short.Readings[short.Place])+" any more.", about...)
}

// packed lists the pieces of a pack.
func packed(sel *values.Selection, pack calc.Pack) string {
	var words []string
	for i, n := range pack.Counts {
		if n > 0 {
			words = append(words, strconv.Itoa(n)+" × "+sel.Sizes[i].ID)
		}
	}
	if words == nil {
		return "nothing"
	}
	return strings.Join(words, ", ")
}
