// Package syntax reads one source file into blocks, attributes and small
// expression trees with a byte span on everything. It knows HCL's grammar and
// nothing of what the words mean.
//
// Two parsers share the work. A hand-written one reads what authors normally
// write, at many times hclsyntax's speed, and refuses whatever it is not
// certain of; hclsyntax reads what was refused, and stays the authority on what
// is an error and where. A fuzzer holds that wherever the first accepts, both
// give the same tree.
//
// This is the only package that imports hcl and cty. It never panics and never
// fails: what is wrong is in Tree.Findings, and what could be saved is in
// Tree.Blocks.
package syntax
