package values_test

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/calc"
	"fettle/lang"
	"fettle/lang/model"
	"fettle/lang/values"
)

const manual = `manual "set" {
  title    = "Set"
  units    = "metric"
  revision = "A"
  order    = [procedure.thrust_end, procedure.bores]
}

option "bearing" {
  name    = "Bearing"
  choices = ["plain", "ball"]
}

places "side" {
  names = ["left", "right"]
}

limit "shaft_float" {
  name   = "Axial float"
  range  = "0.08..0.14 mm"
  target = "0.11 mm"
}

tool "dial_indicator" {
  name  = "Dial indicator"
  kind  = "dial indicator"
  range = "0..10 mm"
}

part "shaft" {
  name = "Shaft"
}

part "shim" {
  name    = "Thrust shim"
  sits_on = part.shaft
  size "0.10 mm" { in_kit = 2 }
  size "0.20 mm" { in_kit = 2 }
  size "0.30 mm" { in_kit = 3 }
}

procedure "thrust_end" {
  title = "Shim the shaft"

  measure "float" {
    title        = "Measure the float"
    on           = [part.shaft]
    tools        = [tool.dial_indicator]
    likely       = "0.55..1.45 mm"
    repeat       = 3
    agree_within = "0.02 mm"
    take         = "mean"
  }

  choose "trial" {
    title  = "Choose a pack to try"
    from   = part.shim
    pieces = "1..5"
    gap    = measure.float
    leaves = limit.shaft_float
  }

  remove "trial" {
    title = "Take the pack off again"
    part  = choose.trial
  }

  choose "pack" {
    title  = "Choose the shim pack"
    from   = part.shim
    pieces = "2..5"
    gap    = measure.float
    leaves = limit.shaft_float
  }

  measure "left_over" {
    title  = "Measure the float again"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    accept = limit.shaft_float
  }

  calculate "share" {
    title = "Work out the share"
    is    = choose.pack.result / choose.pack.total
  }

  measure "ball" {
    title = "Measure the ball"
    on    = [part.shaft]
    tools = [tool.dial_indicator]
    when  = option.bearing == "ball"
  }
}

procedure "bores" {
  title   = "Fill the bores of the ${place} side"
  at_each = places.side

  measure "depth" {
    title  = "Measure the depth"
    on     = [part.shaft]
    tools  = [tool.dial_indicator]
    likely = { left = "0.30..0.50 mm", right = "0.40..0.60 mm" }
  }

  choose "filler" {
    title  = "Choose the filler"
    from   = part.shim
    pieces = "1..2"
    gap    = measure.depth
    leaves = "0..0.10 mm"
  }
}
`

func load(t testing.TB, text string) *model.Manual {
	m, found, err := lang.Load(fstest.MapFS{"m/x.proc.hcl": {Data: []byte(text)}}, "m")
	require.NoError(t, err)
	for _, f := range found {
		require.Fail(t, f.Message, f.Span.String())
	}
	return m
}

func step(m *model.Manual, key string) *model.Step { return m.Find("procedure." + key).Step }

// readings parses what a builder gives.
func readings(t testing.TB, m *model.Manual, given ...string) map[string][]calc.Quantity {
	all := map[string][]calc.Quantity{}
	for i := 0; i < len(given); i += 2 {
		key, read, p := values.ParseReading(m, given[i], given[i+1])
		require.Nil(t, p, given[i])
		all[key] = read
	}
	return all
}

// The numbers are those of the fragment on the dialect's page: 1.02 mm takes a
// pack of 0.90 mm and leaves 0.12 mm.
func TestPack(t *testing.T) {
	m := load(t, manual)
	v := values.New(m, values.Given{Readings: readings(t, m, "thrust_end.measure.float", "1.02 mm")})
	pack := v.Pack(step(m, "thrust_end.choose.pack"), "")
	require.NotNil(t, pack)
	require.Equal(t, "3 × 0.30 mm", pack.String(), "the trial pack is back in the kit")
	require.Equal(t, "0.90 mm", pack.Total.String())
	require.Equal(t, "0.12 mm", pack.Result.String())
	require.False(t, pack.Tentative)
	require.Equal(t, "3 × 0.30 mm", calc.FormulaWith(&calc.Var{Name: "thrust_end.choose.pack.sizes", Of: calc.WordType}, v))
	share := v.Of(step(m, "thrust_end.calculate.share"), "")
	require.Zero(t, share.(calc.Quantity).Num().Cmp(calc.PlainNumber(rat("12/90")).Num()))
	require.Empty(t, v.Problems())
	require.Nil(t, v.Of(step(m, "thrust_end.measure.left_over"), ""))
}

func TestPlacesDrawOnOneHeap(t *testing.T) {
	m := load(t, manual)
	given := readings(t, m, "thrust_end.measure.float", "1.02 mm", `bores.measure.depth["left"]`, "0.45 mm", `bores.measure.depth["right"]`, "0.45 mm")
	v := values.New(m, values.Given{Readings: given})
	filler := step(m, "bores.choose.filler")
	require.Equal(t, "2 × 0.20 mm", v.Pack(filler, "left").String(), "all of 0.30 mm are gone")
	require.Nil(t, v.Pack(filler, "right"))
	require.Contains(t, v.Problem(filler, "right").Message, "No pack of Thrust shim fits 0.45 mm")
	require.Contains(t, v.Problem(filler, "right").Reason, "0.20 mm, which leaves 0.25 mm")
	require.Len(t, v.Problems(), 1)

	delete(given, "thrust_end.measure.float")
	v = values.New(m, values.Given{Readings: given})
	require.True(t, v.Pack(filler, "left").Tentative, "the first pack is not known yet")
	require.Equal(t, "0.40 mm", v.Pack(filler, "left").Total.String())
}

