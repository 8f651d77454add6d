package syntax

import (
	"slices"

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
	ruleMinus        = "values/minus-in-name"
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

// Rules gives the rules of this package, in a fixed order.
func Rules() []diag.Rule { return slices.Clone(rules) }

var rules = []diag.Rule{
	{Name: ruleSyntax, Severity: diag.Error, Reason: "What cannot be read is not checked and not printed.",
		Remedy: "Write `name = value`, or a block: `kind \"label\" {`, its lines, and `}`."},
	{Name: ruleBlock, Severity: diag.Error, Reason: "A block that cannot be read is left out of the manual.",
		Remedy: "Begin a block with its kind, its label in quotes and `{`, all on one line."},
	{Name: ruleUnclosed, Severity: diag.Error, Reason: "Everything after it would belong to this block.",
		Remedy: "Write `}` on a line of its own, under the first letter of the block."},
	{Name: ruleStray, Severity: diag.Error, Reason: "A block ends too early, and what follows is not where it seems to be.",
		Remedy: "Take this bracket out, or open what it should close."},
	{Name: ruleOneLine, Severity: diag.Error, Reason: "What follows on the next lines would be lost.",
		Remedy: "Give `{`, each line of the block, and `}` a line of their own."},
	{Name: ruleBracket, Severity: diag.Error, Reason: "What follows would be read as part of this value.",
		Remedy: "Close it, and separate its members by commas."},
	{Name: ruleString, Severity: diag.Error, Reason: "What follows would be read as part of the text.",
		Remedy: "Close the text on the same line; for more lines write `<<-EOT`, the lines, and `EOT` on a line of its own."},
	{Name: ruleEscape, Severity: diag.Error, Reason: "The character that was meant is unknown.",
		Remedy: "Write `\\\\` for a backslash, `\\\"` for a quote, and `$${` for a literal `${`."},
	{Name: ruleUnquoted, Severity: diag.Error, Reason: "Without quotes the unit is a word of its own, and the number stands alone.",
		Remedy: "Write it as a manual prints it, between quotes: \"5 min\"."},
	{Name: ruleMinus, Severity: diag.Error, Reason: "A hyphen right behind a name belongs to the name, so nothing is subtracted.",
		Remedy: "Put spaces round the minus: a - b."},
	{Name: ruleRepeated, Severity: diag.Error, Reason: "Which of the two holds cannot be told.",
		Remedy: "Keep one. An attribute that takes one thing takes a list too."},
	{Name: ruleForeign, Severity: diag.Error, Reason: "A manual states what is; it does not generate itself.",
		Remedy: "Write it out, or use one of the functions that `explain` lists."},
	{Name: ruleChained, Severity: diag.Error, Reason: "The condition does not say what it seems to say.",
		Remedy: "Write each comparison on its own and join them by `&&`, or use within(value, limit)."},
	{Name: ruleFlush, Severity: diag.Doubt, Reason: "Text that stands further out than its own line hides a closing mark that was forgotten.",
		Remedy: "Indent the text by two more blanks than the line that opens it; they are taken off again."},
	{Name: rulePlainHeredoc, Severity: diag.Doubt, Reason: "After `<<` the indentation stays in the text, and indented text prints as a program.",
		Remedy: "Write `<<-` instead."},
	{Name: ruleDeep, Severity: diag.Error, Reason: "Nothing readable nests so deeply; such a file is broken or made to do harm.",
		Remedy: "Look for brackets that are opened and not closed."},
	{Name: ruleLong, Severity: diag.Error, Reason: "Nobody can check a formula of this length.",
		Remedy: "Name parts of it with `calculate` steps."},
	{Name: ruleHeredocLines, Severity: diag.Error, Reason: "No builder reads so long a text beside the engine.",
		Remedy: "Divide the step, or move the text to a document that a `media` block names."},
	{Name: ruleDigits, Severity: diag.Error, Reason: "No measurement has so many digits.",
		Remedy: "Round the number to what can be measured."},
	{Name: ruleExponent, Severity: diag.Error, Reason: "A builder does not read exponents, and a mistyped one is wrong a thousandfold.",
		Remedy: "Write the number out, or choose another unit."},
	{Name: ruleEncoding, Severity: diag.Error, Reason: "Characters would be printed wrong, a degree sign or a ± among them.",
		Remedy: "Save the file as UTF-8."},
	{Name: ruleControl, Severity: diag.Error, Reason: "The character cannot be seen, printed or typed.",
		Remedy: "Delete it."},
	{Name: ruleCharacter, Severity: diag.Error, Reason: "What it stands for cannot be told.",
		Remedy: "Use straight quotes, and put quantities and text between them."},
	{Name: ruleMany, Severity: diag.Error, Reason: "The rest of the file was not read.",
		Remedy: "Mend what is listed first; much of the rest may follow from it."},
}

var byName = func() map[string]diag.Rule {
	m := make(map[string]diag.Rule, len(rules))
	for _, r := range rules {
		m[r.Name] = r
	}
	return m
}()

func finding(rule string, at source.Span, message string) diag.Finding {
	return byName[rule].At(at, message)
}
