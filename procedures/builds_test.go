package procedures_test

import (
	"fmt"
	"hash/fnv"
	"math/big"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"fettle/bench"
	"fettle/bench/logbook"
	"fettle/bench/logbook/logtest"
	"fettle/bench/revision"
	"fettle/bench/rework"
	"fettle/calc"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
)

// builder builds an engine on Saturdays.
type builder struct {
	*logtest.Book
	serial string
	issued func(string) *model.Manual
}

func begin(t *testing.T, all []edition, serial, by, second string, day time.Time, options map[string]string) *builder {
	m := all[0].model
	b := &builder{Book: &logtest.Book{T: t, Manual: m, Digest: revision.Digest(m), Now: day, By: by, Second: second}, serial: serial, issued: issuedOf(all)}
	b.On = func(m *model.Manual, l *logbook.Log) *logbook.Build {
		c, err := rework.Carry(m, l, b.issued)
		require.NoError(t, err)
		return c.Build()
	}
	b.Begin(serial, options)
	return b
}

func issuedOf(all []edition) func(string) *model.Manual {
	known := map[string]*model.Manual{}
	for _, e := range all {
		known[revision.Digest(e.model)] = e.model
	}
	return func(digest string) *model.Manual { return known[digest] }
}

// work does everything up to a step, that step included.
func (b *builder) work(upto string) {
	var last *model.Node
	for _, a := range b.Acts() {
		if last != nil && a.Step.Procedure != last && b.Now.Hour() >= 15 { // enough for today
			b.Now = time.Date(b.Now.Year(), b.Now.Month(), b.Now.Day()+7, 8, 50, 0, 0, b.Now.Location())
		}
		last = a.Step.Procedure
		b.Now = b.Now.Add(lasts(a.Step))
		if a.Step.Kind.Yields == kind.Reading {
			keys := []string{a.Place}
			if all := values.Keys(a.Step); a.Place == "" {
				keys = all
			}
			for _, k := range keys {
				b.read(a, k)
			}
		}
		b.Do(a.Step, a.Place)
		if a.Step.Key() == upto {
			return
		}
	}
	require.Fail(b.T, "there is no such step", upto)
}

func lasts(s *model.Step) time.Duration {
	total := time.Duration(0)
	for _, name := range []string{"takes", "for"} {
		if f := s.Formula(name, ""); f != nil && f.Quantity() != nil {
			seconds, _ := f.Quantity().Base().Float64()
			total += time.Duration(seconds) * time.Second
		}
	}
	return total.Round(time.Minute)
}

// read settles what will be read: what a choice of pieces promised, else near
// the middle of what is accepted or likely, each engine a little otherwise.
func (b *builder) read(a bench.Act, place string) {
	s, key := a.Step, values.Key(a.Step, place)
	if b.Read[key] != "" {
		return
	}
	build := b.Build()
	l, ok := limits(build, s, place)
	if !ok {
		return
	}
	digits := max(l.Low.Decimals, l.High.Decimals)
	q := l.Low
	for _, other := range s.Procedure.Steps {
		if p := build.Env.Pack(other, place); p != nil && limitOf(other) != nil && limitOf(other) == limitOf(s) {
			r := calc.NewQuantity(p.Result.In(l.Low.Unit).Num(), l.Low.Unit, digits)
			q = &r
		}
	}
	if q == l.Low {
		h := fnv.New32a()
		fmt.Fprint(h, b.serial, key)
		mid := new(big.Rat).Add(l.Low.Num(), l.High.In(l.Low.Unit).Num())
		mid.Quo(mid, big.NewRat(2, 1))
		unit := new(big.Rat).SetFrac(big.NewInt(1), new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(digits)), nil))
		whole := new(big.Int).Quo(new(big.Rat).Quo(mid, unit).Num(), new(big.Rat).Quo(mid, unit).Denom())
		at := new(big.Rat).Mul(unit, new(big.Rat).SetInt(whole.Add(whole, big.NewInt(int64(h.Sum32()%3)-1))))
		if near := calc.NewQuantity(at, l.Low.Unit, digits); l.Contain(near) {
			q = &near
		}
	}
	n := max(s.Whole("repeat", place, 1), 1)
	if s.Word("take") != "each" {
		n = max(n, len(s.Names("spots")))
	}
	b.Read[key] = strings.TrimSuffix(strings.Repeat(q.String()+"; ", n), "; ")
}

func limits(build *logbook.Build, s *model.Step, place string) (calc.Limits, bool) {
	for _, name := range []string{"accept", "likely"} {
		f := s.Formula(name, place)
		if f == nil {
			continue
		}
		if v, p := calc.Eval(f.Expr, build.Env.At(place)); p == nil {
			if l, ok := v.(calc.Limits); ok && l.Low != nil && l.High != nil {
				return l, true
			}
		}
	}
	return calc.Limits{}, false
}

