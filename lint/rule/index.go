package rule

import (
	"sync"

	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/values"
	"fettle/lint/prose"
)

// Index is what many rules look up in one manual, worked out once and shared.
type Index struct {
	m       *model.Manual
	Plan    func() *values.Plan
	steps   func() []*model.Step
	having  func() map[string][]*model.Node
	used    func() map[*model.Node]bool
	reading func() map[*model.Node]bool
	texts   func() []Text
	shelf   prose.Shelf
}

// Text is words of an author, and where they stand.
type Text struct {
	In    *model.Node
	Attr  *model.Attr
	Words *model.Text
}

// NewIndex prepares the index of a manual; what nobody asks for is not worked out.
func NewIndex(m *model.Manual) *Index {
	x := &Index{m: m}
	x.Plan = sync.OnceValue(func() *values.Plan { return values.NewPlan(m) })
	x.steps = sync.OnceValue(x.allSteps)
	x.having = sync.OnceValue(x.byAttribute)
	x.used = sync.OnceValue(x.allUsed)
	x.reading = sync.OnceValue(x.allRead)
	x.texts = sync.OnceValue(x.allTexts)
	return x
}

// Steps lists all steps in the order in which they are printed, those of
// otherwise blocks after the step that they belong to.
func (x *Index) Steps() []*model.Step { return x.steps() }

// Having lists the nodes on which the attribute is written, in the order of
// Manual.EachNode.
func (x *Index) Having(attr string) []*model.Node { return x.having()[attr] }

// Used reports whether anything else in the manual names the node.
func (x *Index) Used(n *model.Node) bool { return x.used()[n] }

// Read reports whether anything works with, judges or prints the value that the
// step gives; worked examples do not count.
func (x *Index) Read(s *model.Step) bool { return x.reading()[s.Node] }

// Texts lists all words of the manual, in the order of Manual.EachNode.
func (x *Index) Texts() []Text { return x.texts() }

// Prose reads an attribute of words: as CommonMark where it is prose.
func (x *Index) Prose(a *model.Attr) prose.Passage {
	t, _ := a.Value.(*model.Text)
	if a.Def.Type != schema.Prose {
		return prose.Line(t)
	}
	return x.shelf.Read(t)
}

func (x *Index) allSteps() []*model.Step {
	var all []*model.Step
	x.m.EachStep(func(s *model.Step) { all = append(all, s) })
	return all
}

func (x *Index) allTexts() []Text {
	var all []Text
	x.m.EachNode(func(n *model.Node) {
		for i := range n.Attrs {
			if t, ok := n.Attrs[i].Value.(*model.Text); ok && t != nil {
				all = append(all, Text{n, &n.Attrs[i], t})
			}
		}
	})
	return all
}

func (x *Index) byAttribute() map[string][]*model.Node {
	all := map[string][]*model.Node{}
	x.m.EachNode(func(n *model.Node) {
		for i := range n.Attrs {
			name := n.Attrs[i].Def.Name
			all[name] = append(all[name], n)
		}
	})
	return all
}

func (x *Index) allUsed() map[*model.Node]bool {
	used := map[*model.Node]bool{}
	visit := func(n *model.Node) {
		for i := range n.Attrs {
			model.EachRef(n.Attrs[i].Value, func(r *model.Ref) {
				if r.To != nil && r.To != n && r.To != n.Parent {
					used[r.To] = true
				}
			})
		}
	}
	x.m.EachNode(visit)
	for _, e := range x.m.Examples {
		visit(e)
	}
	return used
}

func (x *Index) allRead() map[*model.Node]bool {
	read := map[*model.Node]bool{}
	x.m.EachNode(func(n *model.Node) {
		for i := range n.Attrs {
			a := &n.Attrs[i]
			if _, isRefs := a.Value.(model.Refs); isRefs {
				switch a.Def.Role {
				case schema.Judgement, schema.Subject, schema.Touches:
				default:
					continue
				}
			}
			model.EachRef(a.Value, func(r *model.Ref) {
				if r.To != nil && r.To.Step != nil && r.To != n {
					read[r.To] = true
				}
			})
		}
	})
	return read
}
