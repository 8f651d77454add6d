package mutation

import (
	"regexp"
	"slices"
	"strings"

	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/source"
)

var units = []*Class{
	{"units", "unknown unit", []string{"units/unknown-unit"}, unknownUnit},
	{"units", "wrong dimension", []string{"units/wrong-dimension"}, wrongDimension},
	{"units", "energy for torque", []string{"units/energy-for-torque"}, energyForTorque},
	{"units", "bare number where a unit is needed", []string{"units/bare-number", "form/quantity-without-quotes"}, bareNumber},
	{"units", "decimal comma", []string{"units/decimal-comma"}, decimalComma},
	{"units", "range backwards or empty", []string{"units/backwards-range"}, backwardsRange},
	{"units", "target outside its range", []string{"units/target-outside-range"}, targetOutside},
	{"units", "two systems inside one range", []string{"units/two-systems"}, twoSystems},
	{"units", "temperature for a difference", []string{"units/temperature-for-difference"}, temperatureForDifference},
	{"units", "hyphen for a range", []string{"units/hyphen-for-range"}, hyphenForRange},
}

// quantity is one quantity in quotes, of an attribute that holds nothing else.
type quantity struct {
	in   *model.Node
	attr *schema.Attr
	span source.Span // inside the quotes
	text string
}

func (q quantity) to(text string) *Change { return replace(q.in, q.span, text) }

// unit gives the quantity with another unit, which must be written once.
func (q quantity) unit(to string) *Change {
	from := unitOf(q.text)
	if from == "" || strings.Count(q.text, from) != 1 {
		return nil
	}
	return q.to(strings.Replace(q.text, from, to, 1))
}

var (
	quoted    = regexp.MustCompile(`"([^"$\n]*)"`)
	unitAfter = regexp.MustCompile(`\d\s?([^\d\s±.,–%/"-][^\d\s±.,–"]*)`)
	twoEnds   = regexp.MustCompile(`^(-?[0-9.]+)(\.\.)(-?[0-9.]+)(.*)$`)
)

func unitOf(text string) string {
	m := unitAfter.FindStringSubmatch(text)
	if m == nil || m[1] == "to" || m[1] == "at" {
		return ""
	}
	return m[1]
}

// quantities are those of the manual's own files that stand alone.
func (s *Sound) quantities(ok func(quantity) bool) []quantity {
	var all []quantity
	s.EachNode(func(n *model.Node) {
		if n.Shared {
			return
		}
		for i := range n.Attrs {
			a := &n.Attrs[i]
			if a.Def.Type != schema.Amount && a.Def.Type != schema.Setting && a.Def.Type != schema.Limits {
				continue
			}
			at := n.ValueSpan(a)
			if f, isFormula := a.Value.(*model.Formula); isFormula && (f == nil || f.Literal == nil) {
				continue
			}
			for _, m := range quoted.FindAllStringSubmatchIndex(at.Text(), -1) {
				q := quantity{n, a.Def, at.Sub(m[2], m[3]), at.Text()[m[2]:m[3]]}
				if strings.ContainsAny(q.text, "0123456789") && ok(q) {
					all = append(all, q)
				}
			}
		}
	})
	return all
}

func hasUnit(q quantity) bool { return unitOf(q.text) != "" }

// unlike gives a unit of another dimension.
func unlike(d calc.Dim) string {
	if d == calc.Length {
		return "kg"
	}
	return "mm"
}

func unknownUnit(w *Workshop) {
	for i, q := range w.quantities(hasUnit) {
		u := unitOf(q.text)
		wrong := []string{u + "x", "wug", "units", strings.ToUpper(u) + "Q"}[i%4]
		w.Put(q.unit(wrong), "%s: %s for %s", q.attr.Name, wrong, u)
	}
}

func wrongDimension(w *Workshop) {
	for i, q := range w.quantities(hasUnit) {
		if !q.attr.HasDim {
			continue
		}
		to := unlike(q.attr.Dim)
		if i%2 == 0 && q.attr.Dim != calc.Pressure {
			to = "bar"
		}
		w.Put(q.unit(to), "%s in %s: %s", q.attr.Name, to, q.text)
	}
	for _, s := range w.steps {
		if s.Kind.Yields == kind.Reading && s.Has("likely") && s.Has("accept") {
			for _, q := range w.quantities(func(q quantity) bool { return q.in == s.Node && q.attr.Name == "likely" && hasUnit(q) }) {
				w.Put(q.unit("kg"), "likely readings in kg: %s", q.text)
			}
		}
	}
}

func energyForTorque(w *Workshop) {
	torque := func(q quantity) bool { return q.attr.HasDim && q.attr.Dim == calc.Torque && hasUnit(q) }
	for i, q := range w.quantities(torque) {
		to := []string{"J", "kJ"}[i%2]
		w.Put(q.unit(to), "%s in %s: %s", q.attr.Name, to, q.text)
	}
}

