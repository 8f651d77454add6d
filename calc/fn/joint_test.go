package fn

import (
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/calc"
	"fettle/calc/joint"
)

// An author's call and the engineering screens must not tell two numbers.
func TestFunctionsAgreeWithScreens(t *testing.T) {
	value := func(e calc.Expr) calc.Quantity {
		v, p := calc.Eval(e, calc.Readings{})
		require.Nil(t, p)
		return v.(calc.Quantity)
	}
	q := func(s string) calc.Quantity {
		l, problems := calc.ParseLiteral(s, calc.Context{AllowPlain: true})
		require.Empty(t, problems)
		return l.Any()
	}
	same := func(want calc.Quantity, p *calc.Problem, text string) {
		t.Helper()
		require.Nil(t, p)
		require.Zero(t, want.Cmp(value(parseCall(t, text))), "%s: want %s", text, want)
	}

	for _, angle := range []string{"0°", "37°", "90°", "180°"} {
		s, p := joint.WrenchSetting(q("40 N·m"), q("300 mm"), q("2 in"), q(angle))
		same(s, p, `wrench_setting("40 N·m", "300 mm", "2 in", "`+angle+`")`)
		s, p = joint.AppliedTorque(q("40 N·m"), q("300 mm"), q("2 in"), q(angle))
		same(s, p, `applied_torque("40 N·m", "300 mm", "2 in", "`+angle+`")`)
	}
	thread, p := joint.ParseThread("M10x1.5")
	require.Nil(t, p)
	band, p := joint.PreloadByNutFactor(joint.Point(q("45 N·m")), joint.Point(q("0.2")), thread)
	same(band.Low, p, `preload("45 N·m", 0.2, "10 mm")`)
	band, p = joint.TorqueByNutFactor(joint.Point(q("20 kN")), joint.Point(q("0.2")), thread)
	same(band.Low, p, `torque_for_preload("20 kN", 0.2, "10 mm")`)
	g, p := joint.Growth(q("50 mm"), q("11.5 ppm/K"), q("80 K"))
	same(g, p, `thermal_growth("50 mm", "11.5 ppm/K", "80 K")`)
	g, p = joint.FitChange(q("0.109 mm"), q("11.5 ppm/K"), q("50 mm"))
	same(g, p, `shrink_fit_temperature("0.109 mm", "11.5 ppm/K", "50 mm")`)
}
