package calc

// row is one unit of the table. To add a unit, add a row, and its published
// conversion to unit_test.go.
type row struct {
	name      string // as printed; "turn|turns" where the plural differs
	spellings string // what else is read, parted by |; "N~m" for every way to write a product
	ucum      string
	dim       Dim
	factor    string // to base units, exact: numbers joined by * and /
	offset    string // to base units, for temperatures
	system    System
	partners  string // what the other system shows: "lb·ft > 10|lb·in" is lb·in below 10 lb·ft
	source    string
}

// Where factors are defined.
const (
	bySI      = "SI Brochure (BIPM, 9th edition)"
	byYard    = "international yard and pound, 24 FR 5348 (1959); NIST SP 811 B.8"
	byPound   = "pound × standard gravity 9.80665 m/s², NIST SP 811 B.8"
	byKilo    = "kilogram × standard gravity 9.80665 m/s², NIST SP 811 B.8"
	byUS      = "US gallon of 231 in³, NIST SP 811 B.8"
	byUK      = "UK gallon of 4.54609 L, NIST SP 811 B.8"
	by811     = "NIST SP 811 B.8"
	byTurn    = "one turn is 360 degrees, SI Brochure table 8"
	byMeaning = "by its meaning"
)

// Partners by size. The thresholds are common practice, no source.
const (
	bySizeTorque = "lb·ft > 10|lb·in"
	bySizeUS     = "US gal > 1|US qt > 1|US fl oz"
	bySizeMetric = "L > 1|mL"
)

// The measures that others are defined by, in base units.
const (
	inch    = "0.0254"
	foot    = "0.3048"
	pound   = "0.45359237"
	gravity = "9.80665"
	inch2   = inch + "*" + inch
	inch3   = inch2 + "*" + inch
	foot2   = foot + "*" + foot
	foot3   = foot2 + "*" + foot
	lbf     = pound + "*" + gravity
	ukGal   = "0.00454609"
)

