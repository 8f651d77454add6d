package fit

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lint/rule"
)

// SizeNeverUsed looks for sizes that no best pick needs.
var SizeNeverUsed = &rule.Rule{
	Name:     "fit/size-never-used",
	Severity: diag.Doubt,
	Finds:    "A size in the kit that no best pick uses for any likely reading.",
	Why:      "The supplier packs and a builder sorts a piece that is never fitted; often a number of the size or of the likely readings is wrong.",
	Remedy:   "Take the size out of the kit, or correct its value or what is likely.",
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
  size "0.90 mm" { in_kit = 1 } # want "never uses 0.90 mm"
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
		for _, part := range p.Plan().Graded() {
			if part.Flag("spare") {
				continue
			}
			for _, n := range neverUsed(p, part) {
				p.Report(n.Name, "A best pick of "+rule.Called(part)+" never uses "+n.ID+".",
					rule.Related(firstChoice(p, part), "It is picked from here."))
			}
		}
	},
}

// neverUsed are the sizes of a part that no choice ever picks; none where that is
// not known.
func neverUsed(p *rule.Pass, part *model.Node) []*model.Node {
	idle := map[*model.Node]bool{}
	known := true
	first := true
	meet := func(sizes []*model.Node, never []int) {
		unused := map[*model.Node]bool{}
		for _, i := range never {
			unused[sizes[i]] = true
		}
		if first {
			idle, first = unused, false
			return
		}
		for n := range idle {
			if !unused[n] {
				delete(idle, n)
			}
		}
	}
	var sizes []*model.Node
	p.Plan().Draws(part, func(s *model.Step, place string) {
		c, err := p.Plan().Cover(s, place)
		if err != nil || len(c.Served) == 0 {
			known = false
			return
		}
		sizes = c.Sizes
		meet(c.Sizes, c.NeverUsed)
	})
	// What is left by others may call for sizes that a full kit never needs.
	for _, h := range p.Plan().Heaps(part) {
		if h.Err != nil || !h.Proof.Ample && h.Proof.NeverUsed == nil {
			known = false
			continue
		}
		meet(h.Covers[0].Sizes, h.Proof.NeverUsed)
	}
	if !known {
		return nil
	}
	var never []*model.Node
	for _, n := range sizes {
		if idle[n] {
			never = append(never, n)
		}
	}
	return never
}

func firstChoice(p *rule.Pass, part *model.Node) source.Span {
	var at source.Span
	p.Plan().Draws(part, func(s *model.Step, _ string) {
		if at.IsZero() {
			at = s.Name
		}
	})
	return at
}
