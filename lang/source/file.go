package source

import (
	"sort"
	"strings"
	"sync"
)

// MaxSize is the largest file that is read, in bytes. A manual of 100,000
// steps is about 27 MB.
const MaxSize = 40 << 20

// BOM is the byte order mark that some editors write before the text.
const BOM = "\uFEFF"

// A File is one source file. Path is slash-separated and relative to the root
// that fettle was given. Text is the file as read, byte order mark and line
// ends included, so that offsets and edits hold for the file on disk.
type File struct {
	Path string
	Text string

	once  sync.Once
	lines []int32 // where each line starts
}

// New makes a file of text that is already in memory.
func New(path, text string) *File { return &File{Path: path, Text: text} }

// Span gives the half-open span from start to end, both bytes, clamped to the
// file.
func (f *File) Span(start, end int) Span {
	start = min(max(start, 0), len(f.Text))
	end = min(max(end, start), len(f.Text))
	return Span{File: f, Start: int32(start), End: int32(end)}
}

// Whole spans the text, without a byte order mark.
func (f *File) Whole() Span { return f.Span(f.Body(), len(f.Text)) }

// Body gives the offset at which the text begins: 0, or 3 after a byte order
// mark.
func (f *File) Body() int {
	if strings.HasPrefix(f.Text, BOM) {
		return len(BOM)
	}
	return 0
}

// Lines gives the number of lines; an empty file has one.
func (f *File) Lines() int { return len(f.starts()) }

// Line gives the text of line n, counted from 1, without its line end; empty
// for a line that is not there.
func (f *File) Line(n int) string {
	starts := f.starts()
	if n < 1 || n > len(starts) {
		return ""
	}
	start, end := int(starts[n-1]), len(f.Text)
	if n < len(starts) {
		end = int(starts[n]) - 1
	}
	return strings.TrimSuffix(f.Text[start:end], "\r")
}

// starts builds the line table on first use. The byte order mark belongs to no
// line, so that the first column is the first character.
func (f *File) starts() []int32 {
	f.once.Do(func() {
		f.lines = make([]int32, 1, 1+strings.Count(f.Text, "\n"))
		f.lines[0] = int32(f.Body())
		for at := 0; ; {
			i := strings.IndexByte(f.Text[at:], '\n')
			if i < 0 {
				break
			}
			at += i + 1
			f.lines = append(f.lines, int32(at))
		}
	})
	return f.lines
}

// line gives the index of the line that holds the byte at offset.
func (f *File) line(offset int) int {
	starts := f.starts()
	i := sort.Search(len(starts), func(i int) bool { return int(starts[i]) > offset })
	return max(i-1, 0)
}