func TestMeasuredPieces(t *testing.T) {
	m := load(t, manual)
	thin, p := quantity("0.17 mm"), quantity("0.28 mm")
	v := values.New(m, values.Given{
		Readings: readings(t, m, "thrust_end.measure.float", "0.56 mm"),
		Pieces:   map[string][]values.Piece{"shim": {{Size: "0.20 mm", Is: thin}, {Size: "0.30 mm", Is: p}}},
	})
	pack := v.Pack(step(m, "thrust_end.choose.pack"), "")
	require.Equal(t, "1 × 0.28 mm", "1 × "+pack.Lines[0].Is.String())
	require.Equal(t, "0.45 mm", pack.Total.String(), "the two measured ones hit the target")
}

func TestTake(t *testing.T) {
	m := load(t, manual)
	v := values.New(m, values.Given{Readings: readings(t, m, "thrust_end.measure.float", "1.01; 1.02; 1.03 mm")})
	require.Equal(t, "1.020 mm", v.Of(step(m, "thrust_end.measure.float"), "").(calc.Quantity).String())
	_, read, p := values.ParseReading(m, "thrust_end.measure.float", "1.00; 1.02; 1.03 mm")
	require.Len(t, read, 3)
	require.Contains(t, p.Message, "lie 0.03 mm apart")
}

func TestParseReadingRefuses(t *testing.T) {
	m := load(t, manual)
	for _, c := range []struct{ address, value, message string }{
		{"thrust_end.measure.flaot", "1 mm", "no reading called"},
		{"thrust_end.choose.pack", "1 mm", "is not read; it is worked out"},
		{"thrust_end.measure.float", "1.02", "has no unit"},
		{"thrust_end.measure.float", "1.02 N·m", "is a torque"},
		{"thrust_end.measure.float", "0.9..1.1 mm", "is a range"},
		{"thrust_end.measure.float", "11 mm", "cannot be 11 mm"},
		{"thrust_end.measure.float", "1; 1; 1; 1 mm", "is read 3 times, and 4 values"},
		{"thrust_end.measure.float[\"left\"]", "1 mm", "read at one place"},
		{"bores.measure.depth", "0.4 mm", "does not say where"},
		{"bores.measure.depth[\"middle\"]", "0.4 mm", "does not say where"},
	} {
		key, _, p := values.ParseReading(m, c.address, c.value)
		require.NotNil(t, p, c.value)
		require.Empty(t, key)
		require.Contains(t, p.Message, c.message)
		require.NotEmpty(t, p.Reason)
		require.NotEmpty(t, p.Remedy)
	}
	key, _, p := values.ParseReading(m, "procedure.bores.measure.depth[left]", "0.9 mm")
	require.Equal(t, `bores.measure.depth["left"]`, key)
	require.Contains(t, p.Message, "far from what is likely")
}

func TestOptions(t *testing.T) {
	m := load(t, manual)
	ball := step(m, "thrust_end.measure.ball")
	done, known := values.New(m, values.Given{}).Done(ball, "")
	require.True(t, known)
	require.False(t, done, "the first choice is the default")
	done, _ = values.New(m, values.Given{Options: map[string]string{"bearing": "ball"}}).Done(ball, "")
	require.True(t, done)
}

func TestJudge(t *testing.T) {
	m := load(t, manual)
	s := step(m, "thrust_end.measure.left_over")
	for value, want := range map[string]values.Verdict{"0.08 mm": values.Accepted, "0.14 mm": values.Accepted, "0.141 mm": values.Refused} {
		v := values.New(m, values.Given{Readings: readings(t, m, "thrust_end.measure.left_over", value)})
		got, l := v.Judge(s, "")
		require.Equal(t, want, got, value)
		require.Equal(t, "0.14 mm", l.High.String())
	}
	got, _ := values.New(m, values.Given{}).Judge(s, "")
	require.Equal(t, values.Unjudged, got)
}

func TestRanges(t *testing.T) {
	m := load(t, manual)
	r := values.NewPlan(m).Ranges()
	at := func(key, field, place string) string {
		in := calc.RangeOf(&calc.Var{Name: key + field, Place: place, Of: calc.NumberOf(calc.Length)}, r).Number
		mm := calc.MustUnit("mm")
		return calc.FromBase(in.Lo, mm, 2).Value() + ".." + calc.FromBase(in.Hi, mm, 2).Value()
	}
	require.Equal(t, "0.55..1.45", at("thrust_end.measure.float", "", ""))
	require.Equal(t, "0.30..0.50", at("bores.measure.depth", "", "left"))
	require.Equal(t, "0.08..0.14", at("thrust_end.choose.pack", ".result", ""))
	// 0.55 − 0.14, and the thickest five pieces of the kit
	require.Equal(t, "0.41..1.30", at("thrust_end.choose.pack", ".total", ""))
	gap := &calc.Var{Name: "thrust_end.measure.float", Of: calc.NumberOf(calc.Length)}
	total := &calc.Var{Name: "thrust_end.choose.pack.total", Of: calc.NumberOf(calc.Length)}
	left, p := calc.NewBinary(calc.Sub, gap, total, calc.Span{})
	require.Nil(t, p)
	in := calc.RangeOf(left, r).Number
	require.Zero(t, in.Lo.Cmp(rat("8/100000")), "gap less pack is the result, not the difference of two ranges")
	require.Zero(t, in.Hi.Cmp(rat("14/100000")))
}
