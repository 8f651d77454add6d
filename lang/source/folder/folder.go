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

var (
	missing = diag.Rule{Name: "form/missing-folder", Severity: diag.Error,
		Reason: "Without it there is nothing to check.",
		Remedy: "Look for a slip in its name."}
	unreadable = diag.Rule{Name: "form/unreadable-file", Severity: diag.Error,
		Reason: "The manual would be checked without it.",
		Remedy: "Make the file readable, or take it away."}
	directory = diag.Rule{Name: "form/folder-named-as-file", Severity: diag.Error,
		Reason: "Nothing in it belongs to the manual.",
		Remedy: "Rename the folder."}
	outside = diag.Rule{Name: "form/link-out-of-root", Severity: diag.Error,
		Reason: "Nothing outside the root is read, so that a manual is the same on every machine.",
		Remedy: "Copy what it points to into the root."}
	large = diag.Rule{Name: "form/file-too-large", Severity: diag.Error,
		Reason: "A manual of 100,000 steps has 27 megabytes; this is something else.",
		Remedy: "Divide it into several files, or take out what does not belong to the manual."}
)

// Rules gives the rules of this package, in a fixed order.
func Rules() []diag.Rule { return []diag.Rule{missing, unreadable, directory, outside, large} }

// Read gives the files that stand directly in dir, a slash path inside fsys,
// sorted by path; what could not be read is a finding. Nested folders are not
// read: they may hold manuals of their own.
func Read(fsys fs.FS, dir string) ([]*source.File, diag.List) {
	var findings diag.List
	entries, err := fs.ReadDir(fsys, dir)
	if err != nil {
		findings.Add(failure(dir, err, "folder"))
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
		f := failure(name, err, "file")
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
		return nil, about(name, directory, "This is a folder with the name of a file.")
	case !info.Mode().IsRegular():
		return nil, about(name, unreadable, "This is not an ordinary file.")
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
		return nil, about(name, large, fmt.Sprintf("This file has more than %d megabytes.", source.MaxSize>>20))
	}
	return source.New(name, text.String()), nil
}

func about(name string, rule diag.Rule, message string) *diag.Finding {
	f := rule.At(source.New(name, "").Whole(), message)
	return &f
}

// failure words an error of the file system. What the root refuses because it
// leads outside has no error value of its own.
func failure(name string, err error, what string) diag.Finding {
	why := err
	var pathErr *fs.PathError
	if errors.As(err, &pathErr) {
		why = pathErr.Err
	}
	switch {
	case strings.Contains(why.Error(), "escapes"):
		return *about(name, outside, fmt.Sprintf("This %s is a link that leads out of the root folder.", what))
	case errors.Is(err, fs.ErrNotExist) && what == "folder":
		return *about(name, missing, "There is no such folder.")
	case errors.Is(err, fs.ErrNotExist):
		return *about(name, unreadable, "This is a link that leads nowhere.")
	}
	return *about(name, unreadable, fmt.Sprintf("This %s cannot be read: %v.", what, why))
}
