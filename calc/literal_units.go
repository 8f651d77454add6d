package calc

import (
	"strings"
)

// example is a quantity of dimension d for a remedy, such as "24 N·m".
func example(d Dim) string {
	switch d {
	case Torque:
		return "24 N·m"
	case Length:
		return "0.10 mm"
	case Time:
		return "15 min"
	case Temperature:
		return "20 °C"
	case TemperatureDiff:
		return "5 K"
	case Angle:
		return "90°"
	case Pressure:
		return "2.5 bar"
	}
	for _, u := range Units() {
		if u.Dim.Fits(d) && u.Dim != Plain {
			return withUnit("5", NewQuantity(intRat(5), u, 0))
		}
	}
	return "4"
}

func (p *literalParser) problemBare(start, end int) Problem {
	text, ask := p.s[start:end], example(p.ctx.Want)
	return problemAt(RuleBareNumber, start, end, quote(text)+" has no unit; "+p.ctx.Want.String()+" is wanted here.",
		"A builder would have to guess the unit.", "Add the unit, as in "+ask+".")
}

func (p *literalParser) problemDimension(a side) Problem {
	want := p.ctx.Want
	x := problemAt(RuleWrongDimension, a.at, a.uEnd,
		quote(p.text(a))+" is "+a.unit.Dim.String()+"; "+want.String()+" is wanted here.",
		"The number would be used for something that it does not measure.", "Write "+want.String()+", such as "+example(want)+".")
	if a.unit.Dim == Torque && want == Energy {
		x.Reason = "N·m turns a fastener and J does work; they only look alike."
	}
	if meant := forceOf[a.unit.Name]; meant != "" && want.Fits(MustUnit(meant).Dim) {
		x.Reason = quote(a.unit.Name) + " is a mass. The force that it weighs has a unit of its own."
		x.Remedy = "Write " + p.s[a.at:a.end] + " " + meant + " if that is meant."
		x = x.with(a.uAt, a.uEnd, meant, false)
	}
	if want == Plain {
		x.Reason = "Here is counted, not measured."
		x.Remedy = "Write the number without a unit."
	}
	return x
}

// forceOf names the force for what people write when they mean its weight.
var forceOf = map[string]string{
	"kg": "kgf", "lb": "lbf", "oz": "ozf", "kg·m": "kgf·m", "kg·cm": "kgf·cm",
}

func (p *literalParser) problemEnergy(a side) Problem {
	x := problemAt(RuleEnergyTorque, a.at, a.uEnd, quote(p.text(a))+" is an energy; a torque is wanted here.",
		"J does work and N·m turns a fastener; they only look alike, and a wrench shows N·m.", "Write the torque in N·m.")
	if a.unit.Name == "J" {
		x.Remedy = "Write " + p.s[a.at:a.end] + " N·m."
		x = x.with(a.uAt, a.uEnd, "N·m", false)
	}
	return x
}

func (p *literalParser) problemTemperature(a side) Problem {
	x := problemAt(RuleTemperature, a.at, a.uEnd, quote(p.text(a))+" is a temperature; a difference of two is wanted here.",
		"5 °C on the thermometer and 5 °C warmer are not the same thing.", "Write a difference in K.")
	if a.unit.Name == "°C" {
		x.Remedy = "Write " + p.s[a.at:a.end] + " K."
		x = x.with(a.uAt, a.uEnd, "K", false)
	}
	return x
}

func (p *literalParser) problemTwoDimensions(x, y *Quantity, b side) Problem {
	return problemAt(RuleWrongDimension, b.at, max(b.end, b.uEnd),
		"One side is "+x.Dim().String()+", the other "+y.Dim().String()+".",
		"Nothing lies between two different things.", "Give both in one unit.")
}

func (p *literalParser) problemTwoSystems(a, b side) Problem {
	return problemAt(RuleTwoSystems, a.at, max(b.end, b.uEnd),
		quote(p.text(a))+" and "+quote(p.text(b))+" are of two systems.",
		"A builder has one gauge in hand, and half of this is not on it.", "Give both in one unit; fettle shows the other system beside it.")
}

func (p *literalParser) problemBackwards(a, b side) Problem {
	low, high := p.s[a.at:a.end], p.s[b.at:b.end]
	x := problemAt(RuleBackwards, a.at, max(b.end, b.uEnd), "The range runs from "+low+" down to "+high+".",
		"No reading lies in it.", "Write the smaller end first, and check both numbers.")
	if a.uAt == b.uAt {
		x = x.with(a.at, b.end, high+p.s[a.end:b.at]+low, false)
	}
	return x
}

func (p *literalParser) problemNoWidth(a, b side) Problem {
	return problemAt(RuleBackwards, a.at, max(b.end, b.uEnd), "Both ends of this range are the same.",
		"No reading but one would be accepted.", "Write the single value, or the range that is meant.")
}

