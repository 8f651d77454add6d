package joint

import (
	"testing"

	"fettle/calc"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// FAA AC 43.13-1B Table 7-1, read, gives torques for castellated nuts: a band
// that it prints must leave room for a slot, by the least share set here.
func TestSlotsOfPublishedBands(t *testing.T) {
	var table struct {
		Rows []torqueRow `json:"table_7_1"`
	}
	published(t, "thread_torque_ac4313_7_1.json", &table)
	k := Point(q("0.16", "")) // cadmium plated: Shigley Table 8-15
	n := 0
	for _, r := range table.Rows {
		if r.Series != "fine" {
			continue
		}
		s, p := SlotsWithin(band(number(r.Min), number(r.Max), "lb·in"), k, thread(t, r.Thread), calc.Quantity{}, 6)
		require.Nil(t, p)
		require.Positive(t, s.Share.Cmp(SlotShareLeast), "%s has a share of %s", r.Thread, s.Share.Num().FloatString(3))
		require.Negative(t, s.Share.Cmp(q("1", "")), "a washer is changed until it fits: %s", cite(t, "T32"))
		n++
	}
	require.Equal(t, 10, n)
}

func TestSlots(t *testing.T) {
	th, k := thread(t, "M10"), Point(q("0.18", ""))
	s, p := SlotsWithin(band("45", "55", "N·m"), k, th, q("40", "mm"), 6)
	require.Nil(t, p)
	same(t, "60", s.Step, "°")
	// By hand: ΔF 5556 N; δ = 48 mm / (200 GPa · 57.99 mm²) · 1.471 = 6.088e-6 mm/N; 360 · 5556 · δ / 1.5 mm = 8.1°
	near(t, "8.12", "0.2", s.Turn, "°")
	near(t, "41.06", "0.2", s.PerStep, "kN")
	near(t, "0.1353", "0.2", s.Share, "")

	none, p := SlotsWithin(band("50", "50", "N·m"), k, th, calc.Quantity{}, 6)
	require.Nil(t, p)
	require.Zero(t, none.Share.Sign())
	narrow, _ := SlotsWithin(band("49", "51", "N·m"), k, th, calc.Quantity{}, 6)
	require.Negative(t, narrow.Share.Cmp(SlotShareLeast))
	twice, _ := SlotsWithin(band("45", "55", "N·m"), k, th, q("40", "mm"), 12)
	same(t, "30", twice.Step, "°")

	_, p = SlotsWithin(band("45", "55", "N·m"), k, th, calc.Quantity{}, 0)
	require.NotNil(t, p)
	_, p = SlotsWithin(band("45", "55", "N·m"), k, thread(t, "G1/4"), calc.Quantity{}, 6)
	require.NotNil(t, p)
	_, p = SlotsWithin(band("45", "55", "N·m"), k, th, q("0", "mm"), 6)
	require.NotNil(t, p)
}

func TestInstrument(t *testing.T) {
	limits := band("0.08", "0.14", "mm")
	r, p := AccuracyRatio(limits, q("0.0075", "mm")) // 0.03 over 0.0075: exactly the usual least of 4
	require.Nil(t, p)
	same(t, "4", r, "")
	r, p = ResolutionRatio(limits, q("0.01", "mm"))
	require.Nil(t, p)
	same(t, "6", r, "")
	_, p = AccuracyRatio(band("20", "30", "°C"), q("1", "K")) // the accuracy of a temperature is a difference
	require.Nil(t, p)
	_, p = AccuracyRatio(band("20", "30", "°C"), q("1", "°C"))
	require.NotNil(t, p)
	_, p = AccuracyRatio(Band{High: q("1", "mm")}, q("1", "mm"))
	require.Contains(t, p.Message, "both sides")
	_, p = ResolutionRatio(limits, q("0", "mm"))
	require.NotNil(t, p)

	near(t, "0.002887", "0.01", ResolutionUncertainty(q("0.01", "mm")), "mm", cite(t, "M05"))
}

func TestDecide(t *testing.T) {
	limits, u := band("0.05", "0.20", "mm"), q("0.01", "mm")
	for reading, want := range map[string]Verdict{
		"0.195": Undecided, // M07
		"0.19":  Accepted, "0.06": Accepted, "0.190000001": Undecided, "0.0599999": Undecided,
		"0.21": Undecided, "0.2100001": Rejected, "0.04": Undecided, "0.0399999": Rejected,
	} {
		require.Equal(t, want, Decide(q(reading, "mm"), limits, u), "%s: %s %s", reading, cite(t, "M06"), cite(t, "M07"))
	}
}

func TestLift(t *testing.T) {
	// NIOSH load constant, 23 kg or 51 lb; HSE L23: two-thirds of the sum for two, half for three. From memory.
	near(t, "51", "1", OneLift, "lb")
	for people, want := range map[int]string{1: "23", 2: "92/3", 3: "69/2", 4: "46"} {
		limit, p := LiftLimit(people, OneLift)
		require.Nil(t, p)
		same(t, want, limit, "kg")
	}
	for mass, want := range map[string]int{"23": 1, "23.000001": 2, "92/3": 2, "31": 3, "46": 4} {
		n, ok := PeopleFor(q(mass, "kg"), OneLift)
		require.True(t, ok)
		require.Equal(t, want, n, mass)
	}
	_, ok := PeopleFor(q("46.1", "kg"), OneLift)
	require.False(t, ok)
	_, p := LiftLimit(0, OneLift)
	require.NotNil(t, p)
	_, p = LiftLimit(1, q("20", "mm"))
	require.NotNil(t, p)
}

func TestCureTime(t *testing.T) {
	day := Cure{q("24", "h"), q("20", "°C")}
	both := []Cure{day, {q("3", "day"), q("5", "°C")}}
	never, doubles := calc.Quantity{}, q("2", "")
	for _, c := range []struct {
		stated   []Cure
		workshop string
		slower   calc.Quantity
		hours    string
	}{
		{[]Cure{day}, "20", never, "24"}, {[]Cure{day}, "35", doubles, "24"}, {[]Cure{day}, "19.9", doubles, "48"},
		{[]Cure{day}, "10", doubles, "48"}, {[]Cure{day}, "9", doubles, "96"},
		{both, "20", never, "24"}, {both, "19", never, "72"}, {both, "5", never, "72"}, {both, "4", doubles, "144"},
	} {
		got, p := CureTime(c.stated, q(c.workshop, "°C"), c.slower)
		require.Nil(t, p)
		same(t, c.hours, got, "h", c.workshop)
	}
	fahrenheit, p := CureTime([]Cure{day}, q("68", "°F"), never) // exactly 20 °C
	require.Nil(t, p)
	same(t, "24", fahrenheit, "h")

	_, p = CureTime([]Cure{day}, q("15", "°C"), never)
	require.Contains(t, p.Message, "warmer place")
	_, p = CureTime(nil, q("15", "°C"), never)
	require.NotNil(t, p)
	for _, bad := range []calc.Quantity{q("15", "K"), q("-300", "°C"), q("1e9", "°C"), {}} {
		_, p = CureTime([]Cure{day}, bad, doubles)
		require.NotNil(t, p)
	}
	_, p = CureTime([]Cure{{q("24", "mm"), q("20", "°C")}}, q("15", "°C"), doubles)
	require.NotNil(t, p)
}

func TestColderNeverCuresFaster(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		stated := []Cure{{q("24", "h"), q("20", "°C")}, {q("50", "h"), q("8", "°C")}}
		at := func(name string) calc.Quantity {
			return calc.NewQuantity(quo(whole(rapid.IntRange(-400, 400).Draw(r, name)), whole(10)), calc.MustUnit("°C"), 1)
		}
		a, b := at("a"), at("b")
		if a.Cmp(b) > 0 {
			a, b = b, a
		}
		cold, p := CureTime(stated, a, q("2", ""))
		require.Nil(r, p)
		warm, p := CureTime(stated, b, q("2", ""))
		require.Nil(r, p)
		require.True(r, warm.Cmp(cold) <= 0)
	})
}

