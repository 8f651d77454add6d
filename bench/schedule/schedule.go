package schedule

import (
	"time"

	"fettle/bench"
	"fettle/lang/model"
)

// Options says how to plan.
type Options struct {
	Day    time.Duration // of work in a day; 0 for one that does not end
	Gather bool          // bring the times of helpers together, where that costs no time
}

// Plan is the work in time. Times count from the start of the first day; a day
// begins every 24 hours.
type Plan struct {
	Manual  *model.Manual
	Choice  bench.Choice
	Options Options
	Acts    []Act // in the order in which they are begun
	Cures   []Cure
	Helpers []Window
	Finish  time.Duration // of the last act and the last cure that somebody waits for
	InTurn  time.Duration // the same with every step in the manual's order
	Work    time.Duration // hands at work, without waits
	Assumed int           // acts that do not say how long they take
	Long    []int         // acts that begin a piece of work that cannot be cut and is longer than a day
}

// Act is one step at a place, in time.
type Act struct {
	Step       *model.Step
	Place      string
	Start, End time.Duration
	People     int  // all hands, the builder included
	Wait       bool // time passes, and the builder is free
	Ahead      bool // done before its turn, while something else waits
	Assumed    bool // it does not say how long it takes
	turn       int  // its place in the manual's order
}

// Cure is a supply that cures.
type Cure struct {
	Act        int // that laid it on
	Supply     *model.Node
	Start, End time.Duration
}

// Window is a time in which a helper is needed.
type Window struct {
	Start, End time.Duration
	Acts       []int
	People     int // helpers at a time
}

// Make plans the work for one choice of options.
func Make(m *model.Manual, c bench.Choice, o Options) *Plan {
	w := newWork(m, c)
	order := w.inTurn()
	p := w.clock(order, o)
	inTurn := p.Finish
	if !w.slow {
		order = w.ahead(order, o)
	}
	if o.Gather && !w.slow {
		order = w.gather(order, o)
	}
	p = w.clock(order, o)
	p.InTurn = inTurn
	return p
}

// Day is the day of a time, from 0.
func Day(t time.Duration) int { return int(t / (24 * time.Hour)) }

// TimeOfDay is a time since the start of its day.
func TimeOfDay(t time.Duration) time.Duration { return t % (24 * time.Hour) }

// Days is the number of days on which there is work.
func (p *Plan) Days() int {
	n := 0
	for _, a := range p.Acts {
		if !a.Wait {
			n = max(n, Day(a.Start)+1)
		}
	}
	return n
}

// Meanwhile lists the acts that are done ahead of their turn while a wait or the
// cure that it waits for goes on: between what the wait follows and its end.
func (p *Plan) Meanwhile(wait int) []int {
	var all []int
	for i := wait - 1; i >= 0 && p.Acts[i].Ahead; i-- {
		all = append([]int{i}, all...)
	}
	return all
}
