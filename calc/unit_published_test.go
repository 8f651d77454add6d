package calc

import (
	"math"
	"math/big"
	"os/exec"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// fromUCUM writes the few codes of the cases as an author would, "" for others.
func fromUCUM(code string) string {
	term := regexp.MustCompile(`^([a-zA-Z_\[\]]+?)(-?[0-9])?$`)
	names := map[string]string{"[in_i]": "in", "[lb_av]": "lb", "m": "m", "mm": "mm", "cm": "cm", "s": "s", "ms": "ms",
		"g": "g", "mg": "mg", "kg": "kg", "h": "h"}
	var over, under []string
	for i, part := range strings.Split(code, "/") {
		for j, p := range strings.Split(part, ".") {
			m := term.FindStringSubmatch(p)
			if m == nil || names[m[1]] == "" {
				return ""
			}
			power, below := strings.CutPrefix(m[2], "-")
			name := names[m[1]]
			if power != "" && power != "1" {
				name += power
			}
			if below || i > 0 && j == 0 { // a slash of UCUM holds for one unit
				under = append(under, name)
			} else {
				over = append(over, name)
			}
		}
	}
	if len(under) == 0 {
		return strings.Join(over, "·")
	}
	if len(over) == 0 {
		over = []string{"1"}
	}
	return strings.Join(over, "·") + "/(" + strings.Join(under, "·") + ")"
}

// ucum_conversions.json: functional tests of the UCUM Java library (EPL-1.0).
// Outcomes follow the significant digits of the input.
func TestUCUMConversions(t *testing.T) {
	type operation struct{ V1, U1, V2, U2, VRes, URes string }
	var file struct {
		Conversion               []struct{ ID, Value, SrcUnit, DstUnit, Outcome string }
		Multiplication, Division []operation
	}
	published(t, "ucum_conversions.json", &file)
	outcome := func(want string, got *big.Rat, why string) {
		_, decimals, _ := strings.Cut(want, ".")
		w, ok := new(big.Rat).SetString(want)
		require.True(t, ok)
		require.Zero(t, w.Cmp(roundRat(got, len(decimals), halfEven)), "%s: %s", why, got)
	}
	checked := 0
	for _, c := range file.Conversion {
		src, dst := fromUCUM(c.SrcUnit), fromUCUM(c.DstUnit)
		if src == "" || dst == "" {
			continue // charges, light years and numbers inside units have no place here
		}
		u, ok := LookUpUnit(dst, "")
		require.True(t, ok, dst)
		outcome(c.Outcome, quantity(t, c.Value+" "+src).In(u).Num(), c.ID)
		checked++
	}
	require.Equal(t, 18, checked)
	for _, o := range file.Multiplication {
		got, err := quantity(t, o.V1+" "+o.U1).Mul(quantity(t, o.V2+" "+o.U2))
		require.NoError(t, err)
		u, ok := LookUpUnit(fromUCUM(o.URes), "")
		require.True(t, ok)
		outcome(o.VRes, got.In(u).Num(), "multiplication")
	}
	for _, o := range file.Division {
		got, err := quantity(t, o.V1+" "+fromUCUM(o.U1)).Div(quantity(t, o.V2+" "+fromUCUM(o.U2)))
		require.NoError(t, err)
		u, ok := LookUpUnit(fromUCUM(o.URes), "")
		if !ok { // a plain ratio
			require.Same(t, One, got.Unit)
			u = One
		}
		outcome(o.VRes, got.In(u).Num(), "division")
	}
}

// ucum_units.json: every code of the table as the UCUM reference library
// understands it. Its base units are the gram and the radian.
func TestUCUMCodes(t *testing.T) {
	var file struct {
		Rows []struct {
			Code, Magnitude string
			Dim             [7]int // m s g rad K C cd
		}
	}
	published(t, "ucum_units.json", &file)
	rows := map[string]int{}
	for i, r := range file.Rows {
		rows[r.Code] = i
	}
	radians := new(big.Rat).SetFloat64(180 / math.Pi)
	for _, u := range Units() {
		i, ok := rows[u.UCUM]
		require.True(t, ok, "%s is not in the file", u.UCUM)
		r := file.Rows[i]
		want, ok := new(big.Rat).SetString(r.Magnitude)
		require.True(t, ok)
		for range max(r.Dim[2], -r.Dim[2]) { // of mass ours are all 1 or -1
			want.Mul(want, pow10(-3*r.Dim[2]/max(r.Dim[2], -r.Dim[2])))
		}
		if r.Dim[3] == 1 {
			want.Mul(want, radians)
		}
		off := new(big.Rat).Quo(u.Factor, want)
		off.Sub(off, oneRat).Abs(off)
		require.Negative(t, off.Cmp(pow10(-13)), "%s: %s", u.Name, r.Magnitude)
		e := u.Dim.exp
		require.Equal(t, [6]int{int(e[baseLength]), int(e[baseMass]), int(e[baseAngle]), int(e[baseTemperature]), int(e[baseCurrent]), int(e[baseTime])},
			[6]int{r.Dim[0], r.Dim[2], r.Dim[3], r.Dim[4], r.Dim[5], r.Dim[1] + r.Dim[5]}, u.Name) // an ampere is C/s
	}
}

// GNU units knows most of the table under other names.
func TestAgainstGNUUnits(t *testing.T) {
	if _, err := exec.LookPath("units"); err != nil {
		t.Skip("GNU units is not installed")
	}
	pairs := [][3]string{ // ours, theirs, theirs in base units
		{"mm", "mm", "m"}, {"µm", "micron", "m"}, {"in", "in", "m"}, {"yd", "yd", "m"}, {"mi", "mile", "m"}, {"thou", "thou", "m"},
		{"in²", "in^2", "m^2"}, {"ft²", "ft^2", "m^2"}, {"in³", "in^3", "m^3"}, {"ft³", "ft^3", "m^3"}, {"mL", "ml", "m^3"}, {"L", "l", "m^3"},
		{"US gal", "usgallon", "m^3"}, {"US qt", "usquart", "m^3"}, {"US pint", "uspint", "m^3"}, {"US fl oz", "usfluidounce", "m^3"},
		{"UK gal", "brgallon", "m^3"}, {"UK qt", "brquart", "m^3"}, {"UK pint", "brpint", "m^3"}, {"UK fl oz", "brfluidounce", "m^3"},
		{"lb", "lb", "kg"}, {"oz", "oz", "kg"}, {"t", "tonne", "kg"}, {"min", "min", "s"}, {"h", "hour", "s"}, {"day", "day", "s"}, {"week", "week", "s"},
		{"lbf", "lbf", "N"}, {"kgf", "kgf", "N"}, {"ozf", "lbf/16", "N"}, {"lb·ft", "lbf ft", "N m"}, {"lb·in", "lbf in", "N m"}, {"oz·in", "lbf in/16", "N m"},
		{"kgf·m", "kgf m", "N m"}, {"kgf·cm", "kgf cm", "N m"}, {"psi", "psi", "Pa"}, {"ksi", "ksi", "Pa"}, {"bar", "bar", "Pa"}, {"mbar", "millibar", "Pa"},
		{"kgf/cm²", "kgf/cm^2", "pascal"}, {"kW·h", "kW hour", "J"}, {"hp", "horsepower", "W"}, {"mph", "mph", "m/s"}, {"kn", "knot", "m/s"}, {"cSt", "centistokes", "m^2/s"},
		{"A·h", "A hour", "A s"}, {"Δ°F", "degF", "K"}, {"turn", "turn", "degree"}, {"arcmin", "arcmin", "degree"},
	}
	var input strings.Builder
	for _, p := range pairs {
		input.WriteString(p[1] + "\n" + p[2] + "\n")
	}
	cmd := exec.Command("units", "-t", "-d", "15")
	cmd.Stdin = strings.NewReader(input.String())
	out, err := cmd.Output()
	require.NoError(t, err)
	lines := strings.Fields(string(out))
	require.Len(t, lines, len(pairs))
	for i, p := range pairs {
		want, ok := new(big.Rat).SetString(lines[i])
		require.True(t, ok, lines[i])
		off := new(big.Rat).Quo(MustUnit(p[0]).Factor, want)
		off.Sub(off, oneRat).Abs(off)
		require.Negative(t, off.Cmp(pow10(-13)), "%s is %s there", p[0], lines[i])
	}
}
