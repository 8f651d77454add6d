package bench

import (
	"strings"

	"fettle/calc"
	"fettle/lang/entry"
	"fettle/lang/model"
)

// Value is the option's value under the choice: the one picked, or its default.
func (c Choice) Value(option *model.Node) string {
	for _, p := range c {
		if p.Option == option {
			return p.Value
		}
	}
	return defaultOf(option)
}

// String writes the choice as on a command line: "ignition=coil, cooling=keel".
func (c Choice) String() string {
	words := make([]string, len(c))
	for i, p := range c {
		words[i] = p.Option.ID + "=" + p.Value
	}
	return strings.Join(words, ", ")
}

func defaultOf(option *model.Node) string {
	if d := option.Plain("default"); d != "" {
		return d
	}
	if names := option.Names("choices"); len(names) > 0 {
		return names[0]
	}
	return ""
}

// Choices lists the combinations of options to try: all of them where there are
// at most bound, else as few as show every pair of values together. Options
// that no `when` looks at are left out. There is at least one.
func Choices(m *model.Manual, bound int) []Choice {
	options := looked(m)
	total := 1
	for _, o := range options {
		if n := max(1, len(o.Names("choices"))); total <= bound {
			total *= n
		}
	}
	if total <= bound {
		return product(options)
	}
	return pairwise(options)
}

// looked lists the options that some `when` looks at, in source order.
func looked(m *model.Manual) []*model.Node {
	seen := map[*model.Node]bool{}
	m.EachNode(func(n *model.Node) {
		if f := n.Formula("when", ""); f != nil {
			for _, r := range f.Refs {
				if r.To != nil && r.To.Is(entry.Option) {
					seen[r.To] = true
				}
			}
		}
	})
	var all []*model.Node
	for _, o := range m.Of(entry.Option.Name) {
		if seen[o] && len(o.Names("choices")) > 0 {
			all = append(all, o)
		}
	}
	return all
}

func product(options []*model.Node) []Choice {
	all := []Choice{nil}
	for _, o := range options {
		var next []Choice
		for _, c := range all {
			for _, v := range o.Names("choices") {
				next = append(next, append(c[:len(c):len(c)], Pick{o, v}))
			}
		}
		all = next
	}
	return all
}

// pairwise adds choices until every two values of different options stand
// together in one. Each begins with the first pair that is still open and picks
// for the other options, in order, the value that closes most.
func pairwise(options []*model.Node) []Choice {
	values := make([][]string, len(options))
	for i, o := range options {
		values[i] = o.Names("choices")
	}
	type pair struct{ i, a, j, b int }
	done := map[pair]bool{}
	var all []Choice
	for i := range options {
		for a := range values[i] {
			for j := i + 1; j < len(options); j++ {
				for b := range values[j] {
					if done[pair{i, a, j, b}] {
						continue
					}
					pick := make([]int, len(options))
					for k := range pick {
						pick[k] = -1
					}
					pick[i], pick[j] = a, b
					for k := range pick {
						if pick[k] >= 0 {
							continue
						}
						best, most := 0, -1
						for v := range values[k] {
							n := 0
							for l, w := range pick {
								if w < 0 || l == k {
									continue
								}
								p := pair{k, v, l, w}
								if l < k {
									p = pair{l, w, k, v}
								}
								if !done[p] {
									n++
								}
							}
							if n > most {
								best, most = v, n
							}
						}
						pick[k] = best
					}
					c := make(Choice, len(options))
					for k, o := range options {
						c[k] = Pick{o, values[k][pick[k]]}
						for l := k + 1; l < len(options); l++ {
							done[pair{k, pick[k], l, pick[l]}] = true
						}
					}
					all = append(all, c)
				}
			}
		}
	}
	return all
}

// answer is what a condition comes to before the readings are known.
type answer uint8

const (
	maybe answer = iota
	yes
	no
)

func truth(b bool) answer {
	if b {
		return yes
	}
	return no
}

// holds says whether a condition holds under the choice at a place; no
// condition holds.
func (c Choice) holds(m *model.Manual, f *model.Formula, place string) answer {
	if f == nil || f.Expr == nil {
		return yes
	}
	return c.ask(m, f.Expr, place)
}

func (c Choice) ask(m *model.Manual, e calc.Expr, place string) answer {
	switch e := e.(type) {
	case *calc.Const:
		if t, ok := e.Value.(calc.Truth); ok {
			return truth(bool(t))
		}
	case *calc.Unary:
		switch x := c.ask(m, e.X, place); {
		case e.Op != calc.Not || x == maybe:
			return maybe
		default:
			return truth(x == no)
		}
	case *calc.Binary:
		switch e.Op {
		case calc.And, calc.Or:
			x, y := c.ask(m, e.X, place), c.ask(m, e.Y, place)
			decided := no // And
			if e.Op == calc.Or {
				decided = yes
			}
			switch {
			case x == decided || y == decided:
				return decided
			case x == maybe || y == maybe:
				return maybe
			}
			return x
		case calc.Equal, calc.NotEqual:
			x, okX := c.word(m, e.X, place)
			y, okY := c.word(m, e.Y, place)
			if okX && okY {
				return truth((x == y) == (e.Op == calc.Equal))
			}
		}
	}
	return maybe
}

// word is the word that an expression is: an option's value, a place, or itself.
func (c Choice) word(m *model.Manual, e calc.Expr, place string) (string, bool) {
	switch e := e.(type) {
	case *calc.Const:
		w, ok := e.Value.(calc.Word)
		return string(w), ok
	case *calc.Var:
		if e.Name == "place" {
			return place, place != ""
		}
		if o := m.Find(e.Name); o != nil && o.Is(entry.Option) {
			return c.Value(o), true
		}
	}
	return "", false
}
