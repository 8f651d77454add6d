package fastening

import (
	"slices"

	"fettle/calc/joint"
	"fettle/lang/diag"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// SocketDoesNotFit: a socket, bit or spanner that does not fit the fastening it is named for.
var SocketDoesNotFit = &rule.Rule{
	Name:     "fastening/socket-does-not-fit",
	Severity: diag.Error,
	Finds:    "A socket, bit or spanner that does not fit the fastening it is named for.",
	Why:      "The builder stops for the right one, or rounds the corners off with the wrong one.",
	Remedy:   "Name the tool whose size is the fastening's across_flats, in the same words.",
	Source:   "Usual widths across flats: ISO 4014, DIN 931, ASME B18.2.1 and others.",
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
  quantity     = 2
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
    tools     = [tool.torque_wrench_100, tool.socket_16] # want "does not fit"
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
  quantity     = 2
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
	Run: runSocketDoesNotFit,
}

func runSocketDoesNotFit(p *rule.Pass) {
	for _, s := range p.Steps() {
		f, sized := turned(s)
		if f == nil || len(sized) == 0 {
			continue
		}
		width := f.Plain("across_flats")
		if width == "" {
			unusual(p, f, sized[0])
			continue
		}
		if slices.ContainsFunc(sized, func(t tooling.Tool) bool { return tooling.Fits(t.Plain("size"), width) }) {
			continue
		}
		t := sized[0]
		p.Report(t.At, rule.Called(t.Node)+" does not fit "+rule.Called(f)+": its size is "+t.Plain("size")+", and the fastening is "+width+" across flats.",
			append(swap(p, t, width), rule.Related(f.At("across_flats"), "The width across flats stands here."))...)
	}
}

// turned is the fastening that a step turns, and the tools of the step that have
// a size for it. A spanner beside a driven socket holds the other end.
func turned(s *model.Step) (*model.Node, []tooling.Tool) {
	for _, verb := range [...]kind.Verb{kind.Tightens, kind.Slackens, kind.Opens} {
		refs := tooling.Done(s, verb)
		if len(refs) != 1 || refs[0].To == nil {
			continue
		}
		tools := tooling.Of(s)
		if driven := tooling.Driven(tools); len(driven) > 0 || verb == kind.Tightens {
			return refs[0].To, driven
		}
		var sized []tooling.Tool
		for _, t := range tools {
			if t.Has("size") {
				sized = append(sized, t)
			}
		}
		return refs[0].To, sized
	}
	return nil, nil
}

// unusual doubts a size that no usual head of the thread has, where the fastening
// does not state its own.
func unusual(p *rule.Pass, f *model.Node, t tooling.Tool) {
	thread, problem := joint.ParseThread(f.Plain("thread"))
	if problem != nil || !clamps(f) {
		return
	}
	fit, heads := joint.SocketFits(t.Plain("size"), thread)
	if fit != joint.FitUnusual {
		return
	}
	var widths []string
	for _, h := range heads {
		if w := h.Width.String(); !slices.Contains(widths, w) {
			widths = append(widths, w)
		}
	}
	p.Report(t.At, rule.Called(t.Node)+" does not fit "+rule.Called(f)+": no usual head of "+f.Plain("thread")+" is "+t.Plain("size")+" across flats.",
		rule.Reason("Usual for this thread: "+rule.Join(widths, "and")+" ("+heads[0].Source.String()+", and others)."),
		rule.Remedy("Name the right tool, or state across_flats where the head is a special one."),
		rule.Related(f.Name, "The fastening stands here."))
}

// swap offers the tool of the catalogue that fits.
func swap(p *rule.Pass, wrong tooling.Tool, width string) []func(*diag.Finding) {
	var found []*model.Node
	for _, n := range p.Entries {
		if n.Def == wrong.Def && n.Plain("drive") == wrong.Plain("drive") && n.Plain("kind") == wrong.Plain("kind") && tooling.Fits(n.Plain("size"), width) {
			found = append(found, n)
		}
	}
	if len(found) != 1 {
		return nil
	}
	return []func(*diag.Finding){rule.Fix("Name "+rule.Called(found[0]), false, diag.Edit{Span: wrong.At, New: found[0].Address})}
}