var rows = []row{
	// length
	{"mm", "millimetre|millimetres|millimeter|millimeters", "mm", Length, "0.001", "", Metric, "in", bySI},
	{"cm", "centimetre|centimetres|centimeter|centimeters", "cm", Length, "0.01", "", Metric, "in", bySI},
	{"m", "metre|metres|meter|meters", "m", Length, "1", "", Metric, "ft", bySI},
	{"km", "kilometre|kilometres|kilometer|kilometers", "km", Length, "1000", "", Metric, "mi", bySI},
	{"µm", "um|micron|microns|micrometre|micrometres|micrometer|micrometers", "um", Length, "0.000001", "", Metric, "in", bySI},
	{"in", "in.|inch|inches|\"|″", "[in_i]", Length, inch, "", Inch, "mm", byYard},
	{"ft", "ft.|foot|feet|'|′", "[ft_i]", Length, foot, "", Inch, "m", byYard},
	{"yd", "yd.|yard|yards", "[yd_i]", Length, "3*" + foot, "", Inch, "m", byYard},
	{"mi", "mile|miles", "[mi_i]", Length, "5280*" + foot, "", Inch, "km", byYard},
	{"thou", "mil|mils|thous", "[mil_i]", Length, "0.001*" + inch, "", Inch, "mm", byYard},

	// area and volume
	{"mm²", "mm2|mm^2|sq mm", "mm2", Area, "0.000001", "", Metric, "in²", bySI},
	{"cm²", "cm2|cm^2|sq cm", "cm2", Area, "0.0001", "", Metric, "in²", bySI},
	{"m²", "m2|m^2|sq m", "m2", Area, "1", "", Metric, "ft²", bySI},
	{"in²", "in2|in^2|sq in", "[in_i]2", Area, inch2, "", Inch, "mm²", byYard},
	{"ft²", "ft2|ft^2|sq ft", "[ft_i]2", Area, foot2, "", Inch, "m²", byYard},
	{"mm³", "mm3|mm^3", "mm3", Volume, "0.000000001", "", Metric, "in³", bySI},
	{"cm³", "cm3|cm^3|cc|ccm", "cm3", Volume, "0.000001", "", Metric, "in³", bySI},
	{"m³", "m3|m^3", "m3", Volume, "1", "", Metric, "ft³", bySI},
	{"in³", "in3|in^3|cu in|cu. in.", "[in_i]3", Volume, inch3, "", Inch, "cm³", byYard},
	{"ft³", "ft3|ft^3|cu ft", "[ft_i]3", Volume, foot3, "", Inch, "m³", byYard},
	{"mL", "ml|millilitre|millilitres|milliliter|milliliters", "mL", Volume, "0.000001", "", Metric, "US fl oz", bySI},
	{"cL", "cl", "cL", Volume, "0.00001", "", Metric, "US fl oz", bySI},
	{"L", "l|litre|litres|liter|liters", "L", Volume, "0.001", "", Metric, bySizeUS, bySI},
	{"US gal", "US gallon|US gallons|US gals", "[gal_us]", Volume, "231*" + inch3, "", Inch, bySizeMetric, byUS},
	{"US qt", "US quart|US quarts|US qts", "[qt_us]", Volume, "231/4*" + inch3, "", Inch, bySizeMetric, byUS},
	{"US pint|US pints", "US pt|US pts", "[pt_us]", Volume, "231/8*" + inch3, "", Inch, bySizeMetric, byUS},
	{"US fl oz", "US fl. oz.|US fluid ounce|US fluid ounces", "[foz_us]", Volume, "231/128*" + inch3, "", Inch, "mL", byUS},
	{"UK gal", "UK gallon|UK gallons|UK gals|imp gal", "[gal_br]", Volume, ukGal, "", Inch, bySizeMetric, byUK},
	{"UK qt", "UK quart|UK quarts|UK qts", "[qt_br]", Volume, ukGal + "/4", "", Inch, bySizeMetric, byUK},
	{"UK pint|UK pints", "UK pt|UK pts", "[pt_br]", Volume, ukGal + "/8", "", Inch, bySizeMetric, byUK},
	{"UK fl oz", "UK fl. oz.|UK fluid ounce|UK fluid ounces", "[foz_br]", Volume, ukGal + "/160", "", Inch, "mL", byUK},

	// mass
	{"g", "gram|grams|gramme|grammes", "g", Mass, "0.001", "", Metric, "oz", bySI},
	{"mg", "milligram|milligrams", "mg", Mass, "0.000001", "", Metric, "oz", bySI},
	{"kg", "kilo|kilos|kilogram|kilograms", "kg", Mass, "1", "", Metric, "lb", bySI},
	{"t", "tonne|tonnes", "t", Mass, "1000", "", Metric, "lb", bySI},
	{"lb", "lb.|lbs|lbs.|lbm|pound|pounds", "[lb_av]", Mass, pound, "", Inch, "kg", byYard},
	{"oz", "oz.|ounce|ounces", "[oz_av]", Mass, pound + "/16", "", Inch, "g", byYard},

	// time
	{"s", "sec|sec.|secs|second|seconds", "s", Time, "1", "", Neither, "", bySI},
	{"ms", "millisecond|milliseconds", "ms", Time, "0.001", "", Neither, "", bySI},
	{"min", "min.|mins|minute|minutes", "min", Time, "60", "", Neither, "", bySI},
	{"h", "hr|hrs|hour|hours", "h", Time, "3600", "", Neither, "", bySI},
	{"day|days", "d", "d", Time, "86400", "", Neither, "", bySI},
	{"week|weeks", "wk|wks", "wk", Time, "7*86400", "", Neither, "", byMeaning},

	// temperature
	{"°C", "℃|degC|deg C|C|degrees C|degree Celsius|degrees Celsius|celsius|Celsius", "Cel", Temperature, "1", "273.15", Metric, "°F", bySI},
	{"°F", "℉|degF|deg F|F|degrees F|degree Fahrenheit|degrees Fahrenheit|fahrenheit|Fahrenheit", "[degF]", Temperature, "5/9", "459.67*5/9", Inch, "°C", by811},
	{"K", "kelvin|kelvins", "K", TemperatureDiff, "1", "", Metric, "Δ°F", bySI},
	{"Δ°C", "delta °C|ΔC", "K", TemperatureDiff, "1", "", Metric, "Δ°F", bySI},
	{"Δ°F", "delta °F|ΔF", "[degR]", TemperatureDiff, "5/9", "", Inch, "Δ°C", by811},

	// byPound and torque
	{"N", "newton|newtons", "N", Force, "1", "", Metric, "lbf", bySI},
	{"kN", "kilonewton|kilonewtons", "kN", Force, "1000", "", Metric, "lbf", bySI},
	{"lbf", "lb force|pounds force", "[lbf_av]", Force, lbf, "", Inch, "N", byPound},
	{"ozf", "oz force", "[lbf_av]/16", Force, lbf + "/16", "", Inch, "N", byPound},
	{"kgf", "kp", "kgf", Force, gravity, "", Metric, "lbf", byKilo},
	{"N·m", "N~m|newton metre|newton metres|newton meter|newton meters", "N.m", Torque, "1", "", Metric, bySizeTorque, bySI},
	{"N·cm", "N~cm", "N.cm", Torque, "0.01", "", Metric, "lb·in", bySI},
	{"N·mm", "N~mm", "N.mm", Torque, "0.001", "", Metric, "lb·in", bySI},
	{"cN·m", "cN~m", "cN.m", Torque, "0.01", "", Metric, "lb·in", bySI},
	{"kN·m", "kN~m", "kN.m", Torque, "1000", "", Metric, "lb·ft", bySI},
	{"kgf·m", "kgf kp~m", "kgf.m", Torque, gravity, "", Metric, "lb·ft", byKilo},
	{"kgf·cm", "kgf kp~cm", "kgf.cm", Torque, "0.01*" + gravity, "", Metric, "lb·in", byKilo},
	{"lb·ft", "lb lbf lbs~ft|foot pound|foot pounds|pound foot|pound feet", "[lbf_av].[ft_i]", Torque, lbf + "*" + foot, "", Inch, "N·m", byPound},
	{"lb·in", "lb lbf lbs~in|inch pound|inch pounds|pound inch|pound inches", "[lbf_av].[in_i]", Torque, lbf + "*" + inch, "", Inch, "N·m", byPound},
	{"oz·in", "oz ozf~in", "[lbf_av].[in_i]/16", Torque, lbf + "*" + inch + "/16", "", Inch, "N·mm", byPound},

	// pressure and stress
	{"Pa", "pascal|pascals", "Pa", Pressure, "1", "", Metric, "psi", bySI},
	{"kPa", "", "kPa", Pressure, "1000", "", Metric, "psi", bySI},
	{"MPa", "", "MPa", Pressure, "1000000", "", Metric, "psi", bySI},
	{"GPa", "", "GPa", Pressure, "1000000000", "", Metric, "ksi", bySI},
	{"bar", "bars", "bar", Pressure, "100000", "", Metric, "psi", bySI},
	{"mbar", "", "mbar", Pressure, "100", "", Metric, "psi", bySI},
	{"kgf/cm²", "kgf/cm2|kg/cm²|kg/cm2", "kgf/cm2", Pressure, gravity + "*10000", "", Metric, "psi", byKilo},
	{"psi", "PSI|lbf/in²|lbf/in2|lb/in²|lb/in2", "[psi]", Pressure, lbf + "/" + inch + "/" + inch, "", Inch, "bar", byPound},
	{"ksi", "", "10*3.[psi]", Pressure, "1000*" + lbf + "/" + inch + "/" + inch, "", Inch, "MPa", byPound},

	// energy and power
	{"J", "joule|joules", "J", Energy, "1", "", Metric, "", bySI},
	{"kJ", "", "kJ", Energy, "1000", "", Metric, "", bySI},
	{"W·h", "W~h", "W.h", Energy, "3600", "", Metric, "", bySI},
	{"kW·h", "kW~h", "kW.h", Energy, "3600000", "", Metric, "", bySI},
	{"W", "watt|watts", "W", Power, "1", "", Neither, "", bySI},
	{"kW", "kilowatt|kilowatts", "kW", Power, "1000", "", Metric, "hp", bySI},
	{"MW", "megawatt|megawatts", "MW", Power, "1000000", "", Metric, "hp", bySI},
	{"hp", "HP|horsepower", "[HP]", Power, "550*" + foot + "*" + lbf, "", Inch, "kW", "550 ft·lbf/s, NIST SP 811 B.8"},

	// electricity
	{"V", "volt|volts", "V", Voltage, "1", "", Neither, "", bySI},
	{"mV", "", "mV", Voltage, "0.001", "", Neither, "", bySI},
	{"kV", "", "kV", Voltage, "1000", "", Neither, "", bySI},
	{"A", "amp|amps|ampere|amperes", "A", Current, "1", "", Neither, "", bySI},
	{"mA", "", "mA", Current, "0.001", "", Neither, "", bySI},
	{"A·h", "A~h", "A.h", Current.Mul(Time), "3600", "", Neither, "", bySI},
	{"Ω", "ohm|ohms|Ohm|Ohms", "Ohm", Resistance, "1", "", Neither, "", bySI},
	{"mΩ", "mohm|mOhm|milliohm|milliohms", "mOhm", Resistance, "0.001", "", Neither, "", bySI},
	{"kΩ", "kohm|kOhm|kilohm|kilohms", "kOhm", Resistance, "1000", "", Neither, "", bySI},
	{"MΩ", "Mohm|MOhm|megohm|megohms", "MOhm", Resistance, "1000000", "", Neither, "", bySI},
	{"µF", "uF|microfarad|microfarads", "uF", Current.Mul(Time).Div(Voltage), "0.000001", "", Neither, "", bySI},
	{"Hz", "hertz", "Hz", Frequency, "1", "", Neither, "", bySI},
	{"kHz", "", "kHz", Frequency, "1000", "", Neither, "", bySI},

	// angle and rotation
	{"°", "deg|degs|degree|degrees", "deg", Angle, "1", "", Neither, "", byTurn},
	{"arcmin", "arc min|minute of arc|minutes of arc", "'", Angle, "1/60", "", Neither, "", byTurn},
	{"turn|turns", "rev|revs|revolution|revolutions", "circ", Angle, "360", "", Neither, "", byTurn},
	{"rpm", "RPM|r/min|rev/min|revs/min|turn/min|turns/min", "circ/min", RotationalSpeed, "6", "", Neither, "", byTurn},

	// motion, matter
	{"km/h", "kph|kmh|km/hr", "km/h", Speed, "1000/3600", "", Metric, "mph", bySI},
	{"mph", "mi/h", "[mi_i]/h", Speed, "5280/3600*" + foot, "", Inch, "km/h", byYard},
	{"kn", "kt|kts|knot|knots", "[kn_i]", Speed, "1852/3600", "", Neither, "", "international nautical mile of 1852 m, NIST SP 811 B.8"},
	{"cSt", "", "cSt", Area.Div(Time), "0.000001", "", Neither, "", by811},
	{"ppm/K", "ppm/°C|µm/m·K|µm/(m·K)", "[ppm]/K", Expansion, "0.000001", "", Metric, "ppm/°F", bySI},
	{"ppm/°F", "ppm/Δ°F|µin/(in·°F)", "[ppm]/[degR]", Expansion, "0.000001*9/5", "", Inch, "ppm/K", by811},

	// plain, and counted nouns
	{"%", "percent|per cent|pct", "%", Plain, "0.01", "", Neither, "", byMeaning},
	{"ppm", "", "[ppm]", Plain, "0.000001", "", Neither, "", byMeaning},
	{"drop|drops", "", "{drop}", Drops, "1", "", Neither, "", byMeaning},
	{"stroke|strokes", "", "{stroke}", Strokes, "1", "", Neither, "", byMeaning},
	{"tooth|teeth", "", "{tooth}", Teeth, "1", "", Neither, "", byMeaning},
	{"piece|pieces", "pc|pcs|off", "{piece}", Counted, "1", "", Neither, "", byMeaning},
	{"click|clicks", "", "{click}", Counted, "1", "", Neither, "", byMeaning},
}
