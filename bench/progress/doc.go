// Package progress says where a build stands against a revision: what is done,
// what is next and what is open. It asks the bench, as the logbook leaves the
// engine, and marks nothing as done.
//
// It is for progress and for the build record.
package progress
