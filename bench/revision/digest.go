package revision

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"slices"
	"strings"

	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/schema"
)

// Digest is the SHA-256, in hexadecimal, of what a manual says.
func Digest(m *model.Manual) string {
	sum := sha256.Sum256([]byte(Text(m)))
	return hex.EncodeToString(sum[:])
}

// Text is what a manual says, as one text: a block a line, indented by its depth.
// It is what the digest is taken over.
func Text(m *model.Manual) string {
	w := writer{canon: Canon{Manual: m}}
	w.node(m.Node, 0)
	for _, n := range Entries(m) {
		w.node(n, 0)
	}
	for _, n := range m.Procedures {
		w.node(n, 0)
	}
	examples := slices.Clone(m.Examples)
	slices.SortStableFunc(examples, func(a, b *model.Node) int {
		return cmp.Or(strings.Compare(within(a), within(b)), byID(a, b))
	})
	for _, n := range examples {
		w.b.WriteString(within(n) + " ")
		w.node(n, 0)
	}
	return w.b.String()
}

// Entries are the catalogue entries that belong to a manual: its own, and those
// of shared catalogues that it rests on; sorted by block and label.
func Entries(m *model.Manual) []*model.Node {
	used := map[*model.Node]bool{}
	var reach func(n *model.Node)
	reach = func(n *model.Node) {
		for i := range n.Attrs {
			model.EachRef(n.Attrs[i].Value, func(r *model.Ref) {
				if r.To != nil && r.To.Shared && !used[r.To] {
					used[r.To] = true
					reach(r.To)
				}
			})
		}
		for _, b := range n.Blocks {
			reach(b)
		}
		for _, s := range n.Steps {
			reach(s.Node)
		}
	}
	reach(m.Node)
	for _, n := range m.Entries {
		if !n.Shared {
			reach(n)
		}
	}
	for _, list := range [][]*model.Node{m.Procedures, m.Examples} {
		for _, n := range list {
			reach(n)
		}
	}
	var all []*model.Node
	for _, n := range m.Entries {
		if !n.Shared || used[n] {
			all = append(all, n)
		}
	}
	rank := map[*schema.Block]int{}
	for i, b := range entry.Top() {
		rank[b] = i
	}
	slices.SortStableFunc(all, func(a, b *model.Node) int {
		return cmp.Or(rank[a.Def]-rank[b.Def], byID(a, b))
	})
	return all
}

// within is the address of the procedure that an example stands in.
func within(example *model.Node) string {
	if example.Parent == nil {
		return ""
	}
	return example.Parent.Address
}

func byID(a, b *model.Node) int { return strings.Compare(a.ID, b.ID) }

type writer struct {
	canon Canon
	b     strings.Builder
}

// node writes a block and what is nested in it.
func (w *writer) node(n *model.Node, depth int) {
	if n.Def == nil { // a folder without a manual block
		return
	}
	for range depth {
		w.b.WriteByte(' ')
	}
	w.b.WriteString(n.Def.Name)
	if n.ID != "" {
		w.b.WriteByte(' ')
		quote(&w.b, n.ID)
	}
	for _, a := range Attrs(n) {
		w.b.WriteString(" " + a.Def.Name + "=")
		w.canon.value(&w.b, a.Value)
	}
	w.b.WriteByte('\n')
	for _, b := range n.Blocks {
		w.node(b, depth+1)
	}
	for _, s := range n.Steps {
		w.node(s.Node, depth+1)
	}
}
