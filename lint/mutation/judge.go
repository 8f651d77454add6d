package mutation

import (
	"slices"

	"fettle/lang/diag"
	"fettle/lang/source"
)

// Verdict is what became of a mutant.
type Verdict struct {
	Mutant
	Right     bool           // a right rule found it at a right place
	Elsewhere bool           // a right rule found it, but points at another place
	Other     bool           // only other rules had something to say
	Extra     []diag.Finding // said besides
	Best      *diag.Finding  // what a right rule said, or nil
	Err       error          // the mutant could not be made
}

// Missed reports whether nobody had anything to say.
func (v *Verdict) Missed() bool { return !v.Right && !v.Elsewhere && !v.Other }

// Judge lints a mutant and looks at what is said.
func Judge(m Mutant) Verdict {
	v := Verdict{Mutant: m}
	files, err := m.Source()
	if err != nil {
		v.Err = err
		return v
	}
	found, err := m.Sound.Check(files, m.Since)
	if err != nil {
		v.Err = err
		return v
	}
	known := map[string]int{}
	for said, n := range m.Sound.known {
		known[said] = n
	}
	best := -1
	var fresh []diag.Finding
	for _, f := range found {
		if key := said(f); known[key] > 0 {
			known[key]--
			continue
		}
		right := slices.Contains(m.Rules, f.Rule)
		here := right && m.points(f.Span)
		if best < 0 && right || here && !v.Right {
			best = len(fresh)
		}
		v.Right = v.Right || here
		v.Elsewhere = v.Elsewhere || right
		fresh = append(fresh, f)
	}
	v.Elsewhere = v.Elsewhere && !v.Right
	v.Other = best < 0 && len(fresh) > 0
	if best >= 0 {
		v.Best = &fresh[best]
	}
	for i, f := range fresh {
		if i != best {
			v.Extra = append(v.Extra, f)
		}
	}
	return v
}

// points reports whether a place in the mutant is one that a reader would point at.
func (m *Mutant) points(at source.Span) bool {
	first, last := at.Position().Line, at.EndPosition().Line
	for _, w := range m.Where {
		if w.Path() != at.Path() {
			continue
		}
		from := at.File.Position(m.moved(w.File, w.Start, false)).Line
		to := at.File.Position(m.moved(w.File, w.End, true)).Line
		if first <= to && from <= last {
			return true
		}
	}
	return false
}

// moved is where a byte of the sound source stands in the mutant: before what is
// put in at that place, or behind it.
func (m *Mutant) moved(f *source.File, at int32, behind bool) int {
	to := int(at)
	for _, e := range m.Edits {
		s := e.Span
		switch {
		case s.File != f || s.Start > at || s.Start == at && !behind:
		case s.End > at: // inside
			if behind {
				to += len(e.New) - int(at-s.Start)
			} else {
				to -= int(at - s.Start)
			}
		case s.End == at && s.Start < at && !behind:
			to += len(e.New) - int(s.End-s.Start)
		default:
			to += len(e.New) - int(s.End-s.Start)
		}
	}
	return to
}

// Tally counts the verdicts of one class.
type Tally struct {
	Class                                           *Class
	Mutants, Right, Elsewhere, Other, Missed, Extra int
	Short                                           []Verdict // not right, or with something extra
}

// Add counts a verdict.
func (t *Tally) Add(v Verdict) {
	t.Mutants++
	t.Extra += len(v.Extra)
	switch {
	case v.Right:
		t.Right++
	case v.Elsewhere:
		t.Elsewhere++
	case v.Other:
		t.Other++
		t.Extra -= 1 // what was said instead is counted as other
	default:
		t.Missed++
	}
	if !v.Right || len(v.Extra) > 0 {
		t.Short = append(t.Short, v)
	}
}
