package bench

import (
	"time"

	"fettle/calc"
	"fettle/lang/model"
)

// Trace is what happened when a manual was executed for one choice of options.
// It is not changed after Run.
type Trace struct {
	Manual   *model.Manual
	Choice   Choice
	Acts     []Act    // in the order of the work; steps of otherwise blocks are not among them
	Breaches []Breach // in the order in which they came up
	Lifts    []Lift   // every lift, fit and removal of something with a mass
	Assumed  []int    // acts inside a running clock whose `takes` was assumed
	End      time.Duration
}

// Act is one step done at one place.
type Act struct {
	Step       *model.Step
	Place      string        // "" for a step that is at no place
	Start, End time.Duration // since the start of the work, waits included
	Maybe      bool          // done under a reading only
}

// Breach is one thing that goes wrong. Its consequences hang on it as causes
// and are no breaches of their own.
type Breach struct {
	What    What
	Act     int         // index in Acts; -1 where none takes part, and in an otherwise block
	Step    *model.Step // nil where no step is at fault
	Node    *model.Node // the step, or the entry or otherwise block at fault
	Attr    string      // the attribute to point at; "" for the block's name
	Place   string
	Objects []Object      // what it is about; What says in which order
	Want    calc.Quantity // the limit, where there is one; else not Valid
	Got     calc.Quantity // what it came to
	Causes  []Cause

	Places []string // by Gather: all places where it happens
	Under  []Choice // by Gather: the choices under which it happens; nil for all
}

// Cause is another place that takes part in a breach.
type Cause struct {
	Act   int         // index in Acts, or -1
	Node  *model.Node // the step or entry
	Attr  string      // the attribute to point at; "" for the block's name
	Place string
	Words string // "covered here", "tightened here", "declared here"
}

// Object is a part, tool, supply, fastening or step, or a face, port, feature or
// mark of a part.
type Object struct {
	Node      *model.Node // nil for nothing
	Sub, Name string      // "face" and its name; "" for the whole
	Place     string
}

// Lift is a mass that is lifted, with all that it carries.
type Lift struct {
	Act     int
	Parts   []Object      // the part and what it carries
	Mass    calc.Quantity // the sum of the masses that are known, for each piece once
	Unknown []Object      // parts of it that state no mass
	People  int
	Hoists  []*model.Node // tools of the step that have a capacity
}

// Choice is a value for each option that a `when` looks at, in source order.
// Options that are not in it have their default.
type Choice []Pick

// Pick is one option's value.
type Pick struct {
	Option *model.Node
	Value  string
}
