package bind

import (
	"strings"
	"time"

	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/source"
	"fettle/lang/syntax"
)

// decode reads what an entry, an example or the manual was written as. It does
// so once, so that an entry may be asked for while another is read.
func (d *decoder) decode(n *model.Node) {
	sb := d.source[n]
	if sb == nil {
		return
	}
	delete(d.source, n)
	d.open = append(d.open, opened{n, sb})
	d.fill(n, sb)
	d.open = d.open[:len(d.open)-1]
}

// decodeBlock is decode for nodes whose tree is needed by nobody else.
func (d *decoder) decodeBlock(n *model.Node) { d.decode(n) }

// procedure reads a procedure and its steps. Other goroutines read other
// procedures at the same time: nothing shared is written.
func (d *decoder) procedure(p *model.Node) {
	sb := d.source[p]
	if d.thin[p.File] {
		whole(sb)
	}
	d.fillAttrs(p, sb)
	for _, s := range p.Steps {
		d.step(s)
	}
}

func (d *decoder) step(s *model.Step) {
	sb := d.source[s.Node]
	d.fillAttrs(s.Node, sb)
	for _, child := range sb.Blocks {
		if s.Kind.Block.Block(child.Type) == nil {
			d.unknownNested(s.Node, child)
		}
	}
	for _, b := range s.Blocks {
		bsb := d.source[b]
		if b.Def.Steps {
			d.fillAttrs(b, bsb)
		} else {
			d.fill(b, bsb)
		}
		for _, inner := range b.Steps {
			d.step(inner)
		}
	}
}

// fill reads attributes and nested blocks.
func (d *decoder) fill(n *model.Node, sb *syntax.Block) {
	for _, child := range sb.Blocks {
		def := n.Def.Block(child.Type)
		if def == nil {
			d.unknownNested(n, child)
			continue
		}
		c := d.node(child, def)
		if c == nil {
			continue
		}
		c.Parent, c.Shared = n, n.Shared
		n.Blocks = append(n.Blocks, c)
		d.fill(c, child)
	}
	labelled := n.Def == entry.Size && sb.Attr("is") == nil
	d.fillAttrs(n, sb)
	if labelled {
		d.sizeLabel(n)
	}
}

func (d *decoder) unknownNested(n *model.Node, sb *syntax.Block) {
	if n.Def.Steps && n.Step == nil {
		return // said when steps were declared
	}
	n.Damaged = true
	var names []string
	for _, b := range n.Def.Blocks {
		names = append(names, b.Name)
	}
	f := diag.Finding{Rule: "form/unknown-block", Span: sb.TypeSpan,
		Message: "A `" + n.Def.Name + "` block holds no `" + sb.Type + "` block.",
		Reason:  "What stands in it is not read."}
	switch {
	case kind.Of(sb.Type) != nil:
		f.Remedy = "Steps stand in a procedure, one after the other; close the block above first."
	case n.Def.Attr(sb.Type) != nil:
		f.Remedy = "Write it as an attribute: " + sb.Type + " = …"
	case len(names) == 0:
		f.Remedy = "Take it out, or move it to the top of the file."
	default:
		f.Remedy = "Use one of: " + strings.Join(names, ", ") + "."
	}
	suggest(&f, sb.Type, sb.TypeSpan, names)
	d.add(f)
}

// fillAttrs reads the attributes in source order.
func (d *decoder) fillAttrs(n *model.Node, sb *syntax.Block) {
	if len(sb.Attrs) > 0 {
		n.Attrs = make([]model.Attr, 0, len(sb.Attrs))
	}
	for i := range sb.Attrs {
		sa := &sb.Attrs[i]
		def := d.definition(n, sa)
		if def == nil {
			n.Damaged = true
			continue
		}
		if v := d.value(n, def, sa.Expr); v != nil {
			n.Attrs = append(n.Attrs, model.NewAttr(def, v, sa.NameSpan(), sa.Expr.Span()))
		} else {
			n.Damaged = true
		}
	}
	for i := range n.Def.Attrs {
		def := &n.Def.Attrs[i]
		if def.Required && sb.Attr(def.Name) == nil {
			d.find("form/missing-attribute", n.Header, "This `"+n.Def.Name+"` has no `"+def.Name+"`.",
				def.Doc, "Add `"+def.Name+" = …`.")
		}
	}
	sb.Attrs = nil // nobody needs the tree any more
}

func (d *decoder) definition(n *model.Node, sa *syntax.Attr) *schema.Attr {
	if def := n.Def.Attr(sa.Name); def != nil {
		return def
	}
	var names []string
	if n.Def.Open {
		if t, ok := entry.ThresholdNamed(sa.Name); ok {
			return threshold(t)
		}
		for _, t := range entry.Thresholds() {
			names = append(names, t.Name)
		}
	}
	for i := range n.Def.Attrs {
		names = append(names, n.Def.Attrs[i].Name)
	}
	f := diag.Finding{Rule: "form/unknown-attribute", Span: sa.NameSpan(),
		Message: "A `" + n.Def.Name + "` has no attribute `" + sa.Name + "`.",
		Reason:  "What is written there reaches nobody.",
		Remedy:  "It may have: " + strings.Join(names, ", ") + "."}
	if b := n.Def.Block(sa.Name); b != nil {
		f.Remedy = "Write it as a block: " + sa.Name + " { … }."
	}
	suggest(&f, sa.Name, sa.NameSpan(), names)
	d.add(f)
	return nil
}

// threshold makes the definition of a house rule's number.
func threshold(t entry.Threshold) *schema.Attr {
	a := &schema.Attr{Name: t.Name, Type: schema.Amount, Dim: t.Dim, HasDim: true, Role: schema.Property, Default: t.Default, Doc: t.Doc}
	if t.Limits {
		a.Type = schema.Limits
	}
	return a
}

