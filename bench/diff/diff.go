package diff

import (
	"slices"
	"strings"

	"fettle/bench/revision"
	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/schema"
)

// Changes is what one revision changes in another.
type Changes struct {
	Old, New *model.Manual
	Pairs    *Pairs
	List     []Change // the manual, the catalogue, procedures, steps; in the order of the new revision, what is gone last
}

// Change is what happened to one block.
type Change struct {
	Old, New *model.Node // nil where it is added or removed
	Class    Class
	Moved    bool // done at another point of the work
	Renamed  bool // its label is another; a builder does not see it
	Fields   []Field
	UsedBy   []*model.Step // new steps that rest on it, where a value of it changed
}

// Field is one thing that is said otherwise.
type Field struct {
	Name     string // of the attribute, or of a block that is there on one side only
	In       string // the nested block: `warning`, `size 0.20 mm`; "" for the block itself
	Place    string // where it is by place
	Class    Class
	Old, New model.Value // nil where it is not said
	Trend    Trend
	Parts    []Part // of words: what is out and what is in; nil for others
	Default  string // what holds where it is not said; "" for nothing

	oldNode, newNode *model.Node
}

// Node is the block on the newer side that has it.
func (c *Change) Node() *model.Node {
	if c.New != nil {
		return c.New
	}
	return c.Old
}

// Added reports a block that the old revision does not have.
func (c *Change) Added() bool { return c.Old == nil }

// Removed reports a block that the new revision does not have.
func (c *Change) Removed() bool { return c.New == nil }

// Empty reports that nothing changed but letter, day and history.
func (c *Changes) Empty() bool { return len(c.List) == 0 }

// Of lists the changes of one class, in order.
func (c *Changes) Of(class Class) []*Change {
	var all []*Change
	for i := range c.List {
		if c.List[i].Class == class {
			all = append(all, &c.List[i])
		}
	}
	return all
}

// Find is the change of a block of either side, or nil.
func (c *Changes) Find(n *model.Node) *Change {
	for i := range c.List {
		if c.List[i].Old == n || c.List[i].New == n {
			return &c.List[i]
		}
	}
	return nil
}

type differ struct {
	*Changes
	was, is                 revision.Canon
	wasCritical, isCritical map[*model.Node]bool
	moved                   map[*model.Node]bool // new nodes
}

// Diff compares two manuals.
func Diff(old, new *model.Manual) *Changes {
	d := &differ{Changes: &Changes{Old: old, New: new, Pairs: Pair(old, new)}}
	d.was = revision.Canon{Manual: old, Address: func(n *model.Node) string {
		if to := d.Pairs.New(n); to != nil {
			return to.Address
		}
		return "- " + n.Address
	}}
	d.is = revision.Canon{Manual: new, Address: func(n *model.Node) string {
		if d.Pairs.Old(n) != nil {
			return n.Address
		}
		return "+ " + n.Address
	}}
	d.wasCritical, d.isCritical = criticals(old), criticals(new)
	d.moved = d.moves()
	d.pair(old.Node, new.Node)
	d.nodes(revision.Entries(old), revision.Entries(new))
	d.nodes(old.Procedures, new.Procedures)
	d.nodes(steps(old), steps(new))
	d.examples()
	d.usedBy()
	return d.Changes
}

func steps(m *model.Manual) (all []*model.Node) {
	m.EachStep(func(s *model.Step) { all = append(all, s.Node) })
	return all
}

// nodes compares two lists of blocks; what is gone comes after the rest.
func (d *differ) nodes(old, new []*model.Node) {
	for _, n := range new {
		if o := d.Pairs.Old(n); o != nil {
			d.pair(o, n)
		} else {
			d.List = append(d.List, Change{New: n, Class: ofBlock(n)})
		}
	}
	for _, o := range old {
		if d.Pairs.New(o) == nil {
			d.List = append(d.List, Change{Old: o, Class: ofBlock(o)})
		}
	}
}

// pair compares what is one thing on both sides.
func (d *differ) pair(o, n *model.Node) {
	c := Change{Old: o, New: n, Moved: d.moved[n], Renamed: o.ID != n.ID || o.Def != n.Def}
	hurts := critical(o, d.wasCritical) || critical(n, d.isCritical)
	d.compare(&c, o, n, "")
	if o.Def != n.Def && n.Step != nil { // another kind of step
		c.Fields = append(c.Fields, Field{Name: "kind", Class: Value, Old: model.Word(o.Def.Name), New: model.Word(n.Def.Name)})
	}
	for i := range c.Fields {
		f := &c.Fields[i]
		if f.Class == Value && hurts {
			f.Class = Safety
		}
		c.Class = max(c.Class, f.Class)
	}
	if c.Moved {
		c.Class = max(c.Class, Sequence)
	}
	if c.Renamed {
		c.Class = max(c.Class, Words)
	}
	if c.Class > 0 {
		d.List = append(d.List, c)
	}
}

// compare compares the attributes of a block and the blocks nested in it.
func (d *differ) compare(c *Change, o, n *model.Node, in string) {
	was, is := byAttr(o), byAttr(n)
	for _, name := range names(o, n) {
		a, b := was[name], is[name]
		if skip(n, name) || a != nil && b != nil && d.was.Value(a.Value) == d.is.Value(b.Value) {
			continue
		}
		if name == "order" && n.Def == entry.Manual && d.sameOrder() || name == "was" && explains(o, n) {
			continue
		}
		d.fields(c, o, n, a, b, in)
	}
	d.blocks(c, o, n, in)
}

// skip leaves out what stands in the heading of a comparison.
func skip(n *model.Node, name string) bool {
	return n.Def == entry.Manual && (name == "revision" || name == "issued")
}

