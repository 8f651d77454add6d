package mutation

import (
	"slices"

	"fettle/lang/kind"
	"fettle/lang/model"
)

var fastening = []*Class{
	{"fastening", "never tightened", []string{"fastening/never-tightened"}, neverTightened},
	{"fastening", "not started by hand", []string{"fastening/not-started-by-hand"}, notStarted},
	{"fastening", "tightened again", []string{"fastening/tightened-twice", "fastening/not-as-found"}, tightenedAgain},
	{"fastening", "loosened, never tightened again", []string{"fastening/left-loose"}, leftLoose},
	{"fastening", "tightened before its stack is on", []string{"fastening/stack-not-on", "order/fitted-before-seat"}, stackNotOn},
	{"fastening", "part removed while fastened", []string{"fastening/removed-while-fastened"}, removedFastened},
	{"fastening", "above the proof band", []string{"fastening/high-preload"}, highPreload},
	{"fastening", "below the seating band", []string{"fastening/low-preload"}, lowPreload},
	{"fastening", "thread strips first", []string{"fastening/thread-strips-first"}, stripsFirst},
	{"fastening", "outside the wrench's range", []string{"fastening/outside-wrench-range"}, outsideWrench},
	{"fastening", "no wrench named", []string{"fastening/no-wrench"}, noWrench},
	{"fastening", "stages fall or miss the value", []string{"fastening/stages-fall", "fastening/stages-miss-the-torque"}, stagesWrong},
	{"fastening", "four or more and no pattern", []string{"fastening/no-pattern"}, noPattern},
	{"fastening", "pattern no sound criss-cross", []string{"fastening/unsound-pattern"}, unsoundPattern},
	{"fastening", "lubricant differs from the coat", []string{"fastening/lubricant-differs", "fastening/lock-missing"}, lubricantDiffers},
	{"fastening", "socket or drive does not fit", []string{"fastening/socket-does-not-fit", "fastening/drive-differs"}, socketWrong},
	{"fastening", "adapter without length, or setting wrong", []string{"fastening/adapter-without-length", "fastening/wrong-setting", "values/prose-contradicts"}, adapterWrong},
	{"fastening", "angle with no snug torque", []string{"fastening/angle-without-snug-torque"}, angleAlone},
	{"fastening", "slot step wider than the band", []string{"fastening/slot-wider-than-band"}, slotTooWide},
	{"fastening", "locking device missing", []string{"fastening/lock-missing", "fastening/lubricant-differs"}, lockMissing},
	{"fastening", "high torque, nothing holds the part", []string{"fastening/nothing-holds-the-part"}, nothingHolds},
	{"fastening", "use_once piece used again", []string{"fastening/spent-part-used-again", "access/more-than-kit"}, spentAgain},
	{"fastening", "prose turns the wrong way", []string{"fastening/turns-the-wrong-way"}, wrongWay},
}

// fate is everything that is done to one fastening, in working order.
func (s *Sound) fate(f *model.Node) []*model.Step {
	var all []*model.Step
	for _, st := range s.steps {
		for _, v := range []kind.Verb{kind.Starts, kind.Tightens, kind.Slackens, kind.Opens, kind.Locks} {
			if slices.Contains(Does(st, v), f) {
				all = append(all, st)
				break
			}
		}
	}
	return all
}

// does reports whether a step does a verb to a thing.
func does(st *model.Step, v kind.Verb, to *model.Node) bool {
	return slices.Contains(Does(st, v), to)
}

// once lists the fastenings with exactly one start and one tightening.
func (s *Sound) once() (fs []*model.Node, start, tighten map[*model.Node]*model.Step) {
	start, tighten = map[*model.Node]*model.Step{}, map[*model.Node]*model.Step{}
	for _, f := range s.Of("fastening") {
		a, b := s.Doing(kind.Starts, f), s.Doing(kind.Tightens, f)
		if len(a) == 1 && len(b) == 1 && len(s.Doing(kind.Opens, f)) == 0 && len(s.Doing(kind.Slackens, f)) == 0 {
			fs = append(fs, f)
			start[f], tighten[f] = a[0], b[0]
		}
	}
	return fs, start, tighten
}

// atEach is the line by which a step put in behind t stays in the group of t.
func atEach(t *model.Step) string {
	if !t.Has("at_each") {
		return ""
	}
	return "    at_each = " + t.ValueSpan(t.Attr("at_each")).Text() + "\n"
}

