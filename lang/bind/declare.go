package bind

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/syntax"
)

var top = entry.Top()

func topBlock(name string) *schema.Block {
	for _, b := range top {
		if b.Name == name {
			return b
		}
	}
	return nil
}

// declareFile enters every block of a file under its address.
func (d *decoder) declareFile(f File) {
	for i := range f.Tree.Attrs {
		a := &f.Tree.Attrs[i]
		d.find("form/stray-attribute", a.Span, "`"+a.Name+"` stands outside every block.",
			"Nothing says what it belongs to.", "Move it into the block it describes.")
	}
	for _, sb := range f.Tree.Blocks {
		def := topBlock(sb.Type)
		switch {
		case def == nil:
			d.unknownTop(sb)
		case f.Shared && !entry.Shared(def):
			d.find("form/not-in-shared-folder", sb.Header, "A shared folder cannot hold a `"+sb.Type+"` block.",
				"Several manuals draw on the folder, and each has its own.", "Move it into the manual's folder.")
		default:
			d.declareTop(sb, def, f.Shared)
		}
	}
}

func (d *decoder) unknownTop(sb *syntax.Block) {
	d.m.Incomplete = true
	f := diag.Finding{Rule: "form/unknown-block", Span: sb.TypeSpan,
		Message: "There is no block `" + sb.Type + "`.",
		Reason:  "What stands in it is not read."}
	switch {
	case kind.Of(sb.Type) != nil || sb.Type == kind.Otherwise.Name:
		f.Message = "A `" + sb.Type + "` step stands outside every procedure."
		f.Remedy = "Move it into the procedure it belongs to."
	default:
		var names []string
		for _, b := range top {
			names = append(names, b.Name)
		}
		f.Remedy = "Use one of: " + strings.Join(names, ", ") + "."
		suggest(&f, sb.Type, sb.TypeSpan, names)
	}
	d.add(f)
}

func (d *decoder) declareTop(sb *syntax.Block, def *schema.Block, shared bool) {
	n := d.node(sb, def)
	if n == nil {
		return
	}
	n.Shared = shared
	switch def {
	case entry.Manual:
		if d.m.Node != nil {
			d.add(diag.Finding{Rule: "form/two-manuals", Span: n.Header,
				Message: "This folder holds a second `manual` block.",
				Reason:  "Nobody can tell which title, revision and order hold.",
				Remedy:  "Keep one, and move the other with its procedures into a folder of its own.",
				Related: []diag.Related{{Span: d.m.Header, Message: "The first stands here."}}})
			return
		}
		d.m.Node = n
		d.source[n] = sb
		return
	case entry.Example:
		d.m.Examples = append(d.m.Examples, n)
		d.source[n] = sb
		return
	}
	n.Address = def.Name + "." + n.ID
	if def.Label == "" {
		n.Address = def.Name
	}
	if old := d.m.Add(n); old != nil {
		d.twice(n, old)
		return
	}
	d.source[n] = sb
	if def == entry.Procedure {
		d.m.Procedures = append(d.m.Procedures, n)
		d.declareSteps(n, n, nil, sb)
		return
	}
	if shared {
		d.m.Entries = append(d.m.Entries, n)
		return
	}
	// Own entries come before shared ones, whichever file was first.
	i := len(d.m.Entries)
	for i > 0 && d.m.Entries[i-1].Shared {
		i--
	}
	d.m.Entries = append(d.m.Entries, nil)
	copy(d.m.Entries[i+1:], d.m.Entries[i:])
	d.m.Entries[i] = n
}

func (d *decoder) twice(n, old *model.Node) {
	d.add(diag.Finding{Rule: "form/name-used-twice", Span: n.Name,
		Message: "`" + strings.TrimPrefix(n.Address, "procedure.") + "` is declared twice.",
		Reason:  "Nobody can tell which one an address means; the second is not read.",
		Remedy:  "Give one of them another name.",
		Related: []diag.Related{{Span: old.Name, Message: "The first stands here."}}})
}

// node makes the node of a block and checks its label.
func (d *decoder) node(sb *syntax.Block, def *schema.Block) *model.Node {
	n := &model.Node{Def: def, File: sb.Header.File, Header: sb.Header, Name: sb.Header, Extent: sb.Span}
	switch {
	case def.Label == "" && len(sb.Labels) > 0:
		d.find("form/wrong-label", sb.Labels[0].Span, "A `"+def.Name+"` block has no name.",
			"Nothing refers to it.", "Take the name out.")
	case def.Label != "" && len(sb.Labels) == 0:
		d.find("form/wrong-label", sb.Header, "This `"+def.Name+"` has no name.",
			"Nothing can refer to it, and a later revision cannot find it again.",
			"Write "+def.Name+` "name" {, the name being `+labelKind(def)+".")
		d.m.Incomplete = true
		return nil
	case len(sb.Labels) > 1:
		d.find("form/wrong-label", sb.Labels[1].Span, "A `"+def.Name+"` has one name, and this is a second.",
			"Nobody can tell which one an address means.", "Keep one name.")
	}
	if len(sb.Labels) > 0 {
		n.ID, n.Name = sb.Labels[0].Text, sb.Labels[0].Span
		if def.Label == "id" && !isID(n.ID) {
			d.find("form/wrong-label", n.Name, "`"+n.ID+"` cannot be a name.",
				"Addresses are made of names: letters, digits and underscores, a letter first. A hyphen would read as a minus.",
				"Write "+idFrom(n.ID)+".")
		}
	}
	return n
}

