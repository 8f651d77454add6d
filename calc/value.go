package calc

import "math/big"

// Shape says what sort of thing a value is.
type Shape uint8

// Shapes of value.
const (
	NumberShape Shape = iota // a Quantity
	LimitsShape              // Limits: a lowest and a highest allowed value
	TruthShape               // Truth
	WordShape                // Word: the choice of an option, a grade's name
	ListShape                // Numbers: several quantities of one dimension
)

func (s Shape) String() string {
	return [...]string{"a number", "limits", "a yes or no", "a word", "a list of numbers"}[s]
}

// Type is the shape of a value and, but for words and truths, its dimension.
// Types are comparable with ==; use Fits to ask whether a value may stand somewhere.
type Type struct {
	Shape Shape
	Dim   Dim
}

// The types that carry no dimension.
var (
	TruthType = Type{Shape: TruthShape}
	WordType  = Type{Shape: WordShape}
)

// NumberOf is the type of one quantity of dimension d.
func NumberOf(d Dim) Type { return Type{NumberShape, d} }

// LimitsOf is the type of limits of dimension d.
func LimitsOf(d Dim) Type { return Type{LimitsShape, d} }

// ListOf is the type of several quantities of dimension d.
func ListOf(d Dim) Type { return Type{ListShape, d} }

// Fits reports whether a value of type u may stand where t is wanted.
func (t Type) Fits(u Type) bool { return t.Shape == u.Shape && t.Dim.Fits(u.Dim) }

// String names the type in an author's words: "a length", "limits of a torque".
func (t Type) String() string {
	switch t.Shape {
	case NumberShape:
		return t.Dim.String()
	case LimitsShape:
		return "limits of " + t.Dim.String()
	case ListShape:
		return "a list, each " + t.Dim.String()
	}
	return t.Shape.String()
}

// Value is what an expression comes to: a Quantity, Limits, Truth, Word or
// Numbers. No other type implements it, and values are immutable.
type Value interface {
	Type() Type
	value()
}

// Limits are the lowest and the highest allowed value, both allowed themselves.
// A nil end is unbounded. Target is what to aim for, nil where none is given.
type Limits struct {
	Low, High, Target *Quantity
}

// Truth is the answer to a question.
type Truth bool

// Word is a choice of an option, or a name.
type Word string

// Numbers are several quantities of one dimension, such as a reading at each place.
type Numbers []Quantity

// Type is that of one number of q's dimension.
func (q Quantity) Type() Type { return NumberOf(q.Dim()) }

// Type is that of the ends given; of a plain number when neither is.
func (l Limits) Type() Type {
	switch {
	case l.Low != nil:
		return LimitsOf(l.Low.Dim())
	case l.High != nil:
		return LimitsOf(l.High.Dim())
	}
	return LimitsOf(Plain)
}

// Type is TruthType.
func (Truth) Type() Type { return TruthType }

// Type is WordType.
func (Word) Type() Type { return WordType }

// Type is that of the first number; of a list of plain numbers when there is none.
func (n Numbers) Type() Type {
	if len(n) == 0 {
		return ListOf(Plain)
	}
	return ListOf(n[0].Dim())
}

func (Quantity) value() {}
func (Limits) value()   {}
func (Truth) value()    {}
func (Word) value()     {}
func (Numbers) value()  {}

// FromBase is the quantity whose value in base units is b, such as the end of a
// range, in u.
func FromBase(b *big.Rat, u *Unit, decimals int) Quantity {
	num := new(big.Rat).Set(b)
	if u.Offset != nil {
		num.Sub(num, u.Offset)
	}
	return NewQuantity(num.Quo(num, u.Factor), u, decimals)
}

// Contain reports whether q, of a fitting dimension, is allowed. Ends are compared exactly.
func (l Limits) Contain(q Quantity) bool {
	return (l.Low == nil || l.Low.Cmp(q) <= 0) && (l.High == nil || q.Cmp(*l.High) <= 0)
}
