package fastening

import (
	"math/big"
	"strings"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// LowPreload: a clamp whose torque leaves it below the seating band.
var LowPreload = &rule.Rule{
	Name:     "fastening/low-preload",
	Severity: diag.Doubt,
	Finds:    "A clamp whose torque leaves it below the seating band.",
	Why:      "A joint that is pulled too little opens under load, works and comes loose; a bolt that lets go is tired before it is old.",
	Remedy:   "Raise the torque. Where something soft in the joint sets it, name its material, or say so in basis.",
	Source:   "75 % of proof load is the usual aim (Shigley, 9th ed., 8-9). The band is common practice, no source.",
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
  thread       = "M10x1.5"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "16 mm"
  torque       = "22 N·m ± 10 %" # want "only"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_16]
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
  thread       = "M10x1.5"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "16 mm"
  torque       = "22 N·m ± 10 %"
  basis        = "Drawing BK-012: squeezes the rubber pad by a quarter"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_16]
  }
}
`,
	Run: runLowPreload,
}

func runLowPreload(p *rule.Pass) {
	band := p.Band("proof_band")
	known := newScreen()
	eachTorque(p, func(f, at *model.Node, attr string, t setting) {
		c, _ := known.of(f)
		if c == nil || at != f || f.Has("angle") {
			return // a step may well tighten by less on the way, and an angle does the rest
		}
		share, _ := known.judge(c, t.text(f), func() (*big.Rat, *big.Rat) { return c.lowest(t, band), nil })
		if share == nil || soft(f) {
			return
		}
		remedy := "Raise the torque. Where something soft in the joint sets it, name its material, or say so in basis."
		if aim := c.torqueFor(big.NewRat(3, 4), t.least()); aim.Valid() {
			remedy = "Three quarters of proof load would be about " + aim.Rounded().String() + ". " + remedy
		}
		p.Report(at.At(attr), rule.Called(f)+" reaches only "+percent(share, band.Low.Base())+" of its proof load at "+t.String()+"; "+percent(band.Low.Base(), share)+" is the least.",
			append(consequences(p, f), rule.Remedy(remedy),
				rule.Reason("A joint that is pulled too little opens under load, works and comes loose. "+c.assumption()))...)
	})
}

// lowest is the share of proof load that a torque reaches, where that is too
// little; nil where all is well.
func (c *clamp) lowest(t setting, band calc.Limits) *big.Rat {
	if band.Low == nil {
		return nil
	}
	if share := c.share(c.net(t.least(), c.drag.High), c.middle()); share.Cmp(band.Low.Base()) < 0 {
		return share
	}
	return nil
}

// softWords are materials that set the torque instead of the bolt, and words by
// which an author says so. Common practice, no source.
var softWords = []string{"rubber", "cork", "paper", "felt", "leather", "wood", "plastic", "nylon", "polyamide", "acetal",
	"fibre", "fiber", "silicone", "foam", "ptfe", "polypropylene", "polycarbonate", "phenolic", "acrylic", "glass", "ceramic"}

// soft reports a joint whose torque something weaker than its bolts sets: a part
// of the stack by its material or name, or the fastening's basis in words.
func soft(f *model.Node) bool {
	for _, r := range f.AllRefs("stack") {
		if r.To == nil {
			continue
		}
		// The bolts of a rubber mount go through metal.
		if name := r.To.Plain("name"); says(r.To.Plain("material"), softWords) || says(name, softWords) && !says(name, []string{"mount"}) {
			return true
		}
	}
	basis := f.Plain("basis")
	return says(basis, softWords) || says(basis, []string{"gasket", "squeeze", "crush", "packing", "soft"})
}

// says reports a text that holds one of the words, or begins a word with it.
func says(text string, words []string) bool {
	text = strings.ToLower(text)
	for _, w := range words {
		if i := strings.Index(text, w); i >= 0 && (i == 0 || !letter(text[i-1])) {
			return true
		}
	}
	return false
}

func letter(b byte) bool { return 'a' <= b && b <= 'z' || b >= 0x80 }
