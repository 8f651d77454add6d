// Package lang loads manuals: Load is the only door from files to the model.
//
// It is for the commands and for tests. It refuses nothing that can be read in
// part: what is wrong is in the findings, and the model holds the rest. A Go
// error means that the world would not give the files.
package lang
