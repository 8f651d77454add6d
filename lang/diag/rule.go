package diag

import "fettle/lang/source"

// A Rule is what is the same in all findings of one name.
type Rule struct {
	Name     string // group/what-is-wrong
	Severity Severity
	Reason   string // why it matters
	Remedy   string // what to do
}

// At gives the rule's finding at a place; the message is one sentence.
func (r Rule) At(at source.Span, message string) Finding {
	return Finding{Rule: r.Name, Severity: r.Severity, Span: at, Message: message, Reason: r.Reason, Remedy: r.Remedy}
}
