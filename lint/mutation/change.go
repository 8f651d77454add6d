package mutation

import (
	"slices"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/source"
)

// Change is what turns a sound manual into a mutant: edits of its source, and
// the places at which a reader would point, in the source before the edits. A
// nil Change is one that cannot be made.
type Change struct {
	Edits []diag.Edit
	Where []source.Span
	Since bool // judged with the sound manual as the revision that was issued last
}

// And makes both changes, or neither where one cannot be made.
func (c *Change) And(more ...*Change) *Change {
	if c == nil {
		return nil
	}
	out := &Change{slices.Clone(c.Edits), slices.Clone(c.Where), c.Since}
	for _, d := range more {
		if d == nil {
			return nil
		}
		out.Edits = append(out.Edits, d.Edits...)
		out.Where = append(out.Where, d.Where...)
		out.Since = out.Since || d.Since
	}
	return out
}

// At adds blocks at which a reader would point.
func (c *Change) At(nodes ...*model.Node) *Change {
	if c == nil {
		return nil
	}
	out := c.And()
	for _, n := range nodes {
		if n != nil {
			out.Where = append(out.Where, n.Extent)
		}
	}
	return out
}

// replace puts text for a span of a node's source.
func replace(n *model.Node, at source.Span, text string) *Change {
	return &Change{Edits: []diag.Edit{{Span: at, New: text}}, Where: []source.Span{n.Extent}}
}

// Set writes an attribute, in place of its value or on a line of its own.
func Set(n *model.Node, attr, value string) *Change {
	if a := n.Attr(attr); a != nil {
		return replace(n, n.ValueSpan(a), value)
	}
	brace := strings.IndexByte(n.Extent.Text(), '{')
	after := n.Extent.Sub(brace+1, brace+1)
	if body := n.Extent.Text()[brace+1:]; !strings.HasPrefix(body, "\n") { // { one = "line" }
		return replace(n, after, " "+attr+" = "+value+"\n")
	}
	return replace(n, after, "\n"+margin(n)+"  "+attr+" = "+value)
}

// Unset takes an attribute out; it cannot where it is not written.
func Unset(n *model.Node, attr string) *Change {
	a := n.Attr(attr)
	if a == nil {
		return nil
	}
	return replace(n, lines(n.Span(a)), "")
}

// Drop takes a block out, and what names it: from lists, and whole attributes
// that can do without. It cannot where something needs it, nor where a tool or
// supply is left that nothing uses.
func (s *Sound) Drop(n *model.Node) *Change {
	if n.Step != nil && !s.sparesAll(n) {
		return nil
	}
	c := &Change{Edits: []diag.Edit{{Span: lines(n.Extent), New: ""}}}
	return c.And(s.unname(n))
}

// DropBlocks takes out the nested blocks of the given types.
func DropBlocks(n *model.Node, types ...string) *Change {
	var c *Change
	for _, b := range n.Blocks {
		if slices.Contains(types, b.Def.Name) {
			d := replace(n, lines(b.Extent), "")
			if c == nil {
				c = d
			} else {
				c = c.And(d)
			}
		}
	}
	return c
}

// Swap lets two blocks change places.
func Swap(a, b *model.Node) *Change {
	if a.File != b.File {
		return nil
	}
	return replace(a, a.Extent, b.Extent.Text()).And(replace(b, b.Extent, a.Extent.Text()))
}

// MoveAfter takes a block from where it stands and puts it behind another.
func MoveAfter(n, other *model.Node) *Change {
	return InsertAfter(other, blockText(n)).And(&Change{Edits: []diag.Edit{{Span: lines(n.Extent), New: ""}}})
}

// MoveBefore takes a block from where it stands and puts it before another.
func MoveBefore(n, other *model.Node) *Change {
	return InsertBefore(other, blockText(n)).And(&Change{Edits: []diag.Edit{{Span: lines(n.Extent), New: ""}}})
}

// InsertAfter puts source behind a block.
func InsertAfter(n *model.Node, text string) *Change {
	at := lines(n.Extent)
	return insert(at.Sub(len(at.Text()), len(at.Text())), "\n"+strings.TrimRight(text, "\n")+"\n")
}

// InsertBefore puts source before a block.
func InsertBefore(n *model.Node, text string) *Change {
	return insert(lines(n.Extent).Sub(0, 0), strings.TrimRight(text, "\n")+"\n\n")
}

func insert(at source.Span, text string) *Change {
	return &Change{Edits: []diag.Edit{{Span: at, New: text}}, Where: []source.Span{at}}
}

