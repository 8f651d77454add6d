package diff

import (
	"strconv"
	"strings"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/model"
)

// shower shows values to people, in the units of one manual first.
type shower struct{ style calc.Style }

func newShower(m *model.Manual) shower {
	return shower{calc.Style{First: m.System(), Gallon: m.Word("gallon")}}
}

func (s shower) value(v model.Value) string {
	switch v := v.(type) {
	case *model.Text:
		return strings.Join(strings.Fields(plain(v)), " ")
	case model.Word:
		return string(v)
	case model.Exact:
		return string(v)
	case model.Day:
		return string(v)
	case model.Flag:
		if v {
			return "yes"
		}
		return "no"
	case model.Whole:
		return strconv.Itoa(int(v))
	case *model.Formula:
		return s.formula(v)
	case model.Refs:
		return each(len(v), ", ", func(i int) string { return named(&v[i]) })
	case model.Names:
		return each(len(v), ", ", func(i int) string { return v[i].Text })
	case model.Paths:
		return each(len(v), ", ", func(i int) string { return v[i].Text })
	case model.Times:
		return each(len(v), "; ", func(i int) string { return s.time(v[i]) })
	case *model.Table:
		return each(len(v.Pairs), "; ", func(i int) string { return named(&v.Pairs[i].Key) + ": " + s.value(v.Pairs[i].Value) })
	case model.List:
		return each(len(v), ", ", func(i int) string { return s.value(v[i]) })
	case model.ByPlace:
		return each(len(v), "; ", func(i int) string { return v[i].Place + ": " + s.value(v[i].Value) })
	}
	return "nothing"
}

func each(n int, sep string, item func(int) string) string {
	all := make([]string, n)
	for i := range all {
		all[i] = item(i)
	}
	return strings.Join(all, sep)
}

func (s shower) time(t model.Time) string {
	out := ""
	if t.For != nil {
		out = t.For.String()
	}
	if t.At != nil {
		out += " at " + s.style.Quantity(*t.At).String()
	}
	return out
}

// formula shows a literal or constant in both systems, and an expression as it is
// printed for a builder.
func (s shower) formula(f *model.Formula) string {
	text := ""
	switch {
	case f.Literal != nil && f.Literal.Valid():
		return s.style.Literal(*f.Literal).String()
	case f.Expr != nil:
		text = calc.Formula(f.Expr)
	}
	switch c := f.Const.(type) {
	case calc.Quantity:
		text = s.style.Quantity(c).String()
	case calc.Limits:
		text = s.style.Limits(c.Low, c.High).String()
		if c.Target != nil {
			text += ", aim at " + s.style.Quantity(*c.Target).String()
		}
	}
	if len(f.Refs) == 1 && f.Const != nil {
		text = named(&f.Refs[0]) + ": " + text
	}
	return text
}

// named is what people call what is named.
func named(r *model.Ref) string {
	if r.To == nil {
		return r.Word
	}
	name := r.To.Title()
	if r.Name != "" {
		name = strings.ReplaceAll(r.Name, "_", " ") + " of " + name
	}
	if r.Place != "" {
		name += " (" + r.Place + ")"
	}
	return name
}

// summary is what a nested block says, in one line.
func summary(n *model.Node) string {
	if n.Is(entry.Size) {
		return strconv.Itoa(n.Whole("in_kit", "", 0)) + " in the kit"
	}
	var parts []string
	for i := range n.Attrs {
		if s := (shower{}).value(n.Attrs[i].Value); s != "" && s != n.ID {
			parts = append(parts, s)
		}
	}
	for _, st := range n.Steps {
		parts = append(parts, st.Title())
	}
	if len(parts) == 0 {
		return n.Def.Name
	}
	return strings.Join(parts, " ")
}

// heading is what people call a block: a step with its number, an entry with its sort.
func heading(n *model.Node) string {
	switch {
	case n.Step != nil:
		return n.Step.Number + " " + n.Title()
	case n.Def.Name == "manual":
		return "The manual"
	}
	name := strings.ReplaceAll(n.Def.Name, "_", " ")
	return strings.ToUpper(name[:1]) + name[1:] + ": " + n.Title()
}

// address is where a block is found in the source.
func address(n *model.Node) string {
	switch {
	case n.Step != nil:
		return n.Step.Key()
	case n.Address == "":
		return n.Def.Name + " " + n.ID
	}
	return n.Address
}
