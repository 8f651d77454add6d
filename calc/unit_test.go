package calc

import (
	"encoding/json"
	"math/big"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// published reads a file of published values; testdata/published/README.md
// tells where each comes from.
func published(t *testing.T, name string, into any) {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "testdata", "published", name))
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(text, into))
}

// quantity reads one value; quiet about what it is.
func quantity(t require.TestingT, s string) Quantity {
	l, problems := ParseLiteral(s, Context{Gallon: "US"})
	require.Empty(t, problems, s)
	require.Equal(t, ValueForm, l.Form, s)
	return *l.Nominal
}

// near reports that q is what a reference printed, to its last digit but one:
// reference programs print floating point.
func near(t *testing.T, want, got Quantity, why string) {
	t.Helper()
	digits := max(0, want.Decimals-1)
	require.Equal(t, FormatRat(want.num, digits), FormatRat(got.num, digits), why)
}

// units_exact.json: definitions by NIST SP 811 B.8, 24 FR 5348 and UCUM.
func TestExactDefinitions(t *testing.T) {
	var file struct {
		Rows []struct {
			Unit, SI, Source string
			Exact            any
		}
	}
	published(t, "units_exact.json", &file)
	spelled := map[string]string{
		"inch": "1 in", "foot": "1 ft", "thou / mil (0.001 in)": "1 thou", "lb (avoirdupois)": "1 lb",
		"pound-force": "1 lbf", "degree (angle)": "1 °", "US fluid ounce": "1 US fl oz", "ounce (avoirdupois)": "1 oz",
	}
	checked := 0
	for _, row := range file.Rows {
		switch row.Unit {
		case "degF", "US survey foot": // tested as points below; not in the table
			continue
		case "standard gravity":
			g := quantity(t, row.SI)
			weight, err := quantity(t, "1 kg").Mul(g)
			require.NoError(t, err)
			require.Zero(t, quantity(t, "1 kgf").Cmp(weight), row.Source)
			continue
		}
		text := spelled[row.Unit]
		if text == "" {
			text = "1 " + row.Unit
		}
		si, _, _ := strings.Cut(row.SI, " =")
		want := quantity(t, si)
		got := quantity(t, text).In(want.Unit)
		if row.Exact == true {
			require.Zero(t, want.num.Cmp(got.num), "%s: %s, %s", row.Unit, got.num, row.Source)
		} else {
			near(t, want, got, row.Source)
		}
		checked++
	}
	require.GreaterOrEqual(t, checked, 14)
}

// units_values.json, U01 to U13: printed by UCUM and GNU units, or read in SP 811.
func TestPublishedConversions(t *testing.T) {
	var rows []struct{ ID, Inputs, Expected, Source string }
	published(t, "units_values.json", &rows)
	leading := regexp.MustCompile(`^[0-9. ]*[0-9] ?[A-Za-z.]+`)
	checked := 0
	for _, row := range rows {
		if row.ID > "U13" {
			continue
		}
		in := strings.Replace(row.Inputs, "fl oz (US)", "US fl oz", 1)
		want := quantity(t, strings.Replace(leading.FindString(row.Expected), "100 000", "100000", 1))
		near(t, want, quantity(t, in).In(want.Unit), row.ID+": "+row.Source)
		checked++
	}
	require.Equal(t, 13, checked)
}

// U14 and U15, and units_exact.json "incommensurable_must_fail".
func TestWhatMustFail(t *testing.T) {
	_, err := quantity(t, "1 psi").Add(quantity(t, "1 N"))
	require.Error(t, err)
	_, err = quantity(t, "1 N.m").Sub(quantity(t, "1 mm"))
	require.Error(t, err)
	_, err = quantity(t, "20 °C").Add(quantity(t, "20 °C"))
	require.Error(t, err)
	_, ok := LookUpUnit("furlong", "")
	require.False(t, ok)
	_, ok = LookUpUnit("gal", "")
	require.False(t, ok, "nobody said whose")
}

func TestSpellings(t *testing.T) {
	for name, list := range map[string]string{
		"N·m":    "N·m|Nm|N.m|N*m|N m|N-m|N⋅m|N · m|N\u00a0m",
		"lb·ft":  "lb·ft|lbf·ft|ft·lb|ft-lb|lb ft|lbf.ft|ft lbs|ft.lb",
		"lb·in":  "in·lb|lbf·in|in-lbs|lb in",
		"µm":     "µm|μm|um|micron",
		"kΩ":     "kΩ|kΩ|kohm",
		"°C":     "°C|C|degC|℃",
		"US gal": "US gal|gal|gallons",
		"L/min":  "L/min|l/min|L / min|litres per minute",
		"m/s²":   "m/s²|m/s2|m/s^2|m·s⁻²|m/s/s|m/(s·s)",
		"rpm":    "rpm|r/min|turns/min|revolutions per minute",
		"mm²":    "mm²|mm2|mm·mm|sq mm",
		"in":     "in|in.|inches|\"|″",
	} {
		want, ok := LookUpUnit(name, "US")
		require.True(t, ok, name)
		for s := range strings.SplitSeq(list, "|") {
			u, ok := LookUpUnit(s, "US")
			require.True(t, ok, s)
			require.Same(t, want, u, "%s is not %s", s, name)
		}
	}
	uk, _ := LookUpUnit("gal/min", "UK")
	us, _ := LookUpUnit("gal/min", "US")
	require.Equal(t, "UK gal/min", uk.Name)
	require.Equal(t, "US gal/min", us.Name)
}