func (p *literalParser) problemHyphen(start, end int, sure bool) Problem {
	x := problemAt(RuleHyphen, start, end, "A hyphen stands for a range.",
		"A hyphen is a minus sign as well, so that 24-26 has two meanings.", "Write .. between the ends, as in 24..26 N·m.")
	return x.with(start, end, "..", sure)
}

// refused are words that no exact or single unit answers to.
var refused = map[string][2]string{
	"month":  {"A month has no fixed length.", "Write days or weeks."},
	"months": {"A month has no fixed length.", "Write days or weeks."},
	"year":   {"A year has no fixed length.", "Write days or weeks."},
	"years":  {"A year has no fixed length.", "Write days or weeks."},
	"rad":    {"A radian is not an exact number of degrees, and no protractor shows it.", "Write degrees."},
	"ton":    {"There are three sorts of ton.", "Write t for 1000 kg, or lb."},
	"tons":   {"There are three sorts of ton.", "Write t for 1000 kg, or lb."},
	"tenth":  {"A tenth is of a millimetre to one reader and of a thou to another.", "Write mm or thou."},
	"tenths": {"A tenth is of a millimetre to one reader and of a thou to another.", "Write mm or thou."},
	"''":     {"Two feet marks are not an inch mark.", "Write in."},
}

func (p *literalParser) problemUnit(start, end int, text, why string) Problem {
	x := problemAt(RuleUnknownUnit, start, end, quote(text)+" is not a unit that fettle knows.",
		"A number whose unit nobody knows can be neither checked nor converted.", "")
	switch why {
	case whyGallon:
		x.Message = quote(text) + " is one measure in the US and another in the UK."
		x.Reason = "Gallons and pints differ by a fifth."
		x.Remedy = "Write US or UK before it, or say once in the manual whose gallon is meant."
		return x
	case whyTwice:
		x.Message = quote(text) + " can be read in two ways."
		x.Reason = "It is not clear how much stands below the slash."
		x.Remedy = "Put what stands below the slash in brackets, as in W/(m·K)."
		return x
	case whyTooMany:
		x.Message = quote(text) + " multiplies more units than any quantity of a workshop has."
		x.Remedy = "Check the unit."
		return x
	}
	if r, ok := refused[strings.ToLower(text)]; ok {
		x.Reason, x.Remedy = r[0], r[1]
		return x
	}
	if meant := theTable.suggest(text, p.ctx); meant != "" {
		x.Remedy = "Write " + meant + " if that is meant."
		return x.with(start, end, meant, false)
	}
	x.Remedy = "Write a unit of the trade, such as mm, N·m or min."
	if p.ctx.HasWant && p.ctx.Want != Plain {
		x.Remedy = "Write " + p.ctx.Want.String() + ", such as " + example(p.ctx.Want) + "."
	}
	return x
}

// suggest is the printed name of the unit that text most likely means, "" for
// none. A unit of the wanted dimension goes before any other.
func (t *table) suggest(text string, ctx Context) string {
	text = tidy(text)
	best, bestCost := "", 100
	for _, u := range t.units {
		miss := 0
		if ctx.HasWant && !ctx.Want.Fits(u.Dim) {
			miss = 10
		}
		for _, s := range u.Spellings {
			cost := 1
			if !strings.EqualFold(s, text) {
				allowed := 0
				switch n := min(len(s), len(text)); {
				case n > 5:
					allowed = 2
				case n > 2 || n == 2 && len(s) != len(text):
					allowed = 1
				}
				if cost = 1 + 2*letterDistance(strings.ToLower(s), strings.ToLower(text)); cost > 1+2*allowed {
					continue
				}
			}
			if cost += miss; cost < bestCost {
				best, bestCost = u.Name, cost
			}
		}
	}
	return best
}

// letterDistance counts the letters to put in, take out, change or swap between a and
// b; far is enough to say once it passes 2.
func letterDistance(a, b string) int {
	const far = 9
	x, y := []rune(a), []rune(b)
	if d := len(x) - len(y); d > 2 || d < -2 {
		return far
	}
	before, prev, row := make([]int, len(y)+1), make([]int, len(y)+1), make([]int, len(y)+1)
	for j := range prev {
		prev[j] = j
	}
	for i := 1; i <= len(x); i++ {
		row[0] = i
		for j := 1; j <= len(y); j++ {
			change := prev[j-1]
			if x[i-1] != y[j-1] {
				change++
			}
			row[j] = min(change, prev[j]+1, row[j-1]+1)
			if i > 1 && j > 1 && x[i-1] == y[j-2] && x[i-2] == y[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, prev, row = prev, row, before
	}
	return prev[len(y)]
}
