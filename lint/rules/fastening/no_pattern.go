package fastening

import (
	"strconv"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// NoPattern: a joint of four or more fasteners that are tightened in no stated order.
var NoPattern = &rule.Rule{
	Name:     "fastening/no-pattern",
	Severity: diag.Doubt,
	Finds:    "A joint of four or more fasteners that are tightened in no stated order.",
	Why:      "Tightened one after the other round the edge, they pull one side down first, and the part stays tilted or bowed.",
	Remedy:   "Give layout, and pattern = \"criss-cross\".",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" { # want "no pattern"
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 4
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }
}
`,
	Good: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 4
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
  layout       = "circle"
  pattern      = "criss-cross"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }
}
`,
	Run: runNoPattern,
}

func runNoPattern(p *rule.Pass) {
	tightened(p, func(f *model.Node) {
		n := f.Whole("quantity", "", 1)
		if n < 4 || f.Has("pattern") || f.Damaged || !joins(f) {
			return
		}
		var more []func(*diag.Finding)
		if a := f.Attr("layout"); a != nil {
			end := f.Span(a)
			end.Start = end.End
			more = append(more, rule.Fix("Add the pattern", false, diag.Edit{Span: end, New: "\n  pattern = \"criss-cross\""}))
		}
		p.Report(f.Name, rule.Called(f)+" has "+strconv.Itoa(n)+" fasteners and no pattern to tighten them in.", more...)
	})
}

// joins reports fasteners that pull parts together, as against plugs, adjusters
// and the like that stand each for itself.
func joins(f *model.Node) bool {
	switch f.Word("does") {
	case "clamp", "gland", "set bearing":
		return len(f.AllRefs("stack")) > 1
	}
	return false
}
