// Package prose reads an author's words sentence by sentence, and knows where
// each byte of them stands in the source: in quoted strings and heredocs, past
// escapes, Markdown and values.
//
// It is for rules that look for words. It knows which words open an instruction,
// which verbs the trade uses, and which quantities stand in a sentence. It
// refuses grammar: a rule that needs more than that stays silent.
package prose
