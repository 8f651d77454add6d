package kit

import (
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// NumberTwice compares the part numbers of the catalogue.
var NumberTwice = &rule.Rule{
	Name:     "kit/number-twice",
	Severity: diag.Error,
	Finds:    "Two entries under one part number.",
	Why:      "Who orders by the number gets one of the two, and perhaps the wrong one.",
	Remedy:   "Correct one of the numbers; the drawing or the packing list tells which.",
	Bad: `
part "shaft" {
  name   = "Shaft"
  number = "BK-040"
}

part "bush" {
  name    = "Bush"
  number  = "BK-040" # want "also the number of"
  sits_on = part.shaft
}

procedure "bush" {
  title = "Fit the bush"

  fit "bush" {
    title = "Slide the bush on"
    part  = part.bush
  }
}
`,
	Good: `
part "shaft" {
  name   = "Shaft"
  number = "BK-040"
}

part "bush" {
  name    = "Bush"
  number  = "BK-041"
  sits_on = part.shaft
}

procedure "bush" {
  title = "Fit the bush"

  fit "bush" {
    title = "Slide the bush on"
    part  = part.bush
  }
}
`,
	Run: func(p *rule.Pass) {
		first := map[string]*model.Node{}
		look := func(n *model.Node) {
			number := n.Plain("number")
			if number == "" {
				return
			}
			old := first[number]
			if old == nil {
				first[number] = n
				return
			}
			p.Report(n.At("number"), number+" is also the number of "+name(old)+".",
				rule.Related(old.At("number"), "The first stands here."))
		}
		for _, n := range p.Of(entry.Part.Name) {
			look(n)
			for _, size := range n.Nested(entry.Size) {
				look(size)
			}
		}
	},
}

// name is what a builder calls a part, or one size of it.
func name(n *model.Node) string {
	if n.Def == entry.Size {
		return "“" + n.Parent.Title() + ", " + n.ID + "”"
	}
	return rule.Called(n)
}