// Copy is the source of a block under another label, with changes made to it.
func Copy(n *model.Node, label string, changes ...*Change) string {
	whole := lines(n.Extent)
	edits := []diag.Edit{{Span: shift(n.Name, whole), New: `"` + label + `"`}}
	for _, c := range changes {
		if c == nil {
			return ""
		}
		for _, e := range c.Edits {
			edits = append(edits, diag.Edit{Span: shift(e.Span, whole), New: e.New})
		}
	}
	text, err := diag.ApplyEdits(whole.Text(), edits)
	if err != nil {
		panic("internal error: " + err.Error())
	}
	return text
}

// shift counts a span from the start of another.
func shift(s, from source.Span) source.Span {
	return source.Span{File: s.File, Start: s.Start - from.Start, End: s.End - from.Start}
}

// AddRef names one more thing in a list of addresses, which need not be there yet.
func AddRef(n *model.Node, attr, address string) *Change {
	a := n.Attr(attr)
	if a == nil {
		return Set(n, attr, "["+address+"]")
	}
	text := n.ValueSpan(a).Text()
	if !strings.HasPrefix(text, "[") {
		return Set(n, attr, "["+text+", "+address+"]")
	}
	inner := strings.TrimRight(strings.TrimSuffix(text, "]"), " \n,")
	return Set(n, attr, inner+", "+address+"]")
}

// DropRef takes one address out of a list; the attribute goes with the last.
func DropRef(n *model.Node, attr string, to *model.Node) *Change {
	refs := n.AllRefs(attr)
	var kept []string
	for _, r := range refs {
		if r.To != to {
			kept = append(kept, r.Span(n).Text())
		}
	}
	switch {
	case len(kept) == len(refs):
		return nil
	case len(kept) == 0:
		return Unset(n, attr)
	}
	return Set(n, attr, "["+strings.Join(kept, ", ")+"]")
}

// SwapRef names another thing in place of one.
func SwapRef(n *model.Node, attr string, from *model.Node, address string) *Change {
	for _, r := range n.AllRefs(attr) {
		if r.To == from {
			return replace(n, r.Span(n), address)
		}
	}
	return nil
}

// Say adds a sentence to the prose of a step.
func Say(n *model.Node, attr, sentence string) *Change {
	a := n.Attr(attr)
	if a == nil {
		return Set(n, attr, quote(sentence))
	}
	text := n.ValueSpan(a).Text()
	if strings.HasPrefix(text, `"`) {
		return Set(n, attr, strings.TrimSuffix(text, `"`)+" "+sentence+`"`)
	}
	end := strings.LastIndexByte(text, '\n') // the line of the closing marker
	at := n.ValueSpan(a).Sub(end, end)
	return replace(n, at, "\n"+margin(n)+"    "+sentence)
}

func quote(s string) string { return `"` + s + `"` }

// lines widens a span to whole lines.
func lines(s source.Span) source.Span {
	text := s.File.Text
	start := strings.LastIndexByte(text[:s.Start], '\n') + 1
	if strings.TrimSpace(text[start:s.Start]) != "" { // not alone on its line
		return s
	}
	end := len(text)
	if i := strings.IndexByte(text[s.End:], '\n'); i >= 0 {
		end = int(s.End) + i + 1
	}
	return s.File.Span(start, end)
}

// margin is the white space before a block.
func margin(n *model.Node) string {
	whole := lines(n.Extent)
	return strings.Repeat(" ", int(n.Extent.Start-whole.Start))
}

func blockText(n *model.Node) string { return lines(n.Extent).Text() }

// unname takes out what names a node.
func (s *Sound) unname(to *model.Node) *Change {
	c := &Change{}
	s.EachNode(func(n *model.Node) {
		for i := range n.Attrs {
			a := &n.Attrs[i]
			named := false
			model.EachRef(a.Value, func(r *model.Ref) { named = named || r.To == to })
			if named && n != to {
				c = c.And(withoutName(n, a, to))
			}
		}
	})
	for _, e := range s.Examples {
		for i := range e.Attrs {
			model.EachRef(e.Attrs[i].Value, func(r *model.Ref) {
				if r.To == to {
					c = nil
				}
			})
		}
	}
	return c
}

// withoutName takes a name out of an attribute of n, where n can do without.
func withoutName(n *model.Node, a *model.Attr, to *model.Node) *Change {
	refs, isList := a.Value.(model.Refs)
	if !isList {
		return nil
	}
	others := slices.ContainsFunc(refs, func(r model.Ref) bool { return r.To != to })
	switch name := a.Def.Name; {
	case others:
		return DropRef(n, name, to)
	case name == "after" && n.Has("within"):
		return Unset(n, name).And(Unset(n, "within"))
	case name == "after" && n.Has("not_before"):
		return Unset(n, name).And(Unset(n, "not_before"))
	case name == "after" || name == "closed_by" || name == "shows" || name == "marks":
		return Unset(n, name)
	}
	return nil
}
