// Package folder reads the files of a manual from an injected file system, and
// says in words what cannot be read. The caller opens the root with os.Root, so
// that no path and no link leaves it.
package folder

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/source"
)

// Suffix ends the name of every file that belongs to a manual.
const Suffix = ".proc.hcl"

// The rules of this package.
const (
	RuleMissing    = "form/missing-folder"
	RuleUnreadable = "form/unreadable-file"
	RuleDirectory  = "form/folder-named-as-file"
	RuleOutside    = "form/link-out-of-root"
	RuleLarge      = "form/file-too-large"
)

// Read gives the files that stand directly in dir, a slash path inside fsys,
// sorted by path; what could not be read is a finding. Nested folders are not
// read: they may hold manuals of their own.
func Read(fsys fs.FS, dir string) ([]*source.File, diag.List) {
	var findings diag.List
	entries, err := fs.ReadDir(fsys, dir)
	if err != nil {
		findings.Add(unreadable(dir, err, "folder"))
	}
	var files []*source.File
	for _, e := range entries { // sorted by name
		if !strings.HasSuffix(e.Name(), Suffix) {
			continue
		}
		file, finding := readFile(fsys, path.Join(dir, e.Name()))
		if finding != nil {
			findings.Add(*finding)
			continue
		}
		files = append(files, file)
	}
	return files, findings
}

func readFile(fsys fs.FS, name string) (*source.File, *diag.Finding) {
	fail := func(err error) (*source.File, *diag.Finding) {
		f := unreadable(name, err, "file")
		return nil, &f
	}
	f, err := fsys.Open(name)
	if err != nil {
		return fail(err)
	}
	defer f.Close()
	info, err := f.Stat()
	switch {
	case err != nil:
		return fail(err)
	case info.IsDir():
		return nil, about(name, RuleDirectory, "This is a folder with the name of a file.",
			"Nothing in it belongs to the manual.", "Rename the folder.")
	case !info.Mode().IsRegular():
		return nil, about(name, RuleUnreadable, "This is not an ordinary file.",
			"The manual would be checked without it.", "Put a file in its place.")
	}
	// A builder gives a string without a second copy of the text. The size a
	// file tells is a hint: it may grow while it is read.
	var text strings.Builder
	text.Grow(int(min(info.Size(), source.MaxSize)))
	n, err := io.Copy(&text, io.LimitReader(f, source.MaxSize+1))
	switch {
	case err != nil:
		return fail(err)
	case n > source.MaxSize:
		return nil, about(name, RuleLarge,
			fmt.Sprintf("This file has more than %d megabytes.", source.MaxSize>>20),
			"A manual of 100,000 steps has 27; this is something else.",
			"Divide it into several files, or take out what does not belong to the manual.")
	}
	return source.New(name, text.String()), nil
}

func about(name, rule, message, reason, remedy string) *diag.Finding {
	return &diag.Finding{
		Rule: rule, Severity: diag.Error, Span: source.New(name, "").Whole(),
		Message: message, Reason: reason, Remedy: remedy,
	}
}

// unreadable words an error of the file system. What the root refuses because
// it leads outside has no error value of its own.
func unreadable(name string, err error, what string) diag.Finding {
	why := err
	var pathErr *fs.PathError
	if errors.As(err, &pathErr) {
		why = pathErr.Err
	}
	switch {
	case strings.Contains(why.Error(), "escapes"):
		return *about(name, RuleOutside, fmt.Sprintf("This %s is a link that leads out of the root folder.", what),
			"Nothing outside the root is read, so that a manual is the same on every machine.",
			"Copy what it points to into the root.")
	case errors.Is(err, fs.ErrNotExist) && what == "folder":
		return *about(name, RuleMissing, "There is no such folder.",
			"Without it there is nothing to check.", "Look for a slip in its name.")
	case errors.Is(err, fs.ErrNotExist):
		return *about(name, RuleUnreadable, "This is a link that leads nowhere.",
			"The manual would be checked without it.", "Remove the link or put the file in its place.")
	}
	return *about(name, RuleUnreadable, fmt.Sprintf("This %s cannot be read: %v.", what, why),
		"The manual would be checked without it.", "Give yourself leave to read it, or take it away.")
}
