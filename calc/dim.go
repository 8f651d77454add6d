package calc

import "strings"

// base dimensions, in the order of Dim.exp.
const (
	baseLength = iota
	baseMass
	baseTime
	baseCurrent
	baseTemperature
	baseAngle
	baseCount
	bases
)

// Kind tells apart quantities whose exponents are equal and which must not mix.
// A product or quotient has no kind and fits either.
type Kind uint8

// Kinds of quantity.
const (
	NoKind      Kind = iota
	TorqueKind       // N·m that turns
	EnergyKind       // J that does work
	PointKind        // a temperature, not a difference of two
	DropKind         // counted nouns: each is its own dimension
	StrokeKind       //
	ToothKind        //
	CountedKind      // pieces of anything else
)

// Dim is the dimension of a quantity: integer exponents of the base dimensions
// and a Kind. The zero Dim is that of a plain number. Dims are comparable with
// ==, but use Fits to ask whether two may be added or compared.
type Dim struct {
	exp  [bases]int8
	Kind Kind
}

func base(i int) Dim {
	var d Dim
	d.exp[i] = 1
	return d
}

func (d Dim) kind(k Kind) Dim { d.Kind = k; return d }

// The dimensions that authors meet.
var (
	Plain           Dim
	Length          = base(baseLength)
	Mass            = base(baseMass)
	Time            = base(baseTime)
	Current         = base(baseCurrent)
	Angle           = base(baseAngle)
	TemperatureDiff = base(baseTemperature)
	Temperature     = base(baseTemperature).kind(PointKind)
	Area            = Length.Mul(Length)
	Volume          = Area.Mul(Length)
	Speed           = Length.Div(Time)
	Acceleration    = Speed.Div(Time)
	Force           = Mass.Mul(Acceleration)
	Torque          = Force.Mul(Length).kind(TorqueKind)
	Energy          = Force.Mul(Length).kind(EnergyKind)
	Power           = Energy.Div(Time)
	Pressure        = Force.Div(Area)
	Voltage         = Power.Div(Current)
	Resistance      = Voltage.Div(Current)
	Frequency       = Plain.Div(Time)
	RotationalSpeed = Angle.Div(Time)
	FlowRate        = Volume.Div(Time)
	Density         = Mass.Div(Volume)
	Expansion       = Plain.Div(TemperatureDiff)
	Drops           = base(baseCount).kind(DropKind)
	Strokes         = base(baseCount).kind(StrokeKind)
	Teeth           = base(baseCount).kind(ToothKind)
	Counted         = base(baseCount).kind(CountedKind)
)

var dimNames = []struct {
	dim  Dim
	name string
}{
	{Plain, "a plain number"}, {Length, "a length"}, {Mass, "a mass"}, {Time, "a time"},
	{Current, "a current"}, {Angle, "an angle"}, {Temperature, "a temperature"},
	{TemperatureDiff, "a temperature difference"}, {Area, "an area"}, {Volume, "a volume"},
	{Speed, "a speed"}, {Acceleration, "an acceleration"}, {Force, "a force"},
	{Torque, "a torque"}, {Energy, "an energy"}, {Power, "a power"}, {Pressure, "a pressure"},
	{Voltage, "a voltage"}, {Resistance, "a resistance"}, {Frequency, "a frequency"},
	{RotationalSpeed, "a speed of rotation"}, {FlowRate, "a flow"}, {Density, "a density"},
	{Expansion, "an expansion coefficient"}, {Drops, "a number of drops"},
	{Strokes, "a number of strokes"}, {Teeth, "a number of teeth"}, {Counted, "a number of pieces"},
	{Drops.Div(Time), "a rate of drops"}, {Strokes.Div(Time), "a rate of strokes"}, {Counted.Div(Time), "a rate of pieces"},
}

// Mul is the dimension of a product. Its kind is lost unless one side is plain.
func (d Dim) Mul(e Dim) Dim {
	switch {
	case d == Plain:
		return e.noPoint()
	case e == Plain:
		return d.noPoint()
	}
	var p Dim
	for i := range d.exp {
		p.exp[i] = d.exp[i] + e.exp[i]
	}
	p.Kind = countKind(p, d, e)
	return p
}

// Div is the dimension of a quotient.
func (d Dim) Div(e Dim) Dim {
	if e == Plain {
		return d.noPoint()
	}
	var q Dim
	for i := range d.exp {
		q.exp[i] = d.exp[i] - e.exp[i]
	}
	q.Kind = countKind(q, d, e)
	return q
}

// countKind keeps the counted noun of a rate such as drops per minute.
func countKind(of, d, e Dim) Kind {
	if of.exp[baseCount] == 0 {
		return NoKind
	}
	return max(d.Kind, e.Kind)
}

// a product of a temperature is one of a difference.
func (d Dim) noPoint() Dim {
	if d.Kind == PointKind {
		d.Kind = NoKind
	}
	return d
}

// IsPoint reports a temperature, which has a zero of its own.
func (d Dim) IsPoint() bool { return d.Kind == PointKind }

// Fits reports whether a value of dimension e may stand where d is wanted:
// equal exponents, and kinds that are equal or not stated. A temperature never
// fits a difference.
func (d Dim) Fits(e Dim) bool {
	if d.exp != e.exp || d.IsPoint() != e.IsPoint() {
		return false
	}
	return d.Kind == e.Kind || d.Kind == NoKind || e.Kind == NoKind
}

// String names the dimension in an author's words: "a length", "a torque".
func (d Dim) String() string {
	for _, n := range dimNames {
		if n.dim == d {
			return n.name
		}
	}
	for _, n := range dimNames {
		if n.dim.exp == d.exp && d.Kind == NoKind {
			return n.name
		}
	}
	var b strings.Builder
	for i, name := range [bases]string{"length", "mass", "time", "current", "temperature difference", "angle", "count"} {
		if d.exp[i] == 0 {
			continue
		}
		if b.Len() > 0 {
			b.WriteString(" × ")
		}
		b.WriteString(name)
		if d.exp[i] != 1 {
			b.WriteString("^" + itoa(int(d.exp[i])))
		}
	}
	return "a " + b.String()
}
