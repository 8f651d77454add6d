// Package schema defines how blocks and attributes are described. The
// descriptions are data: decoding, completion, hover, explain and the reference
// page all read the same tables.
//
// It is for packages entry and kind, which hold the tables, and for those that
// walk them. It knows nothing of any one block.
package schema

import "fettle/calc"

// Type says how an attribute's value is written and read.
type Type uint8

// The types of attributes.
const (
	Text        Type = iota + 1 // words on one line; may hold ${…}
	Prose                       // CommonMark; may hold ${…}
	Word                        // one of Attr.Words
	Bool                        // true or false
	Count                       // a whole number
	Date                        // "2026-03-14"
	Designation                 // compared exactly as written: a thread, a class
	Amount                      // a quantity, or an expression that gives one
	Setting                     // a quantity with its tolerance, or limits
	Limits                      // limits, or an expression that gives them
	Condition                   // an expression that is true or false
	Reference                   // an address; Attr.Words lists words allowed instead
	Names                       // labels that this block declares or picks
	Path                        // a file or folder inside the root
	TimeAt                      // a time at a temperature: "24 h at 20 °C"
	Table                       // { key = value } with addresses or words as keys
)

// Role says what an attribute is for. Renderers and rules read roles and never ask which kind of step they have.
type Role uint8

// The roles of attributes.
const (
	NoRole      Role = iota
	Title            // what to do, in one line
	Instruction      // how to do it
	Reason           // why
	Touches          // what the step works on
	Subject          // the part, fastening or tool that the step is about
	Tool             // tools in use
	Supply           // supplies in use
	Protection       // PPE
	Crew             // people
	Duration         // how long it takes
	Picture          // figures
	Order            // what must have been done before
	Clock            // longest and shortest times
	Choice           // under which option or reading
	Where            // places
	Guide            // marks to go by
	Value            // a number to set or to reach
	Judgement        // limits or a criterion that decide
	Expected         // what is likely
	Remedy           // what to do when it is outside
	Method           // how a reading or a pack is made
	Release          // who lets the work go on
	Renamed          // former labels
	Record           // whether it goes into the record
	State            // what is true of it from then on
	Identity         // names and numbers of an entry
	Property         // anything else that an entry is
)

// Attr describes one attribute.
type Attr struct {
	Name     string
	Type     Type
	Dim      calc.Dim // wanted dimension, where HasDim
	HasDim   bool
	Diff     bool     // a temperature here is a difference
	Measured bool     // of any dimension, but never a bare number
	Words    []string // for Word; for Reference and Setting: words allowed instead
	To       []string // for Reference: block names, "step", "pack", "face", "port", "feature" or "mark"; for Table: see TableAttr
	Role     Role
	Required bool
	Default  string // shown in the reference; "" for none
	Doc      string // one sentence in an author's terms
}

// Block describes one block.
type Block struct {
	Name    string
	Label   string // what the label is: "id", "a quantity", or "" for a block without one
	Doc     string // one or two sentences in an author's terms
	Example string // a fragment in the dialect
	Attrs   []Attr
	Blocks  []*Block // nested blocks
	Steps   bool     // may hold steps
	Once    bool     // at most one in its parent or manual
	Open    bool     // attributes beyond Attrs are looked up elsewhere (house rules)
}

// Attr finds an attribute by name, or nil.
func (b *Block) Attr(name string) *Attr {
	for i := range b.Attrs {
		if b.Attrs[i].Name == name {
			return &b.Attrs[i]
		}
	}
	return nil
}

// Index finds an attribute's place in Attrs, or -1.
func (b *Block) Index(name string) int {
	for i := range b.Attrs {
		if b.Attrs[i].Name == name {
			return i
		}
	}
	return -1
}

// Block finds a nested block by name, or nil.
func (b *Block) Block(name string) *Block {
	for _, n := range b.Blocks {
		if n.Name == name {
			return n
		}
	}
	return nil
}
