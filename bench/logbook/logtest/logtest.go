// Package logtest keeps logbooks for tests of any package. It is not part of the
// program.
package logtest

import (
	"fmt"
	"math/big"
	"time"

	"github.com/stretchr/testify/require"

	"fettle/bench"
	"fettle/bench/logbook"
	"fettle/bench/revision"
	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// Book is a logbook in memory, written to as record does: whatever Check
// refuses fails the test.
type Book struct {
	T      require.TestingT
	Manual *model.Manual
	Digest string
	Log    *logbook.Log
	Now    time.Time
	Read   map[string]string // readings to give, by key; others lie in the middle
	By     string            // who does the work
	Second string            // who releases holds

	// On reads the book against the manual; nil reads it as it stands.
	On func(*model.Manual, *logbook.Log) *logbook.Build
}

// Start begins the book of serial 7.
func Start(t require.TestingT, m *model.Manual, options map[string]string) *Book {
	b := &Book{T: t, Manual: m, Digest: revision.Digest(m), Now: time.Date(2026, 5, 30, 8, 0, 0, 0, time.UTC), By: "HB", Second: "KM"}
	b.Begin("7", options)
	return b
}

// Begin writes the first line.
func (b *Book) Begin(serial string, options map[string]string) {
	b.Read = map[string]string{}
	e, r := logbook.StartOf(b.Manual, b.Digest, serial, options)
	require.Nil(b.T, r)
	e.N, e.Prev, e.By, e.At = 1, []string{}, b.By, b.Now.Format(time.RFC3339)
	b.Log = logbook.Parse(append(logbook.Encode(&e), '\n'))
	require.Empty(b.T, b.Log.Faults)
}

// Build is the build as it stands.
func (b *Book) Build() *logbook.Build {
	if b.On != nil {
		return b.On(b.Manual, b.Log)
	}
	return logbook.NewBuild(b.Manual, b.Digest, b.Log)
}

// Write adds an entry, by the builder where it does not say by whom.
func (b *Book) Write(e logbook.Entry) {
	b.Now = b.Now.Add(time.Minute)
	if e.At == "" {
		e.At = b.Now.Format(time.RFC3339)
	}
	if e.By == "" {
		e.By = b.By
	}
	_, r := b.Build().Check(&e)
	require.Nil(b.T, r, "%+v", e)
	b.Raw(e)
}

// Raw adds an entry that nobody checks.
func (b *Book) Raw(e logbook.Entry) {
	e.Prev, e.N = b.Log.Heads(), 0
	for _, p := range e.Prev {
		e.N = max(e.N, b.Log.Find(p).N)
	}
	e.N++
	b.Log = logbook.Parse(append(append(b.Log.Bytes(), logbook.Encode(&e)...), '\n'))
	require.Empty(b.T, b.Log.Faults)
}

// Adopt puts another revision in force.
func (b *Book) Adopt(m *model.Manual) {
	d := revision.Digest(m)
	e, r := b.Build().RevisionOf(m, d)
	require.Nil(b.T, r)
	e.By, e.At = b.By, b.Now.Format(time.RFC3339)
	b.Raw(e)
	b.Manual, b.Digest = m, d
}

// Acts are the acts of this build in the order of the work.
func (b *Book) Acts() []bench.Act {
	var c bench.Choice
	given := b.Build().Given
	for _, o := range b.Manual.Of("option") {
		c = append(c, bench.Pick{Option: o, Value: given.Options[o.ID]})
	}
	return bench.Run(b.Manual, c).Acts
}

// Upto does the work up to a step, that step included; "" does all of it.
func (b *Book) Upto(key string) {
	for _, a := range b.Acts() {
		b.Do(a.Step, a.Place)
		if a.Step.Key() == key {
			return
		}
	}
	require.Empty(b.T, key, "there is no such step")
}

// Do records one step at a place as done well. What is on record as done, and
// what this build leaves out, is passed over.
func (b *Book) Do(s *model.Step, place string) {
	build := b.Build()
	if done, known := build.Env.Done(s, place); known && !done {
		return
	}
	keys := []string{place}
	if all := values.Keys(s); place == "" && all[0] != "" {
		keys = all
	}
	for _, key := range keys {
		if build.Stands(s, key) {
			continue
		}
		e := logbook.Entry{Kind: logbook.Done, Step: s.Key(), Place: key}
		switch {
		case logbook.Does(s, kind.Stops):
			e.Kind, e.By, e.Role = logbook.Release, b.Second, s.Plain("release")
			if e.Role == "" {
				e.Role = "second person"
			}
		case s.Kind.Yields == kind.Reading:
			e.Kind, e.Values = logbook.Reading, []string{b.reading(build, s, key)}
		}
		b.Write(e)
	}
}

func (b *Book) reading(build *logbook.Build, s *model.Step, place string) string {
	if v := b.Read[values.Key(s, place)]; v != "" {
		return v
	}
	for _, name := range []string{"accept", "likely"} {
		f := s.Formula(name, place)
		if f == nil {
			continue
		}
		v, p := calc.Eval(f.Expr, build.Env.At(place))
		if p != nil {
			continue
		}
		l, ok := v.(calc.Limits)
		switch {
		case !ok:
		case l.Low != nil && l.High != nil:
			mid := new(big.Rat).Add(l.Low.Num(), l.High.In(l.Low.Unit).Num())
			mid.Quo(mid, big.NewRat(2, 1))
			return calc.NewQuantity(mid, l.Low.Unit, max(l.Low.Decimals, l.High.Decimals)).String()
		case l.Low != nil:
			return l.Low.String()
		case l.High != nil:
			return l.High.String()
		}
	}
	require.Fail(b.T, fmt.Sprintf("nobody says what %s reads", s.Key()))
	return ""
}
