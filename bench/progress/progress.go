package progress

import (
	"slices"
	"time"

	"fettle/bench"
	"fettle/bench/logbook"
	"fettle/bench/rework"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// Progress is where a build stands.
type Progress struct {
	*rework.Carried
	Now   time.Time
	Steps []Step // of this build, in the order of the work
	Done  int    // how many of them stand
	Next  int    // the first that does not; len(Steps) where all do

	Holds   []int            // released by nobody, and the work before them is done
	Curing  []Cure           // still curing at Now, the longest last
	Loose   []bench.Fastened // on, and not tight
	Trials  []bench.Placed   // on for trial only
	Tools   []bench.Placed   // tools that are on
	Liquids []bench.Object   // what liquid stands in
	Plan    *rework.Plan     // what the revision asks of what is done; empty where all was done under it
}

// Step is one step at a place.
type Step struct {
	*model.Step
	Place  string
	Status Status
	Line   *logbook.Line // that stands; of several spots the last
	Why    string
}

// Status is how a step stands.
type Status uint8

// Statuses.
const (
	Open        Status = iota
	Done               // on record, and accepted where it judges
	NotAccepted        // read or seen, and not accepted
	Disputed           // two copies of the logbook disagree
	Again              // on record, and to be done again under this revision
	Passed             // open, and later work is on record
	Unknown            // whether it is done rests on a reading that is not on record
)

func (s Status) String() string {
	return [...]string{"open", "done", "not accepted", "disputed", "to be done again", "passed over", "not known yet"}[s]
}

// Cure is something that cures.
type Cure struct {
	Step   *model.Step // that laid it on
	Place  string
	Supply *model.Node
	Until  time.Time
}

// Of works out where a build stands at a time.
func Of(c *rework.Carried, now time.Time) *Progress {
	p := &Progress{Carried: c, Now: now, Plan: c.Plan()}
	again := map[logbook.At]string{}
	for _, a := range p.Plan.Again {
		again[logbook.At{Step: a.Step.Key(), Place: a.Place}] = a.Why
	}
	build := c.Build()
	disputed := map[string]bool{}
	for _, x := range c.State.Conflicts {
		disputed[x.About] = true
	}
	last := -1
	for i, a := range c.Acts() {
		s := Step{Step: a.Step, Place: a.Place}
		s.Status = p.status(build, &s, disputed)
		at := logbook.At{Step: a.Step.Key(), Place: a.Place}
		if why, ok := again[at]; ok && s.Status == Done {
			s.Status, s.Why = Again, why
		}
		if s.Status == Done {
			p.Done++
			last = i
		}
		p.Steps = append(p.Steps, s)
	}
	p.Next = len(p.Steps)
	for i := range p.Steps {
		s := &p.Steps[i]
		if s.Status == Open && i < last {
			s.Status = Passed
		}
		if s.Status != Done && i < p.Next {
			p.Next = i
		}
		if s.Status != Done && logbook.Does(s.Step, kind.Stops) && (i < last || i == p.Next) {
			p.Holds = append(p.Holds, i)
		}
	}
	p.bench()
	return p
}

// status looks at one step with all its spots.
func (p *Progress) status(b *logbook.Build, s *Step, disputed map[string]bool) Status {
	keys := values.Keys(s.Step)
	if slices.Contains(keys, s.Place) || s.Place != "" {
		keys = []string{s.Place}
	}
	if _, known := p.Env.Done(s.Step, s.Place); !known {
		return Unknown
	}
	status := Done
	for _, key := range keys {
		f := b.Fact(s.Step, key)
		switch {
		case disputed[logbook.At{Step: s.Key(), Place: key}.String()]:
			return Disputed
		case b.Stands(s.Step, key):
			s.Line = f.Line
		case f.Is(logbook.Reading, logbook.Refused):
			s.Line = f.Line
			status = NotAccepted
		case status == Done:
			status = Open
		}
	}
	return status
}

// bench asks the bench for what is open on the engine.
func (p *Progress) bench() {
	s := p.Midway()
	for _, f := range s.Fastenings() {
		if f.Grip != bench.Tight {
			p.Loose = append(p.Loose, f)
		}
	}
	for _, on := range s.On() {
		switch {
		case on.Object.Node.Def.Name == "tool":
			p.Tools = append(p.Tools, on)
		case on.Trial:
			p.Trials = append(p.Trials, on)
		}
	}
	p.Liquids = s.Liquids()
	broken := map[logbook.At]bool{}
	for _, seal := range s.Seals() {
		if seal.Parted {
			broken[logbook.At{Step: seal.Step.Node.Step.Key(), Place: seal.Step.Place}] = true
		}
	}
	for i := range p.Steps {
		x := &p.Steps[i]
		if x.Line == nil || x.Status != Done || broken[logbook.At{Step: x.Key(), Place: x.Place}] || !wets(x.Step) {
			continue
		}
		for _, r := range x.AllRefs("supplies") {
			d, known := s.Cure(r.To, x.Procedure)
			if !known {
				continue
			}
			if until := p.from(x).Add(d); until.After(p.Now) {
				p.Curing = append(p.Curing, Cure{x.Step, x.Place, r.To, until})
			}
		}
	}
	slices.SortStableFunc(p.Curing, func(a, b Cure) int { return a.Until.Compare(b.Until) })
}

func wets(s *model.Step) bool { return logbook.Does(s, kind.Seals) || logbook.Does(s, kind.Wets) }

// from is when a cure begins: when the seal was closed, else when it was laid.
func (p *Progress) from(x *Step) time.Time {
	for _, r := range x.Refs("closed_by", x.Place) {
		if r.To == nil || r.To.Step == nil {
			continue
		}
		for i := range p.Steps {
			if y := &p.Steps[i]; y.Step == r.To.Step && (y.Place == x.Place || y.Place == "") && y.Line != nil && y.Status == Done {
				return y.Line.Time()
			}
		}
	}
	return x.Line.Time()
}
