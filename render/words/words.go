// Package words holds every sentence and label that fettle itself prints in a
// checklist, so that all formats say the same thing in the same way. It is for
// package render and the formats. An author's words are never in here.
//
// Invariant: plain, short, active; one instruction a sentence.
package words

import (
	"strconv"
	"strings"
)

// Cautions stand in the front matter of every checklist: the usual ones, and
// the deferral to local codes and licensed practice.
var Cautions = []string{
	"This checklist is an aid to a competent person. It approves nothing for service; whoever puts the machine into service answers for that.",
	"Local codes, and the law where you work, go before this checklist. Work that they keep for a licensed person is done by that person.",
	"Read a whole procedure before you start it. Stop when something does not fit, does not agree or is not clear, and ask the supplier.",
	"Wear what each step asks for. Keep pressure, electricity, springs, hot parts and hung loads locked, discharged or held before you reach in.",
	"Use the values of this revision only. The checks behind them are screens; they take no risk away from you and change no value of the supplier's.",
}

// Headings and labels.
const (
	ChecklistWord  = "Assembly checklist"
	ToolWord       = "Tool"
	SupplyWord     = "Supply"
	WhatWord       = "What"
	TightenInOrder = "Tighten in this order"
	TableCaption   = "Find your reading, and take the pack beside it."
	TimesNote      = "Times are those of the steps. Waiting is time in which the machine stands."
	Contents       = "Order of work"
	Safety         = "Read this first"
	ToolsHead      = "Tools"
	SuppliesHead   = "Supplies"
	ProtectionHead = "Wear"
	PartsHead      = "Parts"
	SizesHead      = "Sizes in the kit"
	HistoryHead    = "Revisions"
	RecordHead     = "Record of readings"
	SignOffHead    = "Sign-off"
	ExamplesHead   = "Worked example"
	ProcedureWord  = "Procedure"
	StepWord       = "Step"
	Done           = "Done"
	Initials       = "Initials"
	Signature      = "Signature"
	DateWord       = "Date"
	NameWord       = "Name"
	SerialWord     = "Serial number of this build"
	BuilderWord    = "Builder"
	ValueWord      = "Value"
	LimitWord      = "Limit"
	RevisionWord   = "Revision"
	IssuedWord     = "Issued"
	DigestWord     = "Digest"
	SupplierWord   = "Supplier"
	ContactWord    = "Questions to"
	WorkshopWord   = "Workshop at"
	ReasonWord     = "Reason"
	NumberWord     = "Number"
	NameOfPart     = "Part"
	QuantityWord   = "Quantity"
	HaveWord       = "Have it"
	RangeWord      = "Range"
	ReadsToWord    = "Reads to"
	KindWord       = "Kind"
	AmountWord     = "How much"
	ClocksWord     = "Times"
	SizeWord       = "Size"
	MarkWord       = "Marked"
	HeldWord       = "In the kit"
	TakeWord       = "Take"
	WorkWord       = "Work"
	WaitingWord    = "Waiting"
	HelperWord     = "Helper at"
	HoldsWord      = "Holds"
	TotalWord      = "Total"
	WhyWord        = "Why"
	Likely         = "Likely"
	Accept         = "Must be"
	Agree          = "Readings agree within"
	ResultWord     = "Result"
	LeavesWord     = "Leaves"
	MakesWord      = "Makes"
	GapWord        = "Gap"
	BaseWord       = "Built up on"
	PiecesWord     = "Pieces"
	PackTotal      = "Pack total"
	AllowedWord    = "Allowed"
	CriticalWord   = "Critical"
	FinalWord      = "Cannot be undone"
	StopWord       = "Stop"
	ReleasedBy     = "Released by"
	Otherwise      = "If it is outside"
	IfBelow        = "If it is below"
	IfAbove        = "If it is above"
	OnlyIf         = "Only if"
	FormulaWord    = "Formula"
	InsideWord     = "inside its limit"
	OutsideWord    = "outside its limit: stop"
	GivenWord      = "You read"
	GivesWord      = "You get"
	NoPack         = "No pack fits: stop"
	SkipLink       = "Skip to the first procedure"
	OwnPart        = "your own"
	NoAnswer       = "Do not go on until it is right."
	ReadAgain      = "Then read again."
	ThenStop       = "Then stop and ask the supplier."
	HoldText       = "Stop here. Nothing after this step starts before it is released."
	RecordNote     = "Copy each reading here, or fill it in here and keep the sheet with the machine."
	SignOffNote    = "Sign only for what you did or saw yourself. A signature here releases nothing for service."
	IncompleteNote = "Parts of this manual could not be read. Do not build from this sheet."
	NoPicture      = "Picture missing"
)