func TestHeat(t *testing.T) {
	g, p := Growth(q("12.363", "in"), q("6.47", "ppm/°F"), q("-188", "Δ°F"))
	require.Nil(t, p)
	near(t, "-0.01504", "0.05", g, "in", cite(t, "F15"))
	dt, p := FitChange(q("0.015", "in"), q("6.47", "ppm/°F"), q("12.363", "in"))
	require.Nil(t, p)
	near(t, "187.5", "0.05", dt, "Δ°F", cite(t, "F16"), cite(t, "F14")) // to cool by as much
	dt, p = FitChange(q("0.109", "mm"), q("11.5", "ppm/K"), q("50", "mm"))
	require.Nil(t, p)
	near(t, "189.6", "0.05", dt, "K", cite(t, "F17"))

	_, p = Growth(q("12", "mm"), q("11.5", "ppm/K"), q("20", "°C"))
	require.Contains(t, p.Message, "difference")
	_, p = Growth(q("12", "N·m"), q("11.5", "ppm/K"), q("20", "K"))
	require.NotNil(t, p)
	_, p = FitChange(q("0.1", "mm"), q("0", "ppm/K"), q("50", "mm"))
	require.NotNil(t, p)
}

func TestSourcesPrint(t *testing.T) {
	require.Equal(t, "common practice, no source", practice.String())
	require.Equal(t, "ISO 898-1 (read in a reproduction)", isoSource.String())
}
