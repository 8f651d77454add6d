package rework

import (
	"slices"

	"fettle/bench"
	"fettle/bench/logbook"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// Plan is what a revision asks of a build.
type Plan struct {
	*Carried
	Items []Item // every step on record, and new ones among them, in the order of the work; what is gone last

	WayIn   []bench.Move   // what comes off, in this order
	Remove  []bench.Object // parts among what comes off that the new revision does not have
	Renew   []Renewal      // what is spent on the way, or replaced
	Again   []Act          // what is done then, in this order
	Stuck   *bench.Stuck   // what cannot be undone; then there is no way in
	Refused []bench.Breach // what the bench does not accept of it; never, for a sound manual
}

// Item is one step with what becomes of its record.
type Item struct {
	Step    *model.Step // of the new revision; of one that is gone, the old one
	Place   string
	Verdict Verdict
	Why     string // in words, with both numbers where there are two; "" for nothing to say
	Line    *logbook.Line
	Follows bool // the verdict follows from what comes off; the revision itself does not ask for it
}

// Act is a step that is done again, or for the first time.
type Act struct {
	Step  *model.Step
	Place string
	Why   string
	Asked bool   // by the revision itself; else it follows from what comes off
	First string // what must have cured before it, in words; "" for nothing
}

// Renewal is a part that is spent or replaced.
type Renewal struct {
	Object bench.Object
	Count  int
	Number string // its part number, "" for none
	Why    string
}

// Empty reports that the revision asks nothing of the build.
func (p *Plan) Empty() bool { return len(p.Again) == 0 && len(p.WayIn) == 0 && p.Stuck == nil }

// Of lists the items to which the revision itself gives a verdict, in order.
func (p *Plan) Of(v Verdict) []Item {
	var all []Item
	for _, i := range p.Items {
		if i.Verdict == v && !i.Follows {
			all = append(all, i)
		}
	}
	return all
}

// planner works a plan out.
type planner struct {
	*Plan
	acts    []bench.Act // the work of this build under the new revision
	at      map[slot]int
	want    map[int]string // acts to do, with why
	asked   map[int]bool
	off     []bench.Object       // that come off whatever is done again
	fresh   map[*model.Node]bool // parts of another number
	differ  map[int]bool         // picks whose pieces are others now
	last    int                  // the last act on record under another revision; -1
	since   *then                // that revision
	spent   []bench.Renewal      // on the way in
	uncured map[int]string       // what must cure first, by act
}

// Make works out what a manual asks of a build. The error is that of Carry.
func Make(m *model.Manual, l *logbook.Log, issued func(digest string) *model.Manual) (*Plan, error) {
	c, err := Carry(m, l, issued)
	if err != nil {
		return nil, err
	}
	return c.Plan(), nil
}

// Plan works out what the manual asks of the build.
func (c *Carried) Plan() *Plan {
	p := &planner{Plan: &Plan{Carried: c}, at: map[slot]int{}, want: map[int]string{}, asked: map[int]bool{},
		fresh: map[*model.Node]bool{}, differ: map[int]bool{}, last: -1}
	for _, a := range c.Acts() {
		for _, key := range keys(a.Step, a.Place) {
			p.at[slot{a.Step, key}] = len(p.acts)
		}
		p.acts = append(p.acts, a)
	}
	for i, a := range p.acts {
		if r := p.records[slot{a.Step, keys(a.Step, a.Place)[0]}]; c.done(a.Step, a.Place) && r.then.changes != nil {
			p.last, p.since = i, r.then
		}
	}
	p.verdicts()
	if len(p.want) > 0 || len(p.off) > 0 {
		p.grow()
	}
	p.followed()
	return p.Plan
}

// followed gives the steps on record that follow from what comes off their verdict.
func (p *planner) followed() {
	for k := range p.Items {
		item := &p.Items[k]
		i := p.actOf(item.Step, item.Place)
		if item.Verdict != AsItWas || i < 0 || p.want[i] == "" || p.acts[i].Step != item.Step {
			continue
		}
		item.Verdict, item.Why, item.Follows = DoAgain, p.want[i], true
		switch {
		case does(item.Step, kind.Stops):
			item.Verdict = Release
		case looks(item.Step):
			item.Verdict = ReadAgain
		}
	}
}

// Acts are the steps of this build in the order of the work; of those that a
// reading decides about and nobody has taken it, all.
func (c *Carried) Acts() []bench.Act {
	var all []bench.Act
	for _, a := range bench.Run(c.Manual, Choice(c.Manual, c.Given)).Acts {
		if done, known := c.Env.Done(a.Step, a.Place); done || !known {
			all = append(all, a)
		}
	}
	return all
}

// Bench is the bench as the engine stands.
func (c *Carried) Bench() *bench.State {
	return bench.After(c.Manual, Choice(c.Manual, c.Given), c.done)
}

// Midway is the bench as the engine stands with the rest of the work to come.
func (c *Carried) Midway() *bench.State {
	return bench.Midway(c.Manual, Choice(c.Manual, c.Given), c.done)
}

// Choice is the options of a build as the bench takes them.
func Choice(m *model.Manual, g values.Given) bench.Choice {
	var c bench.Choice
	for _, o := range m.Of("option") {
		if v := g.Options[o.ID]; v != "" && slices.Contains(o.Names("choices"), v) {
			c = append(c, bench.Pick{Option: o, Value: v})
		}
	}
	return c
}

// verdicts goes through the work and notes what is asked by the revision itself.
func (p *planner) verdicts() {
	for i, a := range p.acts {
		if p.done(a.Step, a.Place) {
			for _, key := range keys(a.Step, a.Place) {
				s := slot{a.Step, key}
				v, why := p.judge(s)
				if v >= Release && p.undone(i) && !p.used(i) {
					v, why = AsItWas, "what it did has been undone since"
				}
				p.Items = append(p.Items, Item{Step: a.Step, Place: key, Verdict: v, Why: why, Line: p.records[s].fact.Line})
				if v >= Release {
					p.ask(i, why)
				}
				if v == DoAgain {
					p.replaced(i, s)
				}
			}
			continue
		}
		if i < p.last && p.isNew(a) {
			v, why := DoNew, "the revision that was in force had no such step"
			if does(a.Step, kind.Waits) {
				v, why = AsItWas, "a new wait, and work that follows it is done: time has passed"
			} else {
				p.ask(i, "new in this revision")
			}
			p.Items = append(p.Items, Item{Step: a.Step, Place: a.Place, Verdict: v, Why: why})
		}
	}
	for _, r := range p.gone {
		why := "the new revision has no such step"
		if objects := p.leftovers(r); len(objects) > 0 {
			why += "; what it fitted comes off"
			p.off = append(p.off, objects...)
		}
		p.Items = append(p.Items, Item{Step: r.old, Place: r.fact.Line.Place, Verdict: Gone, Why: why, Line: r.fact.Line})
	}
}

// used reports that a value which an act gives is still in use.
func (p *planner) used(i int) bool {
	for j := i + 1; j < len(p.acts); j++ {
		if p.acts[i].Step.Kind.Yields != kind.Nothing && p.uses(p.acts[j], p.acts[i]) {
			return true
		}
	}
	return false
}

func (p *planner) ask(i int, why string) {
	if p.want[i] == "" {
		p.want[i] = why
	}
	p.asked[i] = true
}

// isNew reports a step that the builder could not have done: the revision that
// was in force has no such step, or had it later than what is done.
func (p *planner) isNew(a bench.Act) bool {
	for _, key := range keys(a.Step, a.Place) {
		if f := p.records[slot{a.Step, key}].fact; f != nil && f.Line != nil {
			return false // taken back, not accepted, or half read: it is open work, and on record as that
		}
	}
	o := p.since.changes.Pairs.Old(a.Step.Node)
	if o == nil {
		return true
	}
	last := p.acts[p.last]
	done := p.records[slot{last.Step, keys(last.Step, last.Place)[0]}].old
	first := false
	p.since.model.EachStep(func(s *model.Step) { // the order of the lists is that of the work, but for places
		if s == done && !first {
			done = nil
		}
		first = first || s == o.Step && done != nil
	})
	return !first
}

// replaced notes parts of which another number is fitted now, and picks whose
// pieces are others.
func (p *planner) replaced(i int, s slot) {
	if does(s.step, kind.Picks) {
		p.differ[i] = true
	}
	if !does(s.step, kind.Joins) {
		return
	}
	for _, ref := range s.step.Refs("part", s.place) {
		n := ref.To
		if n == nil || n.Step != nil {
			continue
		}
		r := p.records[s]
		o := r.then.changes.Pairs.Old(n)
		if o == nil || o.Plain("number") == n.Plain("number") && o.Plain("material") == n.Plain("material") {
			continue
		}
		p.fresh[n] = true
		object := bench.Object{Node: n, Place: placeOf(n, s.place)}
		why := "replaces number " + o.Plain("number")
		if o.Plain("number") == n.Plain("number") {
			why = "of another material now"
		}
		p.Renew = append(p.Renew, Renewal{object, max(1, n.Whole("quantity", s.place, 1)), n.Plain("number"), why})
	}
}

// leftovers are the parts that a step fitted which is gone, where the new
// revision fits them nowhere.
func (p *Plan) leftovers(r record) []bench.Object {
	if !does(r.old, kind.Joins) || r.old.Flag("trial") {
		return nil
	}
	var all []bench.Object
	for _, o := range on(bench.Act{Step: r.old, Place: r.fact.Line.Place}, kind.Joins) {
		n := o.Node
		if r.then.changes != nil {
			n = r.then.changes.Pairs.New(o.Node)
		}
		if n == nil || !p.fits(n) {
			all = append(all, o)
		}
	}
	return all
}

// fits reports that some step fits a part, or pieces of it.
func (p *Plan) fits(part *model.Node) bool {
	found := false
	p.Manual.EachStep(func(s *model.Step) {
		found = found || slices.ContainsFunc(on(bench.Act{Step: s}, kind.Joins, kind.PutsOn, kind.Starts, kind.Locks), func(o bench.Object) bool {
			return o.Node == part || slices.ContainsFunc(o.Node.AllRefs("fasteners"), func(r model.Ref) bool { return r.To == part })
		})
	})
	return found
}

// placeOf is the place as far as an entry has it.
func placeOf(n *model.Node, place string) string {
	if slices.Contains(n.Places(), place) {
		return place
	}
	return ""
}
