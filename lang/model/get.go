package model

import "fettle/calc"

// The getters below read an attribute that may not be written: they give the
// zero value then. place picks from a value by place; "" takes the first.

// Get is the attribute's value at a place, or nil.
func (n *Node) Get(name, place string) Value {
	a := n.Attr(name)
	if a == nil {
		return nil
	}
	return AtPlace(a.Value, place)
}

// AtPlace is the value for a place where v is by place, and v where it is not.
func AtPlace(v Value, place string) Value {
	by, ok := v.(ByPlace)
	if !ok {
		return v
	}
	for _, p := range by {
		if p.Place == place || place == "" {
			return p.Value
		}
	}
	return nil
}

// Text is an attribute of words or prose, or nil.
func (n *Node) Text(name string) *Text {
	t, _ := n.Get(name, "").(*Text)
	return t
}

// Plain is the plain text of an attribute of words, or "".
func (n *Node) Plain(name string) string {
	switch v := n.Get(name, "").(type) {
	case *Text:
		return v.Plain()
	case Word:
		return string(v)
	case Exact:
		return string(v)
	case Day:
		return string(v)
	}
	return ""
}

// Title is what people call the node: its title, its name, or its label.
func (n *Node) Title() string {
	for _, name := range [...]string{"title", "name"} {
		if s := n.Plain(name); s != "" {
			return s
		}
	}
	return n.ID
}

// Word is an attribute of words to pick from: what is written, or the default.
func (n *Node) Word(name string) string {
	if w := n.Plain(name); w != "" {
		return w
	}
	if d := n.Def.Attr(name); d != nil {
		return d.Default
	}
	return ""
}

// Flag is an attribute that is true or false: what is written, or the default.
func (n *Node) Flag(name string) bool {
	if f, ok := n.Get(name, "").(Flag); ok {
		return bool(f)
	}
	d := n.Def.Attr(name)
	return d != nil && d.Default == "true"
}

// Whole is a whole number at a place, or def.
func (n *Node) Whole(name, place string, def int) int {
	if w, ok := n.Get(name, place).(Whole); ok {
		return int(w)
	}
	return def
}

// Formula is a quantity, limits or condition at a place, or nil. Of a list, such
// as the stages of a torque, it is the first.
func (n *Node) Formula(name, place string) *Formula {
	switch v := n.Get(name, place).(type) {
	case *Formula:
		return v
	case List:
		if len(v) > 0 {
			f, _ := v[0].(*Formula)
			return f
		}
	}
	return nil
}

// Formulas are all the values of an attribute that may be a list, at a place.
func (n *Node) Formulas(name, place string) []*Formula {
	switch v := n.Get(name, place).(type) {
	case *Formula:
		return []*Formula{v}
	case List:
		var all []*Formula
		for _, item := range v {
			if f, ok := item.(*Formula); ok {
				all = append(all, f)
			}
		}
		return all
	}
	return nil
}

// Quantity is a value that rests on no reading; of limits it is the target. nil
// where there is none.
func (n *Node) Quantity(name, place string) *calc.Quantity {
	return n.Formula(name, place).Quantity()
}

// Limits are limits that rest on no reading; a lone quantity is both ends. ok is
// false where there are none.
func (n *Node) Limits(name, place string) (calc.Limits, bool) {
	return n.Formula(name, place).Limits()
}

// Quantity is the constant that f is, the target of constant limits, or nil.
func (f *Formula) Quantity() *calc.Quantity {
	if f == nil {
		return nil
	}
	switch v := f.Const.(type) {
	case calc.Quantity:
		return &v
	case calc.Limits:
		return v.Target
	}
	return nil
}

// Limits are the constant limits that f is; a lone quantity is both ends.
func (f *Formula) Limits() (calc.Limits, bool) {
	if f == nil {
		return calc.Limits{}, false
	}
	switch v := f.Const.(type) {
	case calc.Quantity:
		return calc.Limits{Low: &v, High: &v, Target: &v}, true
	case calc.Limits:
		return v, true
	}
	return calc.Limits{}, false
}

// Refs lists the addresses of an attribute at a place.
func (n *Node) Refs(name, place string) []Ref {
	r, _ := n.Get(name, place).(Refs)
	return r
}

// AllRefs lists the addresses of an attribute over all places.
func (n *Node) AllRefs(name string) []Ref {
	a := n.Attr(name)
	if a == nil {
		return nil
	}
	by, ok := a.Value.(ByPlace)
	if !ok {
		r, _ := a.Value.(Refs)
		return r
	}
	var all []Ref
	for _, p := range by {
		if r, ok := p.Value.(Refs); ok {
			all = append(all, r...)
		}
	}
	return all
}

// Ref is the one thing that an attribute names, or nil.
func (n *Node) Ref(name string) *Node {
	if r := n.AllRefs(name); len(r) > 0 {
		return r[0].To
	}
	return nil
}

// Names lists the labels of an attribute.
func (n *Node) Names(name string) []string {
	var all []string
	switch v := n.Get(name, "").(type) {
	case Names:
		for _, s := range v {
			all = append(all, s.Text)
		}
	}
	return all
}

// Places are the names of the places that the node is at, in working order, or nil.
func (n *Node) Places() []string {
	if p := n.Ref("at_each"); p != nil {
		return p.Names("names")
	}
	return nil
}

// EachRef calls visit for every address that the attribute holds, in order:
// in lists, tables, values by place, formulas and texts.
func EachRef(v Value, visit func(*Ref)) {
	switch v := v.(type) {
	case Refs:
		for i := range v {
			visit(&v[i])
		}
	case *Formula:
		if v != nil {
			for i := range v.Refs {
				visit(&v.Refs[i])
			}
		}
	case *Text:
		for _, f := range v.Values {
			EachRef(f, visit)
		}
	case List:
		for _, item := range v {
			EachRef(item, visit)
		}
	case ByPlace:
		for _, p := range v {
			EachRef(p.Value, visit)
		}
	case *Table:
		for i := range v.Pairs {
			visit(&v.Pairs[i].Key)
			EachRef(v.Pairs[i].Value, visit)
		}
	}
}
