package fit

import (
	"strconv"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// ImpossiblePieces looks for numbers of pieces that no pack can have.
var ImpossiblePieces = &rule.Rule{
	Name:     "fit/impossible-pieces",
	Severity: diag.Error,
	Finds:    "A number of pieces that no pack of the kit can have, or with which none ever fits.",
	Why:      "Whatever a builder reads, there is no pack to pick.",
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
    pieces = "3..4" # want "at least 3 pieces"
    gap    = measure.float
    leaves = limit.float
  }

  fit "pack" {
    title = "Slide the pack on: ${choose.pack}"
    part  = choose.pack
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
			message := impossible(p, s, place)
			if message == "" || said[s] {
				return
			}
			said[s] = true
			at := s.At("pieces")
			p.Report(at, message, rule.Related(s.Ref("from").Name, "The kit's pieces stand here."))
		})
	},
}

func impossible(p *rule.Pass, s *model.Step, place string) string {
	sel, err := p.Plan().Selection(s, place)
	switch err := err.(type) {
	case *calc.PieceLimitError:
		if err.Min > err.Max || err.Max < 0 {
			return "No whole number of pieces lies in what `pieces` allows."
		}
		return "A pack needs at least " + piecesOf(err.Min) + ", and the kit holds " + strconv.Itoa(err.Held) + "."
	case nil:
	default:
		return ""
	}
	c, err := p.Plan().Cover(s, place)
	if err != nil || len(c.Served) > 0 || !otherPiecesServe(c) {
		return ""
	}
	least, most := strconv.Itoa(sel.Problem.MinPieces), strconv.Itoa(sel.Problem.MaxPieces)
	return "No pack of " + least + " to " + most + " pieces fits any likely " + measured(sel) + "; other numbers of pieces would."
}

// otherPiecesServe reports that some reading would be served if a pack might have
// any number of pieces.
func otherPiecesServe(c *values.Cover) bool {
	free := c.Problem
	free.MinPieces, free.MaxPieces = 0, held(c.Selection)
	f, err := calc.NewFit(free)
	if err != nil {
		return false
	}
	cover, err := f.Coverage(c.Low.In(c.Unit).Num(), c.High.In(c.Unit).Num())
	return err == nil && len(cover.Served) > 0
}
