package syntax

import (
	"fettle/lang/diag"
	"fettle/lang/source"
)

// The rules of this package, each with what it says beside every finding.
const (
	ruleSyntax       = "form/syntax"
	ruleBlock        = "form/broken-block"
	ruleUnclosed     = "form/unclosed-block"
	ruleStray        = "form/stray-bracket"
	ruleOneLine      = "form/crowded-line"
	ruleBracket      = "form/unclosed-bracket"
	ruleString       = "form/unclosed-string"
	ruleEscape       = "form/unknown-escape"
	ruleUnquoted     = "form/quantity-without-quotes"
	ruleRepeated     = "form/repeated-attribute"
	ruleForeign      = "form/not-in-dialect"
	ruleChained      = "form/chained-comparison"
	ruleFlush        = "form/text-not-indented"
	rulePlainHeredoc = "form/text-keeps-indent"
	ruleDeep         = "form/nested-too-deep"
	ruleLong         = "form/expression-too-long"
	ruleHeredocLines = "form/text-too-long"
	ruleDigits       = "form/number-too-long"
	ruleExponent     = "form/number-with-exponent"
	ruleEncoding     = "form/not-utf8"
	ruleControl      = "form/control-character"
	ruleCharacter    = "form/unknown-character"
	ruleMany         = "form/too-many-faults"
)

// A Rule describes one rule of this package.
type Rule struct {
	Name     string
	Severity diag.Severity
	Reason   string // why it matters
	Remedy   string // what to do
}

// Rules gives the rules of this package, in a fixed order.
func Rules() []Rule { return append([]Rule(nil), rules...) }

var rules = []Rule{
	{ruleSyntax, diag.Error, "What cannot be read is not checked and not printed.",
		"Write `name = value`, or a block: `kind \"label\" {`, its lines, and `}`."},
	{ruleBlock, diag.Error, "A block that cannot be read is left out of the manual.",
		"Begin a block with its kind, its label in quotes and `{`, all on one line."},
	{ruleUnclosed, diag.Error, "Everything after it would belong to this block.",
		"Write `}` on a line of its own, under the first letter of the block."},
	{ruleStray, diag.Error, "A block ends too early, and what follows is not where it seems to be.",
		"Take this bracket out, or open what it should close."},
	{ruleOneLine, diag.Error, "What follows on the next lines would be lost.",
		"Give `{`, each line of the block, and `}` a line of their own."},
	{ruleBracket, diag.Error, "What follows would be read as part of this value.",
		"Close it, and separate its members by commas."},
	{ruleString, diag.Error, "What follows would be read as part of the text.",
		"Close the text on the same line; for more lines write `<<-EOT`, the lines, and `EOT` on a line of its own."},
	{ruleEscape, diag.Error, "The character that was meant is unknown.",
		"Write `\\\\` for a backslash, `\\\"` for a quote, and `$${` for a literal `${`."},
	{ruleUnquoted, diag.Error, "Without quotes the unit is a word of its own, and the number stands alone.",
		"Write it as a manual prints it, between quotes: \"5 min\"."},
	{ruleRepeated, diag.Error, "Which of the two holds cannot be told.",
		"Keep one. An attribute that takes one thing takes a list too."},
	{ruleForeign, diag.Error, "A manual states what is; it does not generate itself.",
		"Write it out, or use one of the functions that `explain` lists."},
	{ruleChained, diag.Error, "The condition does not say what it seems to say.",
		"Write each comparison on its own and join them by `&&`, or use within(value, limit)."},
	{ruleFlush, diag.Doubt, "Text that stands further out than its own line hides a closing mark that was forgotten.",
		"Indent the text by two more blanks than the line that opens it; they are taken off again."},
	{rulePlainHeredoc, diag.Doubt, "After `<<` the indentation stays in the text, and indented text prints as a program.",
		"Write `<<-` instead."},
	{ruleDeep, diag.Error, "Nothing readable nests so deeply; such a file is broken or made to do harm.",
		"Look for brackets that are opened and not closed."},
	{ruleLong, diag.Error, "Nobody can check a formula of this length.",
		"Name parts of it with `calculate` steps."},
	{ruleHeredocLines, diag.Error, "No builder reads so long a text beside the engine.",
		"Divide the step, or move the text to a document that a `media` block names."},
	{ruleDigits, diag.Error, "No measurement has so many digits.",
		"Round the number to what can be measured."},
	{ruleExponent, diag.Error, "A builder does not read exponents, and a mistyped one is wrong a thousandfold.",
		"Write the number out, or choose another unit."},
	{ruleEncoding, diag.Error, "Characters would be printed wrong, a degree sign or a ± among them.",
		"Save the file as UTF-8."},
	{ruleControl, diag.Error, "The character cannot be seen, printed or typed.",
		"Delete it."},
	{ruleCharacter, diag.Error, "What it stands for cannot be told.",
		"Use straight quotes, and put quantities and text between them."},
	{ruleMany, diag.Error, "The rest of the file was not read.",
		"Mend what is listed first; much of the rest may follow from it."},
}

var byName = func() map[string]Rule {
	m := make(map[string]Rule, len(rules))
	for _, r := range rules {
		m[r.Name] = r
	}
	return m
}()

func finding(rule string, at source.Span, message string) diag.Finding {
	r := byName[rule]
	return diag.Finding{Rule: rule, Severity: r.Severity, Span: at, Message: message, Reason: r.Reason, Remedy: r.Remedy}
}
