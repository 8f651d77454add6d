package logbook

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"github.com/dop251/goja"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var someDigest = strings.Repeat("ab", 32)

func startEntry() Entry {
	return Entry{N: 1, Prev: []string{}, Kind: Start, At: "2026-05-30T08:00:00+02:00", By: "HB", Serial: "S2-0117",
		Manual: "sedge_2", Revision: "B", Digest: someDigest, Options: map[string]string{"ignition": "coil", "cooling": "keel"}}
}

// add puts an entry at the end of a logbook in memory.
func add(t require.TestingT, l *Log, e Entry) *Log {
	line, err := l.next(&e)
	require.NoError(t, err)
	next := Parse(append(l.Bytes(), line...))
	require.Empty(t, next.Faults)
	return next
}

func begin(t require.TestingT) *Log {
	e := startEntry()
	l := Parse(append(Encode(&e), '\n'))
	require.Empty(t, l.Faults)
	return l
}

func at(minute int) string { return fmt.Sprintf("2026-05-30T%02d:%02d:00Z", 8+minute/60, minute%60) }

// sample is a logbook with a line of every kind.
func sample(t require.TestingT) *Log {
	l := begin(t)
	l = add(t, l, Entry{Kind: Done, At: at(1), By: "HB", Step: "crankshaft.clean.crankshaft"})
	l = add(t, l, Entry{Kind: Reading, At: at(2), By: "HB", Step: "crankshaft.measure.float", Values: []string{"0.93 mm", "0.94 mm"}, Tool: "dial_indicator", Instrument: "no. 7"})
	l = add(t, l, Entry{Kind: Correction, At: at(3), By: "HB", Line: l.Lines[2].Sum, Values: []string{"0.95 mm"}, Text: "misread the small hand"})
	l = add(t, l, Entry{Kind: Piece, At: at(4), By: "HB", Part: "thrust_shim", Size: "0.20 mm", Values: []string{"0.201 mm"}})
	l = add(t, l, Entry{Kind: Refused, At: at(5), By: "HB", Step: "crankshaft.inspect.oilways", Text: "one is blocked"})
	l = add(t, l, Entry{Kind: Undone, At: at(6), By: "HB", Step: "crankshaft.clean.crankshaft"})
	l = add(t, l, Entry{Kind: Release, At: at(7), By: "KM", Step: "crankshaft.hold.float", Role: "second person"})
	l = add(t, l, Entry{Kind: Note, At: at(8), By: "HB", Text: "Spilt \"oil\" on the mat\u2028;\n the \\ cat <fled> & hid\u0001."})
	return add(t, l, Entry{Kind: Revision, At: at(9), By: "HB", Revision: "C", Digest: strings.Repeat("cd", 32)})
}

func TestEveryKindReadsBackAndMeetsTheSchema(t *testing.T) {
	l := sample(t)
	again := Parse(l.Bytes())
	require.Empty(t, again.Faults)
	require.Equal(t, l.Lines, again.Lines)
	schema := compileSchema(t)
	for _, line := range l.Lines {
		require.NoError(t, schema(Encode(&line.Entry)))
	}
}

func compileSchema(t *testing.T) func(line []byte) error {
	doc, err := jsonschema.UnmarshalJSON(strings.NewReader(Schema))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("urn:fettle:logbook-line", doc))
	s, err := c.Compile("urn:fettle:logbook-line")
	require.NoError(t, err)
	return func(line []byte) error {
		v, err := jsonschema.UnmarshalJSON(bytes.NewReader(line))
		require.NoError(t, err)
		return s.Validate(v)
	}
}

