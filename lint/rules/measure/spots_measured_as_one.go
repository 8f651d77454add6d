package measure

import (
	"regexp"
	"strconv"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// SpotsMeasuredAsOne: several spots that are measured as if they were one.
var SpotsMeasuredAsOne = &rule.Rule{
	Name:     "measure/spots-measured-as-one",
	Severity: diag.Doubt,
	Finds:    "Several spots that are measured as if they were one.",
	Why:      "One number for a part that differs from spot to spot hides taper, ovality and tilt.",
	Remedy:   "Name the spots in spots, and say with take which reading counts. Use repeat only for the same spot.",
	Bad: `part "housing" {
  name = "Housing"
}

part "shaft" {
  name     = "Shaft"
  in_place = 1
  sits_on  = part.housing
  features = ["journal"]
}

procedure "check" {
  title = "Check the shaft"

  measure "float" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    take      = "largest" # want "several readings"
    likely    = "0.02..0.30 mm"
    accept    = "0.08..0.14 mm"
    otherwise = "Send the shaft back."
  }
}
`,
	Good: `part "housing" {
  name = "Housing"
}

part "shaft" {
  name     = "Shaft"
  in_place = 1
  sits_on  = part.housing
  features = ["journal"]
}

procedure "check" {
  title = "Check the shaft"

  measure "float" {
    title     = "Measure the float of the shaft"
    on        = [part.shaft]
    tools     = [tool.dial_indicator]
    spots     = ["over the key", "a quarter turn on"]
    take      = "largest"
    likely    = "0.02..0.30 mm"
    accept    = "0.08..0.14 mm"
    otherwise = "Send the shaft back."
  }
}
`,
	Run: runSpotsMeasuredAsOne,
}

func runSpotsMeasuredAsOne(p *rule.Pass) {
	readings(p, func(s *model.Step) {
		spots, repeat := times(s, "spots"), times(s, "repeat")
		if s.Has("spots") || s.Damaged {
			return
		}
		if repeat < 2 {
			for _, attr := range [...]string{"take", "agree_within"} {
				if s.Has(attr) {
					p.Report(s.At(attr), rule.Called(s.Node)+" judges several readings and asks for one.")
					return
				}
			}
		}
		if take := s.Word("take"); repeat > 1 && (take == "largest" || take == "smallest") && !s.Has("agree_within") {
			p.Report(s.At("repeat"), rule.Called(s.Node)+" takes the "+take+" of "+strconv.Itoa(repeat)+" readings at one spot, where they should agree.",
				rule.Remedy("Name the spots in spots. Where it is one spot, give agree_within, and take the mean."),
				rule.Related(s.At("take"), "The "+take+" is taken here."))
			return
		}
		if spots < 2 {
			for _, attr := range [...]string{"title", "text"} {
				t := s.Text(attr)
				if t == nil || !severalSpots(t.Plain()) {
					continue
				}
				for _, sentence := range prose.Sentences(t) {
					if m := manySpots.FindStringIndex(sentence.Text); m != nil && !thePlaces(s, sentence.Text[m[0]:m[1]]) {
						p.Report(sentence.Span(m[0], m[1]), rule.Called(s.Node)+" is measured at several spots, and asks for one reading.",
							rule.Related(s.Name, "The reading is asked for here."))
						return
					}
				}
			}
		}
	})
}

// thePlaces reports words that may mean the places at which the step is done, one
// reading at each: "at both ends" of a step at two places.
func thePlaces(s *model.Step, words string) bool {
	if s.Places == nil {
		return false
	}
	n := len(s.Places.Names("names"))
	lower := strings.ToLower(words)
	if m := counted.FindString(lower); m != "" {
		return m == "several" || numbers[m] == n || m == strconv.Itoa(n)
	}
	return n > 2 // at the top, in the middle and at the bottom
}

var (
	counted = regexp.MustCompile(`\b(?:two|three|four|five|six|eight|both|several|[2-9])\b`)
	numbers = map[string]int{"both": 2, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "eight": 8}
)

// severalSpots is a quick look for what manySpots finds.
func severalSpots(text string) bool {
	for _, w := range [...]string{"spots", "places", "points", "positions", "heights", "ends", "sides", "corners", "bottom", "rear"} {
		if strings.Contains(text, w) {
			return true
		}
	}
	return false
}

// manySpots is a reading that is taken at several spots, in words: "measure it at
// both ends", "read at the top, in the middle and at the bottom".
var manySpots = regexp.MustCompile(`(?i)\b(?:measure|measured|read|readings?|gauge|taken?)\b(?: \w+){0,3} (?:at|in|on) (?:` +
	`(?:the |each of the )?(?:two|three|four|five|six|eight|both|several|[2-9]) (?:\w+ )?(?:spots|places|points|positions|heights|ends|sides|corners)\b` +
	`|the (?:top|front)\b[^.;]*\b(?:middle|centre)\b[^.;]*\b(?:bottom|rear|back)\b)`)
