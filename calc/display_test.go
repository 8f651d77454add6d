package calc

import (
	"encoding/json"
	"math/big"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// rounding.json: NIST SP 811 (2008) B.7.1, B.7.2 and NIST PS 20-20 Table 3.
func TestPublishedRounding(t *testing.T) {
	var file struct {
		B71 []struct {
			X, Rounded string
			Digits     int
		} `json:"sp811_B7_1"`
		B72 []struct{ L, Factor, Rounded string } `json:"sp811_B7_2"`
		PS  []struct {
			In json.Number
			MM json.Number
		} `json:"ps20_table3_in_to_mm_half_even"`
	}
	published(t, "rounding.json", &file)
	require.NotEmpty(t, file.B71)
	for _, r := range file.B71 {
		x, _ := new(big.Rat).SetString(r.X)
		require.Equal(t, r.Rounded, FormatRat(x, r.Digits-1), "all have one digit before the point")
	}
	for _, r := range file.B72 {
		want := quantity(t, r.Rounded)
		require.Equal(t, r.Rounded, NewQuantity(quantity(t, r.L).In(want.Unit).num, want.Unit, want.Decimals).String())
	}
	require.NotEmpty(t, file.PS)
	for _, r := range file.PS {
		mm := quantity(t, r.In.String()+" in").In(MustUnit("mm"))
		require.Equal(t, r.MM.String(), FormatRat(mm.num, 0), "%s in", r.In)
	}
	require.Equal(t, "190", FormatRat(quantity(t, "7.5 in").In(MustUnit("mm")).num, 0), "the tie")
}

func TestFormatRat(t *testing.T) {
	for _, c := range []struct {
		n, d     int64
		decimals int
		want     string
	}{
		{5, 2, 0, "2"}, {7, 2, 0, "4"}, {-5, 2, 0, "-2"}, {-7, 2, 0, "-4"}, {-1, 3, 0, "0"}, {1, 1000, 2, "0.00"}, {-1, 1000, 2, "0.00"},
		{1, 8, 2, "0.12"}, {3, 8, 2, "0.38"}, {-1, 8, 3, "-0.125"}, {100, 1, 2, "100.00"},
	} {
		require.Equal(t, c.want, FormatRat(big.NewRat(c.n, c.d), c.decimals), "%d/%d", c.n, c.d)
	}
}

// Worked by hand from the exact factors; the first two stand in the dialect's page.
func TestStyle(t *testing.T) {
	for _, c := range []struct {
		first        System
		gallon, text string
		want         string
	}{
		{Metric, "", "0.10 mm", "0.10 mm (0.0039 in)"},
		{Metric, "", "0.08..0.14 mm", "0.08 to 0.14 mm (0.0032 to 0.0055 in)"},
		{Inch, "", "0.10 mm", "0.0039 in (0.10 mm)"},
		{Inch, "", "3..5 thou", "3 to 5 thou (0.08 to 0.12 mm)"},
		{Metric, "", "24 N·m", "24 N·m (17.7 lb·ft)"},
		{Metric, "", "8 N·m", "8 N·m (71 lb·in)"},
		{Metric, "", "24 ± 2 N·m", "24 N·m, 22 to 26 N·m (17.7 lb·ft, 16.3 to 19.1 lb·ft)"},
		{Metric, "", "24 +2/-0 N·m", "24 N·m, 24 to 26 N·m (17.8 lb·ft, 17.8 to 19.1 lb·ft)"},
		{Metric, "", "10 ± 0.05 mm", "10 mm, 9.95 to 10.05 mm (0.3937 in, 0.3918 to 0.3956 in)"},
		{Inch, "", "3/8 in", "3/8 in (9.525 mm)"},
		{Metric, "", "1 1/16 in", "26.99 mm (1 1/16 in)"},
		{Metric, "", "≥ 5 mm", "at least 5 mm (0.20 in)"},
		{Metric, "", "max 0.05 mm", "at most 0.05 mm (0.0019 in)"},
		{Metric, "", "-20..110 °C", "-20 to 110 °C (-4 to 230 °F)"},
		{Metric, "", "20 ± 2 °C", "20 °C, 18 to 22 °C (68 °F, 65 to 71 °F)"},
		{Metric, "US", "2.5 L", "2.5 L (2.6 US qt)"},
		{Metric, "UK", "20 L", "20 L (4.4 UK gal)"},
		{Metric, "", "15 min", "15 min"},
		{Metric, "", "90°", "90°"},
		{Metric, "", "2.0 bar", "2.0 bar (29 psi)"},
		{Inch, "", "18 lb·ft", "18 lb·ft (24 N·m)"},
		{Metric, "", "1 L/min", "1 L/min (0.3 US gal/min)"},
		{Metric, "", "0..4", "0 to 4"},
		{Metric, "", "1/2..2 turns", "1/2 turn to 2 turns"},
		{Metric, "", "7.00..7.01 mm", "7.00 to 7.01 mm (0.2756 to 0.2759 in)"},
		{Metric, "", "1..1.01 µm", "1 to 1.01 µm (0.0000394 to 0.0000397 in)"},
	} {
		l, problems := ParseLiteral(c.text, Context{Gallon: c.gallon})
		require.Empty(t, problems, c.text)
		require.Equal(t, c.want, Style{First: c.first, Gallon: c.gallon}.Literal(l).String())
	}
}

// What is shown in brackets never lets through what the authored limit stops.
func TestConvertedLimitsNeverAcceptMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom(Units()).Draw(t, "unit")
		decimals := rapid.IntRange(0, 5).Draw(t, "decimals")
		low := NewQuantity(new(big.Rat).Mul(pow10(-decimals), intRat(rapid.Int64Range(-20000, 20000).Draw(t, "low"))), u, decimals)
		width := new(big.Rat).Mul(pow10(-decimals), intRat(rapid.Int64Range(1, 300).Draw(t, "width")))
		high := NewQuantity(width.Add(width, low.num), u, decimals)
		l := Literal{Form: RangeForm, Low: &low, High: &high}
		if rapid.Bool().Draw(t, "with a nominal value") {
			mid := NewQuantity(new(big.Rat).Quo(new(big.Rat).Add(low.num, high.num), intRat(2)), u, decimals)
			l = Literal{Form: PlusMinusForm, Nominal: &mid, Low: &low, High: &high, Upper: &mid, Lower: &mid}
		}
		shown := Style{First: rapid.SampledFrom([]System{Neither, Metric, Inch}).Draw(t, "first"), Gallon: rapid.SampledFrom([]string{"US", "UK"}).Draw(t, "gallon")}.Literal(l)
		for _, text := range []string{shown.First, shown.Other} {
			nominal, limits, both := strings.Cut(text, ", ")
			if !both {
				nominal, limits = "", text
			}
			if text == "" {
				continue
			}
			back, problems := ParseLiteral(limits, Context{Difference: !u.Dim.IsPoint()})
			require.Empty(t, trimWidth(problems), text)
			require.GreaterOrEqual(t, back.Low.Base().Cmp(low.Base()), 0, text)
			require.LessOrEqual(t, back.High.Base().Cmp(high.Base()), 0, text)
			if nominal != "" {
				n, problems := ParseLiteral(nominal, Context{Difference: !u.Dim.IsPoint()})
				require.Empty(t, problems, text)
				require.True(t, Limits{Low: back.Low, High: back.High}.Contain(*n.Nominal), text)
			}
		}
	})
}

