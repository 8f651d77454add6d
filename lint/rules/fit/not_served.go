package fit

import (
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lang/values"
	"fettle/lint/rule"
)

// NotServed proves for every choice that each likely reading finds a pack.
var NotServed = &rule.Rule{
	Name:     "fit/not-served",
	Severity: diag.Error,
	Finds:    "Readings that the manual calls likely and for which no pack of the kit fits.",
	Why:      "A builder with such a reading cannot go on until another piece has come by post.",
	Remedy:   "Add sizes or pieces to the kit, allow more pieces to a pack, or correct what is likely.",
	Bad: `
limit "float" {
  name   = "Axial float of the shaft"
  range  = "0.08..0.14 mm"
  target = "0.11 mm"
  basis  = "Drawing BK-040"
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
    leaves = limit.float # want "between 0.24 mm and 0.28 mm"
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
  name   = "Axial float of the shaft"
  range  = "0.04..0.14 mm"
  target = "0.09 mm"
  basis  = "Drawing BK-040"
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
		said := map[*model.Step]string{}
		eachChoice(p, func(s *model.Step, place string) {
			c, err := p.Plan().Cover(s, place)
			if err != nil || len(c.Gaps) == 0 || len(c.Served) == 0 && otherPiecesServe(c) {
				return
			}
			gaps := list(c)
			if said[s] == gaps {
				return
			}
			said[s] = gaps
			about := []func(*diag.Finding){
				rule.Reason(stock(c.Selection) + " A builder with such a reading cannot go on until another piece has come by post."),
				rule.Related(c.Part.Name, "The sizes stand here."),
			}
			if n := reading(c.Selection); n != nil {
				about = append(about, rule.Related(n.At("likely"), "These readings are likely."))
			}
			p.Report(where(s), "No pack of "+rule.Called(c.Part)+" fits a "+measured(c.Selection)+" "+gaps+atPlace(place)+".", about...)
		})
	},
}

// where is the place of the limits of a choice.
func where(s *model.Step) source.Span {
	for _, name := range []string{"leaves", "makes"} {
		if s.Has(name) {
			return s.At(name)
		}
	}
	return s.Name
}

// reading is the step that reads what the choice measures, where it is one.
func reading(sel *values.Selection) *model.Node {
	for _, attr := range []string{"gap", "base"} {
		if f := sel.Step.Formula(attr, sel.Place); f != nil && len(f.Refs) == 1 && f.Refs[0].To != nil && f.Refs[0].To.Has("likely") {
			return f.Refs[0].To
		}
	}
	return nil
}

// list says which readings are not served: the first few gaps, with an example.
func list(c *values.Cover) string {
	const most = 3
	var words []string
	for i, g := range c.Gaps {
		if i == most {
			words = append(words, counted(len(c.Gaps)-most, "more gap"))
			break
		}
		if g.Low.Cmp(g.High) == 0 {
			words = append(words, "of "+quantity(c.Selection, g.Low))
			continue
		}
		words = append(words, "between "+quantity(c.Selection, g.Low)+" and "+quantity(c.Selection, g.High))
	}
	return rule.Join(words, "or") + ", such as " + quantity(c.Selection, c.Gaps[0].Sample)
}
