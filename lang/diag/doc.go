// Package diag defines the finding, the one type that carries what is wrong
// from the lexer to every report, and the edits that mend it.
//
// A finding is a value; a Go error is for the world (disk, flags). Nothing here
// prints.
package diag
