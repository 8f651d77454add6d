package values

import (
	"fettle/calc"
	"fettle/lang/model"
)

// What follows tells the builder's page what an Env goes by, so that it works
// out the same.

// Readings is how many values a step reads under one key.
func Readings(s *model.Step) int { return readings(s) }

// Dimension is that of what a step reads; known is false where nothing tells.
func Dimension(s *model.Step) (d calc.Dim, known bool) { return dimension(s) }

// Pieces are the fewest and the most pieces of a choice; held is what the kit
// holds, and the most where nothing else is said.
func Pieces(s *model.Step, place string, held int) (least, most int) { return pieces(s, place, held) }

// Judged is the formula that limits the result of a choice, nil where there is
// none; buildUp says that the pack builds up on the base instead of filling a gap.
func Judged(s *model.Step, place string) (f *model.Formula, buildUp bool) {
	name := judged(s)
	return s.Formula(name, place), name == "makes"
}

// Before are the keys of the choices whose pieces are out of the kit when a step
// chooses at a place.
func (p *Plan) Before(s *model.Step, place string) []string {
	var keys []string
	for _, d := range p.before(&Selection{Step: s, Place: place, Part: s.Ref("from")}) {
		keys = append(keys, Key(d.step, d.place))
	}
	return keys
}

// Instrument is what a tool can show.
type Instrument struct {
	Name  string
	Range calc.Limits
}

// Instruments are the tools of a step whose range is stated.
func Instruments(s *model.Step) []Instrument {
	var all []Instrument
	for _, t := range s.AllRefs("tools") {
		if t.To == nil {
			continue
		}
		if l, ok := t.To.Limits("range", ""); ok {
			all = append(all, Instrument{t.To.Title(), l})
		}
	}
	return all
}