// explains reports former labels that say no more than that the label changed.
func explains(o, n *model.Node) bool {
	had, has := o.Names("was"), n.Names("was")
	return o.ID != n.ID && (slices.Equal(has, append(slices.Clone(had), o.ID)) || slices.Equal(had, append(slices.Clone(has), n.ID)))
}

func byAttr(n *model.Node) map[string]*model.Attr {
	all := map[string]*model.Attr{}
	for _, a := range revision.Attrs(n) {
		all[a.Def.Name] = a
	}
	return all
}

// names are the attributes that either side has, each once, in the order of the
// new side with those of the old after them.
func names(o, n *model.Node) []string {
	var all []string
	for _, node := range []*model.Node{n, o} {
		for _, a := range revision.Attrs(node) {
			if !slices.Contains(all, a.Def.Name) {
				all = append(all, a.Def.Name)
			}
		}
	}
	return all
}

// fields enters one attribute; of values by place, each that differs.
func (d *differ) fields(c *Change, o, n *model.Node, a, b *model.Attr, in string) {
	var was, is model.Value
	def := (*schema.Attr)(nil)
	if a != nil {
		was, def = a.Value, a.Def
	}
	if b != nil {
		is, def = b.Value, b.Def
	}
	class := ofAttr(n, def)
	_, x := was.(model.ByPlace)
	_, y := is.(model.ByPlace)
	if !x && !y {
		f := field(def.Name, in, "", class, was, is, o, n)
		f.Default = def.Default
		c.Fields = append(c.Fields, f)
		return
	}
	for _, place := range placesOf(was, is) {
		v, w := model.AtPlace(was, place), model.AtPlace(is, place)
		if v == nil || w == nil || d.was.Value(v) != d.is.Value(w) {
			c.Fields = append(c.Fields, field(def.Name, in, place, class, v, w, o, n))
		}
	}
}

func placesOf(values ...model.Value) []string {
	var all []string
	for _, v := range values {
		by, _ := v.(model.ByPlace)
		for _, p := range by {
			if !slices.Contains(all, p.Place) {
				all = append(all, p.Place)
			}
		}
	}
	slices.Sort(all)
	return all
}

func field(name, in, place string, class Class, was, is model.Value, o, n *model.Node) Field {
	f := Field{Name: name, In: in, Place: place, Class: class, Old: was, New: is, oldNode: o, newNode: n}
	f.Trend = trend(was, is)
	t, words := was.(*model.Text)
	u, also := is.(*model.Text)
	if words && also {
		f.Parts = Between(plain(t), plain(u))
	}
	return f
}

// blocks compares nested blocks: those with a label by label, others in turn.
func (d *differ) blocks(c *Change, o, n *model.Node, in string) {
	was, is := keyed(o), keyed(n)
	for _, k := range was.keys {
		if is.at[k] == nil {
			x := was.at[k]
			c.Fields = append(c.Fields, Field{Name: title(x), In: in, Class: ofBlock(x), Old: model.Word(summary(x)), oldNode: x})
		}
	}
	for _, k := range is.keys {
		x, y := was.at[k], is.at[k]
		if x == nil {
			c.Fields = append(c.Fields, Field{Name: title(y), In: in, Class: ofBlock(y), New: model.Word(summary(y)), newNode: y})
			continue
		}
		d.compare(c, x, y, strings.TrimPrefix(in+", "+title(y), ", "))
	}
}

func title(n *model.Node) string { return strings.TrimSpace(n.Def.Name + " " + n.ID) }

type keys struct {
	keys []string
	at   map[string]*model.Node
}

// keyed lists nested blocks, but for history, by name and label or number.
func keyed(n *model.Node) keys {
	k := keys{at: map[string]*model.Node{}}
	for _, b := range n.Blocks {
		if b.Def == entry.History || b.Def == entry.Example {
			continue
		}
		key := title(b)
		for k.at[key] != nil {
			key += "'"
		}
		k.keys, k.at[key] = append(k.keys, key), b
	}
	return k
}

// examples compares the worked examples, which are known by their title.
func (d *differ) examples() {
	list := func(m *model.Manual, address func(*model.Node) string) keys {
		k := keys{at: map[string]*model.Node{}}
		for _, n := range m.Examples {
			key := " " + n.ID
			if n.Parent != nil {
				key = address(n.Parent) + key
			}
			for k.at[key] != nil {
				key += "'"
			}
			k.keys, k.at[key] = append(k.keys, key), n
		}
		return k
	}
	was, is := list(d.Old, d.was.Address), list(d.New, d.is.Address)
	for _, k := range is.keys {
		if o := was.at[k]; o != nil {
			d.pair(o, is.at[k])
		} else {
			d.List = append(d.List, Change{New: is.at[k], Class: Words})
		}
	}
	for _, k := range was.keys {
		if is.at[k] == nil {
			d.List = append(d.List, Change{Old: was.at[k], Class: Words})
		}
	}
}

// usedBy finds the steps that rest on entries of which a value changed.
func (d *differ) usedBy() {
	users := map[*model.Node][]*model.Step{}
	d.New.EachStep(func(s *model.Step) {
		for i := range s.Attrs {
			model.EachRef(s.Attrs[i].Value, func(r *model.Ref) {
				if r.To != nil && r.To.Step == nil && !slices.Contains(users[r.To], s) {
					users[r.To] = append(users[r.To], s)
				}
			})
		}
	})
	for i := range d.List {
		c := &d.List[i]
		if c.New == nil || c.Old == nil || c.New.Step != nil || c.Class < Value {
			continue
		}
		c.UsedBy = users[c.New]
	}
}
