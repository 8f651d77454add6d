package bench

// What is one way in which the work goes wrong on the bench. Each has one
// meaning, and a rule reports it.
type What uint8

// Fastenings. Objects[0] is the fastening.
const (
	NeverTightened  What = iota + 1 // started or on, and not tight at the end; the step that started it
	NotStarted                      // tightened, and never started by hand; the tightening step
	TightenedTwice                  // tightened when tight already, and not as a re-tightening
	NotAsFound                      // `from` says tight or loosened, and it is not; Attr from
	LeftLoose                       // loosened and never tightened again; the loosening step
	StackNotOn                      // tightened before all that it clamps is on; Objects[1…] are missing
	RemovedFastened                 // Objects[0] is the part that comes off, Objects[1] the fastening that still holds it
	LockMissing                     // tight, and its locking device never fitted or set; Objects[1] the device
	LockedLoose                     // locked before it is tight
	SpentUsedAgain                  // Objects[0] is the use_once part or the fastening whose piece is spent and used again
	WrongLubricant                  // tightened wet with Objects[1], not with Objects[2] that its torque rests on; Objects[1] is empty where it is dry
	NothingToLoosen                 // loosened or taken out when it is not on, or loosened when not tight
)

// Parts, access, tools. Objects[0] is the part or tool.
const (
	SeatNotOn        What = iota + 40 // fitted or started before what it sits on; Objects[0] may be a fastening, Objects[1…] the seats
	Covered                           // Objects[0] cannot be reached; Objects[1] covers it
	MarkNotMade                       // gone by before it is made; Objects[0] the mark
	MarkWiped                         // gone by after it is wiped
	MarkCovered                       // gone by while Objects[1] covers it
	RemovedUnder                      // comes off while Objects[1], which stays, lies on it or over it
	RemovedHeld                       // comes off while Objects[1], which holds it, is on
	NotOn                             // taken off when it is not on
	TrialNeverUndone                  // fitted for trial, and on at the end; the trial fit
	TrialAsFinal                      // Objects[0] on for trial, and work for good rests on it
	NeverRefitted                     // taken off and not put back; the removing step
	FittedTwice                       // fitted when all of it is on already
	MoreThanKit                       // more pieces fitted than the kit holds
	NeverFitted                       // in the kit and never fitted; Node is the part
	NeverJoins                        // at the end a group of its own; Objects are the parts that lead the groups
	ToolLeftOn                        // tool on at the end, or when the machine is run; the step that put it on
	ToolElsewhere                     // tool needed here while all of its kind are at Objects[1]
	FilledClosed                      // filled or drained through Objects[0], which Objects[1] closes
	OpenedWet                         // Objects[0] comes off or is loosened while liquid stands behind it; Objects[1] holds the liquid
)

// Order, readings and time.
const (
	OutOfOrder         What = iota + 80 // a step in `after` is not done yet; Attr after, Objects[0] the step
	TooLate                             // `within` is over; Want and Got
	TooEarly                            // `not_before` is not over; Want and Got
	UsedBeforeRead                      // a formula rests on Objects[0], which is read later; Attr holds the formula
	ReadSometimes                       // a formula rests on Objects[0], which is read under another option or reading only
	SettingDisturbed                    // Objects[0] the setting step, whose lock Objects[1] is tightened and which is not read again
	WaitsForLater                       // a wait for Objects[0], which is done later; Attr until
	BranchCannotBeDone                  // an otherwise block that cannot be done from here; Node is the block
)

// Seals. Objects[0] is the seal's step unless said.
const (
	NotCleaned     What = iota + 110 // sealed on Objects[0], a face never cleaned
	Dirtied                          // sealed on Objects[0], a face cleaned and dirtied since
	ClosedTooLate                    // assembled too late; the closing step; Want and Got
	ClampedTooLate                   // tightened too late; the tightening step; Objects[1] the fastening; Want and Got
	NeverClosed                      // never assembled; the sealing step
	WaitTooShort                     // a wait that leaves a cure unfinished; the wait; Want and Got
	RunUncured                       // run before it has cured; the run; Want and Got
	SealBroken                       // parted and put together again without a new seal; the refitting step
	SealOver                         // laid over Objects[0], a mark or port that must stay clear; the sealing step
	SealTooHot                       // Objects[1] meets a temperature outside its service; the step that heats it; Got is the temperature
	SqueezeOutLeft                   // squeeze-out not cleaned off before the next thing is fitted or run; the closing step
)

