// Package diff tells what a new revision changes for the engine and for the
// reader, not as lines.
//
// Steps are paired by address and former labels, so that one that only moved or
// got another name is no removal and addition. Each change is classed by the
// gravest thing that it touches. The same pairs serve rework. FORMAT.md describes
// the JSON.
//
// It is for diff, rework and the rules on revisions. Two manuals without a
// change differ in letter, day and history at most: their digests say whether
// they do.
package diff
