package logbook

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// grow writes random lines to a logbook; what they say comes from a few steps
// and values, so that copies disagree often.
func grow(t *rapid.T, l *Log, label string) *Log {
	for i := range rapid.IntRange(0, 5).Draw(t, label) {
		e := Entry{At: at(rapid.IntRange(1, 30).Draw(t, "minute")), By: rapid.SampledFrom([]string{"HB", "KM"}).Draw(t, "by")}
		step := fmt.Sprintf("p.measure.%c", 'a'+rune(rapid.IntRange(0, 2).Draw(t, "step")))
		value := fmt.Sprintf("0.%d mm", rapid.IntRange(1, 3).Draw(t, "value"))
		switch rapid.IntRange(0, 3).Draw(t, "kind") {
		case 0:
			e.Kind, e.Step, e.Values = Reading, step, []string{value}
		case 1:
			e.Kind, e.Step = Done, step
		case 2:
			e.Kind, e.Step, e.Text = Undone, step, fmt.Sprint(label, i)
		case 3:
			k := rapid.IntRange(0, len(l.Lines)-1).Draw(t, "corrected")
			e.Kind, e.Line, e.Text = Correction, l.Lines[k].Sum, "wrong"
			if rapid.Bool().Draw(t, "with values") {
				e.Values = []string{value}
			}
			if k == 0 {
				e = Entry{Kind: Note, At: e.At, By: e.By, Text: "nothing to correct"}
			}
		}
		l = add(t, l, e)
	}
	return l
}

func merge(t require.TestingT, a, b *Log) *Log {
	m, err := Merge(a, b)
	require.NoError(t, err)
	require.Empty(t, m.Faults)
	return m
}

// Merging is that of sets: order and repetition make no difference, and no line
// is lost or changed.
func TestMergeIsThatOfSets(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		base := grow(t, begin(t), "base")
		a, b := grow(t, base, "a"), grow(t, base, "b")
		c := grow(t, merge(t, a, base), "c")
		ab := merge(t, a, b)
		require.Equal(t, ab.Bytes(), merge(t, b, a).Bytes(), "commutative")
		require.Equal(t, ab.Bytes(), merge(t, ab, a).Bytes(), "idempotent")
		require.Equal(t, a.Bytes(), merge(t, a, a).Bytes())
		require.Equal(t, merge(t, ab, c).Bytes(), merge(t, a, merge(t, b, c)).Bytes(), "associative")
		for _, of := range []*Log{a, b} {
			for _, line := range of.Lines {
				require.Equal(t, line.Entry, ab.Find(line.Sum).Entry)
			}
		}
		// Work goes on after a merge, and merges again.
		d := grow(t, ab, "d")
		require.Equal(t, d.Bytes(), merge(t, d, b).Bytes())
		require.Equal(t, d.Bytes(), merge(t, a, d).Bytes())
	})
}

// What stands rests on the lines alone, and every conflict is one that a line
// written after it can settle.
func TestConflictsCanBeSettled(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		base := grow(t, begin(t), "base")
		m := merge(t, grow(t, base, "a"), grow(t, base, "b"))
		require.Empty(t, StateOf(base).Conflicts, "one device never disagrees with itself")
		for range 20 {
			s := StateOf(m)
			if len(s.Conflicts) == 0 {
				return
			}
			c := s.Conflicts[0].Lines
			require.Greater(t, len(c), 1)
			for i, x := range c {
				for _, y := range c[i+1:] {
					require.False(t, m.After(x, y) || m.After(y, x), "who knew of the other settles it")
				}
			}
			e := Entry{Kind: Correction, At: at(60), By: "HB", Line: c[0].Sum, Text: "settled", Values: []string{"0.9 mm"}}
			if c[0].Kind != Correction {
				e = Entry{Kind: Reading, At: at(60), By: "HB", Step: c[0].Step, Values: []string{"0.9 mm"}}
			}
			m = add(t, m, e)
		}
		require.Fail(t, "conflicts without end")
	})
}

func TestTwoReadingsOfOneAddressAreAConflict(t *testing.T) {
	read := func(l *Log, by, value string) *Log {
		return add(t, l, Entry{Kind: Reading, At: at(5), By: by, Step: "p.measure.a", Place: "left", Values: []string{value}})
	}
	base := begin(t)
	m := merge(t, read(base, "HB", "0.10 mm"), read(base, "KM", "0.12 mm"))
	s := StateOf(m)
	require.Len(t, s.Conflicts, 1)
	require.Equal(t, `p.measure.a["left"]`, s.Conflicts[0].About)
	require.Len(t, s.Conflicts[0].Lines, 2)
	fact := s.Steps[At{"p.measure.a", "left"}]
	require.Nil(t, fact.Line, "nothing is guessed")

	same := StateOf(merge(t, read(base, "HB", "0.10 mm"), read(base, "KM", "0.10 mm")))
	require.Empty(t, same.Conflicts, "both read the same")
	require.Equal(t, []string{"0.10 mm"}, same.Steps[At{"p.measure.a", "left"}].Values)

	m = read(m, "HB", "0.11 mm")
	require.Empty(t, StateOf(m).Conflicts, "read again by somebody who knew of both")
}

func TestCopiesThatFollowTwoRevisions(t *testing.T) {
	base := begin(t)
	change := func(letter string, d string) *Log {
		return add(t, base, Entry{Kind: Revision, At: at(9), By: "HB", Revision: letter, Digest: d})
	}
	s := StateOf(merge(t, change("C", DigestOf([]byte("C"))), change("D", DigestOf([]byte("D")))))
	require.Nil(t, s.Revision)
	require.Equal(t, "the revision in force", s.Conflicts[0].About)
}

func TestCorrections(t *testing.T) {
	l := begin(t)
	l = add(t, l, Entry{Kind: Reading, At: at(1), By: "HB", Step: "p.measure.a", Values: []string{"0.1 mm"}})
	first := l.Lines[1].Sum
	stands := func() string {
		f := StateOf(l).Steps[At{"p.measure.a", ""}]
		if f.Line == nil {
			return "nothing"
		}
		return f.Values[0]
	}
	correct := func(line string, values ...string) {
		l = add(t, l, Entry{Kind: Correction, At: at(2), By: "HB", Line: line, Values: values, Text: "slip"})
	}
	correct(first, "0.2 mm")
	require.Equal(t, "0.2 mm", stands())
	correct(l.Lines[2].Sum, "0.3 mm")
	require.Equal(t, "0.3 mm", stands(), "a correction is corrected")
	l = add(t, l, Entry{Kind: Reading, At: at(3), By: "HB", Step: "p.measure.a", Values: []string{"0.4 mm"}})
	second := l.Lines[4].Sum
	correct(first, "0.5 mm")
	require.Equal(t, "0.4 mm", stands(), "an older reading is corrected, the newer one stands")
	correct(second)
	require.Equal(t, "0.5 mm", stands(), "the newer one is withdrawn, the older one stands")
	correct(first)
	require.Equal(t, "nothing", stands())
}

func TestOtherEnginesDoNotMerge(t *testing.T) {
	e := startEntry()
	e.Serial = "S2-0118"
	_, err := Merge(begin(t), Parse(append(Encode(&e), '\n')))
	require.ErrorIs(t, err, ErrOtherEngine)
	_, err = Merge(begin(t), Parse([]byte("oil\n")))
	require.ErrorIs(t, err, ErrNotWhole)
}