// Signal is a signal word as it is printed.
func Signal(word string) string {
	switch word {
	case "danger":
		return "DANGER"
	case "warning":
		return "WARNING"
	case "caution":
		return "CAUTION"
	}
	return "NOTICE"
}

// People says how many hands a step takes.
func People(n int) string { return strconv.Itoa(n) + " people" }

// ReadingNumber labels one of several readings.
func ReadingNumber(i int) string { return "Reading " + strconv.Itoa(i) }

// Taken says which of several readings counts.
func Taken(word string) string {
	switch word {
	case "mean":
		return "Mean"
	case "largest":
		return "Largest"
	case "smallest":
		return "Smallest"
	}
	return ResultWord
}

// Preferred says which pack is best.
func Preferred(word string) string {
	if word == "nearest" {
		return "Of all packs that fit, take the one that comes nearest the target."
	}
	return "Of all packs that fit, take the one with the fewest pieces; of these, the one nearest the target."
}

// NotForThis says why a step or procedure is left out.
func NotForThis(chosen string) string { return "Not for this build (" + chosen + ")." }

// Guards says what a hold guards.
func Guards(number, title string) string {
	if title == "" {
		return "It guards step " + number + "."
	}
	return "It guards step " + number + ", " + title + "."
}

// GoTo says where to go on.
func GoTo(number, title string) string { return "Then go back to step " + number + ", " + title + "." }

// Unsaid says that times are missing.
func Unsaid(n int) string {
	if n == 1 {
		return "1 step states no time"
	}
	return strconv.Itoa(n) + " steps state no time"
}

// ReadingWord labels a reading that is taken once.
const ReadingWord = "Reading"

// Spot names a spot that has no name.
func Spot(i int) string { return "Spot " + strconv.Itoa(i) }

// StepNamed points to a step.
func StepNamed(number, title string) string { return "step " + number + " (" + title + ")" }

// AsChosen says where a pack was chosen.
func AsChosen(number string) string { return "as chosen in step " + number + ":" }

// AfterStep is a time since other steps.
func AfterStep(time, steps string) string {
	if steps == "" {
		return time
	}
	return time + " after " + steps
}

// Serves says which readings the sizes in the kit serve.
func Serves(whole string, gaps []string) string {
	if gaps == nil {
		return "The kit serves all of " + whole + "."
	}
	return "The kit serves " + whole + ", but not " + strings.Join(gaps, ", nor ") + "."
}

// Needs says what a procedure comes after.
func Needs(number, title string, after []string) string {
	if len(after) == 0 {
		return number + " " + title + " needs none before it."
	}
	return number + " " + title + " comes after " + strings.Join(after, ", ") + "."
}

// SequenceHead heads the picture of the procedures and what they need.
const SequenceHead = "What comes after what"

// AsAt says that a step is done as at another place.
func AsAt(place string) string { return "As at: " + place + "." }

// TightenTo labels a torque.
const TightenTo = "Tighten to"

// NoPieces is a pack of nothing.
const NoPieces = "no pieces"

// EitherPack explains the lines of a table of packs.
const EitherPack = "On the line between two rows, either pack is good."

// Why a picture is not there.
const (
	OutsideFolder   = "Picture left out: it lies outside the manual's folder"
	PictureTooLarge = "Picture left out: it is larger than 2 MB"
	NotAPicture     = "Picture left out: it is no SVG, PNG, JPEG, GIF or WebP"
)

// MadeAt says that a picture is older than the manual.
func MadeAt(revision string) string { return "Made at revision " + revision + "." }

// At heads the steps at one place.
func At(place string) string { return "At: " + place }

// InPlace says how many pieces are on already.
func InPlace(n int) string { return strconv.Itoa(n) + " in place already" }

// AimAt is the target of a limit.
func AimAt(target string) string { return "aim at " + target }

// Stage numbers a stage of tightening.
func Stage(i int) string { return "Stage " + strconv.Itoa(i) }

// FollowTurns explains the picture of a pattern.
const FollowTurns = "Start at the double ring and follow the numbers."

// Positions says how the fasteners of a layout are numbered.
func Positions(layout string) string {
	if layout == "circle" || layout == "" {
		return "Numbered clockwise, 1 at the top."
	}
	return "Numbered along the rows, 1 at the top left."
}

// Outside heads what to do when a value is outside, below or above its limits,
// when no pack fits, or when what is seen is not as it must be.
func Outside(when string, pack, seen bool) string {
	switch {
	case when == "below":
		return IfBelow
	case when == "above":
		return IfAbove
	case pack:
		return "If no pack fits"
	case seen:
		return "If it is not so"
	}
	return Otherwise
}

// CuredAfter says how long a supply cures.
func CuredAfter(time string) string { return "cured after " + time }

// InStep says where a reading was taken.
func InStep(name, number string) string { return name + ", step " + number }
