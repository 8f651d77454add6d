package render

import "fettle/calc"

// Document is one manual, for one choice of options and what is known of one
// build. Texts are plain unless they are of type Line or []Block.
type Document struct {
	ID         string         `json:"id"`
	Title      string         `json:"title"`
	Units      string         `json:"units"` // shown first: "metric" or "inch"
	Supplier   string         `json:"supplier,omitempty"`
	Contact    string         `json:"contact,omitempty"`
	Revision   string         `json:"revision"`
	Issued     string         `json:"issued,omitempty"`     // "2026-03-14"
	Digest     string         `json:"digest,omitempty"`     // of the revision, as the caller gives it
	Incomplete bool           `json:"incomplete,omitempty"` // something of the manual could not be read
	History    []PastRevision `json:"history,omitempty"`
	Options    []Option       `json:"options,omitempty"`
	Cautions   []string       `json:"cautions"`           // the usual ones and the deferral to local codes and licensed practice
	Workshop   *Amount        `json:"workshop,omitempty"` // its temperature
	Tools      []Tool         `json:"tools,omitempty"`
	Supplies   []Supply       `json:"supplies,omitempty"`
	Protection []Item         `json:"protection,omitempty"` // PPE
	Parts      []Part         `json:"parts,omitempty"`
	Contents   []Content      `json:"contents"` // the procedures in their order
	Totals     Times          `json:"totals"`
	Procedures []Procedure    `json:"procedures"`
	Record     []RecordLine   `json:"record,omitempty"` // what goes into the build record
	SignOff    []string       `json:"signOff"`          // who signs at the end
	Live       *Live          `json:"-"`                // for a page that works values out
}

// PastRevision is an earlier revision.
type PastRevision struct {
	Revision string `json:"revision"`
	Issued   string `json:"issued"`
	Reason   Line   `json:"reason"`
}

// Option is a choice that the document was made for.
type Option struct {
	ID      string   `json:"id"`
	Name    string   `json:"name"`
	Chosen  string   `json:"chosen"`
	Choices []string `json:"choices"`
	Default bool     `json:"default,omitempty"` // nobody chose; it is what the manual says
}

// Amount is a quantity or limits: for a reader in both systems of units, and
// for a machine.
type Amount struct {
	First string            `json:"first"`           // "24 N·m"
	Other string            `json:"other,omitempty"` // "17.7 lb·ft"
	Exact calc.CodedLiteral `json:"exact"`
}

// String is both systems, the other in brackets.
func (a Amount) String() string { return calc.Shown{First: a.First, Other: a.Other}.String() }

// Item is a thing by its name.
type Item struct {
	Address string `json:"address"`
	Name    string `json:"name"`
	Note    string `json:"note,omitempty"` // a standard, a size
}

// Tool is a tool that the job needs.
type Tool struct {
	Item
	Quantity   int     `json:"quantity"`
	Range      *Amount `json:"range,omitempty"`
	Resolution *Amount `json:"resolution,omitempty"`
	Steps      []Ref   `json:"steps"` // where it is used, each step once
}

// Supply is what is used up.
type Supply struct {
	Item
	Kind       string    `json:"kind"`
	Amount     string    `json:"amount,omitempty"`
	Clocks     []Clock   `json:"clocks,omitempty"`
	Protection []Item    `json:"protection,omitempty"`
	Messages   []Message `json:"messages,omitempty"`
	Steps      []Ref     `json:"steps"`
}

// Clock is a time that a supply keeps.
type Clock struct {
	Label string  `json:"label"`
	For   Amount  `json:"for"`
	At    *Amount `json:"at,omitempty"` // temperature
}

// Part is a line of the parts list.
type Part struct {
	Item
	Number   string   `json:"number,omitempty"`
	Quantity int      `json:"quantity"`       // of all places together
	Each     []string `json:"each,omitempty"` // the places that share it
	Supplied bool     `json:"supplied"`       // comes with the kit
	InPlace  int      `json:"inPlace,omitempty"`
	Sizes    []Size   `json:"sizes,omitempty"`
}

// Size is one grade of a graded part.
type Size struct {
	Label  string  `json:"label"`
	Is     *Amount `json:"is,omitempty"` // where the label is a name
	Held   int     `json:"held"`         // pieces in the kit
	Number string  `json:"number,omitempty"`
	Mark   string  `json:"mark,omitempty"`
}

// Ref points to a step or procedure of this document.
type Ref struct {
	ID      string `json:"id"`      // the ID of what it points to
	Address string `json:"address"` // its address in the manual
	Number  string `json:"number"`
	Title   string `json:"title,omitempty"`
	Place   string `json:"place,omitempty"`
}

// Content is a line of the contents.
type Content struct {
	Ref
	Steps   int    `json:"steps"`
	Times   Times  `json:"times"`
	Helpers []Ref  `json:"helpers,omitempty"` // steps that need more than one person
	Holds   []Ref  `json:"holds,omitempty"`
	Left    string `json:"left,omitempty"` // why it is not for this build
}

// Times are sums of what the steps state.
type Times struct {
	Work    string `json:"work,omitempty"`    // "2 h 15 min"
	Waiting string `json:"waiting,omitempty"` // standing times
	Seconds int64  `json:"seconds"`           // of Work
	Waits   int64  `json:"waits"`             // seconds of Waiting
	Unsaid  int    `json:"unsaid,omitempty"`  // steps that state no time
}

// RecordLine is a line of the build record, to be filled in.
type RecordLine struct {
	Ref
	What   string  `json:"what"` // a place or spot
	Limit  *Limit  `json:"limit,omitempty"`
	Likely *Amount `json:"likely,omitempty"` // where there is no limit
	Value  string  `json:"value,omitempty"`
	Unit   string  `json:"unit,omitempty"`
	Key    string  `json:"key,omitempty"`
	Signer string  `json:"signer,omitempty"` // of a hold: who releases it
}
