package rework

import (
	"strings"

	"fettle/bench/diff"
	"fettle/bench/logbook"
	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// Verdict is what the new revision asks of a step on record.
type Verdict uint8

// Verdicts, the most far-reaching last.
const (
	AsItWas   Verdict = iota // nothing
	Gone                     // nothing: the new revision has no such step
	Release                  // a hold is released again
	ReadAgain                // a reading or an inspection is taken again
	DoAgain                  // the step is done again
	DoNew                    // a new step among those that are done
)

func (v Verdict) String() string {
	return [...]string{"as it was", "gone", "to be released again", "to be read again", "to be done again", "new, to be done"}[v]
}

// judge compares a step on record with what it has become.
func (c *Carried) judge(s slot) (Verdict, string) {
	r := c.records[s]
	if r.then.changes == nil {
		return AsItWas, ""
	}
	j := judging{c, s, r, r.then.changes, AsItWas, nil}
	if x := j.changes.Find(s.step.Node); x != nil && x.New == s.step.Node {
		for i := range x.Fields {
			if f := &x.Fields[i]; f.In == "" && (f.Place == "" || f.Place == s.place) {
				j.field(f)
			}
		}
		if x.Moved && j.verdict == AsItWas {
			j.note(AsItWas, "only moved: done in another order, it is the same")
		}
	}
	j.entries()
	j.number()
	return j.verdict, strings.Join(j.why, "; ")
}

type judging struct {
	*Carried
	slot
	record
	changes *diff.Changes
	verdict Verdict
	why     []string
}

// note raises the verdict; of the reasons those for the gravest are kept.
func (j *judging) note(v Verdict, why string) {
	switch {
	case v > j.verdict:
		j.verdict, j.why = v, []string{why}
	case v == j.verdict && why != "":
		j.why = append(j.why, why)
	}
}

func (j *judging) does(verbs ...kind.Verb) bool { return does(j.step, verbs...) }

func does(s *model.Step, verbs ...kind.Verb) bool {
	for _, e := range s.Kind.Does {
		for _, v := range verbs {
			if e.Verb == v && (s.Has(e.Attr) || v == kind.Stops || v == kind.Waits) {
				return true
			}
		}
	}
	return false
}

// looks reports a step that reads or accepts and leaves the engine as it is.
func looks(s *model.Step) bool { return does(s, kind.Reads, kind.Accepts, kind.Drives) }

// field is what a changed attribute of the step means for what was done. What
// is not named here tells how, why, with what or how long, and is past.
func (j *judging) field(f *diff.Field) {
	again := DoAgain
	if looks(j.step) {
		again = ReadAgain
	}
	if j.does(kind.Stops) {
		again = Release
	}
	say := j.changes.Say(f)
	switch f.Name {
	case "kind", "on", "between", "part", "fastening", "tool", "quantity", "facing", "align", "how", "through", "amount", "keep_clear", "trial":
		j.note(again, say)
	case "by":
		if !j.does(kind.Slackens) {
			j.note(again, say)
		}
	case "supplies":
		if j.does(kind.Wets, kind.Seals, kind.Fills) {
			j.note(again, say)
		}
	case "spots", "repeat", "take", "agree_within", "criterion":
		j.note(again, say)
	case "checks", "release":
		j.note(Release, say)
	case "tools":
		if t := j.fact.Tool; t != "" && j.does(kind.Reads) && !names(j.step.AllRefs("tools"), t) {
			j.note(ReadAgain, "read with "+t+", which the step does not name any more")
		}
	case "to":
		if j.does(kind.Tightens) {
			j.torque()
		}
	}
}

func names(refs []model.Ref, id string) bool {
	for _, r := range refs {
		if r.To != nil && r.To.ID == id {
			return true
		}
	}
	return false
}

// entries is what changes of the catalogue mean for what was done with it.
func (j *judging) entries() {
	for _, e := range j.step.Kind.Does {
		for _, ref := range j.step.Refs(e.Attr, j.place) {
			n := ref.To
			if n != nil && n.Step != nil { // a pack
				n = n.Ref("from")
			}
			if n == nil {
				continue
			}
			if x := j.changes.Find(n); x != nil && x.New == n && x.Old != nil {
				for i := range x.Fields {
					j.entry(e.Verb, n, &x.Fields[i])
				}
			}
		}
	}
	if j.does(kind.Wets, kind.Seals, kind.Fills) {
		for _, ref := range j.step.Refs("supplies", j.place) {
			if x := j.changes.Find(ref.To); x != nil && x.Old != nil && x.New != nil {
				for i := range x.Fields {
					if x.Fields[i].Name == "kind" {
						j.note(DoAgain, ref.To.Title()+": "+j.changes.Say(&x.Fields[i]))
					}
				}
			}
		}
	}
}

func (j *judging) entry(v kind.Verb, n *model.Node, f *diff.Field) {
	if f.Place != "" && f.Place != j.place || f.In != "" {
		return
	}
	say := n.Title() + ": " + j.changes.Say(f)
	switch v {
	case kind.Joins:
		if f.Name == "number" || f.Name == "material" {
			j.note(DoAgain, say)
		}
	case kind.Starts:
		switch f.Name {
		case "thread", "bolt_class", "nut_class", "quantity", "fasteners":
			j.note(DoAgain, say)
		}
	case kind.Tightens:
		switch f.Name {
		case "torque":
			if !j.step.Has("to") {
				j.torque()
			}
		case "thread", "bolt_class", "nut_class", "quantity", "fasteners", "lubricant", "stages", "angle", "to_slot", "drag", "drag_included", "pattern", "locked_by":
			j.note(DoAgain, say)
		}
	case kind.Locks:
		if f.Name == "locked_by" {
			j.note(DoAgain, say)
		}
	}
}

// torque compares the torque that was set with what is accepted now.
func (j *judging) torque() {
	was, is := torqueOf(j.old, j.place), torqueOf(j.step, j.place)
	if is == nil {
		return
	}
	style := style(j.Manual)
	l, ok := is.Limits()
	var set *calc.Quantity
	if was != nil {
		set = was.Quantity()
	}
	shown := style.Limits(l.Low, l.High).String()
	switch {
	case set == nil || !ok:
		j.note(DoAgain, "its torque changed")
	case l.Contain(*set):
		j.note(AsItWas, "tightened to "+style.Quantity(*set).String()+"; now "+shown+" is accepted")
	default:
		j.note(DoAgain, "tightened to "+style.Quantity(*set).String()+"; now only "+shown+" is accepted")
	}
}

// torqueOf is what a step tightens to at a place.
func torqueOf(s *model.Step, place string) *model.Formula {
	if f := s.Formula("to", place); f != nil {
		return f
	}
	for _, r := range s.Refs("fastening", place) {
		if r.To != nil && r.To.Is(entry.Fastening) {
			return r.To.Formula("torque", place)
		}
	}
	return nil
}

func style(m *model.Manual) calc.Style {
	return calc.Style{First: m.System(), Gallon: m.Word("gallon")}
}

// number puts what was read or worked out to the limits of the new revision.
func (j *judging) number() {
	switch j.step.Kind.Yields {
	case kind.Reading, kind.Number:
		j.limits()
	case kind.Pack:
		j.pack()
	}
}

func (j *judging) limits() {
	again := ReadAgain
	if j.step.Kind.Yields == kind.Number {
		again = DoAgain
	}
	if j.lost[j.slot] {
		j.note(ReadAgain, "read as "+strings.Join(j.fact.Values, "; ")+", which the new revision cannot use")
		return
	}
	verdict, now := j.Env.Judge(j.step, j.place)
	_, before := j.then.env.Judge(j.old, j.place)
	q, _ := j.Env.Of(j.step, j.place).(logbook.Quantity)
	st := style(j.Manual)
	switch {
	case verdict == values.Refused && now == (calc.Limits{}):
		j.note(again, st.Quantity(q).String()+" is not accepted any more")
	case verdict == values.Refused:
		j.note(again, st.Quantity(q).String()+" is outside "+st.Limits(now.Low, now.High).String())
	case verdict == values.Accepted && !same(now, before):
		j.note(AsItWas, st.Quantity(q).String()+" is inside "+st.Limits(now.Low, now.High).String())
	}
}

func same(a, b calc.Limits) bool {
	return equal(a.Low, b.Low) && equal(a.High, b.High)
}

func equal(p, q *calc.Quantity) bool {
	if p == nil || q == nil {
		return p == q
	}
	return p.Dim().Fits(q.Dim()) && p.Cmp(*q) == 0
}

// pack asks whether the pieces that are in the engine still do.
func (j *judging) pack() {
	was, is := j.then.env.Pack(j.old, j.place), j.Env.Pack(j.step, j.place)
	if was == nil {
		return
	}
	if is != nil && is.String() == was.String() {
		return
	}
	if r, l, ok := j.left(was.Total); ok && l.Contain(r) {
		st := style(j.Manual)
		j.note(AsItWas, "the pieces that are in, "+was.String()+", make "+st.Quantity(r).String()+", inside "+st.Limits(l.Low, l.High).String())
		return
	}
	if is == nil {
		j.note(DoAgain, "the pieces that are in, "+was.String()+", do not fit any more, and no pack does with the reading on record")
		return
	}
	j.note(DoAgain, "the pieces that are in, "+was.String()+", do not fit any more; now "+is.String()+" does")
}

// left is what pieces of a total leave, or make, with the reading on record.
func (j *judging) left(total calc.Quantity) (calc.Quantity, calc.Limits, bool) {
	value := func(name string) calc.Value {
		f := j.step.Formula(name, j.place)
		if f == nil {
			return nil
		}
		v, p := calc.Eval(f.Expr, j.Env.At(j.place))
		if p != nil {
			return nil
		}
		return v
	}
	measured, limits := value("gap"), value("leaves")
	op := calc.Quantity.Sub
	if j.step.Has("base") || j.step.Has("makes") {
		measured, limits, op = value("base"), value("makes"), calc.Quantity.Add
	}
	q, ok := measured.(calc.Quantity)
	l, also := limits.(calc.Limits)
	if !ok || !also {
		return q, l, false
	}
	r, err := op(q, total)
	return r, l, err == nil && l.Type().Dim.Fits(r.Dim())
}
