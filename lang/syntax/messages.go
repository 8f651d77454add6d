package syntax

import (
	"regexp"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"fettle/lang/diag"
)

// summaryUnreadable marks a piece that hclsyntax failed on.
const summaryUnreadable = "Unreadable"

const summaryItem = "Argument or block definition required"

const summaryEncoding = "Invalid character encoding"

const summaryAfterValue = "Missing newline after argument"

// What is found without hclsyntax too.
const (
	messageRepeated = "This attribute is set a second time."
	messageUnclosed = "This block is not closed."
	messageStray    = "This bracket closes nothing."
	messageEncoding = "This byte is not part of UTF-8 text."
)

// translations gives our words for hclsyntax's. The first entry whose summary
// is the diagnostic's and whose detail is part of its detail holds.
var translations = []struct{ summary, detail, rule, message string }{
	{"Attribute redefined", "", ruleRepeated, messageRepeated},
	{summaryItem, "", ruleSyntax, "Neither an attribute nor a block begins here."},
	{"Argument definition required", "", ruleOneLine, "A block stands on the same line as the block around it."},
	{"Invalid argument name", "", ruleSyntax, "The name of an attribute stands in quotes."},
	{"Invalid single-argument block definition", "same line", ruleOneLine, "An attribute stands on the line of the `{` and the block goes on below it."},
	{"Invalid single-argument block definition", "", ruleOneLine, "A block on one line holds one attribute and ends on that line."},
	{"Unclosed configuration block", "", ruleUnclosed, messageUnclosed},
	{"Unclosed configuration body", "", ruleUnclosed, "The file ends inside a block."},
	{summaryAfterValue, "", ruleOneLine, "After this value the line must end."},
	{"Unexpected comma after argument", "", ruleSyntax, "Attributes stand on lines of their own, without commas."},
	{"Missing newline after block definition", "", ruleOneLine, "After the `}` of a block the line must end."},
	{"Invalid block definition", "equals sign", ruleBlock, "A block has no `=`."},
	{"Invalid block definition", "same line", ruleBlock, "The `{` of a block is missing on this line."},
	{"Invalid block definition", "", ruleBlock, "A label in quotes or `{` must stand here."},
	{"Missing false expression in conditional", "", ruleSyntax, "A choice `condition ? this : that` lacks its `: that`."},
	{"Missing expression", "", ruleSyntax, "A value is missing."},
	{"Invalid expression", "", ruleSyntax, "A value is missing or cannot be read."},
	{"Invalid number literal", "", ruleSyntax, "This is not a number; a quantity or a range stands in quotes."},
	{"Invalid legacy index syntax", "", ruleForeign, "An index stands in brackets."},
	{"Nested splat expression not allowed", "", ruleForeign, "`*` does not stand for all members here."},
	{"Missing close bracket on splat index", "", ruleForeign, "`*` does not stand for all members here."},
	{"Invalid attribute name", "", ruleSyntax, "A name is missing after the dot."},
	{"Missing close bracket on index", "", ruleBracket, "The `]` of an index is missing."},
	{"Unbalanced parentheses", "", ruleBracket, "A `)` is missing."},
	{"Unterminated function call", "", ruleBracket, "The `)` of a function is missing."},
	{"Missing argument separator", "", ruleBracket, "A comma or `)` is missing before this."},
	{"Missing closing parenthesis", "", ruleBracket, "A `)` is missing."},
	{"Missing function name", "", ruleForeign, "Functions have plain names, without `::`."},
	{"Missing open parenthesis", "", ruleForeign, "Functions have plain names, without `::`."},
	{"Unterminated tuple constructor expression", "", ruleBracket, "The `]` of this list is missing."},
	{"Missing item separator", "", ruleBracket, "A comma or `]` is missing before this."},
	{"Missing attribute value", "", ruleBracket, "A key without a value stands before this."},
	{"Missing key/value separator", "", ruleBracket, "`=` is missing between a key and its value."},
	{"Unterminated object constructor expression", "", ruleBracket, "The `}` of this map is missing."},
	{"Missing attribute separator", "", ruleBracket, "A comma, a new line or `}` is missing before this."},
	{"Invalid 'for' expression", "", ruleForeign, "`for` does not build lists here."},
	{"Invalid 'for' directive", "", ruleForeign, "`%{` begins a directive, which does not exist here."},
	{"Invalid template directive", "", ruleForeign, "`%{` begins a directive, which does not exist here."},
	{"Invalid template control keyword", "", ruleForeign, "`%{` begins a directive, which does not exist here."},
	{"Unexpected end of template", "", ruleForeign, "`%{` begins a directive, which does not exist here."},
	{"Invalid string literal", "Template", ruleSyntax, "A label is plain text, without `${`."},
	{"Invalid string literal", "", ruleString, "This text cannot be read."},
	{"Unterminated string literal", "", ruleString, "A quote opens a text that is not closed."},
	{"Unterminated template string", "", ruleString, "A text is opened and not closed."},
	{"Invalid multi-line string", "", ruleString, "A text in quotes ends on the line where it begins."},
	{"Unclosed template interpolation sequence", "", ruleString, "The `}` of `${` is missing in this text."},
	{"Extra characters after interpolation expression", "", ruleString, "After the value in `${` a `}` must stand."},
	{"Invalid escape sequence", "", ruleEscape, "After a backslash stands `n`, `t`, `r`, `\"`, `\\`, or `u` with four hexadecimal digits."},
	{"Unsupported operator", "", ruleSyntax, "This is not an operator; write `&&`, `||` and `!`."},
	{"Invalid character", "Single quotes", ruleCharacter, "A single quote stands where a straight double quote belongs."},
	{"Invalid character", "Curly quotes", ruleCharacter, "A curly quote stands where a straight one belongs."},
	{"Invalid character", "", ruleCharacter, "This character means nothing outside quotes."},
	{summaryUnreadable, "", ruleSyntax, "This cannot be read."},
}

