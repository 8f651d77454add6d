// Package values works out what a manual leaves to be worked out: readings as
// they are taken, calculations, and the packs that selective fits pick, for one
// build; and the ranges of all of these, for any build.
//
// It is for check, calc, build and the builder's page, which must all give the
// same numbers. A Plan is made once for a manual; Env and Ranges are two
// readings of its expressions. It refuses to guess: what rests on a reading that
// was not given is not known, and says so.
package values