// trimWidth drops the remark that both ends are the same: inside a narrow range
// there may be one printable number only.
func trimWidth(problems []Problem) []Problem {
	var kept []Problem
	for _, p := range problems {
		if p.Rule != RuleBackwards {
			kept = append(kept, p)
		}
	}
	return kept
}

func TestCoded(t *testing.T) {
	for text, want := range map[string]string{
		"0.10 mm":       `{"nominal":{"value":"0.10","unit":"mm"}}`,
		"3/8 in":        `{"nominal":{"value":"3/8","unit":"[in_i]"}}`,
		"24 N·m ± 10 %": `{"nominal":{"value":"24","unit":"N.m"},"low":{"value":"21.6","unit":"N.m"},"high":{"value":"26.4","unit":"N.m"}}`,
		"max 5 µm":      `{"high":{"value":"5","unit":"um"}}`,
		"4 drops/min":   `{"nominal":{"value":"4","unit":"{drop}/min"}}`,
		"1/3 turn":      `{"nominal":{"value":"1/3","unit":"circ"}}`,
		"4":             `{"nominal":{"value":"4","unit":"1"}}`,
	} {
		l, problems := ParseLiteral(text, Context{})
		require.Empty(t, problems)
		got, err := json.Marshal(l.Coded())
		require.NoError(t, err)
		require.Equal(t, want, string(got))
	}
}
