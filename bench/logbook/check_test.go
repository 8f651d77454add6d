package logbook_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/bench/logbook"
	"fettle/lang"
	"fettle/lang/model"
)

// pump is a little invented manual with a step of every sort that is recorded.
const pump = `manual "pump" {
  title    = "Hand pump: assembly"
  units    = "metric"
  revision = "A"
  order    = [procedure.build, procedure.first_water]
}

option "handle" {
  name    = "Handle"
  choices = ["wood", "steel"]
}

places "side" {
  names = ["left", "right"]
}

part "body" {
  name     = "Body"
  features = ["bore"]
}

part "shim" {
  name    = "Shim"
  sits_on = part.body
  size "0.20 mm" { in_kit = 2 }
  size "0.30 mm" { in_kit = 2 }
}

tool "dial" {
  name  = "Dial indicator"
  kind  = "dial indicator"
  range = "0..10 mm"
}

tool "rule" {
  name  = "Steel rule"
  kind  = "steel rule"
  range = "0..300 mm"
}

limit "float" {
  name  = "Float"
  range = "0.08..0.14 mm"
}

procedure "build" {
  title = "Build the pump"

  measure "float" {
    title  = "Measure the float"
    on     = [part.body]
    tools  = [tool.dial]
    repeat = 2
    take   = "mean"
    likely = "0.40..0.80 mm"
  }

  choose "pack" {
    title  = "Choose the shims"
    from   = part.shim
    pieces = "1..3"
    gap    = measure.float
    leaves = limit.float
  }

  measure "play" {
    title     = "Measure the play"
    on        = [part.body]
    tools     = [tool.dial]
    accept    = limit.float
    at_each   = places.side
    otherwise = "Choose other shims."
  }

  inspect "bore" {
    title     = "Look through the bore"
    on        = [part.body.feature.bore]
    criterion = "It is bright all round."
    otherwise = "Polish it."
  }

  work "wood" {
    title = "Oil the handle"
    on    = [part.body]
    when  = option.handle == "wood"
  }

  hold "closed" {
    title   = "Stop before water comes in"
    checks  = [measure.play, inspect.bore]
    before  = procedure.first_water.work.pour
    release = "second person"
  }
}

procedure "first_water" {
  title = "Let water in"

  work "prime" {
    title = "Wet the leather"
    on    = [part.body]
  }

  work "pour" {
    title = "Pour"
    on    = [part.body]
    after = [work.prime]
  }

  hold "done" {
    title   = "Hand it over"
    release = "builder"
  }
}
`

const sum = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef"

func load(t testing.TB, text string) *model.Manual {
	m, found, err := lang.Load(fstest.MapFS{"m/a.proc.hcl": {Data: []byte(text)}}, "m")
	require.NoError(t, err)
	require.Empty(t, found)
	return m
}

// book is a logbook in memory that is written to as record does.
type book struct {
	t      *testing.T
	m      *model.Manual
	digest string
	log    *logbook.Log
	minute int
}

func open(t *testing.T, options map[string]string) *book {
	m := load(t, pump)
	start, r := logbook.StartOf(m, sum, "P-7", options)
	require.Nil(t, r)
	start.N, start.Prev, start.By, start.At = 1, []string{}, "HB", "2026-05-30T08:00:00Z"
	b := &book{t: t, m: m, digest: sum, log: logbook.Parse(append(logbook.Encode(&start), '\n'))}
	require.Empty(t, b.log.Faults)
	return b
}

func (b *book) build() *logbook.Build { return logbook.NewBuild(b.m, b.digest, b.log) }

// write checks an entry and adds it where it is not refused.
func (b *book) write(e logbook.Entry) ([]logbook.Notice, *logbook.Refusal) {
	b.minute++
	if e.At == "" {
		e.At = "2026-05-30T09:" + string(rune('0'+b.minute/10)) + string(rune('0'+b.minute%10)) + ":00Z"
	}
	if e.By == "" {
		e.By = "HB"
	}
	notices, r := b.build().Check(&e)
	if r != nil {
		require.NotEmpty(b.t, r.Message)
		require.NotEmpty(b.t, r.Reason)
		require.NotEmpty(b.t, r.Remedy)
		return nil, r
	}
	last := b.log.Lines[len(b.log.Lines)-1]
	e.N, e.Prev = last.N+1, b.log.Heads()
	b.log = logbook.Parse(append(append(b.log.Bytes(), logbook.Encode(&e)...), '\n'))
	require.Empty(b.t, b.log.Faults)
	return notices, nil
}

func (b *book) ok(e logbook.Entry) []logbook.Notice {
	b.t.Helper()
	n, r := b.write(e)
	require.Nil(b.t, r)
	return n
}

