package entry

import (
	"fettle/calc"
)

// instruments says what known kinds of tool read. Common practice, no source.
var instruments = map[string][]string{
	"micrometer": {"outside"}, "outside micrometer": {"outside"},
	"inside micrometer": {"inside"}, "bore gauge": {"inside"}, "telescopic gauge": {"inside"}, "small hole gauge": {"inside"}, "plug gauge": {"inside"},
	"depth micrometer": {"depth"}, "depth gauge": {"depth"},
	"vernier caliper": {"outside", "inside", "depth", "length"}, "caliper": {"outside", "inside", "depth", "length"}, "calipers": {"outside", "inside", "depth", "length"},
	"height gauge": {"length"}, "rule": {"length", "depth"}, "steel rule": {"length", "depth"}, "tape measure": {"length"}, "pitch gauge": {"length"},
	"feeler gauge": {"gap"}, "feeler gauges": {"gap"}, "wire gauge": {"gap"}, "plastic gauge": {"gap"}, "gauge strip": {"gap"}, "taper gauge": {"gap", "inside"},
	"dial indicator": {"movement"}, "dial gauge": {"movement"}, "test indicator": {"movement"},
	"torque wrench": {"torque"}, "torque screwdriver": {"torque"}, "torque gauge": {"torque"}, "beam torque wrench": {"torque"},
	"angle gauge": {"angle"}, "protractor": {"angle"}, "degree wheel": {"angle"}, "timing disc": {"angle"}, "inclinometer": {"angle"},
	"thermometer": {"temperature"}, "infrared thermometer": {"temperature"}, "thermocouple": {"temperature"}, "temperature stick": {"temperature"},
	"pressure gauge": {"pressure"}, "vacuum gauge": {"pressure"}, "leak tester": {"pressure"}, "compression gauge": {"pressure"},
	"scale": {"mass"}, "scales": {"mass"}, "balance": {"mass"},
	"spring balance": {"force", "mass"}, "force gauge": {"force"}, "tension gauge": {"force"},
	"stopwatch": {"time"}, "watch": {"time"}, "timer": {"time"}, "clock": {"time"},
	"voltmeter": {"voltage"}, "ammeter": {"current"}, "clamp meter": {"current"}, "ohmmeter": {"resistance"}, "insulation tester": {"resistance"},
	"multimeter": {"voltage", "current", "resistance"},
	"tachometer": {"speed"}, "flow meter": {"flow"}, "measuring jug": {"volume"}, "measuring cylinder": {"volume"}, "syringe": {"volume"}, "dipstick": {"level"},
	"spirit level": {"angle"}, "counter": {"count"},
}

// dims are the dimensions of what instruments read.
var dims = map[string]calc.Dim{
	"outside": calc.Length, "inside": calc.Length, "depth": calc.Length, "gap": calc.Length,
	"movement": calc.Length, "length": calc.Length, "level": calc.Length, "torque": calc.Torque, "angle": calc.Angle,
	"temperature": calc.Temperature, "pressure": calc.Pressure, "mass": calc.Mass, "force": calc.Force,
	"time": calc.Time, "voltage": calc.Voltage, "current": calc.Current, "resistance": calc.Resistance,
	"speed": calc.RotationalSpeed, "flow": calc.FlowRate, "volume": calc.Volume, "count": calc.Counted,
}

// Instrument says what a kind of tool reads, in the words of a tool's `reads`;
// ok is false for a kind that is not known as an instrument.
func Instrument(kind string) (reads []string, ok bool) {
	reads, ok = instruments[kind]
	return reads, ok
}

// ReadingDim is the dimension of what is read, by a word of a tool's `reads`.
func ReadingDim(reads string) (calc.Dim, bool) {
	d, ok := dims[reads]
	return d, ok
}