// The schema and the reader refuse the same fields.
func TestSchemaAndReaderAgreeOnFields(t *testing.T) {
	schema := compileSchema(t)
	rapid.Check(t, func(t *rapid.T) {
		e := Entry{N: 2, Prev: []string{someDigest}, At: at(1), By: "HB", Kind: rapid.SampledFrom(kinds).Draw(t, "kind")}
		some := func(name string, set func()) {
			if rapid.Bool().Draw(t, name) {
				set()
			}
		}
		some("serial", func() { e.Serial = "1" })
		some("manual", func() { e.Manual = "m" })
		some("revision", func() { e.Revision = "B" })
		some("digest", func() { e.Digest = someDigest })
		some("options", func() { e.Options = map[string]string{"a": "b"} })
		some("step", func() { e.Step = "p.measure.a" })
		some("place", func() { e.Place = "left" })
		some("part", func() { e.Part = "shim" })
		some("size", func() { e.Size = "0.20 mm" })
		some("values", func() { e.Values = []string{"1 mm"} })
		some("tool", func() { e.Tool = "t" })
		some("instrument", func() { e.Instrument = "7" })
		some("role", func() { e.Role = "inspector" })
		some("line", func() { e.Line = someDigest })
		some("text", func() { e.Text = "x" })
		if e.Kind == Start {
			e.N, e.Prev = 1, []string{}
		}
		require.Equal(t, e.fault() == "", schema(Encode(&e)) == nil, "%s: %s", Encode(&e), e.fault())
	})
}

// A line is what JSON.stringify makes of it, run by another implementation of ECMA-262.
func TestLinesAreThoseOfJSONStringify(t *testing.T) {
	vm := goja.New()
	again, err := vm.RunString(`(function (line) { return JSON.stringify(JSON.parse(line)) })`)
	require.NoError(t, err)
	f, _ := goja.AssertFunction(again)
	rapid.Check(t, func(t *rapid.T) {
		e := Entry{N: 2, Prev: []string{someDigest}, Kind: Note, At: at(1), By: "HB", Text: rapid.String().Draw(t, "text") + "x"}
		line := string(Encode(&e))
		v, err := f(goja.Undefined(), vm.ToValue(line))
		require.NoError(t, err)
		require.Equal(t, line, v.String())
	})
}

func lines(l *Log) []string { return strings.Split(strings.TrimSuffix(string(l.Bytes()), "\n"), "\n") }

func join(lines []string) []byte { return []byte(strings.Join(lines, "\n") + "\n") }

func TestWhatWasDoneToALogbookShows(t *testing.T) {
	whole := lines(sample(t))
	cut := func(from, to int) []byte { return join(append(append([]string{}, whole[:from]...), whole[to:]...)) }
	swapped := append([]string{}, whole...)
	swapped[4], swapped[5] = swapped[5], swapped[4]
	edited := append([]string{}, whole...)
	edited[2] = strings.Replace(edited[2], "0.93", "0.13", 1)
	spaced := append([]string{}, whole...)
	spaced[9] = strings.Replace(spaced[9], `,"kind"`, `, "kind"`, 1)
	for _, test := range []struct {
		name string
		data []byte
		line int
		want string
	}{
		{"edited", join(edited), 3, "Line 3 was changed after line 4 had been written."},
		{"one missing", cut(4, 5), 5, "Before line 5, a line is missing."},
		{"three missing", cut(4, 7), 5, "Before line 5, 3 lines are missing."},
		{"beginning missing", cut(0, 2), 1, "The logbook does not begin with its start: lines before line 1 are missing."},
		{"order", join(swapped), 5, "Line 5 was written after line 6, which stands below it: lines were put in another order."},
		{"copied", join(append(append([]string{}, whole...), whole[8])), 11, "Line 11 repeats line 9."},
		{"spaced", join(spaced), 10, "Line 10 holds an entry in other bytes than it is written in."},
		{"not JSON", join(append(append([]string{}, whole...), "oil")), 11, "Line 11 cannot be read: invalid character 'o' looking for beginning of value."},
		{"two objects", join(append(append([]string{}, whole...), whole[1]+whole[1])), 11, "Line 11 cannot be read: something stands after the object."},
		{"unknown key", join(append(append([]string{}, whole...), `{"n":11,"prev":[],"colour":1}`)), 11, `Line 11 cannot be read: json: unknown field "colour".`},
		{"empty", nil, 0, "This logbook is empty."},
	} {
		t.Run(test.name, func(t *testing.T) {
			l := Parse(test.data)
			require.NotEmpty(t, l.Faults)
			require.Equal(t, test.want, l.Faults[0].Message)
			require.Equal(t, test.line, l.Faults[0].Line)
			require.NotEmpty(t, l.Faults[0].Reason)
			require.NotEmpty(t, l.Faults[0].Remedy)
			require.Len(t, l.Faults, 1, "one deed, one fault")
		})
	}
}

