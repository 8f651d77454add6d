// Package source holds the bytes that every finding points at: files, spans,
// and the one place where byte offsets become lines and columns.
//
// Offsets are bytes everywhere inside the program, because hcl counts grapheme
// clusters, editors count UTF-16 units and people count characters. A File
// never changes once made.
package source
