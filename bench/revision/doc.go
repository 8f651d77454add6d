// Package revision freezes the revisions of a manual: the digest of what a
// manual says, and snapshots of what was issued, which load again as they were.
//
// The digest is taken over the bound model and not over its files: how the
// manual is split into files, its comments, its layout, the order of attributes
// and of catalogue entries, and what a shared catalogue holds beyond this manual
// make no difference to it. Everything else does. FORMAT.md describes snapshots
// and the digest for other programs.
//
// It is for issue, diff, check and everything that prints a digest. It refuses
// to open a snapshot that is not what was issued.
package revision
