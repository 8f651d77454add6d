package lint

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/source"
	"fettle/lint/rules"
)

// agreement is `# agreed group/rule: reason` beside the line that it silences.
type agreement struct {
	rule, reason string
	span         source.Span
	line         int // the line that it is about
	used         bool
}

// silence takes out the findings that are agreed in writing, and adds what is
// wrong with the agreements themselves.
func silence(m *model.Manual, all diag.List) (kept, silenced diag.List) {
	agreed := map[*source.File][]*agreement{}
	var order []*agreement
	for _, f := range m.Files {
		for _, c := range m.Comments[f] {
			if a := agreementIn(f, c); a != nil {
				agreed[f] = append(agreed[f], a)
				order = append(order, a)
			}
		}
	}
	if len(order) == 0 {
		return all, nil
	}
	for _, f := range all {
		if a := match(agreed[f.Span.File], f); a != nil {
			a.used = true
			if a.reason != "" {
				silenced.Add(f)
				continue
			}
		}
		kept.Add(f)
	}
	for _, a := range order {
		if f := fault(a); f != nil && (a.reason == "" || rules.Find(a.rule) == nil || !m.Incomplete) {
			kept.Add(*f)
		}
	}
	return kept, silenced
}

func agreementIn(f *source.File, c model.Comment) *agreement {
	body := strings.TrimLeft(c.Text, "#/ \t")
	rest, ok := strings.CutPrefix(body, "agreed ")
	if !ok {
		return nil
	}
	name, reason, _ := strings.Cut(rest, ":")
	a := &agreement{rule: strings.TrimSpace(name), reason: strings.TrimSpace(reason), span: c.Span}
	a.line = c.Span.Position().Line
	if c.OwnLine {
		for a.line++; a.line <= f.Lines(); a.line++ {
			if s := strings.TrimSpace(f.Line(a.line)); s != "" && !strings.HasPrefix(s, "#") && !strings.HasPrefix(s, "//") {
				break
			}
		}
	}
	return a
}

func match(agreed []*agreement, f diag.Finding) *agreement {
	if len(agreed) == 0 || strings.HasPrefix(f.Rule, "form/") {
		return nil
	}
	line := f.Span.Position().Line
	for _, a := range agreed {
		if a.rule == f.Rule && a.line == line {
			return a
		}
	}
	return nil
}

// fault says what is wrong with an agreement, or nil.
func fault(a *agreement) *diag.Finding {
	f := &diag.Finding{Severity: diag.Error, Span: a.span}
	switch {
	case rules.Find(a.rule) == nil:
		f.Rule = "form/unknown-rule"
		f.Message = "There is no rule `" + a.rule + "` to agree on."
		f.Reason = "Nothing is silenced."
		f.Remedy = "Write the rule's name as the finding gives it."
	case strings.HasPrefix(a.rule, "form/"):
		f.Rule = "form/unknown-rule"
		f.Message = "`" + a.rule + "` cannot be agreed on."
		f.Reason = "What it finds keeps the manual from being read."
		f.Remedy = "Mend what it finds."
	case a.reason == "":
		f.Rule = "form/agreed-without-reason"
		f.Message = "This silence gives no reason."
		f.Reason = "The next reader cannot tell whether it still holds, so nothing is silenced."
		f.Remedy = "Write the reason after a colon: # agreed " + a.rule + ": reason."
	case !a.used:
		f.Rule = "form/agreed-on-nothing"
		f.Severity = diag.Advice
		f.Message = "This silence silences nothing."
		f.Reason = "It would hide the fault when it comes back."
		f.Remedy = "Take the comment out."
	default:
		return nil
	}
	return f
}
