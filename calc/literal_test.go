package calc

import (
	"fmt"
	"math/big"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The forms of the dialect, and how each is written back.
func TestForms(t *testing.T) {
	for _, c := range []struct {
		text string
		form Form
		back string
	}{
		{"24 N·m", ValueForm, "24 N·m"}, {"24Nm", ValueForm, "24 N·m"}, {"18 lb·ft", ValueForm, "18 lb·ft"},
		{"0.10 mm", ValueForm, "0.10 mm"}, {".040 in", ValueForm, "0.040 in"}, {"4 thou", ValueForm, "4 thou"},
		{"3/8 in", ValueForm, "3/8 in"}, {"1 1/16 in", ValueForm, "1 1/16 in"}, {"1-1/16 in", ValueForm, "1 1/16 in"},
		{"-1 1/2 turns", ValueForm, "-1 1/2 turns"}, {"1½ turns", ValueForm, "1 1/2 turns"}, {"8/8 in", ValueForm, "1 in"},
		{"15 min", ValueForm, "15 min"}, {"90°", ValueForm, "90°"}, {"1/2 turn", ValueForm, "1/2 turn"},
		{"4 drops/min", ValueForm, "4 drops/min"}, {"4 drops per minute", ValueForm, "4 drops/min"}, {"5 1/min", ValueForm, "5 1/min"},
		{"4", ValueForm, "4"}, {"0.0035", ValueForm, "0.0035"}, {"−5 °C", ValueForm, "-5 °C"}, {"+5 °C", ValueForm, "5 °C"},
		{"0.08..0.14 mm", RangeForm, "0.08..0.14 mm"}, {"0.08 to 0.14 mm", RangeForm, "0.08..0.14 mm"},
		{"0.08–0.14 mm", RangeForm, "0.08..0.14 mm"}, {"0.08 mm .. 0.14 mm", RangeForm, "0.08..0.14 mm"},
		{"-20..110 °C", RangeForm, "-20..110 °C"}, {"-20..-10 °C", RangeForm, "-20..-10 °C"}, {"0..4", RangeForm, "0..4"},
		{"0.9 cm to 10 mm", RangeForm, "0.9 cm..10 mm"}, {"30 s..2 min", RangeForm, "30 s..2 min"}, {"1/4..3/8 in", RangeForm, "1/4..3/8 in"},
		{"24 ± 2 N·m", PlusMinusForm, "24 ± 2 N·m"}, {"24 +/- 2 N·m", PlusMinusForm, "24 ± 2 N·m"}, {"24 N·m ± 2", PlusMinusForm, "24 ± 2 N·m"},
		{"24 N·m ± 10 %", PlusMinusForm, "24 N·m ± 10 %"}, {"24 ±10% N·m", PlusMinusForm, "24 N·m ± 10 %"},
		{"20 °C ± 2 K", PlusMinusForm, "20 °C ± 2 K"}, {"20 ± 2 °C", PlusMinusForm, "20 ± 2 °C"},
		{"24 +2/-0 N·m", UnequalForm, "24 +2/-0 N·m"}, {"24 -0/+2 N·m", UnequalForm, "24 +2/-0 N·m"}, {"24 +2 -0 N·m", UnequalForm, "24 +2/-0 N·m"},
		{"20 0/-0.021 mm", UnequalForm, "20 +0/-0.021 mm"}, {"20 +0.021/+0.008 mm", UnequalForm, "20 +0.021/+0.008 mm"}, {"20 +2/0 mm", UnequalForm, "20 +2/-0 mm"},
		{"≥ 5 mm", AtLeastForm, "≥ 5 mm"}, {"min 5 mm", AtLeastForm, "≥ 5 mm"}, {"min. 5 min", AtLeastForm, "≥ 5 min"}, {"at least 5 mm", AtLeastForm, "≥ 5 mm"},
		{"max 0.05 mm", AtMostForm, "≤ 0.05 mm"}, {"<= 0.05 mm", AtMostForm, "≤ 0.05 mm"}, {"at most 3 drops", AtMostForm, "≤ 3 drops"},
	} {
		l, problems := ParseLiteral(c.text, Context{})
		require.Empty(t, problems, c.text)
		require.Equal(t, c.form, l.Form, c.text)
		require.Equal(t, c.back, l.String(), c.text)
	}
}

func TestLimitsOfForms(t *testing.T) {
	for text, want := range map[string][2]string{
		"24 ± 2 N·m": {"22 N·m", "26 N·m"}, "24 N·m ± 10 %": {"21.6 N·m", "26.4 N·m"}, "24 +2/-0 N·m": {"24 N·m", "26 N·m"},
		"20 +0.021/+0.008 mm": {"20.008 mm", "20.021 mm"}, "20 ± 2 °C": {"18 °C", "22 °C"}, "68 °F ± 9 °F": {"59 °F", "77 °F"},
		"-10 ± 1 mm": {"-11 mm", "-9 mm"}, "-10 mm ± 10 %": {"-11 mm", "-9 mm"}, "10 ± 2 %": {"8 %", "12 %"},
	} {
		l, problems := ParseLiteral(text, Context{})
		require.Empty(t, problems, text)
		require.Equal(t, want, [2]string{l.Low.String(), l.High.String()}, text)
		require.True(t, l.IsLimits())
	}
}

// What the place says about the unit.
func TestContext(t *testing.T) {
	difference := Context{Want: TemperatureDiff, HasWant: true, Difference: true}
	l, problems := ParseLiteral("0.5 °C", difference)
	require.Empty(t, problems)
	require.Equal(t, TemperatureDiff, l.Dim())
	require.Equal(t, "K", l.Coded().Nominal.Unit)

	l, problems = ParseLiteral("± 4 %", Context{Want: Torque, HasWant: true, Difference: true, AllowPercent: true})
	require.Empty(t, problems)
	require.Equal(t, "± 4 %", l.String())

	l, problems = ParseLiteral("293 K", Context{Want: Temperature, HasWant: true})
	require.Empty(t, problems)
	require.Equal(t, "19.85 °C", NewQuantity(l.Nominal.In(MustUnit("°C")).num, MustUnit("°C"), 2).String())

	_, problems = ParseLiteral("3", Context{Want: Length, HasWant: true, AllowPlain: true})
	require.Empty(t, problems)

	for gallon, want := range map[string]string{"US": "3.785411784", "UK": "4.54609"} { // NIST SP 811 B.8
		l, problems = ParseLiteral("1 gal", Context{Gallon: gallon})
		require.Empty(t, problems)
		require.Equal(t, want, l.Nominal.In(MustUnit("L")).Num().RatString()[:0]+FormatRat(l.Nominal.In(MustUnit("L")).Num(), len(want)-2))
	}
}

func TestProblems(t *testing.T) {
	torque := Context{Want: Torque, HasWant: true}
	length := Context{Want: Length, HasWant: true}
	warmer := Context{Want: TemperatureDiff, HasWant: true}
	for _, c := range []struct {
		text  string
		ctx   Context
		rule  string
		at    string // the characters marked
		fixed string // the text after the edit, with ? where it is not sure
		value string // the literal all the same
	}{
		{"24 furlongs", torque, RuleUnknownUnit, "furlongs", "", ""},
		{"24 nm", torque, RuleUnknownUnit, "nm", "24 N·m?", ""},
		{"24 Newtons", Context{}, RuleUnknownUnit, "Newtons", "24 N?", ""},
		{"2 gal", Context{}, RuleUnknownUnit, "gal", "", ""},
		{"2 months", Context{}, RuleUnknownUnit, "months", "", ""},
		{"1 W/m·K", Context{}, RuleUnknownUnit, "W/m·K", "", ""},
		{"24 mm", torque, RuleWrongDimension, "24 mm", "", ""},
		{"5 kg", Context{Want: Force, HasWant: true}, RuleWrongDimension, "5 kg", "5 kgf?", ""},
		{"2 m..3 kg", Context{}, RuleWrongDimension, "3 kg", "", ""},
		{"2 mm", Context{HasWant: true}, RuleWrongDimension, "2 mm", "", ""},
		{"24 J", torque, RuleEnergyTorque, "24 J", "24 N·m?", "24 N·m"},
		{"22..26 kJ", torque, RuleEnergyTorque, "22..26 kJ", "", ""},
		{"24", torque, RuleBareNumber, "24", "", ""},
		{"0.08..0.14", length, RuleBareNumber, "0.08..0.14", "", ""},
		{"24 ± 2", torque, RuleBareNumber, "24 ± 2", "", ""},
		{"1,02 mm", length, RuleDecimalComma, "1,02", "1.02 mm", "1.02 mm"},
		{"0,125 mm", length, RuleDecimalComma, "0,125", "0.125 mm", "0.125 mm"},
		{"1,000 mm", length, RuleDecimalComma, "1,000", "", ""},
		{"1,000,000 Pa", Context{}, RuleDecimalComma, "1,000,000", "1000000 Pa", "1000000 Pa"},
		{"1.000,5 mm", length, RuleDecimalComma, "1.000,5", "1000.5 mm", "1000.5 mm"},
		{"0.14..0.08 mm", length, RuleBackwards, "0.14..0.08 mm", "0.08..0.14 mm?", ""},
		{"5 mm to 0.4 cm", length, RuleBackwards, "5 mm to 0.4 cm", "", ""},
		{"5..5 mm", length, RuleBackwards, "5..5 mm", "", "5..5 mm"},
		{"0.1 mm..4.5 thou", length, RuleTwoSystems, "0.1 mm..4.5 thou", "", "0.1 mm..4.5 thou"},
		{"24 mm ± 1 thou", length, RuleTwoSystems, "24 mm ± 1 thou", "", "24 mm ± 1 thou"},
		{"5 °C", warmer, RuleTemperature, "5 °C", "5 K?", "5 °C"},
		{"5..10 °C", warmer, RuleTemperature, "5..10 °C", "5..10 K?", "5..10 °C"},
		{"24-26 Nm", torque, RuleHyphen, "-", "24..26 Nm", "24..26 N·m"},
		{"24 Nm - 26 Nm", torque, RuleHyphen, " - ", "24 Nm..26 Nm", "24..26 N·m"},
		{"24 — 26 Nm", torque, RuleHyphen, " — ", "24..26 Nm", "24..26 N·m"},
		{"20 ft-lb-25 ft-lb", torque, RuleHyphen, "-", "20 ft-lb..25 ft-lb", "20..25 lb·ft"},
		{"10 -20 °C", Context{}, RuleHyphen, " -", "10..20 °C?", ""},
		{"", torque, RuleUnreadable, "", "", ""},
		{"about 5 mm", length, RuleUnreadable, "about", "", ""},
		{"tight", torque, RuleUnreadable, "tight", "", ""},
		{"1e9 mm", length, RuleUnreadable, "e9", "", ""},
		{"5. mm", length, RuleUnreadable, ".", "", ""},
		{"1/0 in", length, RuleUnreadable, "0", "", ""},
		{"5...10 mm", length, RuleUnreadable, "...", "", ""},
		{"5 mm, 6 mm", length, RuleUnreadable, ", 6 mm", "", ""},
		{"24 100 N·m", torque, RuleUnreadable, "100 N·m", "", ""},
		{"24 +2 N·m", torque, RuleUnreadable, "+2 N·m", "", ""},
		{"20 °C ± 10 %", Context{}, RuleUnreadable, "10", "", ""},
		{"> 5 mm", length, RuleUnreadable, ">", "≥ 5 mm?", "≥ 5 mm"},
		{"0.05 mm max", length, RuleUnreadable, "0.05 mm max", "max 0.05 mm", "≤ 0.05 mm"},
		{"5 mm min", length, RuleUnreadable, "5 mm min", "min 5 mm", "≥ 5 mm"},
		{"1 h 30 min", Context{}, RuleUnreadable, "1 h 30 min", "90 min", "90 min"},
		{"5 mm\u200b", length, RuleUnreadable, "\u200b", "", ""},
		{"5 \xffmm", length, RuleUnreadable, "\xff", "", ""},
		{"5\x00 mm", length, RuleUnreadable, "\x00", "", ""},
		{strings.Repeat("9", 41) + " mm", length, RuleUnreadable, strings.Repeat("9", 41), "", ""},
	} {
		l, problems := ParseLiteral(c.text, c.ctx)
		require.Len(t, problems, 1, c.text)
		p := problems[0]
		require.Equal(t, c.rule, p.Rule, c.text)
		require.Equal(t, c.at, c.text[p.Span.Start:p.Span.End], c.text)
		for _, words := range []string{p.Message, p.Reason, p.Remedy} {
			require.True(t, strings.HasSuffix(words, "."), "%s: %q", c.text, words)
		}
		fixed := ""
		if p.Edit != nil {
			fixed = c.text[:p.Edit.Start] + p.Edit.New + c.text[p.Edit.End:]
			if !p.Edit.Sure {
				fixed += "?"
			}
		}
		require.Equal(t, c.fixed, fixed, c.text)
		require.Equal(t, c.value, l.String(), c.text)
	}
	_, problems := ParseLiteral(strings.Repeat("1", 250), length)
	require.Len(t, problems, 1)
}

// Several slips in one string are all told.
func TestSeveralProblems(t *testing.T) {
	l, problems := ParseLiteral("24,5-26,5 Nm", Context{})
	require.Len(t, problems, 3)
	require.Equal(t, "24.5..26.5 N·m", l.String())
	l, problems = ParseLiteral("10-15-20 mm", Context{})
	require.False(t, l.Valid())
	for _, p := range problems {
		require.False(t, p.Edit != nil && p.Edit.Sure, "not understood to its end")
	}
}

// literalText draws a sound string in any form.
func literalText(t *rapid.T, u *Unit) string {
	number := func(name string) string {
		n := rapid.Int64Range(0, 99999).Draw(t, name)
		switch rapid.IntRange(0, 3).Draw(t, name+" as") {
		case 0:
			return fmt.Sprint(n)
		case 1:
			return fmt.Sprintf("%d %d/%d", n%50+1, 2*(n%8)+1, 16)
		}
		return FormatRat(big.NewRat(n, 100), rapid.IntRange(1, 6).Draw(t, "decimals"))
	}
	value := func(s string) *big.Rat {
		whole, part, mixed := strings.Cut(s, " ")
		r, _ := new(big.Rat).SetString(whole)
		if mixed {
			p, _ := new(big.Rat).SetString(part)
			r.Add(r, p)
		}
		return r
	}
	a, b, unit := number("a"), number("b"), " "+u.Name
	switch rapid.IntRange(0, 6).Draw(t, "form") {
	case 0:
		return a + unit
	case 1:
		switch value(a).Cmp(value(b)) {
		case 0:
			return a + unit
		case 1:
			a, b = b, a
		}
		return a + rapid.SampledFrom([]string{"..", " to ", "–", " – "}).Draw(t, "mark") + b + unit
	case 2:
		return a + " ± " + b + unit
	case 3:
		if strings.HasPrefix(u.Name, "°") && u != MustUnit("°") {
			return a + " ± " + b + unit
		}
		return a + unit + " ± " + b + " %"
	case 4:
		return a + " +" + b + "/-" + number("c") + unit
	case 5:
		return rapid.SampledFrom([]string{"≥ ", ">= ", "min ", "at least "}).Draw(t, "bound") + a + unit
	}
	return rapid.SampledFrom([]string{"≤ ", "<= ", "max ", "at most "}).Draw(t, "bound") + a + unit
}

func TestParseAndPrintAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom(Units()).Draw(t, "unit")
		text := literalText(t, u)
		l, problems := ParseLiteral(text, Context{})
		require.Empty(t, problems, text)
		back, problems := ParseLiteral(l.String(), Context{})
		require.Empty(t, problems, "%s as %s", text, l)
		require.Equal(t, l, back, "%s as %s", text, l)
	})
}

