package model

import (
	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/source"
)

// Manual is one manual with the shared catalogue it draws on.
type Manual struct {
	*Node      // the manual block; never nil, empty where the manual has none
	Dir        string
	Files      []*source.File // its own files and the shared ones, by path
	Entries    []*Node        // everything at the top but procedures, own before shared, in source order
	Procedures []*Node        // in the order in which they are done; those left out of the order last
	Ordered    int            // how many of Procedures the order names
	Examples   []*Node        // worked examples, in source order
	Comments   map[*source.File][]Comment
	Incomplete bool // something could not be read; whole-manual rules stay quiet

	byAddress map[string]*Node
}

// Comment is a comment of the source.
type Comment struct {
	Text    string // with its marker
	Span    source.Span
	OwnLine bool
}

// Step is one step.
type Step struct {
	*Node
	Kind      *kind.Kind
	Procedure *Node
	Number    string // printed number: "3.4"; of a step in an otherwise block "3.4.1"
	Branch    *Node  // the otherwise block that holds it, or nil
	Index     int    // place in its procedure or branch
	Places    *Node  // the places it is done at, its own or its procedure's, or nil
	PerPlace  bool   // its procedure is done place by place
}

// Here is the Place of a variable that means the place where the work stands.
const Here = "*"

// New gives an empty manual with a table for n addresses.
func New(n int) *Manual {
	return &Manual{byAddress: make(map[string]*Node, n), Comments: map[*source.File][]Comment{}}
}

// Add enters a node under its address. It reports the node that has the address
// already, and then does nothing.
func (m *Manual) Add(n *Node) *Node {
	if old := m.byAddress[n.Address]; old != nil {
		return old
	}
	m.byAddress[n.Address] = n
	return nil
}

// Find is the node at an address: "part.crankcase",
// "procedure.thrust_end.measure.float", or the latter without "procedure.".
func (m *Manual) Find(address string) *Node {
	if n := m.byAddress[address]; n != nil {
		return n
	}
	return m.byAddress["procedure."+address]
}

// Of lists the entries of one block, own before shared, in source order.
func (m *Manual) Of(block string) []*Node {
	var all []*Node
	for _, n := range m.Entries {
		if n.Def.Name == block {
			all = append(all, n)
		}
	}
	return all
}

// EachStep calls visit for every step in the order in which they are printed;
// the steps of otherwise blocks come after the step that they belong to.
func (m *Manual) EachStep(visit func(*Step)) {
	var walk func(steps []*Step)
	walk = func(steps []*Step) {
		for _, s := range steps {
			visit(s)
			for _, b := range s.Blocks {
				walk(b.Steps)
			}
		}
	}
	for _, p := range m.Procedures {
		walk(p.Steps)
	}
}

// EachNode calls visit for every node: the manual, entries, procedures and
// steps, each before the blocks nested in it.
func (m *Manual) EachNode(visit func(*Node)) {
	var walk func(n *Node)
	walk = func(n *Node) {
		visit(n)
		for _, b := range n.Blocks {
			walk(b)
		}
		for _, s := range n.Steps {
			walk(s.Node)
		}
	}
	walk(m.Node)
	for _, n := range m.Entries {
		walk(n)
	}
	for _, n := range m.Procedures {
		walk(n)
	}
}

// Key is the canonical name of the value that a step gives: the address without
// "procedure.", such as "thrust_end.measure.float".
func (s *Step) Key() string { return s.Address[len("procedure."):] }

// System is the system of units shown first.
func (m *Manual) System() calc.System {
	if m.Word("units") == "inch" {
		return calc.Inch
	}
	return calc.Metric
}
