// Package kind defines the kinds of steps, one file each: what a step of the
// kind is written with, what it yields, and what it asks of and does to the
// bench.
//
// Everything else reads these definitions and never asks which kind it has.
package kind

import (
	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/schema"
)

// Yield says what a step gives to later expressions.
type Yield uint8

// What steps give.
const (
	Nothing Yield = iota
	Reading       // a value read off the engine
	Pack          // .total .result .count .sizes
	Number        // a worked-out value
	Mark          // a mark that later steps go by
)

// Kind is one kind of step.
type Kind struct {
	Block    *schema.Block
	Yields   Yield
	Records  bool     // goes into the record unless it says otherwise
	Judges   bool     // may accept or refuse what is on the engine
	NeedsOn  bool     // must say what it touches
	Critical bool     // may be critical
	Does     []Effect // what it does on the bench, in this order
}

// All lists the kinds in the order of the reference.
func All() []*Kind {
	return []*Kind{
		Clean, Fit, Remove, Loosen, MarkStep, Measure, Choose, Calculate, Adjust, Coat, Seal,
		Torque, Lock, Inspect, Heat, Fill, Drain, Wait, Hold, Run, Work,
	}
}

var byName = func() map[string]*Kind {
	m := map[string]*Kind{}
	for _, k := range All() {
		m[k.Block.Name] = k
	}
	return m
}()

// Of finds a kind by the name of its block, or nil.
func Of(name string) *Kind { return byName[name] }

// Otherwise is what to do when a reading is outside, for a part of the range.
var Otherwise = &schema.Block{
	Name: "otherwise", Steps: true,
	Doc: "What to do when the reading is outside: words, steps, and where to go on.",
	Attrs: []schema.Attr{
		schema.WordAttr("when", schema.Choice, "Which side of the limits.", "below", "above"),
		schema.ProseAttr("text", schema.Remedy, "What to do."),
		schema.RefAttr("then", schema.Order, "Where to go on.", "step").Or("read again", "stop").By("read again"),
	},
}

// touchable is what on may name.
var touchable = []string{"part", "tool", "fastening", "face", "port", "feature", "mark", "pack"}

// Common are the attributes that every step has.
func Common() []schema.Attr {
	return []schema.Attr{
		schema.TextAttr("title", schema.Title, "What to do, beginning with one verb.").Must(),
		schema.ProseAttr("text", schema.Instruction, "How to do it."),
		schema.ProseAttr("why", schema.Reason, "Why it is done."),
		schema.RefAttr("on", schema.Touches, "What it touches.", touchable...),
		schema.RefAttr("tools", schema.Tool, "Tools used and put away.", "tool"),
		schema.RefAttr("supplies", schema.Supply, "Supplies used.", "supply"),
		schema.RefAttr("ppe", schema.Protection, "What to wear, besides what tools and supplies ask for.", "ppe"),
		schema.CountAttr("people", schema.Crew, "How many people it takes, the builder included.").By("1"),
		schema.AmountAttr("takes", schema.Duration, "How long it takes.", calc.Time),
		schema.RefAttr("figures", schema.Picture, "Figures and films that show it.", "figure", "media"),
		schema.RefAttr("after", schema.Order, "Steps that must be done first.", "step", "procedure"),
		schema.AmountAttr("within", schema.Clock, "Longest time since the steps in `after`.", calc.Time),
		schema.AmountAttr("not_before", schema.Clock, "Shortest time since the steps in `after`.", calc.Time),
		schema.ConditionAttr("when", schema.Choice, "The option or reading under which it is done."),
		schema.RefAttr("at_each", schema.Where, "Done at each of these places.", "places"),
		schema.NamesAttr("only", schema.Where, "Some of the places only."),
		schema.RefAttr("marks", schema.Guide, "Marks it goes by.", "mark"),
		schema.BoolAttr("irreversible", schema.Property, "Cannot be undone."),
		schema.NamesAttr("was", schema.Renamed, "Its former labels."),
		schema.BoolAttr("record", schema.Record, "Whether it goes into the build record."),
	}
}

// step puts a kind's own attributes before the common ones.
func step(name, doc, example string, own ...schema.Attr) *schema.Block {
	return &schema.Block{
		Name: name, Label: "id", Doc: doc, Example: example,
		Attrs:  append(append([]schema.Attr{}, Common()...), own...),
		Blocks: entry.Messages(),
	}
}

// judging adds what a step needs that accepts or refuses.
func judging(b *schema.Block) *schema.Block {
	b.Attrs = append(b.Attrs,
		schema.BoolAttr("critical", schema.Judgement, "Someone may be hurt if it is wrong."),
		schema.ProseAttr("otherwise", schema.Remedy, "What to do when it is outside; the work stops."))
	b.Blocks = append([]*schema.Block{Otherwise}, b.Blocks...)
	return b
}

// judgingOnly adds the words and branches for when nothing fits.
func judgingOnly(b *schema.Block) *schema.Block {
	b.Attrs = append(b.Attrs,
		schema.ProseAttr("otherwise", schema.Remedy, "What to do when nothing fits; the work stops."))
	b.Blocks = append([]*schema.Block{Otherwise}, b.Blocks...)
	return b
}
