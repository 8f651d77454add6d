package safety

import (
	"slices"

	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// HazardUntold: a supply, tool or part with a known hazard that no message tells of.
var HazardUntold = &rule.Rule{
	Name:     "safety/hazard-untold",
	Severity: diag.Error,
	Finds:    "A supply, tool or part with a known hazard that no message tells of.",
	Why:      "The builder meets it unwarned, with hands, eyes and a room that are not ready for it.",
	Remedy:   "Give the entry a danger, warning or caution block: what can hurt, what it does, and how to avoid it.",
	Bad: `part "cover" {
  name  = "Cover"
  faces = ["flange"]
}

supply "thinner" { # want "tells of its hazard"
  name = "Cellulose thinner"
  kind = "solvent"
  ppe  = [ppe.gloves]
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
	Run: runHazardUntold,
}

func runHazardUntold(p *rule.Pass) {
	order, steps := users(p, func(n *model.Node) bool { return hazard(n) != "" && len(messages(n)) == 0 })
	for _, n := range order {
		if len(messages(steps[n][0].Node)) > 0 {
			continue // told where it is first met
		}
		more := []func(*diag.Finding){rule.Reason(hazard(n) + " The builder meets it unwarned.")}
		for i, s := range steps[n] {
			if i == 3 {
				break
			}
			more = append(more, rule.Related(s.Name, "It is met here."))
		}
		p.Report(n.Name, "No message tells of its hazard: "+rule.Called(n)+".", more...)
	}
}

// hazard is what can hurt about an entry by what it states or by its kind, or "".
// Kinds are common practice, no source.
func hazard(n *model.Node) string {
	switch n.Def {
	case entry.Supply:
		for _, h := range hazardous {
			if prose.Has(kindOf(n), h.kinds...) {
				return h.what
			}
		}
	case entry.Tool:
		if n.Flag("hot") {
			return "It is hot."
		}
		for _, h := range dangerous {
			if slices.Contains(h.kinds, kindOf(n)) {
				return h.what
			}
		}
	case entry.Part:
		return stored[n.Word("stores")]
	}
	return ""
}

type hazards struct {
	kinds []string
	what  string
}

// hazardous are kinds of supply.
var hazardous = []hazards{
	{[]string{"solvent", "thinner", "degreaser", "brake cleaner", "white spirit", "paraffin", "kerosene", "acetone", "alcohol", "spirit"}, "Its vapour burns, and is bad to breathe."},
	{[]string{"fuel", "petrol", "gasoline", "diesel", "propane", "butane", "gas"}, "It burns, and its vapour explodes."},
	{[]string{"acid", "caustic", "lye", "pickling paste", "battery acid", "electrolyte"}, "It burns skin and blinds."},
	{[]string{"coolant", "antifreeze", "brake fluid", "refrigerant"}, "It is poisonous, or harms skin and eyes."},
	{[]string{"sealant", "threadlocker", "adhesive", "epoxy", "resin", "hardener", "retaining compound"}, "Until it has cured it harms skin and eyes."},
	{[]string{"dry ice", "liquid nitrogen"}, "It freezes skin, and takes the air from a closed room."},
}

// dangerous are kinds of tool.
var dangerous = []hazards{
	{[]string{"torch", "gas torch", "blowtorch", "blowlamp", "blow lamp", "hot air gun", "heat gun", "hot plate", "induction heater", "welder", "soldering iron"}, "It is hot, or has a flame."},
	{[]string{"hoist", "chain hoist", "crane", "engine crane", "winch", "lifting beam"}, "A load that hangs from it can fall."},
	{[]string{"press", "arbor press", "hydraulic press"}, "It crushes, and what slips under it flies."},
	{[]string{"spring compressor"}, "It holds a spring that can jump."},
	{[]string{"test pump", "air compressor", "compressed air", "air gun"}, "What is under pressure lets go at once."},
	{[]string{"insulation tester", "high-voltage tester"}, "It puts a high voltage on what it tests."},
	{[]string{"grinder", "angle grinder", "bench grinder", "circular saw"}, "It throws sparks and pieces, and takes sleeves along."},
}

// stored is the energy that a part holds.
var stored = map[string]string{
	"spring":   "It is a spring under load, and flies when it slips.",
	"pressure": "It holds pressure, and lets go at once when it is opened.",
	"electric": "It holds or makes a voltage.",
	"height":   "It falls or swings down when it is let go.",
}
