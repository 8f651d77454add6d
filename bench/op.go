package bench

import (
	"time"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// op is one step at one place: what it asks of the bench and does to it.
type op struct {
	step    *model.Step
	place   string
	effects []effect
	on      []target
	tools   []id // items
	takes   time.Duration
	people  int32
	timed   bool // it says how long it takes

	trial, forGood, irreversible, critical bool

	*details // what few steps have; never nil
}

// effect is a verb with what it acts on.
type effect struct {
	verb kind.Verb
	attr string
	at   []target
}

// use is a value that a formula, or a pack that a reference, rests on.
type use struct {
	slots []id
	attr  string
}

// guide is a mark that a step goes by.
type guide struct {
	at   target
	attr string
}

type details struct {
	when      *model.Formula
	uses      []use
	marks     []guide
	after     []id // slots
	afterProc []*model.Node
	within    *calc.Quantity
	notBefore *calc.Quantity
	quantity  int32 // 0: not said
	without   []id
	from      string
	how       string // what a mark is made with
	by        string // what drives a run
	byParts   []id   // what locks
	byGlue    *model.Node
	heldBy    []id // tools that hold the part
	supplies  []*model.Node
	locksWith []id // joints
	through   []target
	wait      time.Duration
	until     []id // slots
	checks    [][]id
	before    []id // slots
	seal      *sealing
	settings  []heatSetting
}

// sealing is what a seal says of its joint.
type sealing struct {
	faces     []target // on and between
	beads     []target // on
	bodies    []id
	keepClear []target
	closedBy  []id
	supply    *model.Node
	clamps    []id // joints that clamp what it seals
}

// heatSetting is a temperature that a step brings about or expects.
type heatSetting struct {
	attr   string
	limits calc.Limits
}

var noDetails = &details{}

func (x *index) op(s *model.Step, place string) op {
	o := op{step: s, place: place, people: 1, details: noDetails}
	more := func() *details {
		if o.details == noDetails {
			o.details = &details{}
		}
		return o.details
	}
	var between, keepClear []target
	var closedBy []id
	for i := range s.Attrs {
		a := &s.Attrs[i]
		v := model.AtPlace(a.Value, place)
		if uses := x.uses(a, v, place); len(uses) > 0 {
			d := more()
			d.uses = append(d.uses, uses...)
		}
		switch v := v.(type) {
		case model.Refs:
			switch a.Def.Name {
			case "on":
				o.on = x.targets(v, place)
			case "tools":
				for _, r := range v {
					if t, ok := x.entries[r.To]; ok && t.sort == aBody {
						o.tools = append(o.tools, t.id)
					}
				}
			case "supplies":
				for _, r := range v {
					if r.To != nil {
						more().supplies = append(more().supplies, r.To)
					}
				}
			case "marks", "align":
				for _, t := range x.targets(v, place) {
					more().marks = append(more().marks, guide{t, a.Def.Name})
				}
			case "after":
				for _, r := range v {
					if r.To != nil && r.To.Step == nil {
						more().afterProc = append(more().afterProc, r.To)
					} else if r.To != nil {
						more().after = append(more().after, x.slotsFor(r, place)...)
					}
				}
			case "without":
				for _, t := range x.targets(v, place) {
					more().without = append(more().without, t.id)
				}
			case "by":
				for _, r := range v {
					if r.To != nil && r.To.Is(entry.Supply) {
						more().byGlue = r.To
					} else if r.To != nil {
						more().byParts = append(more().byParts, x.bodiesOf(r.To, place)...)
					}
				}
			case "held_by":
				for _, r := range v {
					if t, ok := x.entries[r.To]; ok && t.sort == aBody {
						more().heldBy = append(more().heldBy, t.id)
					}
				}
			case "locks_with":
				more().locksWith = joints(x.targets(v, place))
			case "through":
				more().through = x.targets(v, place)
			case "until":
				for _, r := range v {
					if r.To != nil && r.To.Step != nil {
						more().until = append(more().until, x.slotsFor(r, place)...)
					}
				}
			case "checks":
				for _, r := range v {
					if r.To != nil && r.To.Step != nil {
						more().checks = append(more().checks, x.slotsFor(r, place))
					}
				}
			case "before":
				for _, r := range v {
					if r.To != nil && r.To.Step != nil {
						more().before = append(more().before, x.slotsFor(r, place)...)
					}
				}
			case "between":
				between = x.targets(v, place)
			case "keep_clear":
				keepClear = x.targets(v, place)
			case "closed_by":
				for _, r := range v {
					if r.To != nil && r.To.Step != nil {
						closedBy = append(closedBy, x.slotsFor(r, place)...)
					}
				}
			}
		case *model.Formula:
			switch a.Def.Name {
			case "when":
				more().when = v
			case "takes":
				if q := v.Quantity(); q != nil {
					o.takes, o.timed = duration(*q), true
				}
			case "for":
				if q := v.Quantity(); q != nil {
					more().wait = duration(*q)
				}
			case "within":
				more().within = v.Quantity()
			case "not_before":
				more().notBefore = v.Quantity()
			case "accept", "leaves", "makes":
				for _, r := range v.Refs {
					if r.To != nil && r.To.Is(entry.Limit) && r.To.Flag("critical") {
						o.critical = true
					}
				}
			}
			if l, ok := v.Limits(); ok && l.Type().Dim == calc.Temperature {
				more().settings = append(more().settings, heatSetting{a.Def.Name, l})
			}
		case model.Flag:
			switch a.Def.Name {
			case "trial":
				o.trial = bool(v)
			case "for_good":
				o.forGood = bool(v)
			case "irreversible":
				o.irreversible = bool(v)
			case "critical":
				o.critical = o.critical || bool(v)
			}
		case model.Word:
			switch a.Def.Name {
			case "from":
				more().from = string(v)
			case "how":
				more().how = string(v)
			case "by":
				more().by = string(v)
			}
		case model.Whole:
			switch a.Def.Name {
			case "quantity":
				more().quantity = id(v)
			case "people":
				o.people = id(v)
			}
		}
	}
	x.effects(&o)
	if o.has(kind.Seals) {
		d := more()
		d.seal = &sealing{beads: o.on, faces: append(append([]target{}, o.on...), between...), keepClear: keepClear, closedBy: closedBy}
		if len(d.supplies) > 0 {
			d.seal.supply = d.supplies[0]
			for _, s := range d.supplies { // a rag beside the sealant
				if s.Has("cure") || s.Has("assemble_within") || s.Has("tighten_within") {
					d.seal.supply = s
					break
				}
			}
		}
	}
	return o
}