// value reads one attribute, or gives nil where it cannot be read.
func (d *decoder) value(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	if obj, ok := e.(*syntax.Object); ok && def.Type != schema.Table {
		return d.byPlace(n, def, obj)
	}
	if list, ok := e.(*syntax.List); ok && def.Type != schema.Reference && def.Type != schema.Names && def.Type != schema.Path && def.Type != schema.TimeAt {
		return d.list(n, def, list)
	}
	switch def.Type {
	case schema.Text, schema.Prose:
		return d.text(n, def, e)
	case schema.Word:
		return d.word(n, def, e)
	case schema.Bool:
		return d.flag(n, def, e)
	case schema.Count:
		return d.whole(n, def, e)
	case schema.Date:
		return d.day(n, def, e)
	case schema.Designation:
		if s, ok := d.literal(n, def, e); ok {
			return model.Exact(s)
		}
	case schema.Amount, schema.Setting, schema.Limits, schema.Condition:
		if f := d.formula(n, def, e); f != nil {
			return f
		}
	case schema.Reference:
		return d.refs(n, def, e)
	case schema.Names:
		return d.names(n, def, e)
	case schema.Path:
		return d.paths(n, def, e)
	case schema.TimeAt:
		return d.times(n, def, e)
	case schema.Table:
		return d.table(n, def, e)
	}
	return nil
}

// list reads several values of one kind.
func (d *decoder) list(n *model.Node, def *schema.Attr, list *syntax.List) model.Value {
	items := model.List{}
	for _, item := range list.Items {
		if v := d.value(n, def, item); v != nil {
			items = append(items, v)
		}
	}
	if len(items) == 0 {
		return nil
	}
	return items
}

// byPlace reads a map by place.
func (d *decoder) byPlace(n *model.Node, def *schema.Attr, obj *syntax.Object) model.Value {
	places := d.placesOf(n)
	if places == nil {
		d.wrong(n, def, obj, "This is a map by place, and the `"+owner(n).Def.Name+"` is not at any places.",
			"Give it `at_each`, or write one value.")
		return nil
	}
	names := places.Names("names")
	by := make(model.ByPlace, 0, len(obj.Pairs))
	for _, p := range obj.Pairs {
		key, ok := keyName(p.Key)
		if !ok || !contains(names, key) {
			f := diag.Finding{Rule: "values/unknown-reference", Span: p.Key.Span(),
				Message: "`" + places.ID + "` has no place called `" + key + "`.",
				Reason:  "Nobody can tell where the value belongs.",
				Remedy:  "Its places are: " + strings.Join(names, ", ") + ".",
				Related: []diag.Related{{Span: places.Name, Message: "The places are named here."}}}
			suggest(&f, key, p.Key.Span(), names)
			d.add(f)
			n.Damaged = true
			names = without(names, nearest(key, names)) // which is meant
			continue
		}
		names = without(names, key)
		v := d.value(n, def, p.Value)
		if v == nil {
			n.Damaged = true
			continue
		}
		by = append(by, struct {
			Place string
			Value model.Value
			Span  source.Span
		}{key, v, p.Key.Span()})
	}
	if len(names) > 0 && len(by) > 0 {
		d.add(diag.Finding{Rule: "values/place-left-out", Span: obj.Span(),
			Message: "`" + def.Name + "` says nothing for " + strings.Join(names, " and ") + ".",
			Reason:  "A builder who works there has no value.",
			Remedy:  "Add a value for " + strings.Join(names, " and ") + ".",
			Related: []diag.Related{{Span: places.Name, Message: "The places are named here."}}})
	}
	if len(by) == 0 {
		return nil
	}
	return by
}

// owner is the step or entry that a nested block belongs to.
func owner(n *model.Node) *model.Node {
	for n.Parent != nil && n.Step == nil {
		n = n.Parent
	}
	return n
}

// placesOf is the places block that a node is at, or nil.
func (d *decoder) placesOf(n *model.Node) *model.Node {
	n = owner(n)
	if n.Step != nil {
		return n.Step.Places
	}
	if p := n.Ref("at_each"); p != nil {
		return p
	}
	for _, o := range d.open { // at_each may stand after the map
		if o.node == n {
			return d.placesWritten(n, o.block)
		}
	}
	return nil
}

// placesWritten resolves at_each ahead of the other attributes; it is silent,
// since the attribute is read in its turn.
func (d *decoder) placesWritten(n *model.Node, sb *syntax.Block) *model.Node {
	a := sb.Attr("at_each")
	if a == nil {
		return nil
	}
	t, ok := a.Expr.(*syntax.Traversal)
	if !ok || t.Root != entry.Places.Name || len(t.Steps) != 1 {
		return nil
	}
	return d.m.Find("places." + t.Steps[0].Name)
}

func keyName(e syntax.Expr) (string, bool) {
	switch e := e.(type) {
	case *syntax.Traversal:
		if len(e.Steps) == 0 {
			return e.Root, true
		}
	case *syntax.String:
		return e.Literal()
	case *syntax.Paren:
		return keyName(e.X)
	}
	return e.Span().Text(), false
}

func contains(names []string, s string) bool {
	for _, n := range names {
		if n == s {
			return true
		}
	}
	return false
}

func without(names []string, s string) []string {
	var rest []string
	for _, n := range names {
		if n != s {
			rest = append(rest, n)
		}
	}
	return rest
}

func isDay(s string) bool {
	_, err := time.Parse("2006-01-02", s)
	return err == nil
}
