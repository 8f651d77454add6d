// Package model is a manual as plain Go values with their places in the
// source: no syntax, no tables to look up, every name resolved and every
// expression typed.
//
// It is made by package bind and read by the bench, the rules and the
// renderers. Nothing changes a Manual once it is bound, so all may read it at
// the same time.
package model