// Acceptances, holds and runs.
const (
	CoveredUnaccepted  What = iota + 140 // something critical covered before it is accepted; the covering step; Objects[0] the accepting step, Objects[1] what it protects
	CoveredUnheld                        // covered when accepted and not held; as above
	RunUnheld                            // first run of its kind without a hold that stands
	IrreversibleUnheld                   // irreversible step without a hold that stands
	TorqueUnchecked                      // critical torque without an independent check; Objects[0] the fastening
	HoldChecksNothing                    // the hold
	HoldChecksLater                      // a hold checks Objects[0], which is done later; Attr checks
	HoldChecksAbsent                     // a hold checks Objects[0], which an option leaves out; Attr checks
	HoldAfterItsStep                     // a hold stands after Objects[0], which it guards; Attr before
	RunLoose                             // run while Objects[0] is not tight yet
	RunUnlocked                          // run while Objects[0] is not locked yet
)

// String is the breach in a few words, for tests and traces.
func (w What) String() string { return whatWords[w] }

var whatWords = map[What]string{
	NeverTightened:     "never tightened",
	NotStarted:         "not started",
	TightenedTwice:     "tightened twice",
	NotAsFound:         "not as found",
	LeftLoose:          "left loose",
	StackNotOn:         "stack not on",
	RemovedFastened:    "removed fastened",
	LockMissing:        "lock missing",
	LockedLoose:        "locked loose",
	SpentUsedAgain:     "spent used again",
	WrongLubricant:     "wrong lubricant",
	NothingToLoosen:    "nothing to loosen",
	SeatNotOn:          "seat not on",
	Covered:            "covered",
	MarkNotMade:        "mark not made",
	MarkWiped:          "mark wiped",
	MarkCovered:        "mark covered",
	RemovedUnder:       "removed under",
	RemovedHeld:        "removed held",
	NotOn:              "not on",
	TrialNeverUndone:   "trial never undone",
	TrialAsFinal:       "trial as final",
	NeverRefitted:      "never refitted",
	FittedTwice:        "fitted twice",
	MoreThanKit:        "more than kit",
	NeverFitted:        "never fitted",
	NeverJoins:         "never joins",
	ToolLeftOn:         "tool left on",
	ToolElsewhere:      "tool elsewhere",
	FilledClosed:       "filled closed",
	OpenedWet:          "opened wet",
	OutOfOrder:         "out of order",
	TooLate:            "too late",
	TooEarly:           "too early",
	UsedBeforeRead:     "used before read",
	ReadSometimes:      "read sometimes",
	SettingDisturbed:   "setting disturbed",
	WaitsForLater:      "waits for later",
	BranchCannotBeDone: "branch cannot be done",
	NotCleaned:         "not cleaned",
	Dirtied:            "dirtied",
	ClosedTooLate:      "closed too late",
	ClampedTooLate:     "clamped too late",
	NeverClosed:        "never closed",
	WaitTooShort:       "wait too short",
	RunUncured:         "run uncured",
	SealBroken:         "seal broken",
	SealOver:           "seal over",
	SealTooHot:         "seal too hot",
	SqueezeOutLeft:     "squeeze out left",
	CoveredUnaccepted:  "covered unaccepted",
	CoveredUnheld:      "covered unheld",
	RunUnheld:          "run unheld",
	IrreversibleUnheld: "irreversible unheld",
	TorqueUnchecked:    "torque unchecked",
	HoldChecksNothing:  "hold checks nothing",
	HoldChecksLater:    "hold checks later",
	HoldChecksAbsent:   "hold checks absent",
	HoldAfterItsStep:   "hold after its step",
	RunLoose:           "run loose",
	RunUnlocked:        "run unlocked",
}