// Every unit is read by its printed name, and shows a partner of its own
// dimension in the other system.
func TestTableIsSound(t *testing.T) {
	for _, u := range Units() {
		require.NotEmpty(t, u.UCUM, u.Name)
		require.NotEmpty(t, u.Source, u.Name)
		require.Positive(t, u.Factor.Sign(), u.Name)
		for _, s := range u.Spellings {
			got, ok := LookUpUnit(s, "")
			require.True(t, ok, s)
			require.Same(t, u, got, s)
		}
		for _, gallon := range []string{"", "US", "UK"} {
			p := PartnerOf(NewQuantity(intRat(3), u, 0), gallon)
			if u.System == Neither {
				require.Nil(t, p, u.Name)
				continue
			}
			if p != nil {
				require.Equal(t, u.Dim, p.Dim, u.Name)
				require.NotEqual(t, u.System, p.System, u.Name)
			}
		}
	}
}

// unitGen draws a unit of the table or a compound.
func unitGen() *rapid.Generator[*Unit] {
	return rapid.Custom(func(t *rapid.T) *Unit {
		table := rapid.SampledFrom(Units())
		if rapid.Bool().Draw(t, "of the table") {
			return table.Draw(t, "unit")
		}
		var terms []power
		for range rapid.IntRange(1, 4).Draw(t, "terms") {
			exp := rapid.SampledFrom([]int{-2, -1, 1, 1, 2, 3}).Draw(t, "power")
			terms = append(terms, power{table.Draw(t, "unit").Difference(), exp})
		}
		u := theTable.compound(terms)
		if u == nil {
			t.Skip("beyond reason")
		}
		return u
	})
}

func TestUnitNameReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := unitGen().Draw(t, "unit")
		if u == One {
			t.Skip("plain")
		}
		back, ok := LookUpUnit(u.Name, "")
		require.True(t, ok, u.Name)
		if u.point == nil || u.Name == "K" { // °C alone is read as a temperature
			require.Zero(t, u.Factor.Cmp(back.Factor), u.Name)
			require.True(t, u.Dim.Fits(back.Dim), u.Name)
		}
	})
}

func TestConversionRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom(Units()).Draw(t, "from")
		v := rapid.SampledFrom(Units()).Draw(t, "to")
		if !u.Dim.Fits(v.Dim) {
			t.Skip("another dimension")
		}
		q := NewQuantity(big.NewRat(rapid.Int64Range(-1e9, 1e9).Draw(t, "n"), rapid.Int64Range(1, 1e6).Draw(t, "d")), u, 3)
		require.Zero(t, q.num.Cmp(q.In(v).In(u).num))
		require.Zero(t, q.Cmp(q.In(v)))
	})
}

func TestArithmeticRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := func(name string) *big.Rat {
			return big.NewRat(rapid.Int64Range(-1e6, 1e6).Draw(t, name), rapid.Int64Range(1, 1e3).Draw(t, name+" under"))
		}
		q := NewQuantity(number("q"), unitGen().Draw(t, "unit of q"), 2)
		r := NewQuantity(number("r"), unitGen().Draw(t, "unit of r"), 1)
		if product, err := q.Mul(r); err == nil && r.Sign() != 0 {
			back, err := product.Div(r)
			require.NoError(t, err)
			require.Zero(t, back.Base().Cmp(q.Base()))
			require.Equal(t, q.Dim().exp, back.Dim().exp)
		}
		if sum, err := q.Add(r); err == nil && !r.Dim().IsPoint() {
			back, err := sum.Sub(r)
			require.NoError(t, err)
			require.Zero(t, back.Cmp(q))
		}
	})
}

func TestArithmetic(t *testing.T) {
	for _, c := range []struct {
		x, op, y, want string
	}{
		{"1.02 mm", "-", "0.040 in", "0.00 mm"},
		{"20 °C", "+", "60 K", "80 °C"},
		{"68 °F", "-", "20 °C", "0 °F"},
		{"88.00 mm", "*", "0.0035", "0.308 mm"},
		{"24 N·m", "/", "10 mm", "2.4 N·m/mm"},
		{"100 mm", "*", "2 mm/m", "0.2 mm"},
		{"3 mm", "*", "2 mm", "6 mm²"},
		{"1 1/2 in", "+", "1/4 in", "1 3/4 in"},
	} {
		x, y := quantity(t, c.x), quantity(t, c.y)
		got, err := map[string]func(Quantity) (Quantity, error){"+": x.Add, "-": x.Sub, "*": x.Mul, "/": x.Div}[c.op](y)
		require.NoError(t, err)
		require.Equal(t, c.want, got.String(), "%s %s %s", c.x, c.op, c.y)
	}
	_, err := quantity(t, "1 mm").Div(quantity(t, "0 s"))
	require.ErrorContains(t, err, "zero")
	_, err = quantity(t, "20 °C").Mul(quantity(t, "2"))
	require.Error(t, err)
	_, err = quantity(t, "20 °C").Neg()
	require.Error(t, err)
	to, err := RoundTo(quantity(t, "1.025 mm"), quantity(t, "0.05 mm"))
	require.NoError(t, err)
	require.Equal(t, "1.00 mm", to.String()) // 20.5 steps: half to even
}
