package fastening

import (
	"math/big"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// HighPreload: a clamp whose torque pulls it above the proof band, or past yield at the slippery end of the friction band.
var HighPreload = &rule.Rule{
	Name:     "fastening/high-preload",
	Severity: diag.Doubt,
	Finds:    "A clamp whose torque pulls it above the proof band, or past yield at the slippery end of the friction band.",
	Why:      "A bolt pulled past its proof load stays longer for good, holds less than it should, and breaks at the next tightening.",
	Remedy:   "Lower the torque, use a stronger class, or state the nut_factor or friction that was measured.",
	Source:   "ISO 898-1 and SAE J429 proof loads; short form from Shigley, 9th ed., Eq. 8-27; full form from VDI 2230. The band is common practice, no source.",
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
  torque       = "40 N·m ± 10 %" # want "of its proof load"
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
	Run: runHighPreload,
}

func runHighPreload(p *rule.Pass) {
	band := p.Band("proof_band")
	known := newScreen()
	eachTorque(p, func(f, at *model.Node, attr string, t setting) {
		c, _ := known.of(f)
		if c == nil {
			return
		}
		share, limit := known.judge(c, t.text(at), func() (*big.Rat, *big.Rat) { return c.highest(t, band) })
		if share == nil {
			return
		}
		remedy := "Lower the torque, use a stronger class, or state nut_factor or friction."
		if aim := c.torqueFor(big.NewRat(3, 4), t.most()); aim.Valid() {
			remedy = "Three quarters of proof load would be about " + aim.Rounded().String() + ". " + remedy
		}
		beyond := "; " + percent(limit, share) + " is the most."
		if limit.Cmp(c.yield()) == 0 {
			beyond = " where its thread runs easily, and is stretched for good at " + percent(limit, share) + "."
		}
		p.Report(at.At(attr), rule.Called(f)+" reaches "+percent(share, limit)+" of its proof load at "+t.String()+beyond,
			append(consequences(p, f), rule.Remedy(remedy),
				rule.Reason("A bolt pulled past its proof load stays longer for good and holds less. "+c.assumption()))...)
	})
}

// highest is the share of proof load that a torque may reach, where that is too
// much, and the limit that it is above: that of the band at the middle of the
// friction, and yield (proof load where no yield is known) at the slippery end of
// it or at the highest torque. nil where all is well. Both extremes at once are
// left out, as ordinary workshop torques would not bear them.
func (c *clamp) highest(t setting, band calc.Limits) (share, limit *big.Rat) {
	most := c.net(t.most(), c.drag.Low)
	share = c.share(most, c.middle())
	if band.High != nil && share.Cmp(band.High.Base()) > 0 {
		return share, band.High.Base()
	}
	yield := c.yield()
	for _, share := range []*big.Rat{c.share(most, c.factor.Low), c.share(c.net(t.High, c.drag.Low), c.middle())} {
		if share.Cmp(yield) > 0 {
			return share, yield
		}
	}
	return nil, nil
}

// yield is yield over proof, 1 where the class does not tell.
func (c *clamp) yield() *big.Rat {
	if !c.strength.Yield.Valid() || !c.strength.Proof.Valid() {
		return big.NewRat(1, 1)
	}
	return new(big.Rat).Quo(c.strength.Yield.Base(), c.strength.Proof.Base())
}
