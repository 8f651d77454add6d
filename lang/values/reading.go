package values

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// reading takes what was read at a place: one value, or what `take` makes of several.
func (e *Env) reading(r *result, s *model.Step, place string) {
	all := e.given.Readings[Key(s, place)]
	if len(all) == 0 {
		return
	}
	if len(all) > 1 {
		r.problem = disagree(s, place, all)
	}
	q, ok := taken(s, all)
	if ok {
		r.value = q
	}
}

// taken is the reading that counts.
func taken(s *model.Step, all []calc.Quantity) (calc.Quantity, bool) {
	if len(all) == 1 {
		return all[0], true
	}
	switch s.Word("take") {
	case "mean":
		sum := new(big.Rat)
		decimals := calc.Exact
		for _, q := range all {
			c := q.In(all[0].Unit)
			sum.Add(sum, c.Num())
			decimals = max(decimals, c.Decimals)
		}
		sum.Quo(sum, big.NewRat(int64(len(all)), 1))
		if decimals != calc.Exact {
			decimals++ // a mean is known finer than each of its readings
		}
		return calc.NewQuantity(sum, all[0].Unit, decimals), true
	case "largest":
		return slices.MaxFunc(all, calc.Quantity.Cmp), true
	case "smallest":
		return slices.MinFunc(all, calc.Quantity.Cmp), true
	}
	return calc.Quantity{}, false
}

// disagree is the problem of readings that lie further apart than they may.
func disagree(s *model.Step, place string, all []calc.Quantity) *Problem {
	within := s.Quantity("agree_within", place)
	if within == nil {
		return nil
	}
	low, high := slices.MinFunc(all, calc.Quantity.Cmp), slices.MaxFunc(all, calc.Quantity.Cmp)
	apart, err := high.Sub(low)
	if err != nil || apart.Cmp(*within) <= 0 {
		return nil
	}
	return &Problem{s, place,
		fmt.Sprintf("The readings of %s lie %s apart.", s.ID, apart),
		fmt.Sprintf("They must agree within %s; something moved or slipped.", within),
		"Clean, seat the instrument and read them all again."}
}

// ParseReading reads one reading as somebody gives it: an address such as
// `thrust_end.measure.float["left"]`, and its value, `1.02 mm`; several values of
// one step stand one after the other with ; between. A reading that is taken in
// spite of a problem, being far from what is likely, comes with a problem and a
// key; one that is refused comes with a problem and no key.
func ParseReading(m *model.Manual, address, value string) (key string, read []calc.Quantity, problem *Problem) {
	s, place, problem := find(m, address)
	if problem != nil {
		return "", nil, problem
	}
	refuse := func(message, reason, remedy string) (string, []calc.Quantity, *Problem) {
		return "", nil, &Problem{s, place, message, reason, remedy}
	}
	dim, known := dimension(s)
	parts := strings.Split(value, ";")
	for i, part := range parts {
		part = strings.TrimSpace(part)
		ctx := calc.Context{Want: dim, HasWant: known, Gallon: m.Word("gallon")}
		lit, problems := calc.ParseLiteral(part, ctx)
		if i < len(parts)-1 && len(problems) > 0 { // 1.02; 1.03; 1.02 mm
			if unit := unitBehind(parts[len(parts)-1]); unit != "" {
				lit, problems = calc.ParseLiteral(part+" "+unit, ctx)
			}
		}
		if len(problems) > 0 {
			p := problems[0]
			return refuse(address+": "+p.Message, p.Reason, p.Remedy)
		}
		if lit.Nominal == nil {
			return refuse(address+": "+part+" is a range, and a reading is one value.", "Nothing can be worked out from a range.", "Give the value that was read.")
		}
		read = append(read, *lit.Nominal)
	}
	if most := readings(s); len(read) > most {
		return refuse(fmt.Sprintf("%s is read %d times, and %d values are given.", address, most, len(read)),
			"Nobody can tell which of them count.", "Give the values that the step asks for, with ; between.")
	}
	for _, q := range read {
		if out := beyond(s, q); out != nil {
			return refuse(fmt.Sprintf("%s cannot be %s.", address, q), out.Reason, "Look at the unit and the decimal point, and read it again.")
		}
	}
	key = Key(s, place)
	for _, q := range read {
		if l, ok := s.Limits("likely", place); ok && !l.Contain(q) {
			return key, read, &Problem{s, place, fmt.Sprintf("%s is far from what is likely: %s.", address, q),
				"Likely is " + calc.Style{}.Limits(l.Low, l.High).First + ".", "Look at the unit and the decimal point, and measure again."}
		}
	}
	return key, read, disagree(s, place, read)
}

