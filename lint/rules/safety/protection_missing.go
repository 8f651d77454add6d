package safety

import (
	"slices"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/source"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// ProtectionMissing: a step that asks for protection, by what it uses or by its own messages, and lists none.
var ProtectionMissing = &rule.Rule{
	Name:     "safety/protection-missing",
	Severity: diag.Error,
	Finds:    "A step that asks for protection, by what it uses or by its own messages, and lists none.",
	Why:      "The builder reads the list at the head of the step, finds nothing to put on, and starts.",
	Remedy:   "Name what to wear in ppe: on the supply for all its steps, or on the step.",
	Bad: `part "cover" {
  name  = "Cover"
  faces = ["flange"]
}

supply "thinner" { # want "nothing to wear"
  name = "Cellulose thinner"
  kind = "solvent"

  warning {
    hazard = "Thinner and its vapour catch fire easily."
    result = "Burns."
    avoid  = "Work with the door open, and keep flames out of the room."
  }
}

procedure "wash" {
  title = "Wash the cover"

  clean "flange" {
    title    = "Wash the flange of the cover"
    on       = [part.cover.face.flange]
    supplies = [supply.thinner]
  }
}
`,
	Good: `part "cover" {
  name  = "Cover"
  faces = ["flange"]
}

supply "thinner" {
  name = "Cellulose thinner"
  kind = "solvent"
  ppe  = [ppe.gloves]

  warning {
    hazard = "Thinner and its vapour catch fire easily."
    result = "Burns."
    avoid  = "Work with the door open, and keep flames out of the room."
  }
}

procedure "wash" {
  title = "Wash the cover"

  clean "flange" {
    title    = "Wash the flange of the cover"
    on       = [part.cover.face.flange]
    supplies = [supply.thinner]
  }
}
`,
	Run: runProtectionMissing,
}

func runProtectionMissing(p *rule.Pass) {
	bare := map[*model.Node][]*model.Step{} // supplies that could ask for it, and do not
	var order []*model.Node
	asking := map[*model.Node]bool{}
	for _, n := range p.Entries {
		if len(messages(n)) > 0 || harms(n) {
			asking[n] = true
		}
	}
	for _, s := range p.Steps() {
		if s.Damaged || len(s.Blocks) == 0 && !runsLoud(s) && !meets(s, asking) {
			continue
		}
		worn := protection(s)
		g, at, from := unlisted(s, worn)
		r, harmed := harmful(s)
		switch {
		case g != nil && from.Def == entry.Supply && !from.Has("ppe"), g == nil && harmed && len(worn) == 0 && r.To.Def == entry.Supply:
			if g == nil {
				from = r.To
			}
			if bare[from] == nil {
				order = append(order, from)
			}
			bare[from] = append(bare[from], s)
		case g != nil:
			p.Report(s.At("ppe"), "A message of "+rule.Called(from)+" says to wear "+g.name+", and the step "+rule.Called(s.Node)+" lists none.",
				rule.Reason("What is not on the list at the head of the step is still in its drawer when the message is read."),
				rule.Related(at, "The message says so here."))
		case harmed && len(worn) == 0:
			p.Report(r.Span(s.Node), "This step uses "+rule.Called(r.To)+" and lists nothing to wear.", rule.Related(r.To.Name, "It is described here."))
		case runsLoud(s) && len(worn) == 0:
			p.Report(s.Name, rule.Called(s.Node)+" runs the machine by "+s.Word("by")+", and lists nothing to wear.", rule.Related(s.At("by"), "What drives it stands here."))
		}
	}
	for _, n := range order {
		var more []func(*diag.Finding)
		for i, s := range bare[n] {
			if i == 3 {
				break
			}
			more = append(more, rule.Related(s.Name, "Used here with nothing to wear."))
		}
		p.Report(n.Name, rule.Called(n)+" says nothing to wear, and neither do the steps that use it.", more...)
	}
}

// meets reports a step that names one of the entries.
func meets(s *model.Step, entries map[*model.Node]bool) bool {
	for i := range s.Attrs {
		if refs, ok := s.Attrs[i].Value.(model.Refs); ok {
			for _, r := range refs {
				if entries[r.To] {
					return true
				}
			}
		}
	}
	return false
}

// runsLoud reports a run by power or pressure, which asks for eyes or ears.
func runsLoud(s *model.Step) bool {
	by := s.Word("by")
	return !byHand(s) && (by == "power" || by == "pressure")
}

// harmful is the first of the supplies and tools of a step that harms.
func harmful(s *model.Step) (model.Ref, bool) {
	for i := range s.Attrs {
		if role := s.Attrs[i].Def.Role; role != schema.Supply && role != schema.Tool {
			continue
		}
		for _, r := range s.AllRefs(s.Attrs[i].Def.Name) {
			if r.To != nil && harms(r.To) {
				return r, true
			}
		}
	}
	return model.Ref{}, false
}

// harms reports a supply that harms skin or eyes, and a hot tool.
func harms(n *model.Node) bool {
	if n.Def == entry.Tool {
		return n.Flag("hot")
	}
	return hazard(n) != ""
}

// unlisted is what the messages of a step, its tools and its supplies say to wear
// and the step does not list, with where it is said and whose message it is.
func unlisted(s *model.Step, worn []*model.Node) (*garment, source.Span, *model.Node) {
	for _, n := range append([]*model.Node{s.Node}, met(s)...) {
		if n.Def == entry.Part || n.Def == entry.Tool && looked(s, n) {
			continue
		}
		for _, m := range messages(n) {
			for _, sentence := range prose.Sentences(m.Text("avoid")) {
				g, at := asked(sentence.Text)
				if g != nil && !slices.ContainsFunc(worn, g.is) {
					return g, sentence.Span(at, at+len(g.said(sentence.Text[at:]))), n
				}
			}
		}
	}
	return nil, source.Span{}, nil
}

// looked reports a tool that a step looks at or works on, and does not use.
func looked(s *model.Step, tool *model.Node) bool {
	return slices.ContainsFunc(s.AllRefs("on"), func(on model.Ref) bool { return on.To == tool })
}

// garment is one kind of protection and the words for it.
type garment struct {
	name  string
	words []string
}

var garments = []garment{
	{"eye protection", []string{"goggles", "safety glasses", "eye protection", "face shield", "visor"}},
	{"ear protection", []string{"ear protection", "ear defenders", "ear plugs", "hearing protection", "ear muffs"}},
	{"gloves", []string{"gloves"}},
	{"boots", []string{"boots", "safety shoes", "toe caps"}},
	{"a mask", []string{"mask", "respirator"}},
	{"an apron", []string{"apron"}},
	{"a helmet", []string{"helmet", "hard hat"}},
}

// is reports PPE of the kind, by its name.
func (g *garment) is(ppe *model.Node) bool {
	name := strings.ToLower(ppe.Plain("name") + " " + strings.ReplaceAll(ppe.ID, "_", " "))
	for _, w := range g.words {
		if strings.Contains(name, strings.TrimSuffix(w, "s")) {
			return true
		}
	}
	switch g.name {
	case "eye protection":
		return strings.Contains(name, "glasses") || strings.Contains(name, "eye") || strings.Contains(name, "face")
	case "ear protection":
		return strings.Contains(name, "ear ") || strings.Contains(name, "hearing")
	case "boots":
		return strings.Contains(name, "shoe")
	}
	return false
}

// said is the word that text begins with.
func (g *garment) said(text string) string {
	for _, w := range g.words {
		if strings.HasPrefix(strings.ToLower(text), w) {
			return w
		}
	}
	return ""
}

// asked is what a sentence says to wear, and where; nil for nothing.
func asked(sentence string) (*garment, int) {
	wear, _ := prose.Find(sentence, "wear", "put on")
	if wear < 0 || prose.Has(sentence, "never", "no gloves", "without", "do not", "don't", "instead") {
		return nil, -1
	}
	for i := range garments {
		g := &garments[i]
		if at, _ := prose.Find(sentence[wear:], g.words...); at >= 0 {
			return g, wear + at
		}
	}
	return nil, -1
}