func FuzzParseLiteral(f *testing.F) {
	for _, s := range []string{
		"24 N·m", "24-26 Nm", "1,02 mm", "24 +2/-0 N·m", "24 N·m ± 10 %", "≥ 5 mm", "1 1/16 in", "0.1 mm..4 thou",
		"1 h 30 min", "W/(m·K)", "5 ((m)²)²", "1/(", "1 (m", "20 0/-0.021 mm", "½", "--1", "5 1/min", "...", "1..2..3", "5 m^9·m^9", "0.05 max", "1-", "± ",
		"24 ±10% N·m", "1 000 mm", "5 mm min", "9999999999999999999999999999999999999999 µm", "1.000,5", "5 to", "5 tomm", "-−5 °C", "3 US gal/min", "+0/-0", "0/0", "1 0/-0",
		"0.1 mm. 00thou", "5 ((%)²)²", "0C1", // once read or written back wrongly
	} {
		f.Add(s, uint8(0))
	}
	wants := []Context{{}, {HasWant: true}, {Want: Torque, HasWant: true}, {Want: Length, HasWant: true, Gallon: "UK"},
		{Want: TemperatureDiff, HasWant: true}, {Want: Temperature, HasWant: true}, {Difference: true, AllowPercent: true}, {AllowPlain: true, Gallon: "US"}}
	f.Fuzz(func(t *testing.T, s string, place uint8) {
		ctx := wants[int(place)%len(wants)]
		l, problems := ParseLiteral(s, ctx)
		require.True(t, l.Valid() || len(problems) > 0, "neither a value nor a word why")
		for _, p := range problems {
			require.True(t, 0 <= p.Span.Start && p.Span.Start <= p.Span.End && int(p.Span.End) <= len(s), "%v", p)
			require.NotEmpty(t, p.Message+p.Reason+p.Remedy)
			if p.Edit != nil {
				require.True(t, 0 <= p.Edit.Start && p.Edit.Start <= p.Edit.End && p.Edit.End <= len(s), "%v", p.Edit)
			}
		}
		if !l.Valid() {
			return
		}
		shown := Style{First: Metric}.Literal(l)
		require.NotEmpty(t, shown.First)
		if l.IsLimits() && l.Low != nil && l.High != nil {
			require.LessOrEqual(t, l.Low.Cmp(*l.High), 0)
		}
		if len(problems) == 0 {
			back, problems := ParseLiteral(l.String(), ctx)
			require.Empty(t, problems, "%q as %q", s, l)
			require.Equal(t, l.Form, back.Form, "%q as %q", s, l)
			require.Zero(t, l.Any().Base().Cmp(back.Any().Base()), "%q as %q", s, l)
		}
		if fixed, all := applySure(s, problems); all {
			again, left := ParseLiteral(fixed, ctx)
			require.Empty(t, left, "%q made %q", s, fixed)
			require.Zero(t, l.Any().Base().Cmp(again.Any().Base()), "%q made %q", s, fixed)
		}
	})
}

// applySure makes the sure edits, from the end to the start; all says that every
// problem had one.
func applySure(s string, problems []Problem) (fixed string, all bool) {
	for i := len(problems) - 1; i >= 0; i-- {
		e := problems[i].Edit
		if e == nil || !e.Sure {
			return s, false
		}
		s = s[:e.Start] + e.New + s[e.End:]
	}
	return s, len(problems) > 0
}