// What cannot be seen from the file alone can be seen with its heads.
func TestACutTailShowsInTheHeads(t *testing.T) {
	l := sample(t)
	short := Parse(join(lines(l)[:5]))
	require.True(t, short.Whole())
	require.Nil(t, short.Find(l.Heads()[0]))
}

// Wherever the file is cut, nothing but the line that is cut is lost.
func TestATornLastLineIsLostAndSaid(t *testing.T) {
	l := sample(t)
	data := l.Bytes()
	for n := 1; n < len(data); n++ {
		short := Parse(data[:n])
		whole := bytes.Count(data[:n], []byte{'\n'})
		if data[n] == '\n' { // only the line end is missing
			whole++
			require.True(t, short.bare)
			require.Zero(t, short.Torn)
		}
		if whole == 0 {
			continue // the start itself
		}
		require.True(t, short.Whole(), "cut at %d: %v", n, short.Faults)
		require.Len(t, short.Lines, whole)
		require.Equal(t, l.Lines[whole-1].Sum, short.Lines[whole-1].Sum)
		if data[n-1] != '\n' && data[n] != '\n' {
			require.Positive(t, short.Torn)
		}
	}
}

// Any one byte changed anywhere but in the last line shows; in the last line it
// shows in the heads.
func TestAnyChangedByteShows(t *testing.T) {
	l := sample(t)
	data := l.Bytes()
	rapid.Check(t, func(t *rapid.T) {
		i := rapid.IntRange(0, len(data)-1).Draw(t, "byte")
		b := rapid.Byte().Filter(func(b byte) bool { return b != data[i] }).Draw(t, "value")
		changed := append([]byte{}, data...)
		changed[i] = b
		got := Parse(changed)
		require.True(t, !got.Whole() || got.Heads()[0] != l.Heads()[0] || got.Torn > 0)
		if i < bytes.LastIndexByte(data[:len(data)-1], '\n') {
			require.False(t, got.Whole())
		}
	})
}

func FuzzRead(f *testing.F) {
	f.Add(sample(f).Bytes())
	f.Add([]byte(`{"n":1,"prev":[],"kind":"note","at":"2026-05-30T08:00:00Z","by":"x","text":"y"}` + "\n"))
	f.Add([]byte("{\n}\n\n[]"))
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 1<<16 {
			return
		}
		l := Parse(data)
		for _, fault := range l.Faults {
			require.NotEmpty(t, fault.Message)
			require.LessOrEqual(t, fault.Line, bytes.Count(data, []byte{'\n'})+1)
		}
		if !l.Whole() {
			return
		}
		kept := data[:len(data)-l.Torn]
		if l.bare {
			kept = append(append([]byte{}, kept...), '\n')
		}
		require.Equal(t, string(kept), string(l.Bytes()))
		m, err := Merge(l, l)
		require.NoError(t, err)
		require.Equal(t, l.Bytes(), m.Bytes())
		StateOf(l)
	})
}

func BenchmarkParse(b *testing.B) {
	l := begin(b)
	data := l.Bytes()
	prev, n := l.Lines[0].Sum, 1
	for i := range 10_000 {
		n++
		e := Entry{N: n, Prev: []string{prev}, Kind: Done, At: at(i % 600), By: "HB", Step: fmt.Sprintf("p.fit.part%d", i)}
		line := Encode(&e)
		prev = DigestOf(line)
		data = append(append(data, line...), '\n')
	}
	b.SetBytes(int64(len(data)))
	for b.Loop() {
		require.True(b, Parse(data).Whole())
	}
}
