package calc

import (
	"fmt"
	"strings"
)

// Edit replaces the bytes from Start to End by New. Sure says that it cannot
// change what was meant.
type Edit struct {
	Start, End int
	New        string
	Sure       bool
}

// Rules that quantity strings can break, beside those of expressions.
const (
	RuleUnknownUnit  = "units/unknown-unit"
	RuleDecimalComma = "units/decimal-comma"
	RuleBackwards    = "units/backwards-range"
	RuleTwoSystems   = "units/two-systems"
	RuleHyphen       = "units/hyphen-for-range"
	RuleUnreadable   = "units/unreadable-quantity"
)

func (p *literalParser) report(x Problem) { p.problems = append(p.problems, x) }

// fail reports what leaves no literal.
func (p *literalParser) fail(x Problem) Literal {
	p.report(x)
	p.lost = true
	return Literal{}
}

func problemAt(rule string, start, end int, message, reason, remedy string) Problem {
	return Problem{Rule: rule, Span: Span{int32(start), int32(end)}, Message: message, Reason: reason, Remedy: remedy}
}

func unreadable(start, end int, message, reason, remedy string) Problem {
	return problemAt(RuleUnreadable, start, end, message, reason, remedy)
}

func (x Problem) with(start, end int, text string, sure bool) Problem {
	x.Edit = &Edit{start, end, text, sure}
	return x
}

// settleEdits leaves no two edits over the same bytes, and none sure in a string
// that was not understood to its end.
func settleEdits(problems []Problem, lost bool) {
	for i := range problems {
		e := problems[i].Edit
		if e == nil {
			continue
		}
		e.Sure = e.Sure && !lost
		for _, earlier := range problems[:i] {
			if f := earlier.Edit; f != nil && e.Start < f.End && f.Start < e.End {
				problems[i].Edit = nil
			}
		}
	}
}

func quote(s string) string { return "“" + s + "”" }

// text is what a side looks like, unit included.
func (p *literalParser) text(a side) string {
	n := p.s[a.at:a.end]
	switch {
	case a.uEnd <= a.uAt:
		return n
	case a.uAt >= a.end && strings.TrimSpace(p.s[a.end:a.uAt]) == "":
		return p.s[a.at:a.uEnd]
	}
	return n + " " + p.s[a.uAt:a.uEnd]
}

func problemEmpty(start, end int) Problem {
	return unreadable(start, end, "This quantity is empty.", "The builder would be told no number.", "Write a number and its unit, such as 24 N·m.")
}

func problemTooLong(most, length int) Problem {
	return unreadable(most, length, fmt.Sprintf("This quantity is longer than %d characters.", most),
		"No quantity of a workshop is.", "Write one value or one range.")
}

func problemHidden(start, end int, r rune) Problem {
	return unreadable(start, end, fmt.Sprintf("A character that cannot be seen stands here (U+%04X).", r),
		"What cannot be seen cannot be checked by a reader.", "Delete it and type the quantity again.")
}

func problemDigits(start, end, most int) Problem {
	return unreadable(start, end, fmt.Sprintf("This number has more than %d digits.", most),
		"Nobody measures to so many.", "Write the digits that matter.")
}

func (p *literalParser) problemExponent(e int) Problem {
	end := e + 1
	for end < len(p.s) && (isDigit(p.s[end]) || end == e+1) {
		end++
	}
	return unreadable(e, end, "A number is written with an exponent.",
		"A builder reads 1e9 as a misprint.", "Write the number out, or take a larger or smaller unit.")
}

func problemLooseDot(start, end int) Problem {
	return unreadable(start, end, "A point stands behind the number with no digit after it.",
		"A digit may be missing.", "Write the digit that belongs there, or take the point away.")
}

func problemThreeDots(start, end int) Problem {
	return unreadable(start, end, "Three points stand between two numbers.",
		"The third could belong to the second number.", "Write two points between the ends of a range: 0.08..0.14 mm.")
}

func problemOverZero(start, end int) Problem {
	return unreadable(start, end, "This fraction is over zero.", "There is no such number.", "Write the number that is meant below the line.")
}

func (p *literalParser) problemImproper(start, end int) Problem {
	return unreadable(start, end, "The fraction behind the whole number is not smaller than one.",
		"It may be two numbers that run together.", "Write it as in 1 1/16 in, or put .. between two numbers.")
}

