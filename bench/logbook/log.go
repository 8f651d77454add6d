package logbook

import (
	"bytes"
	"fmt"
)

// maxLine bounds a line; a longer one is something else.
const maxLine = 1 << 20

// Log is a logbook as it was read.
type Log struct {
	Lines  []Line  // those that could be read, as they stand
	Faults []Fault // what is wrong, by line; empty for a whole logbook
	Torn   int     // bytes of a last line that was not written whole; it is lost

	end   int  // bytes up to the end of the last whole line
	bare  bool // the last line lacks its line end
	place map[string]int
}

// Line is one line of a logbook.
type Line struct {
	Entry
	Sum    string // its digest
	Number int    // in the file, from 1

	chain, index int         // which run of lines it belongs to, and where in it
	sees         map[int]int // of each other run, how many lines it was written after
}

// Fault is one thing that is wrong with a logbook.
type Fault struct {
	Line    int // 0 for the whole file
	Message string
	Reason  string
	Remedy  string
}

func (f Fault) Error() string { return f.Message }

const (
	reasonBroken = "A logbook that was changed proves nothing about the engine."
	remedyBroken = "Go back to a copy that is whole: the one on the other device, or the last backup. Write what is missing as new lines."
)

// Parse reads a logbook strictly. It never fails: what is wrong stands in Faults,
// and the lines that could be read are there to look at.
//
// A last line without its line end is kept where it is whole, and else is lost.
func Parse(data []byte) *Log {
	l := &Log{place: map[string]int{}}
	var raw [][]byte
	for rest := data; len(rest) > 0; {
		line, after, ended := bytes.Cut(rest, []byte{'\n'})
		if !ended && !whole(line) {
			l.Torn = len(line)
			break
		}
		l.bare = !ended
		raw = append(raw, line)
		l.end = len(data) - len(after)
		rest = after
	}
	l.read(raw)
	if len(l.Lines) == 0 && len(l.Faults) == 0 {
		l.fault(0, "This logbook is empty.", "Nothing says which engine it is for.", "Start it: record start.")
	}
	if len(l.Faults) == 0 {
		l.chains()
	}
	if len(l.Faults) == 0 {
		l.inOrder()
	}
	return l
}

// whole says whether a line without its line end was written to its end.
func whole(line []byte) bool {
	e, canonical, err := decode(line)
	return err == nil && canonical && e.fault() == ""
}

// Whole reports that nothing is wrong with the logbook; a torn last line is not
// counted, for nothing ever rested on it.
func (l *Log) Whole() bool { return len(l.Faults) == 0 }

// Find is the line with a digest, or with the beginning of one that no other has.
func (l *Log) Find(sum string) *Line {
	if i, ok := l.place[sum]; ok {
		return &l.Lines[i]
	}
	var found *Line
	if len(sum) >= 6 {
		for i := range l.Lines {
			if len(sum) < len(l.Lines[i].Sum) && l.Lines[i].Sum[:len(sum)] == sum {
				if found != nil {
					return nil
				}
				found = &l.Lines[i]
			}
		}
	}
	return found
}

// Heads are the digests of the lines that no other line was written after,
// sorted: one, or several after copies were merged. Whoever knows them can tell
// that a logbook was not cut off.
func (l *Log) Heads() []string {
	before := map[string]bool{}
	for _, line := range l.Lines {
		for _, p := range line.Prev {
			before[p] = true
		}
	}
	var heads []string
	for _, line := range l.Lines {
		if !before[line.Sum] {
			heads = append(heads, line.Sum)
		}
	}
	return sorted(heads)
}

func (l *Log) fault(line int, message, reason, remedy string) {
	l.Faults = append(l.Faults, Fault{line, message, reason, remedy})
}

func (l *Log) broken(line int, format string, args ...any) {
	l.fault(line, fmt.Sprintf(format, args...), reasonBroken, remedyBroken)
}

// read takes the lines in and follows the digests from one to the next.
func (l *Log) read(raw [][]byte) {
	sums := make([]string, len(raw))
	at := make(map[string]int, len(raw)) // where a digest stands in the file
	for i, line := range raw {
		sums[i] = DigestOf(line)
		if first, twice := at[sums[i]]; twice {
			l.broken(i+1, "Line %d repeats line %d.", i+1, first+1)
			continue
		}
		at[sums[i]] = i
	}
	before := 0 // n of the line above
	for i, line := range raw {
		if at[sums[i]] != i {
			continue
		}
		e, ok := l.decode(i+1, line)
		if !ok {
			before++
			continue
		}
		l.follow(i, &e, at, before)
		before = e.N
		l.place[sums[i]] = len(l.Lines)
		l.Lines = append(l.Lines, Line{Entry: e, Sum: sums[i], Number: i + 1})
	}
}

func (l *Log) decode(number int, line []byte) (Entry, bool) {
	if len(line) > maxLine {
		l.broken(number, "Line %d has more than %d bytes.", number, maxLine)
		return Entry{}, false
	}
	e, canonical, err := decode(line)
	switch {
	case err != nil:
		l.broken(number, "Line %d cannot be read: %v.", number, err)
		return e, false
	case e.fault() != "":
		l.broken(number, "Line %d %s.", number, e.fault())
		return e, false
	case !canonical:
		l.broken(number, "Line %d holds an entry in other bytes than it is written in.", number)
		return e, false
	}
	return e, true
}

// follow checks what line i was written after.
func (l *Log) follow(i int, e *Entry, at map[string]int, before int) {
	number := i + 1
	if i == 0 {
		switch {
		case e.Kind != Start || len(e.Prev) > 0:
			l.broken(number, "The logbook does not begin with its start: lines before line 1 are missing.")
		case e.N != 1:
			l.broken(number, "Line 1 calls itself line %d.", e.N)
		}
		return
	}
	if e.Kind == Start || len(e.Prev) == 0 {
		l.broken(number, "Line %d is not tied to the lines before it.", number)
		return
	}
	want, known := 1, true
	for _, p := range e.Prev {
		switch j, ok := at[p]; {
		case ok && j < i:
			if k, read := l.place[p]; read {
				want = max(want, l.Lines[k].N+1)
			} else {
				known = false // a line that could not be read has its fault
			}
		case ok:
			l.broken(number, "Line %d was written after line %d, which stands below it: lines were put in another order.", number, j+1)
			return
		case e.N == before+1:
			l.broken(i, "Line %d was changed after line %d had been written.", i, number)
			return
		case e.N > before+1:
			l.broken(number, "Before line %d, %s.", number, missing(e.N-before-1))
			return
		default:
			l.broken(number, "Line %d was written after a line that is not here: a line was changed or taken out.", number)
			return
		}
	}
	if known && e.N != want {
		l.broken(number, "Line %d calls itself %d and follows %d.", number, e.N, want-1)
	}
	if e.Kind == Correction {
		if j, ok := at[e.Line]; !ok || j >= i {
			l.broken(number, "Line %d corrects a line that does not stand above it.", number)
		}
	}
}

func missing(n int) string {
	if n == 1 {
		return "a line is missing"
	}
	return fmt.Sprintf("%d lines are missing", n)
}
