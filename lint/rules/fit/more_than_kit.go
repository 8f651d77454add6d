package fit

import (
	"strconv"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// MoreThanKit compares the number of pieces allowed with the kit.
var MoreThanKit = &rule.Rule{
	Name:     "fit/more-than-kit",
	Severity: diag.Doubt,
	Finds:    "A choice that allows a pack of more pieces than the kit holds.",
	Why:      "Either pieces are missing from the packing list, or the pack was meant to be smaller.",
	Remedy:   "Correct `pieces`, or what the kit holds.",
	Bad: `
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
  size "0.20 mm" { in_kit = 1 }
}

procedure "shim" {
  title = "Shim the shaft"

  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.19..0.40 mm"
  }

  choose "pack" {
    title  = "Choose the pack"
    from   = part.shim
    pieces = "1..4" # want "up to 4 pieces, and the kit holds 2"
    gap    = measure.float
    leaves = limit.float
  }

  fit "pack" {
    title = "Slide the pack on: ${choose.pack}"
    part  = choose.pack
  }

  example "one" {
    readings = { measure.float = "0.21 mm" }
    gives    = { choose.pack.result = "0.11 mm" }
  }
}
`,
	Good: `
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
  size "0.20 mm" { in_kit = 1 }
}

procedure "shim" {
  title = "Shim the shaft"

  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = "0.19..0.40 mm"
  }

  choose "pack" {
    title  = "Choose the pack"
    from   = part.shim
    pieces = "1..2"
    gap    = measure.float
    leaves = limit.float
  }

  fit "pack" {
    title = "Slide the pack on: ${choose.pack}"
    part  = choose.pack
  }

  example "one" {
    readings = { measure.float = "0.21 mm" }
    gives    = { choose.pack.result = "0.11 mm" }
  }
}
`,
	Run: func(p *rule.Pass) {
		said := map[*model.Step]bool{}
		eachChoice(p, func(s *model.Step, place string) {
			sel, err := p.Plan().Selection(s, place)
			if err != nil || said[s] || sel.Problem.MaxPieces <= held(sel) {
				return
			}
			said[s] = true
			p.Report(s.At("pieces"), "A pack may have up to "+piecesOf(sel.Problem.MaxPieces)+", and the kit holds "+strconv.Itoa(held(sel))+".",
				rule.Related(sel.Part.Name, "The kit's pieces stand here."))
		})
	},
}
