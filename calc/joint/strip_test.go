package joint

import (
	"testing"

	"fettle/calc"

	"github.com/stretchr/testify/require"
)

func TestShearAreas(t *testing.T) {
	// On basic sizes the areas are π L · 3/4 D1 and π L · 7/8 d: from the shape of a 60° thread (ISO 68-1).
	for _, s := range []string{"M6", "M10x1.25", "3/8-24"} {
		th := thread(t, s)
		length := q("10", "mm")
		out, p := ExternalShearArea(length, th)
		require.Nil(t, p)
		in, p := InternalShearArea(length, th)
		require.Nil(t, p)
		want := mul(pi, length.Base(), th.MinorDiameter().Base(), rat("3/4"))
		near(t, want.FloatString(12), "0.01", out, "m²", s)
		want = mul(pi, length.Base(), th.Major.Base(), rat("7/8"))
		near(t, want.FloatString(12), "0.01", in, "m²", s)
	}
}

func TestStrip(t *testing.T) {
	th := thread(t, "M8")
	bolt, _ := ClassStrength("8.8", th)
	steel, _ := MaterialOf("medium carbon steel C45")
	alloy, _ := MaterialOf("aluminium casting")

	// A nut of 0.8 d in a steel like the bolt's breaks the bolt: what ISO 898-2 nuts are for. Common practice.
	s, p := Strip(th, q("6.8", "mm"), bolt, steel)
	require.Nil(t, p)
	require.Positive(t, s.Load.Cmp(s.Breaking))

	// Half a diameter in cast aluminium strips before the bolt breaks, two diameters do not. Common practice.
	s, p = Strip(th, q("4", "mm"), bolt, alloy)
	require.Nil(t, p)
	require.Equal(t, "the tapped thread", s.First)
	require.Negative(t, s.Load.Cmp(s.Breaking))
	s, _ = Strip(th, q("16", "mm"), bolt, alloy)
	require.Positive(t, s.Load.Cmp(s.Breaking))

	// The weaker bolt in a hard nut goes first.
	soft, _ := ClassStrength("4.6", th)
	hard, _ := MaterialOf("alloy steel")
	s, _ = Strip(th, q("6", "mm"), soft, hard)
	require.Equal(t, "the bolt's thread", s.First)
	require.Zero(t, s.Load.Cmp(s.Bolt))

	// Without a class the bolt's own thread is not judged.
	given, _ := GivenStrength(q("600", "MPa"))
	s, p = Strip(th, q("6", "mm"), given, alloy)
	require.Nil(t, p)
	require.False(t, s.Bolt.Valid() || s.Breaking.Valid())

	_, p = Strip(th, q("0", "mm"), bolt, alloy)
	require.Contains(t, p.Message, "above zero")
	_, p = Strip(thread(t, "1/2 NPT"), q("9", "mm"), bolt, alloy)
	require.NotNil(t, p)
}

func TestEngagementFor(t *testing.T) {
	th := thread(t, "3/8-16")
	alloy, _ := MaterialOf("6061-T6")
	length, p := EngagementFor(q("5000", "lbf"), th, alloy)
	require.Nil(t, p)
	s, p := Strip(th, length, Strength{}, alloy)
	require.Nil(t, p)
	require.Zero(t, s.Load.Cmp(q("5000", "lbf")))
	_, p = EngagementFor(calc.Quantity{}, th, alloy)
	require.NotNil(t, p)
}

func TestMaterials(t *testing.T) {
	for text, want := range map[string]string{
		"Steel": "steel", "cast steel": "steel", "mild steel S235": "steel", "stainless steel 304": "stainless steel",
		"Cast aluminum": "cast aluminium", "aluminium": "cast aluminium", "aluminium alloy 6061-T6": "wrought aluminium 6061-T6",
		"cast aluminium A356-T6": "cast aluminium A356-T6", "gray cast iron GJL-250": "grey cast iron", "ductile iron": "ductile cast iron",
		"aluminium bronze": "aluminium bronze", "leaded bronze": "bronze", "Nylon": "polyamide", "die-cast aluminium": "die-cast aluminium",
	} {
		m, p := MaterialOf(text)
		require.Nil(t, p, text)
		require.Equal(t, want, m.Name, text)
	}
	for text, want := range map[string]string{
		"": "not known", "oak": "not known", "steel-backed bronze": "could be", "steel thread insert": "insert",
	} {
		_, p := MaterialOf(text)
		require.NotNil(t, p, text)
		require.Contains(t, p.Message, want)
	}
	for _, m := range Materials() {
		require.True(t, m.Shear.Cmp(m.Tensile) <= 0, m.Name)
		require.Nil(t, m.Expansion.positive("expansion", calc.Expansion), m.Name)
		got, p := MaterialOf(m.Name)
		require.Nil(t, p, m.Name)
		require.Equal(t, m.Name, got.Name)
	}
	// published coefficients lie in the bands
	for _, c := range []struct{ text, ppm, id string }{
		{"steel", "11.2", "M09"}, {"steel", "11.5", "M09"}, {"aluminium", "23", "M10"}, {"A356", "21.5", "M10"}, {"6061", "23.6", "M10"},
		{"cast iron", "9.9", "M11"}, {"cast iron", "12", "M11"}, {"ductile iron", "10.6", "M11"}, {"ductile iron", "11.2", "M11"},
	} {
		m, p := MaterialOf(c.text)
		require.Nil(t, p)
		v := q(c.ppm, "ppm/K")
		require.True(t, m.Expansion.Low.Cmp(v) <= 0 && v.Cmp(m.Expansion.High) <= 0, cite(t, c.id))
	}
}