// unitBehind is the unit at the end of a value.
func unitBehind(value string) string {
	return strings.TrimLeft(strings.TrimSpace(value), "+-0123456789./ ")
}

// readings is how many values a step reads under one key.
func readings(s *model.Step) int {
	n := s.Whole("repeat", "", 1)
	if s.Places != nil || s.Word("take") != "each" {
		if names := s.Names("spots"); len(names) > 0 {
			n *= len(names)
		}
		n *= s.Whole("spots", "", 1)
	}
	return n
}

// find is the step and place that an address names.
func find(m *model.Manual, address string) (*model.Step, string, *Problem) {
	name, place := strings.TrimSpace(address), ""
	name = strings.TrimPrefix(name, "procedure.")
	if i := strings.IndexByte(name, '['); i >= 0 {
		place = strings.Trim(name[i:], `[]"' `)
		name = strings.TrimSpace(name[:i])
	}
	s := stepAt(m, name)
	if s == nil || s.Kind.Yields != kind.Reading {
		return nil, "", unknownReading(m, address, s)
	}
	keys := Keys(s)
	switch {
	case place == "" && keys[0] == "":
		return s, "", nil
	case slices.Contains(keys, place):
		return s, place, nil
	case keys[0] == "":
		return nil, "", &Problem{s, "", "`" + s.Key() + "` is read at one place.", "It has no place called " + place + ".", "Leave the brackets out."}
	}
	return nil, "", &Problem{s, "", "`" + address + "` does not say where it is read.", "It is read at " + strings.Join(keys, ", ") + ".",
		"Write " + Key(s, keys[0]) + "."}
}

func unknownReading(m *model.Manual, address string, s *model.Step) *Problem {
	p := &Problem{Message: "There is no reading called `" + address + "`.", Reason: "Nothing rests on it.",
		Remedy: "This manual reads nothing."}
	if s != nil {
		p.Message = "`" + address + "` is not read; it is worked out."
	}
	var keys []string
	m.EachStep(func(s *model.Step) {
		if s.Kind.Yields == kind.Reading {
			for _, k := range Keys(s) {
				keys = append(keys, Key(s, k))
			}
		}
	})
	const most = 12
	if n := len(keys); n > most {
		keys = append(keys[:most], fmt.Sprintf("and %d more", n-most))
	}
	if len(keys) > 0 {
		p.Remedy = "It reads: " + strings.Join(keys, ", ") + "."
	}
	return p
}

// dimension is that of what a step reads.
func dimension(s *model.Step) (calc.Dim, bool) {
	for _, name := range [...]string{"likely", "accept"} {
		if l, ok := s.Limits(name, ""); ok {
			return l.Type().Dim, true
		}
	}
	for _, t := range s.AllRefs("tools") {
		if t.To == nil {
			continue
		}
		if reads := reads(t.To); len(reads) == 1 {
			return entry.ReadingDim(reads[0])
		}
	}
	return calc.Dim{}, false
}

// reads says what a tool reads: what it states, or what its kind is known to.
func reads(tool *model.Node) []string {
	if w := tool.Plain("reads"); w != "" {
		return []string{w}
	}
	words, _ := entry.Instrument(tool.Plain("kind"))
	return words
}

// beyond is the range of the instruments where q lies outside all of them.
func beyond(s *model.Step, q calc.Quantity) *Problem {
	var out *Problem
	for _, t := range s.AllRefs("tools") {
		if t.To == nil {
			continue
		}
		l, ok := t.To.Limits("range", "")
		if !ok || !l.Type().Dim.Fits(q.Dim()) {
			continue
		}
		if l.Contain(q) {
			return nil
		}
		out = &Problem{Step: s, Reason: t.To.Title() + " reads " + calc.Style{}.Limits(l.Low, l.High).First + "."}
	}
	return out
}