// only lets a step be done at the first of its places, where nobody checks it.
func (s *Sound) only(st *model.Step) *Change {
	if st.Places == nil || st.Has("only") || s.checked(st) {
		return nil
	}
	return Set(st.Node, "only", "["+quote(st.Places.Names("names")[0])+"]")
}

// sometimes lets a step be done under a new option only, where nobody checks it.
func (s *Sound) sometimes(st *model.Step) *Change {
	if optional(st) || s.checked(st) {
		return nil
	}
	return s.forExtra(st)
}

func (s *Sound) forExtra(st *model.Step) *Change {
	option := "option \"extra\" {\n  name    = \"Extra\"\n  choices = [\"without\", \"with\"]\n}\n"
	return Set(st.Node, "when", `option.extra == "with"`).And(InsertAfter(s.Node, option))
}

// checked reports whether a hold checks a step.
func (s *Sound) checked(st *model.Step) bool {
	return slices.ContainsFunc(s.steps, func(h *model.Step) bool { return names(h.Node, "checks", st.Node) })
}

// inBranch reports whether the steps of an otherwise block do a verb to a thing.
func (s *Sound) inBranch(v kind.Verb, to *model.Node) bool {
	found := false
	s.EachStep(func(st *model.Step) { found = found || st.Branch != nil && does(st, v, to) })
	return found
}

// goesBack reports whether an otherwise block of a procedure goes back to a step.
func goesBack(p *model.Node) bool {
	return slices.ContainsFunc(p.Steps, func(st *model.Step) bool {
		return slices.ContainsFunc(st.Nested(kind.Otherwise), func(b *model.Node) bool { return b.Ref("then") != nil })
	})
}

func neverTightened(w *Workshop) {
	fs, start, tighten := w.once()
	for _, f := range fs {
		t := tighten[f]
		w.Put(w.Drop(t.Node).At(f, start[f].Node), "drop %q", t.Title())
		w.Put(w.only(t).At(f, start[f].Node), "%q at one place only", t.Title())
		w.Put(w.sometimes(t).At(f, start[f].Node), "%q under an option only", t.Title())
	}
	for _, t := range w.Doing(kind.Tightens) { // after it came off and was started again
		f := Does(t, kind.Tightens)[0]
		all := w.fate(f)
		i := slices.Index(all, t)
		if i > 1 && does(all[i-1], kind.Starts, f) && i == len(all)-1 && !all[i-1].Flag("trial") {
			w.Put(w.Drop(t.Node).At(f, all[i-1].Node), "drop %q, the second time", t.Title())
		}
	}
}

func notStarted(w *Workshop) {
	fs, start, tighten := w.once()
	for _, f := range fs {
		st, t := start[f], tighten[f]
		if !f.Has("fasteners") {
			continue
		}
		w.Put(w.Drop(st.Node).At(f, t.Node), "drop %q", st.Title())
		w.Put(w.only(st).At(f, t.Node), "%q at one place only", st.Title())
		if Next(st) == t && w.Uses(st.Node) == 0 && w.Uses(t.Node) == 0 {
			w.Put(Swap(st.Node, t.Node), "%q before %q", t.Title(), st.Title())
		}
	}
	for _, st := range w.Doing(kind.Starts) {
		f := Does(st, kind.Starts)[0]
		all := w.fate(f)
		i := slices.Index(all, st)
		if i > 0 && does(all[i-1], kind.Opens, f) && i+1 < len(all) && does(all[i+1], kind.Tightens, f) {
			w.Put(w.Drop(st.Node).At(f, all[i+1].Node), "drop %q, the second time", st.Title())
		}
	}
}

func tightenedAgain(w *Workshop) {
	for _, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		all := w.fate(f)
		i := slices.Index(all, t)
		again := Copy(t.Node, t.ID+"_twice", without(t.Node, "was", "critical", "from", "after", "within"))
		w.Put(InsertAfter(t.Node, again).At(f, t.Node), "%q twice", t.Title())
		switch t.Word("from") {
		case "tight":
			if i > 0 {
				w.Put(Unset(t.Node, "from").At(f), "%q not said to be a re-tightening", t.Title())
			}
			w.Put(Set(t.Node, "from", `"loosened"`).At(f), "%q said to be loosened", t.Title())
		case "loosened":
			if i > 0 && does(all[i-1], kind.Slackens, f) {
				w.Put(w.Drop(all[i-1].Node).At(t.Node, f), "drop %q", all[i-1].Title())
			}
		}
	}
}

