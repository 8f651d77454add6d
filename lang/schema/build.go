package schema

import "fettle/calc"

// The functions below write one row of a table each; they keep the tables readable.

func row(name string, t Type, role Role, doc string) Attr {
	return Attr{Name: name, Type: t, Role: role, Doc: doc}
}

// TextAttr is words on one line.
func TextAttr(name string, role Role, doc string) Attr { return row(name, Text, role, doc) }

// ProseAttr is CommonMark.
func ProseAttr(name string, role Role, doc string) Attr { return row(name, Prose, role, doc) }

// BoolAttr is true or false.
func BoolAttr(name string, role Role, doc string) Attr { return row(name, Bool, role, doc) }

// CountAttr is a whole number.
func CountAttr(name string, role Role, doc string) Attr { return row(name, Count, role, doc) }

// DateAttr is a day.
func DateAttr(name string, role Role, doc string) Attr { return row(name, Date, role, doc) }

// DesignationAttr is compared as written.
func DesignationAttr(name string, role Role, doc string) Attr {
	return row(name, Designation, role, doc)
}

// NamesAttr declares or picks labels.
func NamesAttr(name string, role Role, doc string) Attr { return row(name, Names, role, doc) }

// PathAttr is a file or folder.
func PathAttr(name string, role Role, doc string) Attr { return row(name, Path, role, doc) }

// TimeAtAttr is a time at a temperature.
func TimeAtAttr(name string, role Role, doc string) Attr { return row(name, TimeAt, role, doc) }

// TableAttr is a map; its keys are addresses of values ("value"), names of options ("option"), or words where to is empty.
func TableAttr(name string, role Role, doc string, to ...string) Attr {
	a := row(name, Table, role, doc)
	a.To = to
	return a
}

// ConditionAttr is true or false by readings or options.
func ConditionAttr(name string, role Role, doc string) Attr {
	return row(name, Condition, role, doc)
}

// WordAttr is one of words.
func WordAttr(name string, role Role, doc string, words ...string) Attr {
	a := row(name, Word, role, doc)
	a.Words = words
	return a
}

// RefAttr is one address or a list of them, to blocks or things of the given names.
func RefAttr(name string, role Role, doc string, to ...string) Attr {
	a := row(name, Reference, role, doc)
	a.To = to
	return a
}

// AmountAttr is a quantity of the given dimension.
func AmountAttr(name string, role Role, doc string, dim calc.Dim) Attr {
	a := row(name, Amount, role, doc)
	a.Dim, a.HasDim = dim, true
	return a
}

// AnyAmountAttr is a quantity whose dimension follows from its use.
func AnyAmountAttr(name string, role Role, doc string) Attr { return row(name, Amount, role, doc) }

// SettingAttr is a quantity with tolerance of the given dimension.
func SettingAttr(name string, role Role, doc string, dim calc.Dim) Attr {
	a := row(name, Setting, role, doc)
	a.Dim, a.HasDim = dim, true
	return a
}

// LimitsAttr is limits of the given dimension.
func LimitsAttr(name string, role Role, doc string, dim calc.Dim) Attr {
	a := row(name, Limits, role, doc)
	a.Dim, a.HasDim = dim, true
	return a
}

// AnyLimitsAttr is limits whose dimension follows from their use.
func AnyLimitsAttr(name string, role Role, doc string) Attr { return row(name, Limits, role, doc) }

// Must marks the attribute as required.
func (a Attr) Must() Attr { a.Required = true; return a }

// Or adds words that may stand instead of an address or a quantity.
func (a Attr) Or(words ...string) Attr { a.Words = words; return a }

// By states the default.
func (a Attr) By(def string) Attr { a.Default = def; return a }

// Difference reads a temperature as a difference.
func (a Attr) Difference() Attr { a.Diff = true; return a }

// WithUnit refuses a number without a unit where the dimension is open.
func (a Attr) WithUnit() Attr { a.Measured = true; return a }