// explain says what is wrong with src[start:s.end]. What is not closed comes
// first: what hclsyntax says after it follows from it. At one place its first
// word, the lexer's, says most. True means that the value is not worth reading.
func (p *parser) explain(start int, s survey, diags hcl.Diagnostics) bool {
	if f, ok := p.unquoted(start, s.end); ok {
		p.findings.Add(f)
		return true
	}
	limit := s.end + 1
	if s.torn != nil {
		limit = s.torn.start
		p.report(s.torn.rule, s.torn.start, s.torn.end, s.torn.message)
	}
	said := map[int32]bool{}
	for _, d := range diags {
		f := p.translate(d, start, s.end)
		if at := f.Span.Start; said[at] || int(f.Span.End) >= limit {
			continue
		}
		said[f.Span.Start] = true
		if d.Summary != summaryEncoding { // checkText says it
			p.findings.Add(f)
		}
	}
	return false
}

// unquoted finds the quantity that is the whole value of an attribute, as in
// takes = 5 min.
func (p *parser) unquoted(start, end int) (diag.Finding, bool) {
	m := quantity.FindStringSubmatchIndex(p.src[start:end])
	if m == nil {
		return diag.Finding{}, false
	}
	from, to := start+m[2], start+m[3]
	f := finding(ruleUnquoted, p.span(from, to), "A quantity stands in quotes.")
	f.Fixes = []diag.Fix{{Title: "Put it in quotes", Edits: []diag.Edit{
		{Span: p.span(from, from), New: `"`}, {Span: p.span(to, to), New: `"`},
	}}}
	return f, true
}

// quantity is one attribute whose value begins with a digit and is no
// arithmetic over addresses.
var quantity = regexp.MustCompile(`^[a-z_]+[ \t]*=[ \t]*((?:[-.±≥≤][ \t]*)?[0-9][^\s"#*()\[\]{}?:=&|!]*(?:[ \t]+[^\s"#*()\[\]{}?:=&|!]+)*)[ \t]*(?:#.*)?\r?\n?$`)

// translate puts a diagnostic into our words. One that the table lacks keeps
// its own.
func (b *builder) translate(d *hcl.Diagnostic, start, end int) diag.Finding {
	from, to := start, start
	if d.Subject != nil {
		from = min(max(d.Subject.Start.Byte, start), end)
		to = min(max(d.Subject.End.Byte, from), end)
	}
	// hclsyntax counts the newline into some tokens; nobody can see it there.
	to = from + len(strings.TrimRight(b.src[from:to], "\r\n"))
	if text := b.src[from:to]; d.Summary == summaryItem && (text == "}" || text == "]" || text == ")") {
		return finding(ruleStray, b.span(from, to), messageStray)
	}
	if f, ok := b.halfMinus(d, start, from); ok {
		return f
	}
	for _, t := range translations {
		if t.summary == d.Summary && strings.Contains(d.Detail, t.detail) {
			return finding(t.rule, b.span(from, to), t.message)
		}
	}
	return finding(ruleSyntax, b.span(from, to), d.Summary+".")
}

// halfMinus finds a name that ends with the minus of a subtraction, as in
// `measure.bore- measure.pin`: the name takes the minus, and the rest is one too many.
func (b *builder) halfMinus(d *hcl.Diagnostic, start, from int) (diag.Finding, bool) {
	before := strings.TrimRight(b.src[start:from], " \t")
	at := start + len(before) - 1
	if d.Summary != summaryAfterValue || len(before) < 2 || len(before) == from-start || before[len(before)-1] != '-' || class[before[len(before)-2]]&namePart == 0 {
		return diag.Finding{}, false
	}
	name := before[strings.LastIndexAny(before, " \t.=(")+1:]
	f := finding(ruleMinus, b.span(at+1-len(name), at+1), "`"+name+"` is read as one name.")
	f.Fixes = []diag.Fix{{Title: "Put a space before the minus", Edits: []diag.Edit{{Span: b.span(at, at), New: " "}}}}
	return f, true
}