func leftLoose(w *Workshop) {
	for _, t := range w.Doing(kind.Tightens) {
		f := Does(t, kind.Tightens)[0]
		all := w.fate(f)
		i := slices.Index(all, t)
		last := i == len(all)-1
		if last && !t.Has("critical") && !w.inBranch(kind.Slackens, f) {
			text := "  loosen \"" + t.ID + "_again\" {\n    title     = \"Slacken it again\"\n    fastening = fastening." + f.ID + "\n    by        = \"1/4 turn\"\n    takes     = \"1 min\"\n" + atEach(t) + "  }\n"
			w.Put(InsertAfter(t.Node, text).At(f), "slacken it after %q", t.Title())
			work := "  work \"" + t.ID + "_free\" {\n    title   = \"Free the part again\"\n    on      = [fastening." + f.ID + "]\n    loosens = [fastening." + f.ID + "]\n    takes   = \"1 min\"\n" + atEach(t) + "  }\n"
			w.Put(InsertAfter(t.Node, work).At(f), "work that loosens it after %q", t.Title())
		}
		if last && i > 0 && does(all[i-1], kind.Slackens, f) {
			w.Put(w.Drop(t.Node).At(f, all[i-1].Node), "drop %q", t.Title())
		}
	}
}

func stackNotOn(w *Workshop) {
	fs, start, tighten := w.once()
	for _, f := range fs {
		stack := f.AllRefs("stack")
		t := tighten[f]
		for _, r := range stack {
			if r.To.Def.Name != "part" || len(w.Doing(kind.Joins, r.To)) != 1 {
				continue
			}
			p := w.Doing(kind.Joins, r.To)[0]
			if p.Procedure != t.Procedure || p.Index >= start[f].Index || !quiet(p.Procedure.Steps[p.Index+1:t.Index], r.To, f) || w.Uses(p.Node) > 0 {
				continue
			}
			where := []*model.Node{f, t.Node, start[f].Node, p.Node}
			w.Put(MoveAfter(p.Node, t.Node).At(where...), "%q after %q", p.Title(), t.Title())
			if w.only(p) != nil {
				w.PutFor(append([]string{"access/never-fitted"}, w.class.Rules...), w.only(p).At(append(where, r.To)...), "%q at one place only", p.Title())
			}
		}
		// The whole of the tightening comes before what lies on top.
		if top := f.AllRefs("stack"); len(top) > 1 && top[0].To.Def.Name == "part" {
			p := w.Doing(kind.Joins, top[0].To)
			if len(p) == 1 && p[0].Procedure == t.Procedure && Next(p[0]) == start[f] && Next(start[f]) == t && w.Uses(t.Node)+w.Uses(p[0].Node)+w.Uses(start[f].Node) == 0 {
				w.Put(MoveBefore(start[f].Node, p[0].Node).And(MoveBefore(t.Node, p[0].Node)).At(f, t.Node, start[f].Node, p[0].Node), "%q before %q", t.Title(), p[0].Title())
			}
		}
	}
}

// quiet reports whether no step but those of a fastening needs a part.
func quiet(steps []*model.Step, part, f *model.Node) bool {
	for _, s := range steps {
		if does(s, kind.Starts, f) || does(s, kind.Tightens, f) {
			continue
		}
		if s.Has("on") && !names(s.Node, "on", f) || Is(s, kind.Joins) || s.Kind.Yields != kind.Nothing || Is(s, kind.Stops) {
			return false
		}
	}
	return true
}

func removedFastened(w *Workshop) {
	for _, open := range w.Doing(kind.Opens) {
		f := Does(open, kind.Opens)[0]
		if f.Word("does") == "plug" {
			continue // which also closes a port
		}
		for _, off := range w.After(open) {
			if off.Procedure != open.Procedure {
				break
			}
			parts := Does(off, kind.Takes)
			if len(parts) != 1 || !names(f, "stack", parts[0]) {
				continue
			}
			restarted := false
			for _, s := range w.After(off) {
				restarted = restarted || does(s, kind.Starts, f)
			}
			if restarted {
				w.Put(w.Drop(open.Node).At(off.Node, f), "drop %q", open.Title())
			}
			if w.Uses(open.Node) == 0 && w.Uses(off.Node) == 0 {
				w.Put(MoveAfter(open.Node, off.Node).At(off.Node, f), "%q after %q", open.Title(), off.Title())
			}
			break
		}
	}
}
