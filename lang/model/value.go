package model

import (
	"strings"

	"fettle/calc"
	"fettle/lang/source"
	"fettle/lang/syntax"
)

// Value is what an attribute is set to: *Text, Word, Flag, Whole, Day, Exact,
// *Formula, Refs, Names, Paths, Times, *Table, List or ByPlace.
type Value interface{ value() }

// Text is words or CommonMark with the values that stand in it.
type Text struct {
	Source *syntax.String // the literal, which maps text to its place in the source
	Values []*Formula     // one for each ${…}, in order; nil where it could not be read
}

// Word is one of the words that the attribute knows.
type Word string

// Flag is true or false.
type Flag bool

// Whole is a whole number.
type Whole int

// Day is a date as written, year first.
type Day string

// Exact is a designation, compared as written.
type Exact string

// Formula is a quantity, limits or a condition: a literal, or an expression
// that rests on readings, options or limits.
type Formula struct {
	Expr    calc.Expr
	Const   calc.Value    // its value where it rests on nothing; nil otherwise
	Literal *calc.Literal // what was written, where it is one literal
	Refs    []Ref         // everything it names, in the order it stands
}

// Ref is one address, or a word that stands instead of one.
type Ref struct {
	To    *Node  // nil for a Word
	Sub   string // "face", "port", "feature" or "mark" of a part, or an attribute of an entry
	Name  string // the name of that face, port, feature or mark; "total" … of a pack
	Place string // the place in brackets, "" for this one or all
	Word  string
	Start int32 // where it stands in its file
	End   int32
}

// Refs is a list of addresses.
type Refs []Ref

// Name is one label that a block declares or picks.
type Name struct {
	Text string
	Span source.Span
}

// Names is a list of labels.
type Names []Name

// Paths is a list of files or folders, as written.
type Paths []Name

// Time is a time at a temperature, nil for none stated.
type Time struct {
	For, At *calc.Quantity
}

// Times is one time, or one for each temperature.
type Times []Time

// Pair is one entry of a table.
type Pair struct {
	Key   Ref // To is nil and Word holds the key where keys are words
	Value Value
	Span  source.Span // of the value
}

// Table is a map with addresses or words as keys, in source order.
type Table struct{ Pairs []Pair }

// List is several values of one kind, such as the stages of a torque.
type List []Value

// ByPlace is a value for each place, in source order.
type ByPlace []struct {
	Place string
	Value Value
	Span  source.Span // of the place's name
}

func (*Text) value()    {}
func (Word) value()     {}
func (Flag) value()     {}
func (Whole) value()    {}
func (Day) value()      {}
func (Exact) value()    {}
func (*Formula) value() {}
func (Refs) value()     {}
func (Names) value()    {}
func (Paths) value()    {}
func (Times) value()    {}
func (*Table) value()   {}
func (List) value()     {}
func (ByPlace) value()  {}

// Plain is the text with each value as «…» in its place; for comparing and
// searching, not for printing.
func (t *Text) Plain() string {
	if s, ok := t.Source.Literal(); ok {
		return s
	}
	var b strings.Builder
	for _, p := range t.Source.Parts() {
		if p.X != nil {
			b.WriteString("«…»")
		} else {
			b.WriteString(p.Text)
		}
	}
	return b.String()
}

// Span is where r stands in the file of the node that holds it.
func (r Ref) Span(in *Node) source.Span {
	return source.Span{File: in.File, Start: r.Start, End: r.End}
}

// Address is the full address of what r names.
func (r Ref) Address() string {
	if r.To == nil {
		return r.Word
	}
	a := r.To.Address
	if r.Sub != "" {
		a += "." + r.Sub
	}
	if r.Name != "" {
		a += "." + r.Name
	}
	if r.Place != "" {
		a += `["` + r.Place + `"]`
	}
	return a
}
