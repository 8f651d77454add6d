package bench

import (
	"math/big"

	"fettle/calc"
	"fettle/lang/model"
)

// lift records that a body is lifted with all that it carries, where that is
// more than one person may lift or than a hoist of the step can.
func (r *run) lift(o *op, b id) {
	if r.branch != nil {
		return
	}
	with, _ := r.loaded(&r.state, b)
	grams := 0.0
	for _, c := range with {
		grams += r.bodies[c].grams * float64(r.pieceCount(c))
	}
	if grams < 0.99*r.lightest(o) {
		return
	}
	l := Lift{Act: int(r.act), Parts: r.bodyObjects(with), People: int(o.people)}
	var unit *calc.Unit
	sum := new(big.Rat)
	for _, c := range with {
		q := r.items[r.bodies[c].item].node.Quantity("mass", "")
		if q == nil {
			l.Unknown = append(l.Unknown, r.bodyObject(c))
			continue
		}
		if unit == nil {
			unit = q.Unit
		}
		sum.Add(sum, new(big.Rat).Mul(q.Base(), big.NewRat(int64(r.pieceCount(c)), 1)))
	}
	if unit == nil {
		return
	}
	l.Mass = calc.NewQuantity(sum.Quo(sum, unit.Factor), unit, calc.Exact)
	l.Hoists = r.hoists(o)
	r.t.Lifts = append(r.t.Lifts, l)
}

func (r *run) pieceCount(b id) int32 {
	if p := &r.pieces.at[b]; p.on > 0 {
		return p.on
	}
	return 1
}

func (r *run) hoists(o *op) []*model.Node {
	var all []*model.Node
	for _, t := range o.tools {
		if n := r.items[t].node; n.Has("capacity") {
			all = append(all, n)
		}
	}
	return all
}

// lightest is the smallest mass, in grams, that a rule would have a word about.
func (r *run) lightest(o *op) float64 {
	least, _ := r.house.lift.Base().Float64()
	for _, n := range r.hoists(o) {
		if q := n.Quantity("capacity", ""); q != nil {
			kilos, _ := q.Base().Float64()
			least = min(least, kilos)
		}
	}
	return least * 1000
}
