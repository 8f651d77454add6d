// Package tooling says what the tools of a step can do: what they read and how
// finely, what they turn, and how wrench, adapter and socket go together.
//
// It is for rules. It knows tools by what their entries state, and by their
// kind only where the trade's name of a kind says it.
package tooling

import (
	"math/big"
	"strings"

	"fettle/calc"
	"fettle/calc/joint"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/source"
)

// Tool is a tool as a step names it.
type Tool struct {
	*model.Node
	At source.Span // where the step names it
}

// Of lists the tools that a step uses, as written.
func Of(s *model.Step) []Tool {
	refs := s.AllRefs("tools")
	if len(refs) == 0 {
		return nil
	}
	all := make([]Tool, 0, len(refs))
	for _, r := range refs {
		if r.To != nil {
			all = append(all, Tool{r.To, r.Span(s.Node)})
		}
	}
	return all
}

// Does is the attribute that names what a step of the kind does verb to, or "".
func Does(k *kind.Kind, verb kind.Verb) string {
	for _, e := range k.Does {
		if e.Verb == verb {
			return e.Attr
		}
	}
	return ""
}

// Done lists what a step does verb to.
func Done(s *model.Step, verb kind.Verb) []model.Ref {
	attr := Does(s.Kind, verb)
	if attr == "" {
		return nil
	}
	return s.AllRefs(attr)
}

// Reads says what a tool reads, in the words of its `reads`; nil for a tool that
// is no known instrument.
func (t Tool) Reads() []string { return Reads(t.Node) }

// Reads is Tool.Reads for an entry.
func Reads(tool *model.Node) []string {
	if w := tool.Plain("reads"); w != "" {
		return []string{w}
	}
	reads, _ := entry.Instrument(strings.ToLower(tool.Plain("kind")))
	return reads
}

// Range is the range that a tool states. ok is false where it states none, or
// an open one.
func (t Tool) Range() (joint.Band, bool) {
	l, ok := t.Limits("range", "")
	if !ok {
		return joint.Band{}, false
	}
	return joint.BandOf(l)
}

// Shows reports whether the tool reads values of a dimension, by its words or by
// its range.
func (t Tool) Shows(d calc.Dim) bool {
	for _, w := range t.Reads() {
		if w == "count" && (d == calc.Plain || d.Fits(calc.Counted) || isCount(d)) {
			return true
		}
		if of, ok := entry.ReadingDim(w); ok && of.Fits(d) {
			return true
		}
	}
	if r, ok := t.Range(); ok && r.Low.Dim().Fits(d) {
		return true
	}
	return false
}

// isCount reports a count of pieces, drops, strokes or teeth, also of so many a
// minute.
func isCount(d calc.Dim) bool {
	for _, of := range [...]calc.Dim{calc.Counted, calc.Drops, calc.Strokes, calc.Teeth} {
		if d == of || of.Div(calc.Time) == d {
			return true
		}
	}
	return false
}

// IsCount reports a dimension that people count without an instrument.
func IsCount(d calc.Dim) bool { return isCount(d) }

// IsWrench reports a tool that tightens to a torque.
func (t Tool) IsWrench() bool {
	for _, w := range t.Reads() {
		if w == "torque" {
			return true
		}
	}
	r, ok := t.Range()
	return ok && r.Low.Dim() == calc.Torque
}

// IsAdapter reports a tool that moves the fastener away from the drive of the
// wrench, so that the wrench is set to another torque than the fastener gets.
func (t Tool) IsAdapter() bool {
	if t.IsWrench() {
		return false
	}
	k := strings.ToLower(t.Plain("kind"))
	return t.Has("offset") || strings.Contains(k, "adapter") || strings.Contains(k, "crowfoot") || strings.Contains(k, "crow's foot")
}

// IsDriven reports a socket, bit or adapter that a wrench drives.
func (t Tool) IsDriven() bool {
	k := strings.ToLower(t.Plain("kind"))
	return !t.IsWrench() && t.Has("size") &&
		(t.Has("drive") || strings.Contains(k, "socket") || strings.Contains(k, "bit") || t.IsAdapter())
}

// Square reports an adapter across its own axis: it leaves the setting as it is.
func (t Tool) Square() bool {
	offset := t.Quantity("offset", "")
	if offset == nil || !calc.Angle.Fits(offset.Dim()) {
		return false
	}
	setting, p := joint.WrenchSetting(newtonMetre, metre, metre, *offset)
	return p == nil && setting.Cmp(newtonMetre) == 0
}

var (
	one         = big.NewRat(1, 1)
	newtonMetre = calc.NewQuantity(one, calc.MustUnit("N·m"), 0)
	metre       = calc.NewQuantity(one, calc.MustUnit("m"), 0)
)

// Wrenches, Adapters and Driven are the tools of the list that are such.
func Wrenches(all []Tool) []Tool { return only(all, Tool.IsWrench) }

// Adapters are the adapters of the list that change the setting.
func Adapters(all []Tool) []Tool {
	return only(all, func(t Tool) bool { return t.IsAdapter() && !t.Square() })
}

// Driven are the sockets, bits and adapters of the list.
func Driven(all []Tool) []Tool { return only(all, Tool.IsDriven) }

func only(all []Tool, is func(Tool) bool) []Tool {
	var found []Tool
	for _, t := range all {
		if is(t) {
			found = append(found, t)
		}
	}
	return found
}

// Setting is what to set on a wrench so that the adapter's end gives a torque.
// ok is false where a length is missing.
func Setting(torque calc.Quantity, wrench, adapter Tool) (calc.Quantity, bool) {
	l, a := wrench.Quantity("length", ""), adapter.Quantity("length", "")
	if l == nil || a == nil {
		return calc.Quantity{}, false
	}
	var angle calc.Quantity
	if q := adapter.Quantity("offset", ""); q != nil {
		angle = *q
	}
	s, p := joint.WrenchSetting(torque, *l, *a, angle)
	return s, p == nil
}

// Fits reports whether a tool's size fits a width: as written, or the same width
// written otherwise.
func Fits(size, width string) bool {
	size, width = strings.TrimSpace(size), strings.TrimSpace(width)
	if size == width {
		return true
	}
	a, ok := joint.AcrossFlats(size)
	b, ok2 := joint.AcrossFlats(width)
	return ok && ok2 && a.Cmp(b) == 0
}
