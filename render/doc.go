// Package render lowers a bound manual, and what is known of one build, to a
// Document: a small tree that every output format walks. It is for the packages
// html, markdown and json below it, and for the commands that call them.
//
// It reads the roles of attributes and the effects of steps and never asks which
// kind of step it has, so that a new kind is printed without a change here.
//
// It refuses to work anything out that calc or the model have not: a value that
// is not known is a blank with its formula beside it.
//
// Invariant: the same manual, options and values give the same tree, and no text
// of an author is ever taken for markup.
package render
