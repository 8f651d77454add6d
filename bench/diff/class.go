package diff

import (
	"slices"

	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
)

// Class says what a change touches.
type Class uint8

// Classes, the gravest last.
const (
	Words    Class = iota + 1 // what is said, not what is done
	Kit                       // what must be at hand
	Sequence                  // when and where it is done
	Value                     // what is done to the engine, and what is accepted
	Safety                    // a message, a hold, what is worn, a critical value
)

// Classes lists them, the gravest first.
func Classes() []Class { return []Class{Safety, Value, Sequence, Kit, Words} }

func (c Class) String() string {
	return [...]string{"", "words", "kit", "sequence", "value", "safety"}[c]
}

// byRole classes what most attributes say.
var byRole = map[schema.Role]Class{
	schema.NoRole: Value, schema.Title: Words, schema.Instruction: Words, schema.Reason: Words, schema.Touches: Value,
	schema.Subject: Value, schema.Tool: Kit, schema.Supply: Kit, schema.Protection: Safety, schema.Crew: Kit,
	schema.Duration: Value, schema.Picture: Words, schema.Order: Sequence, schema.Clock: Value, schema.Choice: Sequence,
	schema.Where: Sequence, schema.Guide: Value, schema.Value: Value, schema.Judgement: Value, schema.Expected: Value,
	schema.Remedy: Words, schema.Method: Value, schema.Release: Safety, schema.Renamed: Words, schema.Record: Words,
	schema.State: Value, schema.Identity: Words, schema.Property: Value,
}

// byName are the attributes that their role does not class.
var byName = map[string]Class{
	"takes": Words, "critical": Safety, "irreversible": Safety, "checks": Safety, "stores": Safety, "hot": Safety, "capacity": Safety,
	"number": Kit, "quantity": Kit, "spare": Kit, "supplied": Kit, "in_kit": Kit, "in_place": Kit, "amount": Kit, "mark": Kit,
	"shares": Words, "shows": Words, "governs": Words, "severity": Words, "units": Words, "gallon": Words,
}

// ofAttr classes a change of an attribute.
func ofAttr(n *model.Node, a *schema.Attr) Class {
	if a.Role == schema.Renamed { // a hold, too
		return Words
	}
	if isMessage(n.Def) {
		return Safety
	}
	c, named := byName[a.Name]
	if !named {
		c = byRole[a.Role]
	}
	switch n.Def {
	case entry.HouseRules, entry.Figure, entry.Media, entry.Example, entry.History:
		return Words
	case entry.Tool: // what it reads and how finely
		if c == Value {
			return Kit
		}
	case entry.PPE:
		return Safety
	}
	if n.Step != nil && c > Words && does(n.Step, kind.Stops) {
		return Safety
	}
	return c
}

// ofBlock classes a block that is there on one side only.
func ofBlock(n *model.Node) Class {
	worst := Words
	switch {
	case isMessage(n.Def), n.Def == entry.PPE:
		return Safety
	case n.Step != nil:
		worst = Sequence
		if does(n.Step, kind.Stops) || n.Flag("critical") {
			return Safety
		}
	case n.Def == entry.Procedure, n.Def == kind.Otherwise, n.Def == entry.Option, n.Def == entry.Places:
		worst = Sequence
	case n.Def == entry.Part, n.Def == entry.Tool, n.Def == entry.Supply, n.Def == entry.Size:
		worst = Kit
	case n.Def == entry.Limit, n.Def == entry.Fastening:
		worst = Value
		if n.Flag("critical") {
			return Safety
		}
	}
	for _, b := range n.Blocks {
		worst = max(worst, ofBlock(b))
	}
	for _, s := range n.Steps {
		worst = max(worst, ofBlock(s.Node))
	}
	return worst
}

func isMessage(b *schema.Block) bool { return slices.Contains(entry.Messages(), b) }

func does(s *model.Step, v kind.Verb) bool {
	return slices.ContainsFunc(s.Kind.Does, func(e kind.Effect) bool { return e.Verb == v })
}

// criticals are the entries of which somebody says that a fault hurts: limits and
// fastenings, by their own word or by that of a step.
func criticals(m *model.Manual) map[*model.Node]bool {
	all := map[*model.Node]bool{}
	for _, n := range m.Entries {
		if n.Flag("critical") {
			all[n] = true
		}
	}
	m.EachStep(func(s *model.Step) {
		if !s.Flag("critical") {
			return
		}
		for i := range s.Attrs {
			model.EachRef(s.Attrs[i].Value, func(r *model.Ref) {
				if r.To != nil && (r.To.Is(entry.Limit) || r.To.Is(entry.Fastening)) {
					all[r.To] = true
				}
			})
		}
	})
	return all
}

// critical reports that a fault in what a node says hurts.
func critical(n *model.Node, all map[*model.Node]bool) bool {
	if n.Flag("critical") || all[n] {
		return true
	}
	if n.Step == nil || !n.Step.Kind.Judges {
		return false
	}
	for _, a := range n.ByRole(schema.Judgement) {
		hurts := false
		model.EachRef(a.Value, func(r *model.Ref) { hurts = hurts || all[r.To] })
		if hurts {
			return true
		}
	}
	return false
}
