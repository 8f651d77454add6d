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

	between, keepClear []target // of a seal
	closedBy           []id
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

// op reads one step at one place.
func (x *index) op(s *model.Step, place string) op {
	o := op{step: s, place: place, people: 1, details: noDetails}
	for i := range s.Attrs {
		a := &s.Attrs[i]
		v := model.AtPlace(a.Value, place)
		x.uses(&o, a, v)
		switch v := v.(type) {
		case model.Refs:
			x.readRefs(&o, a.Def.Name, v)
		case *model.Formula:
			o.readFormula(a.Def.Name, v)
		case model.Flag:
			o.readFlag(a.Def.Name, bool(v))
		case model.Word:
			o.readWord(a.Def.Name, string(v))
		case model.Whole:
			switch a.Def.Name {
			case "quantity":
				o.more().quantity = count(int(v))
			case "people":
				o.people = count(int(v))
			}
		}
	}
	x.effects(&o)
	if o.has(kind.Seals) {
		o.more().seal = o.sealing()
	}
	return o
}

// more gives the details to fill in.
func (o *op) more() *details {
	if o.details == noDetails {
		o.details = &details{}
	}
	return o.details
}

func (x *index) readRefs(o *op, name string, refs model.Refs) {
	switch name {
	case "on":
		o.on = x.targets(refs, o.place)
	case "tools":
		o.tools = x.itemsIn(refs)
	case "held_by":
		o.more().heldBy = x.itemsIn(refs)
	case "marks", "align":
		for _, t := range x.targets(refs, o.place) {
			o.more().marks = append(o.more().marks, guide{t, name})
		}
	case "after":
		for _, r := range refs {
			if r.To != nil && r.To.Step == nil {
				o.more().afterProc = append(o.more().afterProc, r.To)
			}
		}
		o.more().after = x.slotsIn(refs, o.place)
	case "until":
		o.more().until = x.slotsIn(refs, o.place)
	case "before":
		o.more().before = x.slotsIn(refs, o.place)
	case "closed_by":
		o.more().closedBy = x.slotsIn(refs, o.place)
	case "checks":
		for i := range refs {
			if slots := x.slotsIn(refs[i:i+1], o.place); len(slots) > 0 {
				o.more().checks = append(o.more().checks, slots)
			}
		}
	case "without":
		for _, t := range x.targets(refs, o.place) {
			o.more().without = append(o.more().without, t.id)
		}
	case "by":
		for _, r := range refs {
			if r.To != nil && r.To.Is(entry.Supply) {
				o.more().byGlue = r.To
			} else if r.To != nil {
				o.more().byParts = append(o.more().byParts, x.bodiesOf(r.To, o.place)...)
			}
		}
	case "supplies":
		for _, r := range refs {
			if r.To != nil {
				o.more().supplies = append(o.more().supplies, r.To)
			}
		}
	case "locks_with":
		o.more().locksWith = joints(x.targets(refs, o.place))
	case "through":
		o.more().through = x.targets(refs, o.place)
	case "between":
		o.more().between = x.targets(refs, o.place)
	case "keep_clear":
		o.more().keepClear = x.targets(refs, o.place)
	}
}

func (o *op) readFormula(name string, f *model.Formula) {
	switch name {
	case "when":
		o.more().when = f
	case "takes":
		if q := f.Quantity(); q != nil {
			o.takes, o.timed = duration(*q), true
		}
	case "for":
		if q := f.Quantity(); q != nil {
			o.more().wait = duration(*q)
		}
	case "within":
		o.more().within = f.Quantity()
	case "not_before":
		o.more().notBefore = f.Quantity()
	case "accept", "leaves", "makes":
		for _, r := range f.Refs {
			if r.To != nil && r.To.Is(entry.Limit) && r.To.Flag("critical") {
				o.critical = true
			}
		}
	}
	if l, ok := f.Limits(); ok && l.Type().Dim == calc.Temperature {
		o.more().settings = append(o.more().settings, heatSetting{name, l})
	}
}

func (o *op) readFlag(name string, v bool) {
	switch name {
	case "trial":
		o.trial = v
	case "for_good":
		o.forGood = v
	case "irreversible":
		o.irreversible = v
	case "critical":
		o.critical = o.critical || v
	}
}

func (o *op) readWord(name, v string) {
	switch name {
	case "from":
		o.more().from = v
	case "how":
		o.more().how = v
	case "by":
		o.more().by = v
	}
}

// sealing gathers what a seal says. Of its supplies the sealant is the one with
// a clock; there may be a rag beside it.
func (o *op) sealing() *sealing {
	s := &sealing{beads: o.on, faces: append(append([]target{}, o.on...), o.between...), keepClear: o.keepClear, closedBy: o.closedBy}
	for i, n := range o.supplies {
		if i == 0 {
			s.supply = n
		}
		if n.Has("cure") || n.Has("assemble_within") || n.Has("tighten_within") {
			s.supply = n
			break
		}
	}
	return s
}

// itemsIn are the parts and tools that references name.
func (x *index) itemsIn(refs []model.Ref) []id {
	var all []id
	for _, r := range refs {
		if t, ok := x.entries[r.To]; ok && t.sort == aBody {
			all = append(all, t.id)
		}
	}
	return all
}

// slotsIn are the slots of the steps that references name.
func (x *index) slotsIn(refs []model.Ref, place string) []id {
	var all []id
	for _, r := range refs {
		if r.To != nil && r.To.Step != nil {
			all = append(all, x.slotsFor(r, place)...)
		}
	}
	return all
}
