package render

import (
	"encoding/json"
	"math/big"
	"strings"

	"fettle/calc"
	"fettle/calc/joint"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// Card is what a page must know of a step beyond its being done.
type Card struct {
	Visits []string          `json:"visits,omitempty"` // places it is done at
	When   []json.RawMessage `json:"when,omitempty"`
	After  []string          `json:"after,omitempty"`  // keys of steps that come first
	Signer string            `json:"signer,omitempty"` // of a hold
	Checks []string          `json:"checks,omitempty"` // keys of what it checks
	Wait   *CardWait         `json:"wait,omitempty"`
}

// CardWait is a time that must pass: one of the two.
type CardWait struct {
	Seconds int64            `json:"seconds,omitempty"` // since the step before
	Cures   map[string]int64 `json:"cures,omitempty"`   // seconds since each of these steps, by key
}

// card notes what a page must know of a step.
func (w *stepWriter) card() {
	s, place := w.s, w.sc.place
	if _, name, placed := strings.Cut(w.out.ID, "--"); placed {
		w.places[name] = place
	}
	c := &Card{Visits: w.out.Visits}
	for _, n := range [...]*model.Node{s.Procedure, s.Node} {
		if f := n.Formula("when", place); f != nil && w.out.When != "" {
			c.When = append(c.When, w.live.node(f.Expr, place))
		}
	}
	for _, r := range s.Refs("after", place) {
		c.After = append(c.After, w.keys(r)...)
	}
	if w.out.Hold != nil {
		c.Signer = w.out.Hold.Signer
		for _, r := range s.Refs("checks", place) {
			c.Checks = append(c.Checks, w.keys(r)...)
		}
	}
	c.Wait = w.wait()
	if c.Visits == nil && c.When == nil && c.After == nil && c.Signer == "" && c.Wait == nil {
		return
	}
	w.extras[w.out.ID] = c
}

// keys are those of a step seen from here: of this place, else of all its places.
func (w *stepWriter) keys(r model.Ref) []string {
	if r.To == nil || r.To.Step == nil {
		return nil
	}
	place := w.sc.place
	if r.Place != "" {
		place = r.Place
	}
	at := values.Keys(r.To.Step)
	if place != "" && contains(at, place) {
		at = []string{place}
	}
	keys := make([]string, len(at))
	for i, p := range at {
		keys[i] = values.Key(r.To.Step, p)
	}
	return keys
}

// wait is how long a step waits, where that is a time.
func (w *stepWriter) wait() *CardWait {
	if !does(w.s, kind.Waits) {
		return nil
	}
	if q, ok := w.value(w.s.Formula("for", w.sc.place), w.sc).(calc.Quantity); ok {
		return &CardWait{Seconds: seconds(q)}
	}
	out := &CardWait{Cures: map[string]int64{}}
	for _, r := range w.s.Refs("until", w.sc.place) {
		if r.To == nil || r.To.Step == nil {
			continue
		}
		for _, supply := range r.To.Refs("supplies", w.sc.place) {
			q, ok := w.cure(supply.To)
			if !ok {
				continue
			}
			for _, key := range w.keys(r) {
				out.Cures[key] = max(out.Cures[key], seconds(q))
			}
		}
	}
	if len(out.Cures) == 0 {
		return nil
	}
	return out
}

// cure is how long a supply cures in the workshop of the step.
func (w *stepWriter) cure(supply *model.Node) (calc.Quantity, bool) {
	if supply == nil {
		return calc.Quantity{}, false
	}
	room := w.room()
	times, _ := supply.Get("cure", "").(model.Times)
	var stated []joint.Cure
	for _, t := range times {
		at := room
		if t.At != nil {
			at = *t.At
		}
		stated = append(stated, joint.Cure{Time: *t.For, At: at})
	}
	q, problem := joint.CureTime(stated, room, w.slower())
	return q, problem == nil
}

// room is the temperature of the workshop.
func (w *stepWriter) room() calc.Quantity {
	for _, n := range [...]*model.Node{w.s.Procedure, w.m.Node} {
		if q := n.Quantity("conditions", w.sc.place); q != nil {
			return *q
		}
	}
	return calc.NewQuantity(big.NewRat(20, 1), calc.MustUnit("°C"), 0) // as the attribute has it
}

// slower is how many times longer a cure takes for every 10 °C of cold.
func (w *stepWriter) slower() calc.Quantity {
	const name = "cure_in_the_cold"
	for _, h := range w.m.Of(entry.HouseRules.Name) {
		if q := h.Quantity(name, ""); q != nil {
			return *q
		}
	}
	t, _ := entry.ThresholdNamed(name)
	l, _ := calc.ParseLiteral(t.Default, calc.Context{Want: t.Dim, HasWant: true})
	return *l.Nominal
}

// seconds rounds up: a wait is never cut short.
func seconds(q calc.Quantity) int64 {
	r := q.Base()
	n := new(big.Int).Add(r.Num(), new(big.Int).Sub(r.Denom(), big.NewInt(1)))
	return n.Quo(n, r.Denom()).Int64()
}
