package render

import (
	"encoding/json"
	"slices"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// live collects what a page needs to work values out by itself: the formulas in
// the form of calc.Encoder, and the units they use. Everything in it is JSON.
type live struct {
	enc  calc.Encoder
	says []json.RawMessage
	said map[string]int
}

// Live is the values of a manual for a page that works them out. Its JSON is
// what page/engine.js reads. Nodes are those of calc.Encoder; in them a variable
// named "place" is the place of the value they belong to.
type Live struct {
	Units    json.RawMessage   `json:"units"`
	Partners json.RawMessage   `json:"partners"`
	First    int               `json:"first"`    // the system shown first, as in Units
	Spelled  map[string]int    `json:"spelled"`  // units that a reading may be given in, by spelling
	Families [][]int           `json:"families"` // units of one dimension
	Options  map[string]string `json:"options"`
	Parts    map[string]*Stock `json:"parts"`  // graded parts that are chosen from, by label
	Values   []*LiveValue      `json:"values"` // readings, calculations and choices
	Says     []json.RawMessage `json:"says"`   // values that stand in text and settings, by Inline.Live
	Cards    map[string]*Card  `json:"cards"`  // what is special of steps, by ID
	Kinds    map[string]string `json:"kinds"`  // what all steps of a kind do: "reads", "works" or "judges"
	Tools    []LiveTool        `json:"tools"`  // instruments
	Places   map[string]string `json:"places"` // by what stands for them in an ID, after --
}

// Stock is a graded part.
type Stock struct {
	Name  string      `json:"name"`
	Sizes []StockSize `json:"sizes"`
}

// StockSize is one grade: Is is limits, of which the target is the nominal value.
type StockSize struct {
	Label string          `json:"label"`
	Is    json.RawMessage `json:"is"`
	Held  int             `json:"held"`
}

// LiveValue is one value at one place.
type LiveValue struct {
	Key    string            `json:"key"`
	When   []json.RawMessage `json:"when,omitempty"`
	Accept json.RawMessage   `json:"accept,omitempty"`
	Stop   string            `json:"stop,omitempty"` // what to do when it is refused, in words

	Reads *LiveReading    `json:"reads,omitempty"`
	Is    json.RawMessage `json:"is,omitempty"`      // of a calculation
	Shown json.RawMessage `json:"formula,omitempty"` // of a calculation or choice: calc's AppendFormula
	Picks *LivePick       `json:"picks,omitempty"`
}

// LiveReading is what may be read.
type LiveReading struct {
	Take   string          `json:"take,omitempty"`
	Within json.RawMessage `json:"within,omitempty"`
	Likely json.RawMessage `json:"likely,omitempty"`
	Tools  []int           `json:"tools,omitempty"` // of Live.Tools
	Units  []int           `json:"units,omitempty"` // the first is printed beside the box, the second is its partner
	Family int             `json:"family"`          // of Families
}

// LiveTool is what an instrument can show.
type LiveTool struct {
	Name  string          `json:"name"`
	Range json.RawMessage `json:"range"`
}

// LivePick is a choice.
type LivePick struct {
	Part    string          `json:"part"`
	From    json.RawMessage `json:"from"` // the gap, or what is built up on
	BuildUp bool            `json:"buildUp,omitempty"`
	Limit   json.RawMessage `json:"limit"`
	Pieces  [2]int          `json:"pieces"` // fewest and most
	Nearest bool            `json:"nearest,omitempty"`
	Before  []string        `json:"before,omitempty"` // choices that take pieces before it
}

func (l *live) value(v calc.Value) json.RawMessage { return l.enc.AppendValue(nil, v) }

func (l *live) node(e calc.Expr, place string) json.RawMessage {
	return l.enc.AppendExpr(nil, values.Localize(e, place))
}

func (l *live) formula(f *model.Formula, place string) json.RawMessage {
	if f == nil {
		return nil
	}
	return l.node(f.Expr, place)
}

// say notes a value that stands somewhere and rests on readings: its place in
// Says counted from 1, 0 for a constant.
func (l *live) say(f *model.Formula, place string) int {
	if f == nil || f.Const != nil || len(calc.Vars(f.Expr)) == 0 {
		return 0
	}
	for _, v := range calc.Vars(f.Expr) {
		if v.Name == "place" {
			return 0
		}
	}
	node := l.node(f.Expr, place)
	n, ok := l.said[string(node)]
	if !ok {
		l.says = append(l.says, node)
		n = len(l.says)
		l.said[string(node)] = n
	}
	return n
}

// sayPack is say for the pieces of a pack.
func (l *live) sayPack(key string) int {
	k, _ := json.Marshal(key)
	node := `["v",` + string(k) + `]`
	n, ok := l.said[node]
	if !ok {
		l.says = append(l.says, json.RawMessage(node))
		n = len(l.says)
		l.said[node] = n
	}
	return n
}

// liveValues is everything a page works out.
func (l *lowering) liveValues() *Live {
	out := &Live{First: int(l.style.First), Spelled: map[string]int{}, Options: map[string]string{},
		Parts: map[string]*Stock{}, Values: []*LiveValue{}, Families: [][]int{}, Tools: []LiveTool{}, Kinds: l.kinds(), Says: []json.RawMessage{}, Cards: l.extras, Places: l.places}
	for _, o := range l.m.Of("option") {
		out.Options[o.ID] = l.env.Option(o.ID)
	}
	l.m.EachStep(func(s *model.Step) {
		if s.Kind.Yields != kind.Reading && s.Kind.Yields != kind.Number && s.Kind.Yields != kind.Pack {
			return
		}
		for _, place := range values.Keys(s) {
			if v := l.liveValue(out, s, place); v != nil {
				out.Values = append(out.Values, v)
			}
		}
	})
	if l.live.says != nil {
		out.Says = l.live.says
	}
	out.Partners = l.live.enc.AppendPartners(nil, l.style.Gallon)
	out.Units = l.live.enc.AppendUnits(nil)
	return out
}

// kinds says what the steps of each kind in use do beyond being done.
func (l *lowering) kinds() map[string]string {
	all := map[string]string{}
	l.m.EachStep(func(s *model.Step) {
		name := s.Kind.Block.Name
		switch {
		case s.Kind.Yields == kind.Reading:
			all[name] = "reads"
		case s.Kind.Yields == kind.Number, s.Kind.Yields == kind.Pack:
			all[name] = "works"
		case s.Kind.Judges && s.Kind.Yields == kind.Nothing:
			all[name] = "judges"
		}
	})
	return all
}

func (l *lowering) liveValue(out *Live, s *model.Step, place string) *LiveValue {
	v := &LiveValue{Key: values.Key(s, place), Accept: l.live.formula(s.Formula("accept", place), place), Stop: s.Plain("otherwise")}
	for _, n := range [...]*model.Node{s.Procedure, s.Node} {
		if f := n.Formula("when", place); f != nil {
			v.When = append(v.When, l.live.node(f.Expr, place))
		}
	}
	switch s.Kind.Yields {
	case kind.Reading:
		v.Reads = l.liveReading(out, s, place)
	case kind.Number:
		f := s.Formula("is", place)
		if f == nil {
			return nil
		}
		v.Is, v.Shown = l.live.node(f.Expr, place), l.live.enc.AppendFormula(nil, values.Localize(f.Expr, place))
	case kind.Pack:
		if v.Picks = l.livePick(out, s, place); v.Picks == nil {
			return nil
		}
		from := s.Formula("gap", place)
		if v.Picks.BuildUp {
			from = s.Formula("base", place)
		}
		v.Shown = l.live.enc.AppendFormula(nil, values.Localize(from.Expr, place))
	}
	return v
}

func (l *lowering) liveReading(out *Live, s *model.Step, place string) *LiveReading {
	r := &LiveReading{Take: s.Word("take"), Likely: l.live.formula(s.Formula("likely", place), place)}
	if q := s.Quantity("agree_within", place); q != nil {
		r.Within = l.live.value(*q)
	}
	dim, known := values.Dimension(s)
	for _, t := range values.Instruments(s) {
		if known && t.Range.Type().Dim.Fits(dim) {
			r.Tools = append(r.Tools, out.tool(LiveTool{t.Name, l.live.value(t.Range)}))
		}
	}
	w := &stepWriter{lowering: l, s: s, sc: &scope{l, place}}
	unit := w.readIn(w.sc)
	if unit == nil {
		return r
	}
	r.Units = append(r.Units, l.live.enc.Unit(unit))
	family := []*calc.Unit{unit}
	if p := calc.PartnerOf(l.typical(s, place, unit), l.style.Gallon); p != nil {
		r.Units = append(r.Units, l.live.enc.Unit(p))
		family = append(family, p)
	}
	r.Family = out.family(&l.live.enc, append(family, sameDimension(unit.Dim)...))
	return r
}

func sameDimension(d calc.Dim) (all []*calc.Unit) {
	for _, u := range calc.Units() {
		if u.Dim.Fits(d) {
			all = append(all, u)
		}
	}
	return all
}

// tool notes an instrument, each once.
func (l *Live) tool(t LiveTool) int {
	for i, known := range l.Tools {
		if known.Name == t.Name && string(known.Range) == string(t.Range) {
			return i
		}
	}
	l.Tools = append(l.Tools, t)
	return len(l.Tools) - 1
}

// family notes units that stand for one another, and how they are spelled.
func (l *Live) family(enc *calc.Encoder, units []*calc.Unit) int {
	var family []int
	for _, u := range units {
		i := enc.Unit(u)
		if !slices.Contains(family, i) {
			family = append(family, i)
		}
		for _, s := range append([]string{u.Name, u.Plural}, u.Spellings...) {
			if _, taken := l.Spelled[s]; !taken && s != "" {
				l.Spelled[s] = i
			}
		}
	}
	for i, f := range l.Families {
		if slices.Equal(f, family) {
			return i
		}
	}
	l.Families = append(l.Families, family)
	return len(l.Families) - 1
}

// typical is a reading of the usual size, which decides between ft and in.
func (l *lowering) typical(s *model.Step, place string, unit *calc.Unit) calc.Quantity {
	for _, name := range [...]string{"accept", "likely"} {
		if limits, ok := s.Limits(name, place); ok {
			for _, q := range [...]*calc.Quantity{limits.High, limits.Low} {
				if q != nil {
					return q.In(unit)
				}
			}
		}
	}
	return calc.NewQuantity(two, unit, 0)
}

func (l *lowering) livePick(out *Live, s *model.Step, place string) *LivePick {
	limit, buildUp := values.Judged(s, place)
	from := s.Formula("gap", place)
	if buildUp {
		from = s.Formula("base", place)
	}
	part := s.Ref("from")
	if part == nil || limit == nil || from == nil {
		return nil
	}
	held := l.stock(out, part)
	p := &LivePick{Part: part.ID, From: l.live.node(from.Expr, place), BuildUp: buildUp, Limit: l.live.node(limit.Expr, place),
		Nearest: s.Word("prefer") == "nearest", Before: l.plan.Before(s, place)}
	p.Pieces[0], p.Pieces[1] = values.Pieces(s, place, held)
	return p
}

func (l *lowering) stock(out *Live, part *model.Node) (held int) {
	stock := &Stock{Name: part.Title()}
	for _, n := range part.Nested(entry.Size) {
		size := StockSize{Label: n.ID, Held: n.Whole("in_kit", "", 0)}
		held += size.Held
		if is, ok := n.Limits("is", ""); ok {
			size.Is = l.live.value(is)
			out.family(&l.live.enc, sameDimension(is.Type().Dim))
		}
		stock.Sizes = append(stock.Sizes, size)
	}
	out.Parts[part.ID] = stock
	return held
}
