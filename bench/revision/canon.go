package revision

import (
	"encoding/json"
	"slices"
	"strconv"
	"strings"

	"fettle/calc"
	"fettle/lang/model"
	"fettle/lang/schema"
)

// Canon writes what attributes say, one text for one meaning: two attributes say
// the same where their texts are equal.
type Canon struct {
	Manual *model.Manual
	// Address names what a reference leads to; nil takes its address. diff gives
	// both sides the same name for things that only changed their label.
	Address func(*model.Node) string
}

// Value is the text of an attribute's value.
func (c *Canon) Value(v model.Value) string {
	var b strings.Builder
	c.value(&b, v)
	return b.String()
}

// Attrs are the attributes of a node that say something, in the order of the
// definition: what is written as the default is as good as left out.
func Attrs(n *model.Node) []*model.Attr {
	var all []*model.Attr
	for i := range n.Attrs {
		if a := &n.Attrs[i]; !isDefault(a) {
			all = append(all, a)
		}
	}
	slices.SortStableFunc(all, func(a, b *model.Attr) int {
		if p := place(n.Def, a) - place(n.Def, b); p != 0 {
			return p
		}
		return strings.Compare(a.Def.Name, b.Def.Name)
	})
	return all
}

// place orders attributes; those that a block looks up elsewhere come last, by name.
func place(def *schema.Block, a *model.Attr) int {
	if i := def.Index(a.Def.Name); i >= 0 {
		return i
	}
	return len(def.Attrs)
}

func isDefault(a *model.Attr) bool {
	if a.Def.Default == "" {
		return a.Value == model.Flag(false)
	}
	switch v := a.Value.(type) {
	case model.Word:
		return string(v) == a.Def.Default
	case model.Flag:
		return strconv.FormatBool(bool(v)) == a.Def.Default
	case model.Whole:
		return strconv.Itoa(int(v)) == a.Def.Default
	case *model.Formula:
		return v.Literal != nil && v.Literal.String() == a.Def.Default
	}
	return false
}

func (c *Canon) value(b *strings.Builder, v model.Value) {
	switch v := v.(type) {
	case *model.Text:
		c.text(b, v)
	case model.Word:
		quote(b, string(v))
	case model.Exact:
		quote(b, string(v))
	case model.Day:
		quote(b, string(v))
	case model.Flag:
		b.WriteString(strconv.FormatBool(bool(v)))
	case model.Whole:
		b.WriteString(strconv.Itoa(int(v)))
	case *model.Formula:
		c.formula(b, v)
	case model.Refs:
		list(b, len(v), func(i int) { quote(b, c.ref(&v[i])) })
	case model.Names:
		list(b, len(v), func(i int) { quote(b, v[i].Text) })
	case model.Paths:
		list(b, len(v), func(i int) { quote(b, v[i].Text) })
	case model.Times:
		list(b, len(v), func(i int) { quote(b, quantity(v[i].For)+" at "+quantity(v[i].At)) })
	case *model.Table:
		c.sorted(b, len(v.Pairs), func(i int) (string, model.Value) { return c.ref(&v.Pairs[i].Key), v.Pairs[i].Value })
	case model.List:
		list(b, len(v), func(i int) { c.value(b, v[i]) })
	case model.ByPlace:
		c.sorted(b, len(v), func(i int) (string, model.Value) { return v[i].Place, v[i].Value })
	}
}

func quantity(q *calc.Quantity) string {
	if q == nil {
		return ""
	}
	return q.String()
}

// sorted writes a map, whatever order it was written in.
func (c *Canon) sorted(b *strings.Builder, n int, at func(int) (string, model.Value)) {
	items := make([]string, n)
	for i := range items {
		key, v := at(i)
		var item strings.Builder
		quote(&item, key)
		item.WriteByte(':')
		c.value(&item, v)
		items[i] = item.String()
	}
	slices.Sort(items)
	b.WriteString("{" + strings.Join(items, ",") + "}")
}

func list(b *strings.Builder, n int, item func(int)) {
	b.WriteByte('[')
	for i := range n {
		if i > 0 {
			b.WriteByte(',')
		}
		item(i)
	}
	b.WriteByte(']')
}

