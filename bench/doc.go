// Package bench executes a manual on a virtual bench, for one choice of
// options, and tells what went wrong.
package bench
