package logbook

import (
	"slices"
	"sort"
	"strings"
)

// At is a step at a place; Place is "" for a step that is at no place, and the
// spot for one of which each spot counts.
type At struct{ Step, Place string }

func (a At) String() string {
	if a.Place == "" {
		return a.Step
	}
	return a.Step + `["` + a.Place + `"]`
}

// State is what a logbook says once corrections are made. It knows no manual:
// addresses are those of the revision that was in force.
type State struct {
	Start     *Line
	Revision  *Line // the start, or the last change of revision; nil while copies disagree
	Steps     map[At]*Fact
	Pieces    map[PieceOf]*Fact
	Notes     []*Line
	Conflicts []Conflict // in the order of the lines
}

// PieceOf is a size of a graded part.
type PieceOf struct{ Part, Size string }

// Fact is what stands of a step at a place, or of the pieces of a size.
type Fact struct {
	Line     *Line    // that stands; nil while copies disagree, and where all was withdrawn
	Values   []string // of a reading or pieces, corrected
	Tool     string   // that it was read with, corrected
	Lines    []*Line  // all about it but corrections, in the order of the logbook
	Revision *Line    // that was in force when Line was written; nil where nobody knows
}

// Is reports the kind of the line that stands; false for all of a nil Fact.
func (f *Fact) Is(kinds ...Kind) bool {
	return f != nil && f.Line != nil && slices.Contains(kinds, f.Line.Kind)
}

// Conflict is what two devices wrote without knowing of one another, and
// cannot both be so. It stands until a line settles it that was written after both.
type Conflict struct {
	About string // the address, the size, or "the revision"
	Lines []*Line
}

// StateOf works out what a whole logbook says.
func StateOf(l *Log) *State {
	s := &State{Steps: map[At]*Fact{}, Pieces: map[PieceOf]*Fact{}}
	b := builder{l: l, s: s, fixes: map[string][]*Line{}}
	for i := range l.Lines {
		b.sort(&l.Lines[i])
	}
	b.settle()
	sort.SliceStable(s.Conflicts, func(i, j int) bool {
		return s.Conflicts[i].Lines[0].Number < s.Conflicts[j].Lines[0].Number
	})
	return s
}

type builder struct {
	l         *Log
	s         *State
	fixes     map[string][]*Line // corrections, by the digest of the line they come back to
	revisions []*Line
}

func (b *builder) sort(line *Line) {
	switch line.Kind {
	case Start:
		b.s.Start = line
		b.revisions = append(b.revisions, line)
	case Revision:
		b.revisions = append(b.revisions, line)
	case Correction:
		root := line
		for root != nil && root.Kind == Correction {
			root = b.l.Find(root.Line)
		}
		if root != nil {
			b.fixes[root.Sum] = append(b.fixes[root.Sum], line)
		}
	case Piece:
		enter(b.s.Pieces, PieceOf{line.Part, line.Size}, line)
	case Note:
		b.s.Notes = append(b.s.Notes, line)
	default:
		enter(b.s.Steps, At{line.Step, line.Place}, line)
	}
}

func enter[K comparable](facts map[K]*Fact, at K, line *Line) {
	f := facts[at]
	if f == nil {
		f = &Fact{}
		facts[at] = f
	}
	f.Lines = append(f.Lines, line)
}

func (b *builder) settle() {
	last := b.last(b.revisions)
	if alike(last, func(x *Line) string { return x.Entry.Revision + " " + x.Digest }) {
		b.s.Revision = last[len(last)-1]
	} else {
		b.s.Conflicts = append(b.s.Conflicts, Conflict{"the revision in force", last})
	}
	for at, f := range b.s.Steps { // settles each by itself; conflicts are sorted after
		b.fact(f, at.String())
	}
	for at, f := range b.s.Pieces {
		b.fact(f, "part."+at.Part+", "+at.Size)
	}
	b.s.Notes = slices.DeleteFunc(b.s.Notes, func(n *Line) bool { _, withdrawn, _ := b.corrected(n); return withdrawn })
}

// fact finds which line stands, and its values.
func (b *builder) fact(f *Fact, about string) {
	var standing []*Line
	values := map[*Line]*Line{} // a line, and the one that holds its values
	for _, line := range f.Lines {
		by, withdrawn, ok := b.corrected(line)
		if !ok {
			b.s.Conflicts = append(b.s.Conflicts, Conflict{about, b.last(b.fixes[line.Sum])})
			return
		}
		if !withdrawn {
			standing = append(standing, line)
			values[line] = by
		}
	}
	last := b.last(standing)
	if len(last) == 0 {
		return
	}
	if !alike(last, func(x *Line) string { return meaning(x, values[x]) }) {
		b.s.Conflicts = append(b.s.Conflicts, Conflict{about, last})
		return
	}
	f.Line = last[len(last)-1]
	by := values[f.Line]
	f.Values, f.Tool = by.Values, f.Line.Tool
	if by.Tool != "" {
		f.Tool = by.Tool
	}
	f.Revision = b.inForce(f.Line)
}

// meaning is what two lines must share to say the same.
func meaning(line, values *Line) string {
	kind := line.Kind
	return string(kind) + "\x00" + strings.Join(values.Values, "\x00")
}

// corrected is the line that holds the values of a line: itself, or its last
// correction. ok is false where copies correct it in different ways.
func (b *builder) corrected(line *Line) (by *Line, withdrawn, ok bool) {
	last := b.last(b.fixes[line.Sum])
	if len(last) == 0 {
		return line, false, true
	}
	if !alike(last, func(x *Line) string { return strings.Join(x.Values, "\x00") }) {
		return nil, false, false
	}
	by = last[len(last)-1]
	return by, len(by.Values) == 0, true
}

// inForce is the revision under which a line was written; nil where copies
// disagreed then.
func (b *builder) inForce(line *Line) *Line {
	var known []*Line
	for _, r := range b.revisions {
		if b.l.After(line, r) {
			known = append(known, r)
		}
	}
	last := b.last(known)
	if len(last) == 0 || !alike(last, func(x *Line) string { return x.Digest }) {
		return nil
	}
	return last[len(last)-1]
}

// last are the lines that none of the others was written after.
func (b *builder) last(lines []*Line) []*Line {
	if n := len(lines); n > 0 && lines[0].chain == lines[n-1].chain && !b.runs(lines) {
		return lines[n-1:]
	}
	var out []*Line
	for _, x := range lines {
		if !slices.ContainsFunc(lines, func(y *Line) bool { return b.l.After(y, x) }) {
			out = append(out, x)
		}
	}
	return out
}

// runs reports lines of more than one run.
func (b *builder) runs(lines []*Line) bool {
	return slices.ContainsFunc(lines, func(x *Line) bool { return x.chain != lines[0].chain })
}

func alike(lines []*Line, of func(*Line) string) bool {
	for _, x := range lines {
		if of(x) != of(lines[0]) {
			return false
		}
	}
	return true
}
