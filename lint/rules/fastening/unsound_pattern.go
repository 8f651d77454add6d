package fastening

import (
	"regexp"
	"strconv"
	"strings"

	"fettle/calc/joint"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// UnsoundPattern: an order of tightening that is no sound criss-cross for the layout of the joint.
var UnsoundPattern = &rule.Rule{
	Name:     "fastening/unsound-pattern",
	Severity: diag.Doubt,
	Finds:    "An order of tightening that is no sound criss-cross for the layout of the joint.",
	Why:      "What is tight first holds the rest off: the part tilts or stays bowed.",
	Remedy:   "Write pattern = \"criss-cross\", which is worked out from the layout, or an order that goes across on a circle and from the middle outwards on a row or grid.",
	Source:   "Common practice, no source. Circles of 4, 8, 16 and 20 agree with the legacy cross pattern of ASME PCC-1, from memory.",
	Bad: `part "bed" {
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
  pattern      = ["1", "2", "3", "4"] # want "neighbours"
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
  pattern      = ["1", "3", "2", "4"]
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
	Run: runUnsoundPattern,
}

func runUnsoundPattern(p *rule.Pass) {
	for _, f := range p.Having("pattern") {
		if f.Def != entry.Fastening {
			continue
		}
		names, _ := f.Get("pattern", "").(model.Names)
		n := f.Whole("quantity", "", 1)
		if len(names) == 0 {
			continue
		}
		layouts, said := layoutsOf(f, n)
		if said != "" {
			p.Report(f.At("layout"), said, rule.Related(f.At("quantity"), "The number of fasteners stands here."))
			continue
		}
		if len(names) == 1 && !isNumber(names[0].Text) {
			continue // "criss-cross"
		}
		order := make([]int, len(names))
		for i, name := range names {
			order[i], _ = strconv.Atoi(strings.TrimSpace(name.Text))
		}
		var faults []joint.PatternFault
		for _, l := range layouts {
			faults = joint.JudgePattern(l, order)
			if len(faults) == 0 {
				break
			}
		}
		if len(faults) == 0 {
			continue
		}
		at := names[min(faults[0].At, len(names)-1)].Span
		more := []func(*diag.Finding){rule.Reason(faults[0].Reason)}
		if f.Has("layout") {
			more = append(more, rule.Related(f.At("layout"), "The layout stands here."),
				rule.Fix("Let the order be worked out", false, diag.Edit{Span: f.At("pattern"), New: "\"criss-cross\""}))
		}
		p.Report(at, unstop(faults[0].Message)+" on "+rule.Called(f)+".", more...)
	}
}

func isNumber(s string) bool { _, err := strconv.Atoi(strings.TrimSpace(s)); return err == nil }

var gridShape = regexp.MustCompile(`^grid +(\d{1,3}) ?[x×] ?(\d{1,3})$`)

// layoutsOf are the layouts that a fastening may have: the one stated, all
// rectangles of a plain grid, and all there are where none is stated. said is what
// is wrong with the one stated.
func layoutsOf(f *model.Node, n int) (all []joint.Layout, said string) {
	grids := func() {
		for rows := 2; rows*rows <= n; rows++ {
			if n%rows == 0 {
				all = append(all, joint.Grid(rows, n/rows), joint.Grid(n/rows, rows))
			}
		}
	}
	switch layout := strings.ToLower(strings.TrimSpace(f.Plain("layout"))); {
	case layout == "circle":
		return []joint.Layout{joint.Circle(n)}, ""
	case layout == "row":
		return []joint.Layout{joint.Row(n)}, ""
	case layout == "grid":
		grids()
	case gridShape.MatchString(layout):
		m := gridShape.FindStringSubmatch(layout)
		rows, _ := strconv.Atoi(m[1])
		columns, _ := strconv.Atoi(m[2])
		l := joint.Grid(rows, columns)
		if rows < 1 || columns < 1 || l.Count() != n {
			return nil, "The layout of " + rule.Called(f) + " has " + strconv.Itoa(rows*columns) + " places, and there are " + strconv.Itoa(n) + " fasteners."
		}
		all = []joint.Layout{l}
	default:
		all = append(all, joint.Circle(n), joint.Row(n))
		grids()
	}
	return all, ""
}