func bareNumber(w *Workshop) {
	for i, q := range w.quantities(hasUnit) {
		if q.attr.HasDim && q.attr.Dim == calc.Plain || strings.Contains(q.text, "%") || strings.HasPrefix(q.text, "m") {
			continue
		}
		c := q.unit("")
		if c == nil {
			continue
		}
		bare := strings.TrimSpace(c.Edits[0].New)
		c = q.to(bare)
		if i%3 == 2 && !strings.ContainsAny(bare, " .±/–°") {
			c = replace(q.in, q.span.File.Span(int(q.span.Start)-1, int(q.span.End)+1), bare) // without its quotes
		}
		w.Put(c, "%s: %s for %s", q.attr.Name, bare, q.text)
	}
}

var decimal = regexp.MustCompile(`(\d)\.(\d)`)

func decimalComma(w *Workshop) {
	for i, q := range w.quantities(func(q quantity) bool { return decimal.MatchString(q.text) }) {
		text := decimal.ReplaceAllString(q.text, "$1,$2")
		if i%2 == 1 {
			done := false
			text = decimal.ReplaceAllStringFunc(q.text, func(m string) string {
				if done {
					return m
				}
				done = true
				return strings.Replace(m, ".", ",", 1)
			})
		}
		w.Put(q.to(text), "%s: %s", q.attr.Name, text)
	}
}

// ends takes a range apart at its two dots.
func ends(text string) (low, high, rest string, ok bool) {
	m := twoEnds.FindStringSubmatch(text)
	if m == nil || strings.Contains(m[1], "..") {
		return "", "", "", false
	}
	return m[1], m[3], m[4], true
}

func isRange(q quantity) bool { _, _, _, ok := ends(q.text); return ok }

func backwardsRange(w *Workshop) {
	for i, q := range w.quantities(isRange) {
		low, high, rest, _ := ends(q.text)
		text := high + []string{"..", " to ", "–"}[i%3] + low + rest
		if strings.ContainsAny(low+high, "-") {
			text = high + ".." + low + rest
		}
		w.Put(q.to(text), "%s: %s", q.attr.Name, text)
	}
}

func targetOutside(w *Workshop) {
	for i, n := range w.Own("limit") {
		l, ok := n.Limits("range", "")
		if !ok || l.Low == nil || l.High == nil || !constant(n, "range") || w.chosenBy(n) {
			continue
		}
		out := plus(*l.High, width(l), 2)
		if i%2 == 1 {
			out = plus(*l.Low, width(l), -1)
		}
		w.Put(Set(n, "target", quote(out.String())), "target %s outside the range", out)
		w.Put(Set(n, "target", quote(plus(*l.High, width(l), 1).String())), "target above the range")
	}
}

// chosenBy reports whether a choice aims at a limit, so that another target
// changes what is picked.
func (s *Sound) chosenBy(limit *model.Node) bool {
	for _, st := range s.steps {
		if st.Kind.Yields != kind.Pack {
			continue
		}
		for _, attr := range []string{"leaves", "makes"} {
			if f := st.Formula(attr, ""); f != nil && slices.ContainsFunc(f.Refs, func(r model.Ref) bool { return r.To == limit }) {
				return true
			}
		}
	}
	return false
}

func twoSystems(w *Workshop) {
	other := map[string]string{"mm": "in", "in": "mm", "N·m": "lb·ft", "lb·ft": "N·m", "lb·in": "N·m", "°C": "°F", "°F": "°C", "bar": "psi", "psi": "bar", "kg": "lb", "lb": "kg", "L": "gal"}
	between := func(q quantity) bool {
		return other[unitOf(q.text)] != "" && (isRange(q) || strings.Contains(q.text, "±"))
	}
	for i, q := range w.quantities(between) {
		u := unitOf(q.text)
		if low, high, rest, ok := ends(q.text); ok {
			w.Put(q.to(low+" "+u+[]string{"..", " to "}[i%2]+high+strings.Replace(rest, u, other[u], 1)), "%s: high end in %s", q.attr.Name, other[u])
			continue
		}
		nominal, deviation, _ := strings.Cut(q.text, "±")
		if !strings.Contains(deviation, "%") && !strings.Contains(nominal, u) {
			w.Put(q.to(strings.TrimSpace(nominal)+" "+u+" ±"+strings.Replace(deviation, u, other[u], 1)), "%s: tolerance in %s", q.attr.Name, other[u])
		}
	}
}

func temperatureForDifference(w *Workshop) {
	for i, s := range w.steps {
		for _, q := range w.quantities(func(q quantity) bool { return q.in == s.Node && q.attr.Name == "to" && unitOf(q.text) == "°C" }) {
			at := q.span.File.Span(int(q.span.Start)-1, int(q.span.End)+1)
			sum := []string{`"20 °C" + "80 °C"`, `"20 °C" * 4`}[i%2]
			w.Put(replace(s.Node, at, sum), "heat to %s", sum)
			w.Put(replace(s.Node, at, `"15 °C" + "90 °C"`), "two temperatures added")
		}
	}
}

func hyphenForRange(w *Workshop) {
	for i, q := range w.quantities(isRange) {
		low, high, rest, _ := ends(q.text)
		if strings.HasPrefix(high, "-") || strings.HasPrefix(low, "-") {
			continue
		}
		text := low + []string{"-", " - ", "-"}[i%3] + high + rest
		w.Put(q.to(text), "%s: %s", q.attr.Name, text)
	}
}