func quote(b *strings.Builder, s string) {
	text, _ := json.Marshal(s) // a string always has one
	b.Write(text)
}

// ref is the address of what is named.
func (c *Canon) ref(r *model.Ref) string {
	if r.To == nil || c.Address == nil {
		return r.Address()
	}
	named := *r
	to := *r.To
	to.Address = c.Address(r.To)
	named.To = &to
	return named.Address()
}

// text writes words with the values that stand in them. Blanks at the ends of
// lines and of the whole say nothing.
func (c *Canon) text(b *strings.Builder, t *model.Text) {
	if s, ok := t.Source.Literal(); ok {
		quote(b, trimmed(s))
		return
	}
	inserted := 0
	parts := t.Source.Parts()
	list(b, len(parts), func(i int) {
		if parts[i].X == nil {
			s := parts[i].Text
			if i == len(parts)-1 {
				s = trimmed(s)
			}
			quote(b, s)
			return
		}
		if inserted < len(t.Values) && t.Values[inserted] != nil {
			c.formula(b, t.Values[inserted])
		}
		inserted++
	})
}

func trimmed(s string) string { return strings.TrimRight(s, " \t\n") }

// formula writes a literal as the dialect has it, and an expression by its
// structure: a limit or a number of the catalogue by its address and not by its
// value, which is said where it belongs.
func (c *Canon) formula(b *strings.Builder, f *model.Formula) {
	if f.Literal != nil && f.Literal.Valid() {
		quote(b, f.Literal.String())
		return
	}
	if f.Expr == nil {
		b.WriteString("null")
		return
	}
	if _, constant := f.Expr.(*calc.Const); !constant || len(f.Refs) == 0 {
		c.expr(b, f.Expr)
	}
	if len(f.Refs) > 0 {
		list(b, len(f.Refs), func(i int) { quote(b, c.ref(&f.Refs[i])) })
	}
}

func (c *Canon) expr(b *strings.Builder, e calc.Expr) {
	node := func(name string, items ...calc.Expr) {
		b.WriteByte('[')
		quote(b, name)
		for _, x := range items {
			b.WriteByte(',')
			c.expr(b, x)
		}
		b.WriteByte(']')
	}
	switch e := e.(type) {
	case *calc.Const:
		if e.Label != "" {
			quote(b, "@") // its address stands in the list after the expression
			return
		}
		c.constant(b, e.Value)
	case *calc.Var:
		quote(b, c.variable(e))
	case *calc.Unary:
		node(e.Op.String(), e.X)
	case *calc.Binary:
		node(e.Op.String(), e.X, e.Y)
	case *calc.Cond:
		node("?", e.If, e.Then, e.Else)
	case *calc.Call:
		node(e.Function.Name, e.Args...)
	case *calc.List:
		node("list", e.Items...)
	}
}

func (c *Canon) constant(b *strings.Builder, v calc.Value) {
	switch v := v.(type) {
	case calc.Quantity:
		quote(b, v.String())
	case calc.Limits:
		list(b, 3, func(i int) { quote(b, quantity([]*calc.Quantity{v.Low, v.Target, v.High}[i])) })
	case calc.Truth:
		b.WriteString(strconv.FormatBool(bool(v)))
	case calc.Word:
		quote(b, string(v))
	case calc.Numbers:
		list(b, len(v), func(i int) { quote(b, v[i].String()) })
	}
}

// variable is the name of a variable with the address of what it stands for.
func (c *Canon) variable(v *calc.Var) string {
	name, rest := v.Name, ""
	for c.Address != nil {
		if n := c.Manual.Find(name); n != nil {
			name = strings.TrimPrefix(c.Address(n), "procedure.")
			break
		}
		i := strings.LastIndexByte(name, '.')
		if i < 0 {
			name, rest = v.Name, ""
			break
		}
		name, rest = name[:i], name[i:]+rest
	}
	key := calc.Var{Name: name + rest, Place: v.Place}
	return key.Key()
}
