package html

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"testing"

	"github.com/dop251/goja"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/bench/logbook"
)

// bookVM is a JavaScript engine with the page's logbook. goja has no TextEncoder.
func bookVM(t testing.TB, script string) func(t require.TestingT, args ...string) string {
	vm := goja.New()
	require.NoError(t, vm.Set("bytesOf", func(s string) []byte { return []byte(s) }))
	v, err := vm.RunString(`const TextEncoder = class { encode(s) { return new Uint8Array(bytesOf(s)); } };` + small(logbookScript) + script)
	require.NoError(t, err)
	f, ok := goja.AssertFunction(v)
	require.True(t, ok)
	return func(t require.TestingT, args ...string) string {
		var in []goja.Value
		for _, a := range args {
			in = append(in, vm.ToValue(a))
		}
		out, err := f(goja.Undefined(), in...)
		require.NoError(t, err)
		return out.String()
	}
}

// Source: FIPS 180-4, by way of Go's crypto/sha256.
func TestDigest(t *testing.T) {
	run := bookVM(t, `(s) => fettleLogbook.digest(s)`)
	require.Equal(t, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", run(t, "abc"), "FIPS 180-2, appendix B.1")
	rapid.Check(t, few(func(t *rapid.T) {
		s := rapid.String().Draw(t, "line")
		for len(s) < 40 && rapid.Bool().Draw(t, "longer") {
			s += s + "x"
		}
		sum := sha256.Sum256([]byte(s))
		require.Equal(t, hex.EncodeToString(sum[:]), run(t, s))
	}))
}

func drawEntry(t *rapid.T) logbook.Entry {
	word := rapid.StringMatching(`[a-zé"\\<\n\x01😀ﬀ]{1,5}`)
	e := logbook.Entry{Kind: logbook.Done, At: "2026-05-30T08:12:00+02:00", By: "AB", Step: "a.fit.b"}
	if rapid.Bool().Draw(t, "place") {
		e.Place = "far right"
	}
	switch rapid.IntRange(0, 5).Draw(t, "kind") {
	case 0:
		e.Kind, e.Step = logbook.Reading, "a.measure.c"
		e.Values = rapid.SliceOfN(word, 1, 3).Draw(t, "values")
	case 1:
		e.Kind = logbook.Undone
	case 2:
		e.Kind, e.Text = logbook.Refused, word.Draw(t, "text")
	case 3:
		e.Kind, e.Role = logbook.Release, "second person"
	case 4:
		e.Kind, e.Step, e.Place, e.Text = logbook.Note, "", "", word.Draw(t, "note")
	}
	return e
}

// A book that the page writes is the book that Go reads, byte for byte; and Go
// and the page agree on what stands, also of books merged from two devices.
func TestBookEqualsGo(t *testing.T) {
	write := bookVM(t, `(entries) => {
		const book = { lines: [] };
		for (const e of JSON.parse(entries)) fettleLogbook.append(book, e);
		return fettleLogbook.text(book);
	}`)
	stands := bookVM(t, `(text) => {
		const book = fettleLogbook.parse(text);
		if (book.fault) return book.fault[0];
		const s = fettleLogbook.state(book), all = {};
		for (const [key, f] of s.steps) all[key] = f.kind + " " + (f.values || []).join("; ");
		return JSON.stringify([fettleLogbook.text(book) === text, s.conflicts.length, all]);
	}`)
	start := logbook.Entry{Kind: logbook.Start, At: "2026-05-30T08:00:00Z", By: "AB", Serial: "014", Manual: "m", Revision: "A",
		Digest: "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Options: map[string]string{"b": "x", "a": "ÿ", "ﬀ": "1", "😀": "2"}}
	rapid.Check(t, few(func(t *rapid.T) {
		grow := func(shared []logbook.Entry, name string) ([]logbook.Entry, *logbook.Log, string) {
			all := append(append([]logbook.Entry(nil), shared...), rapid.SliceOfN(rapid.Custom(drawEntry), 0, 6).Draw(t, name)...)
			in, err := json.Marshal(all)
			require.NoError(t, err)
			text := write(t, string(in))
			l := logbook.Parse([]byte(text))
			require.Empty(t, l.Faults, text)
			require.Len(t, l.Lines, len(all))
			return all, l, text
		}
		base, _, _ := grow([]logbook.Entry{start}, "shared")
		_, a, text := grow(base, "here")
		_, b, _ := grow(base, "there")
		check := func(l *logbook.Log, text string) {
			s := logbook.StateOf(l)
			want := map[string]string{}
			for at, f := range s.Steps {
				if f.Line != nil {
					want[at2(at)] = string(f.Line.Kind) + " "
					for i, v := range f.Values {
						if i > 0 {
							want[at2(at)] += "; "
						}
						want[at2(at)] += v
					}
				}
			}
			out, err := json.Marshal([]any{true, len(s.Conflicts), want})
			require.NoError(t, err)
			require.JSONEq(t, string(out), stands(t, text))
		}
		check(a, text)
		merged, err := logbook.Merge(a, b)
		require.NoError(t, err)
		check(merged, string(merged.Bytes()))
		// What Go refuses, the page refuses.
		if k := rapid.IntRange(0, len(text)-2).Draw(t, "cut"); true {
			cut := text[:k] + text[k+1:]
			if l := logbook.Parse([]byte(cut)); !l.Whole() {
				require.Contains(t, stands(t, cut), "line-", cut)
			}
		}
	}))
}

func at2(a logbook.At) string {
	if a.Place == "" {
		return a.Step
	}
	return a.Step + `["` + a.Place + `"]`
}
