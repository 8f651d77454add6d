// Package bind turns syntax trees into a model: it walks them against the
// definitions of blocks, resolves names, lowers expressions to the typed form
// of calc and checks their dimensions.
//
// It is for package lang alone. It never stops at a fault: what can be read is
// in the model, and every fault is a finding at the exact place. Findings carry
// the severity Error; the rules that own them may say otherwise.
package bind