func (b *book) refused(message string, e logbook.Entry) {
	b.t.Helper()
	_, r := b.write(e)
	require.NotNil(b.t, r, "it is taken")
	require.Contains(b.t, r.Message, message)
}

func read(step, place string, values ...string) logbook.Entry {
	return logbook.Entry{Kind: logbook.Reading, Step: step, Place: place, Values: values}
}

func done(step string) logbook.Entry { return logbook.Entry{Kind: logbook.Done, Step: step} }

func TestReadings(t *testing.T) {
	b := open(t, nil)
	b.refused("no step called `build.measure.flaot`", read("build.measure.flaot", "", "0.5 mm"))
	b.refused("is a torque; a length is wanted", read("build.measure.float", "", "24 N·m"))
	b.refused("unit", read("build.measure.float", "", "0.5"))
	b.refused("is a range", read("build.measure.float", "", "0.4..0.5 mm"))
	b.refused("cannot be 12.00 mm", read("build.measure.float", "", "12.00 mm"))
	b.refused("read 2 times, and 3 values", read("build.measure.float", "", "0.5 mm", "0.5 mm", "0.5 mm"))
	b.refused("does not say where", read("build.measure.play", "", "0.10 mm"))
	b.refused("is not done at top", read("build.measure.play", "top", "0.10 mm"))
	b.refused("reads nothing", read("build.inspect.bore", "", "0.10 mm"))
	b.refused("not read with rule", logbook.Entry{Kind: logbook.Reading, Step: "build.measure.float", Values: []string{"0.5 mm"}, Tool: "rule"})
	b.refused("no tool called", logbook.Entry{Kind: logbook.Reading, Step: "build.measure.float", Values: []string{"0.5 mm"}, Tool: "stick"})

	n := b.ok(read("procedure.build.measure.float", "", "0.52 mm"))
	require.Contains(t, n[0].Message, "asks for 2 readings")
	require.Equal(t, "build.measure.float", b.log.Lines[1].Step, "recorded as this format writes it")
	n = b.ok(read("build.measure.float", "", "0.20 mm", "0.20 mm"))
	require.Contains(t, n[0].Message, "far from what is likely")
	b.ok(read("build.measure.float", "", "0.52", "0.54 mm"))
	require.Equal(t, []string{"0.52 mm", "0.54 mm"}, b.log.Lines[3].Values)

	n = b.ok(read(`build.measure.play["left"]`, "", "0.16 mm"))
	require.Contains(t, n[0].Message, "outside its limit, 0.08 to 0.14 mm (0.0032 to 0.0055 in)")
	require.Equal(t, "Choose other shims.", n[0].Remedy)
	require.Equal(t, "left", b.log.Lines[4].Place)
	s := b.m.Find("build.measure.play").Step
	require.False(t, b.build().Stands(s, "left"), "it was read, and is not accepted")
	n = b.ok(logbook.Entry{Kind: logbook.Correction, Line: b.log.Lines[4].Sum[:12], Values: []string{"0.10 mm"}, Text: "misread"})
	require.Empty(t, n)
	require.True(t, b.build().Stands(s, "left"))
	b.refused("no line ffffff", logbook.Entry{Kind: logbook.Correction, Line: "ffffff", Text: "x"})
	b.refused("why the line is corrected", logbook.Entry{Kind: logbook.Correction, Line: b.log.Lines[4].Sum})
	b.refused("is not corrected", logbook.Entry{Kind: logbook.Correction, Line: b.log.Lines[0].Sum, Text: "x"})
}

func TestDone(t *testing.T) {
	b := open(t, map[string]string{"handle": "steel"})
	b.refused("is read", done("build.measure.float"))
	b.refused("cannot be worked out yet", done("build.choose.pack"))
	b.ok(read("build.measure.float", "", "0.52 mm", "0.54 mm"))
	b.ok(done("build.choose.pack"))
	b.refused("is a hold", done("build.hold.closed"))
	b.refused("is not done in this build", done("build.work.wood"))
	b.refused("accepts nothing by eye", logbook.Entry{Kind: logbook.Refused, Step: "build.choose.pack", Text: "x"})
	b.refused("what was wrong", logbook.Entry{Kind: logbook.Refused, Step: "build.inspect.bore"})
	n := b.ok(logbook.Entry{Kind: logbook.Refused, Step: "build.inspect.bore", Text: "a dull patch"})
	require.Equal(t, "Polish it.", n[0].Remedy)
	b.ok(done("build.inspect.bore"))
	n = b.ok(done("build.inspect.bore"))
	require.Contains(t, n[0].Message, "done already, line 5, by HB")
	b.refused("not on record as done", logbook.Entry{Kind: logbook.Undone, Step: "first_water.work.prime"})
	b.ok(logbook.Entry{Kind: logbook.Undone, Step: "build.inspect.bore"})
	require.False(t, b.build().Stands(b.m.Find("build.inspect.bore").Step, ""))
	b.refused("has begun already", logbook.Entry{Kind: logbook.Start})
	b.refused("note is empty", logbook.Entry{Kind: logbook.Note, Text: " "})
	n = b.ok(logbook.Entry{Kind: logbook.Note, Text: "tea", At: "2026-05-30T07:00:00Z"})
	require.Contains(t, n[0].Message, "dated before the last one")
	b.refused("Nobody signs", logbook.Entry{Kind: logbook.Note, Text: "x", By: " "})
}

