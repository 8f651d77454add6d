// Package logbook keeps the record of one build: an append-only file, one JSON
// object a line, each line carrying the digests of the lines it was written
// after. FORMAT.md beside this file describes it for other programs.
//
// It is for record, progress, rework, build and the builder's page. Parse reads
// strictly and says what was changed, lost or put in another order; Append
// writes one line so that a crash loses at most that line; Merge joins copies
// kept on several devices; StateOf says what stands, and where two devices
// disagree; Check refuses what the manual does not know or allow.
//
// Lines are never rewritten. A line is known by its digest, so copies merge as
// sets of lines: in any order, any number of times, with the same result. What
// was written without knowledge of one another and differs is a conflict, shown
// until somebody corrects it; nothing is resolved by guess.
package logbook