func problemSeparators(start, end int, text string) Problem {
	return unreadable(start, end, quote(text)+" has too many points or commas for one number.",
		"It can be read in more than one way.", "Write one point before the decimals and nothing between thousands.")
}

func problemComma(start, end int, text string) Problem {
	whole, part, _ := strings.Cut(text, ",")
	return problemAt(RuleDecimalComma, start, end, quote(text)+" may be a thousand times as much as is meant.",
		"Some read the comma as the decimal point, some as a mark between thousands.",
		"Write "+whole+part+" or "+whole+"."+part+".")
}

func problemDecimalComma(start, end int, text, clean string) Problem {
	return problemAt(RuleDecimalComma, start, end, quote(text)+" has a comma where fettle reads a point.",
		"A comma stands for thousands in one country and for decimals in the next.",
		"Write "+clean+".").with(start, end, clean, true)
}

func (p *literalParser) problemNoNumber() Problem {
	end := p.i
	for end < len(p.s) && p.spaceAt(end) == 0 {
		end++
	}
	switch word := strings.ToLower(p.s[p.i:end]); {
	case word == "":
		return unreadable(p.i, end, "A number is missing at the end.", "Half a quantity cannot be met.", "Write the number that belongs there.")
	case word == "about" || word == "approx" || word == "approx." || word == "ca." || word == "circa" || word[0] == '~' || strings.HasPrefix(word, "≈"):
		return unreadable(p.i, end, quote(p.s[p.i:end])+" leaves open how far off is too far.",
			"Nobody can accept or reject a reading against it.", "Write limits, such as 22..26 N·m or 24 ± 2 N·m.")
	}
	return unreadable(p.i, end, "A number was expected here, not "+quote(p.s[p.i:end])+".",
		"A quantity starts with its number.", "Write a number and its unit, such as 24 N·m, 0.08..0.14 mm or max 0.05 mm.")
}

func (p *literalParser) problemRest() Problem {
	rest := p.s[p.i:]
	if p.peek('+') || p.peek('-') || p.atMinus() {
		return unreadable(p.i, len(p.s), quote(rest)+" is only half of a tolerance.",
			"A deviation to one side leaves the other side open.", "Write both, such as +2/-0, or the same for both, such as ± 2.")
	}
	return unreadable(p.i, len(p.s), "Nothing more was expected here, but "+quote(rest)+" follows.",
		"One string holds one value or one range.", "Write a value, two ends with .. between them, or ± and a tolerance.")
}

func (p *literalParser) problemSecondNumber(a, b side) Problem {
	return unreadable(b.at, len(p.s), quote(p.text(a))+" is followed by another number.",
		"They may be the ends of a range or two quantities.", "Put .. between the ends of a range.")
}

func (p *literalParser) problemTwoUnits(a, b side, sum Quantity) Problem {
	whole := sum.String()
	return unreadable(a.at, b.uEnd, quote(p.s[a.at:b.uEnd])+" is one quantity in two units.",
		"A second number beside the first is easily read as another quantity.", "Write "+whole+".").with(a.at, b.uEnd, whole, true)
}

func problemStrict(start, end int, form Form) Problem {
	sign, word := "≥", "above"
	if form == AtMostForm {
		sign, word = "≤", "below"
	}
	return unreadable(start, end, "A limit is only "+word+" a number, not on it.",
		"A reading that is exactly on a limit is allowed everywhere in a manual.",
		"Write "+sign+" if the number itself is allowed.").with(start, end, sign, false)
}

func (p *literalParser) problemTrailingBound(a side) Problem {
	word := "max"
	if a.bound == AtLeastForm {
		word = "min"
	}
	text := word + " " + p.text(a)
	return unreadable(a.at, len(p.s), quote(word)+" stands behind the number.",
		"Behind a number min is minutes, so that the word always goes first.", "Write "+text+".").with(a.at, len(p.s), text, true)
}

func problemLonelyDeviation(start, end int) Problem {
	return unreadable(start, end, "± stands at the beginning, with nothing to deviate from.",
		"A tolerance needs the value that it belongs to.", "Write the value first: 24 ± 2 N·m.")
}

func problemNegativeDeviation(start, end int) Problem {
	return unreadable(start, end, "The number behind ± is negative.", "± goes both ways already.", "Write it without its sign.")
}

func problemPercentOfTemperature(start, end int) Problem {
	return unreadable(start, end, "A percentage of a temperature is asked for.",
		"A temperature has a zero of its own: 10 % of 20 °C means nothing.", "Write the tolerance in °C.")
}