func labelKind(def *schema.Block) string {
	if def.Label == "id" {
		return "letters, digits and underscores"
	}
	return def.Label
}

func isID(s string) bool {
	for i, r := range s {
		letter := r == '_' || 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z'
		if !letter && (i == 0 || r < '0' || r > '9') {
			return false
		}
	}
	return s != ""
}

// idFrom turns any label into one that can be a name.
func idFrom(s string) string {
	id := strings.Map(func(r rune) rune {
		if r < 0x80 && isID("a"+string(r)) {
			return r
		}
		return '_'
	}, strings.ToLower(s))
	if !isID(id) {
		id = "a" + id
	}
	return id
}

// declareSteps enters the steps and examples of a procedure, or the steps of an
// otherwise block.
func (d *decoder) declareSteps(proc, parent *model.Node, branch *model.Node, sb *syntax.Block) {
	for _, child := range sb.Blocks {
		k := kind.Of(child.Type)
		if k == nil {
			if branch == nil && child.Type == entry.Example.Name {
				if n := d.node(child, entry.Example); n != nil {
					n.Parent = proc
					d.m.Examples = append(d.m.Examples, n)
					d.source[n] = child
				}
				continue
			}
			d.unknownStep(parent, child)
			continue
		}
		n := d.node(child, k.Block)
		if n == nil {
			continue
		}
		n.Parent = parent
		n.Address = proc.Address + "." + k.Block.Name + "." + n.ID
		s := &model.Step{Node: n, Kind: k, Procedure: proc, Branch: branch, Index: len(parent.Steps)}
		n.Step = s
		if old := d.m.Add(n); old != nil {
			d.twice(n, old)
			continue
		}
		parent.Steps = append(parent.Steps, s)
		d.source[n] = child
		if k.Yields == kind.Reading || k.Yields == kind.Number || k.Yields == kind.Pack {
			d.steps = append(d.steps, s)
		}
		for _, nested := range child.Blocks {
			if def := k.Block.Block(nested.Type); def != nil {
				bn := d.node(nested, def)
				bn.Parent = n
				n.Blocks = append(n.Blocks, bn)
				d.source[bn] = nested
				if def.Steps {
					d.declareSteps(proc, bn, bn, nested)
				}
			}
		}
	}
}

func (d *decoder) unknownStep(parent *model.Node, sb *syntax.Block) {
	d.m.Incomplete = true
	parent.Damaged = true
	var names []string
	for _, k := range kind.All() {
		names = append(names, k.Block.Name)
	}
	f := diag.Finding{Rule: "form/unknown-block", Span: sb.TypeSpan,
		Message: "There is no kind of step called `" + sb.Type + "`.",
		Reason:  "What stands in it is not read.",
		Remedy:  "Use one of: " + strings.Join(names, ", ") + "."}
	if topBlock(sb.Type) != nil {
		f.Message = "A `" + sb.Type + "` block cannot stand inside `" + parent.Def.Name + "`."
		f.Remedy = "Move it to the top of the file."
	} else {
		suggest(&f, sb.Type, sb.TypeSpan, names)
	}
	d.add(f)
}

// order puts the procedures into the manual's order and numbers the steps.
func (d *decoder) order() {
	var ordered []*model.Node
	seen := map[*model.Node]bool{}
	for _, r := range d.m.Refs("order", "") {
		if r.To == nil || seen[r.To] {
			if r.To != nil {
				d.find("order/procedure-twice", r.Span(d.m.Node), "`"+r.Address()+"` stands in the order twice.",
					"A procedure is done once.", "Take one of them out, or make a second procedure.")
			}
			continue
		}
		seen[r.To] = true
		ordered = append(ordered, r.To)
	}
	d.m.Ordered = len(ordered)
	for _, p := range d.m.Procedures {
		if !seen[p] {
			ordered = append(ordered, p)
		}
	}
	d.m.Procedures = ordered
	for i, p := range ordered {
		number(p.Steps, itoa(i+1))
	}
}

func number(steps []*model.Step, prefix string) {
	for i, s := range steps {
		s.Number = prefix + "." + itoa(i+1)
		k := 0
		for _, b := range s.Blocks {
			for _, inner := range b.Steps {
				k++
				inner.Number = s.Number + "." + itoa(k)
			}
		}
	}
}
