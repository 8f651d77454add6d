package fastening

import (
	"regexp"
	"strings"

	"fettle/calc/joint"
	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// TurnsTheWrongWay: prose that turns a fastener the wrong way for its thread, or calls the thread by the wrong hand.
var TurnsTheWrongWay = &rule.Rule{
	Name:     "fastening/turns-the-wrong-way",
	Severity: diag.Error,
	Finds:    "Prose that turns a fastener the wrong way for its thread, or calls the thread by the wrong hand.",
	Why:      "The builder leans on the wrench the wrong way, and a stuck left-hand nut is sheared by who means to undo it.",
	Remedy:   "Correct the direction, or the thread: a left-hand one is written \"M14x1.5 LH\".",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
    text      = "Turn each bolt anticlockwise, in one slow sweep." # want "anticlockwise"
  }
}
`,
	Good: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
    text      = "Turn each bolt clockwise, in one slow sweep."
  }
}
`,
	Run: runTurnsTheWrongWay,
}

func runTurnsTheWrongWay(p *rule.Pass) {
	threads := map[string]joint.Thread{}
	for _, s := range p.Steps() {
		f, tightens := turns(s)
		if f == nil {
			continue
		}
		for _, attr := range [...]string{"title", "text"} {
			t := s.Text(attr)
			if t == nil || !turnsIn(t.Plain()) {
				continue
			}
			text := f.Plain("thread")
			thread, ok := threads[text]
			if !ok {
				thread, _ = joint.ParseThread(text)
				threads[text] = thread
			}
			if thread.Form == joint.NoForm {
				continue
			}
			for _, sentence := range prose.Sentences(t) {
				if wrongHand(p, f, thread, sentence) || wrongTurn(p, f, thread, sentence, tightens) {
					break
				}
			}
		}
	}
}

// turns is the fastening that a step turns, and whether it turns it home.
func turns(s *model.Step) (f *model.Node, tightens bool) {
	for _, e := range s.Kind.Does {
		switch e.Verb {
		case kind.Tightens, kind.Starts, kind.Slackens, kind.Opens:
			if r := s.AllRefs(e.Attr); len(r) == 1 && r[0].To != nil && r[0].To.Def == entry.Fastening {
				return r[0].To, e.Verb == kind.Tightens || e.Verb == kind.Starts
			}
		}
	}
	return nil, false
}

// turnsIn is a quick look for words that turn something.
func turnsIn(text string) bool {
	return strings.Contains(text, "lockwise") || strings.Contains(text, "-hand") || strings.Contains(text, "to the left") || strings.Contains(text, "to the right")
}

var (
	ways = regexp.MustCompile(`(?i)\b(?:(anti-?clockwise|counter-?clockwise|to the left)|(clockwise|to the right))\b`)
	// turning is a verb and, before the direction, what is turned.
	turning   = regexp.MustCompile(`(?i)\b(?:turn|turns|turned|screw|screws|run|runs|wind|winds|tighten|tightens|pull|pulls|swing|loosen|loosens|slacken|slackens|undo|unscrew|unscrews|back|start)\b([^.;:]*)$`)
	fastener  = regexp.MustCompile(`(?i)\b(?:nuts?|bolts?|screws?|plugs?|studs?|unions?|fasteners?|glands?|caps?|adjusters?|wrench|spanner|ratchet|it|them|each|one|both|all)\b`)
	other     = regexp.MustCompile(`(?i)\b(?:shaft|crankshaft|wheel|flywheel|engine|crank|hub|drum|pulley|cam|camshaft|rotor|runner|propeller|lever|knob)\b`)
	loosening = regexp.MustCompile(`(?i)\b(?:loosen\w*|slacken\w*|undo|undoes|unscrew\w*|back (?:it|them|the \w+) off|comes? off|come undone|take (?:it|them) (?:off|out)|free)\b`)
	homing    = regexp.MustCompile(`(?i)\b(?:tighten\w*|tight|home)\b`)
	hedged    = regexp.MustCompile(`(?i)\b(?:not|never|don't|neither|no longer|instead of|seen from|viewed from|looking|from behind|from below)\b`)
)

// wrongTurn reports a sentence that turns a fastener against its thread. A
// sentence with both ways, a denial or another point of view is left alone.
func wrongTurn(p *rule.Pass, f *model.Node, thread joint.Thread, s prose.Sentence, tightens bool) bool {
	all := ways.FindAllStringSubmatchIndex(s.Text, -1)
	if len(all) != 1 || hedged.MatchString(s.Text) {
		return false
	}
	m := all[0]
	before := turning.FindStringSubmatch(s.Text[:m[0]])
	if before == nil || strings.TrimSpace(before[1]) != "" && (!fastener.MatchString(before[1]) || other.MatchString(lastPhrase(before[1]))) {
		return false
	}
	loosens, tight := loosening.MatchString(s.Text), homing.MatchString(s.Text)
	switch {
	case loosens && tight:
		return false
	case loosens || tight:
		tightens = tight
	}
	anticlockwise := m[2] >= 0
	if anticlockwise == (thread.LeftHand == tightens) {
		return false
	}
	verb, right := "tightens", "clockwise"
	if !tightens {
		verb = "loosens"
	}
	if !anticlockwise {
		right = "anticlockwise"
	}
	span := s.Span(m[0], m[1])
	p.Report(span, "“"+s.Text[m[0]:m[1]]+"” is the wrong way: "+rule.Called(f)+", "+thread.Text+", "+verb+" "+right+".",
		rule.Related(f.At("thread"), "The thread stands here."),
		rule.Fix("Turn it "+right, false, diag.Edit{Span: span, New: right}))
	return true
}

// lastPhrase is what stands after the last comma but is no fastener.
func lastPhrase(s string) string {
	if fastener.MatchString(s) {
		return ""
	}
	return s
}

// wrongHand reports a sentence that calls a thread left-hand where it is
// right-hand, or the other way round.
func wrongHand(p *rule.Pass, f *model.Node, thread joint.Thread, s prose.Sentence) bool {
	wrong := "left-hand"
	if thread.LeftHand {
		wrong = "right-hand"
	}
	at, phrase := prose.Find(s.Text, wrong+" thread", wrong+"ed thread")
	if at < 0 || hedged.MatchString(s.Text) || prose.Has(s.Text, "no "+phrase) {
		return false
	}
	p.Report(s.Span(at, at+len(phrase)), "“"+s.Text[at:at+len(phrase)]+"” is not what "+rule.Called(f)+" has: its thread is "+thread.Text+".",
		rule.Related(f.At("thread"), "The thread stands here."))
	return true
}
