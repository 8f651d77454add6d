package kind

// Verb is one thing that a step does on the bench. The bench knows the verbs and
// never the kinds.
type Verb uint8

// The verbs, with what they act on.
const (
	Cleans    Verb = iota + 1 // faces, parts
	Joins                     // parts, packs
	Starts                    // fastenings, by hand
	Takes                     // parts off
	Opens                     // fastenings out
	PutsOn                    // tools that stay on
	PutsAway                  // tools that stayed on
	Slackens                  // fastenings
	MakesMark                 // on faces
	Reads                     // a value of what it touches
	Sets                      // a value, until its lock is tightened
	Accepts                   // what it touches
	Picks                     // pieces of a graded part
	WorksOut                  // a value
	Wets                      // faces, fastenings
	Seals                     // faces; clocks run
	Tightens                  // fastenings
	Locks                     // fastenings
	Heats                     // parts
	Fills                     // liquid in
	Drains                    // liquid out
	Waits                     // clock
	Stops                     // until it is released
	Drives                    // the machine
	Lifts                     // parts
	Declares                  // states
	Touches                   // what it works on, and leaves as it is
)

// Effect says that a step of the kind does Verb to what the attribute names. It
// does nothing where the attribute is not written.
type Effect struct {
	Verb Verb
	Attr string
}