func TestHolds(t *testing.T) {
	b := open(t, map[string]string{"handle": "steel"})
	release := func(by, role string) logbook.Entry {
		return logbook.Entry{Kind: logbook.Release, Step: "build.hold.closed", By: by, Role: role}
	}
	b.refused("which is not released", done("first_water.work.prime"))
	b.refused("is no hold", logbook.Entry{Kind: logbook.Release, Step: "build.inspect.bore", Role: "second person"})
	b.refused(`checks build.measure.play["left"], which is not on record`, release("KM", "second person"))
	b.ok(read("build.measure.play", "left", "0.10 mm"))
	b.ok(read("build.measure.play", "right", "0.20 mm"))
	b.refused(`checks build.measure.play["right"], which was not accepted`, release("KM", "second person"))
	b.ok(read("build.measure.play", "right", "0.12 mm"))
	b.ok(done("build.inspect.bore"))
	b.refused("as what KM releases it", release("KM", ""))
	b.refused("not by the inspector", release("KM", "inspector"))
	b.refused("H.B. did the work", release("H.B.", "second person"))
	b.ok(release("KM", "Second person"))
	b.refused("comes after first_water.work.prime, which is not on record", done("first_water.work.pour"))
	b.ok(done("first_water.work.prime"))
	b.ok(done("first_water.work.pour"))
	b.ok(logbook.Entry{Kind: logbook.Release, Step: "first_water.hold.done", By: "HB", Role: "builder"})
}

func TestPieces(t *testing.T) {
	b := open(t, nil)
	piece := func(part, size string, values ...string) logbook.Entry {
		return logbook.Entry{Kind: logbook.Piece, Part: part, Size: size, Values: values}
	}
	b.refused("no graded part", piece("body", "0.20 mm", "0.20 mm"))
	b.refused("has no size", piece("shim", "0.25 mm", "0.25 mm"))
	b.refused("holds 2", piece("shim", "0.20 mm", "0.20 mm", "0.20 mm", "0.20 mm"))
	b.refused("no value of a piece", piece("shim", "0.20 mm", "3 kg"))
	b.ok(piece("part.shim", "0.20 mm", "0.201 mm", "0.198 mm"))
	g := b.build().Given.Pieces["shim"]
	require.Len(t, g, 2)
	require.Equal(t, "0.198 mm", g[0].Is.String())
}

func TestTheManualMustBeTheRevisionInForce(t *testing.T) {
	b := open(t, nil)
	other := strings.Repeat("e", 64)
	b.digest = other
	b.refused("follows revision A (0123456789ab), and the manual here is revision A (eeeeeeeeeeee)", done("build.inspect.bore"))
	e, r := b.build().RevisionOf(b.m, other)
	require.Nil(t, r)
	b.ok(e)
	b.ok(done("build.inspect.bore"))
	_, r = b.build().RevisionOf(b.m, other)
	require.Contains(t, r.Message, "in force already")
	f := b.build().Fact(b.m.Find("build.inspect.bore").Step, "")
	require.Equal(t, other, f.Revision.Digest)
}

func TestStart(t *testing.T) {
	m := load(t, pump)
	e, r := logbook.StartOf(m, sum, "7", nil)
	require.Nil(t, r)
	require.Equal(t, map[string]string{"handle": "wood"}, e.Options, "what is not said is written down")
	_, r = logbook.StartOf(m, sum, " ", nil)
	require.Contains(t, r.Message, "No serial")
	_, r = logbook.StartOf(m, sum, "7", map[string]string{"handel": "wood"})
	require.Contains(t, r.Message, "no option called handel")
	_, r = logbook.StartOf(m, sum, "7", map[string]string{"handle": "gold"})
	require.Contains(t, r.Message, "cannot be gold")
}