// limitOf is the limit that a step judges by.
func limitOf(s *model.Step) *model.Node {
	for _, name := range []string{"leaves", "makes", "accept"} {
		if f := s.Formula(name, ""); f != nil && len(f.Refs) == 1 {
			return f.Refs[0].To
		}
	}
	return nil
}

// half is serial 031, built to revision B as far as the barrels. Its float is
// wide: inside what B allows, and outside what D does.
func half(t *testing.T, all []edition) *logbook.Log {
	b := begin(t, all, "031", "TW", "AB", time.Date(2026, 9, 5, 9, 0, 0, 0, time.UTC), map[string]string{"ignition": "magneto", "cooling": "keel"})
	b.Read["crankshaft.measure.end_play"] = "1.04 mm; 1.05 mm; 1.03 mm"
	b.work("crankshaft.measure.end_play")
	wrong := b.Log.Lines[len(b.Log.Lines)-1]
	b.Write(logbook.Entry{Kind: logbook.Correction, Line: wrong.Sum, Values: []string{"1.04 mm", "1.04 mm", "1.04 mm"}, Text: "The dial had slipped in its holder; read again."})
	b.work("barrels.measure.deck_final")
	b.Write(logbook.Entry{Kind: logbook.Note, Text: "Weather too cold for sealant. The sump waits for spring."})
	return b.Log
}

// whole is serial 024, begun to revision B, carried on to C, and ready to be
// turned over. Its float is inside what D allows.
func whole(t *testing.T, all []edition) *logbook.Log {
	b := begin(t, all, "024", "RS", "JM", time.Date(2026, 5, 30, 9, 0, 0, 0, time.UTC), nil)
	b.Read["crankshaft.measure.end_play"] = "0.94 mm; 0.94 mm; 0.94 mm"
	b.work("heads.drain.leak_test")
	b.Now = time.Date(2026, 8, 15, 9, 0, 0, 0, time.UTC)
	p, err := rework.Make(all[1].model, b.Log, b.issued)
	require.NoError(t, err)
	require.True(t, p.Empty())
	b.Adopt(all[1].model)
	b.work("turn_over.measure.battery")
	return b.Log
}

var builds = []struct {
	serial string
	make   func(*testing.T, []edition) *logbook.Log
}{{"031", half}, {"024", whole}}

// The logbooks of the demo are whole, belong to the issued revisions, and ask of
// revision D what the golden files say.
func TestBuilds(t *testing.T) {
	all := editions(t)
	for _, build := range builds {
		name := filepath.Join("sedge_2", "builds", build.serial+".log")
		if *remake {
			require.NoError(t, os.MkdirAll(filepath.Dir(name), 0o755))
			require.NoError(t, os.WriteFile(name, build.make(t, all).Bytes(), 0o644))
		}
		kept, err := logbook.Open(name)
		require.NoError(t, err)
		require.Empty(t, kept.Faults)
		p, err := rework.Make(all[2].model, kept, issuedOf(all))
		require.NoError(t, err)
		require.Nil(t, p.Stuck)
		require.Empty(t, p.Refused)
		golden := filepath.Join("testdata", build.serial+"_to_d.txt")
		if *remake {
			require.NoError(t, os.MkdirAll("testdata", 0o755))
			require.NoError(t, os.WriteFile(golden, []byte(p.Text()), 0o644))
		}
		want, err := os.ReadFile(golden)
		require.NoError(t, err)
		require.Equal(t, string(want), p.Text())
	}
}

// Once the rework is done, nothing is asked of either engine.
func TestReworkIsDoneOnce(t *testing.T) {
	all := editions(t)
	issued, d := issuedOf(all), all[2].model
	for _, build := range builds {
		l, err := logbook.Open(filepath.Join("sedge_2", "builds", build.serial+".log"))
		require.NoError(t, err)
		was := logbook.StateOf(l).Revision.Digest
		b := &builder{Book: &logtest.Book{T: t, Manual: issued(was), Digest: was, Log: l, Now: time.Date(2026, 11, 7, 9, 0, 0, 0, time.UTC), By: "TW", Second: "AB",
			Read: map[string]string{}}, serial: build.serial, issued: issued}
		b.On = func(m *model.Manual, l *logbook.Log) *logbook.Build {
			c, err := rework.Carry(m, l, issued)
			require.NoError(t, err)
			return c.Build()
		}
		p, err := rework.Make(d, b.Log, issued)
		require.NoError(t, err)
		first, then := p.Entries()
		require.Empty(t, first)
		b.Adopt(d)
		for _, e := range then {
			b.Write(e)
		}
		for _, a := range p.Again {
			b.read(bench.Act{Step: a.Step, Place: a.Place}, a.Place)
			b.Do(a.Step, a.Place)
		}
		after, err := rework.Make(d, b.Log, issued)
		require.NoError(t, err)
		require.True(t, after.Empty(), "%s: %v", build.serial, after.Again)
	}
}
