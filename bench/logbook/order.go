package logbook

import (
	"container/heap"
	"sort"
	"strings"
)

func sorted(s []string) []string {
	sort.Strings(s)
	return s
}

// maxRuns bounds how often copies were written to apart from one another.
const maxRuns = 1000

// chains puts every line into a run of lines written one after the other, and
// notes what it knows of the other runs. A logbook kept on one device is one run.
func (l *Log) chains() {
	ends := map[int]int{} // run -> its last line
	next := 0
	for i := range l.Lines {
		line := &l.Lines[i]
		line.chain = -1
		for _, p := range line.Prev {
			before := &l.Lines[l.place[p]]
			if line.chain < 0 && ends[before.chain] == l.place[p] {
				line.chain, line.index = before.chain, before.index+1
			}
		}
		if line.chain < 0 {
			line.chain, line.index = next, 0
			if next++; next > maxRuns {
				l.broken(line.Number, "This logbook was written to in more than %d places at once.", maxRuns)
				return
			}
		}
		ends[line.chain] = i
		line.sees = l.known(line)
	}
}

// known joins what the lines before it know; runs of one device share one map.
func (l *Log) known(line *Line) map[int]int {
	if len(line.Prev) == 1 {
		before := &l.Lines[l.place[line.Prev[0]]]
		if before.chain == line.chain {
			return before.sees
		}
	}
	sees := map[int]int{}
	for _, p := range line.Prev {
		before := &l.Lines[l.place[p]]
		for c, n := range before.sees {
			sees[c] = max(sees[c], n)
		}
		if before.chain != line.chain {
			sees[before.chain] = max(sees[before.chain], before.index+1)
		}
	}
	return sees
}

// After reports that b was written by somebody who had a before them.
func (l *Log) After(b, a *Line) bool {
	if a.chain == b.chain {
		return b.index > a.index
	}
	return b.sees[a.chain] > a.index
}

// inOrder checks that the lines stand as Merge would put them. In one run they
// can stand in one order only, which the digests hold.
func (l *Log) inOrder() {
	for i, n := range order(l.Lines) {
		if i != n {
			l.broken(l.Lines[i].Number, "Line %d does not stand where it belongs: lines were put in another order.", l.Lines[i].Number)
			return
		}
	}
}

// order gives the places of lines in the one order that a logbook has them in: a
// line after those it was written after, and of several that could be next the
// earlier first, by digest where they are of one time.
func order(lines []Line) []int {
	at := make(map[string]int, len(lines))
	for i := range lines {
		at[lines[i].Sum] = i
	}
	waits := make([]int, len(lines))
	then := make([][]int, len(lines))
	q := &queue{lines: lines}
	for i := range lines {
		for _, p := range lines[i].Prev {
			waits[i]++
			then[at[p]] = append(then[at[p]], i)
		}
		if waits[i] == 0 {
			q.next = append(q.next, i)
		}
	}
	heap.Init(q)
	out := make([]int, 0, len(lines))
	for q.Len() > 0 {
		i := heap.Pop(q).(int)
		out = append(out, i)
		for _, j := range then[i] {
			if waits[j]--; waits[j] == 0 {
				heap.Push(q, j)
			}
		}
	}
	return out
}

type queue struct {
	lines []Line
	next  []int
}

func (q *queue) Len() int      { return len(q.next) }
func (q *queue) Swap(i, j int) { q.next[i], q.next[j] = q.next[j], q.next[i] }
func (q *queue) Push(x any)    { q.next = append(q.next, x.(int)) }

func (q *queue) Less(i, j int) bool {
	a, b := &q.lines[q.next[i]], &q.lines[q.next[j]]
	if t, u := a.Time(), b.Time(); !t.Equal(u) {
		return t.Before(u)
	}
	return strings.Compare(a.Sum, b.Sum) < 0
}

func (q *queue) Pop() any {
	last := len(q.next) - 1
	x := q.next[last]
	q.next = q.next[:last]
	return x
}
