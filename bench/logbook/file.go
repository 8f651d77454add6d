package logbook

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
)

// file is what a logbook is written through; an *os.File, or one that fails
// where a test wants it to.
type file interface {
	io.ReadWriteSeeker
	Truncate(size int64) error
	Sync() error
}

// ErrFaults is why nothing is added to a logbook that is not whole.
var ErrFaults = errors.New("this logbook is not whole; nothing is added to it")

// Open reads the logbook at path. The error is of the world; what is wrong with
// the logbook stands in Log.Faults.
func Open(path string) (*Log, error) {
	data, err := os.ReadFile(path)
	if err != nil {
		return nil, fmt.Errorf("cannot read the logbook: %w", err)
	}
	return Parse(data), nil
}

// Create begins a logbook with its start line. There must be no file at path.
func Create(path string, start Entry) (*Log, error) {
	start.N, start.Prev = 1, []string{}
	if start.Kind != Start {
		return nil, errors.New("a logbook begins with its start")
	}
	if fault := start.fault(); fault != "" {
		return nil, fmt.Errorf("the line %s", fault)
	}
	line := append(Encode(&start), '\n')
	if _, err := os.Lstat(path); err == nil {
		return nil, fmt.Errorf("there is a file at %s already", path)
	}
	// Linking a file that is whole makes it appear whole or not at all, and
	// refuses to take another's place.
	temp, err := writeTemp(path, line)
	if err != nil {
		return nil, err
	}
	defer os.Remove(temp)
	if err := os.Link(temp, path); err != nil {
		if errors.Is(err, os.ErrExist) {
			return nil, fmt.Errorf("there is a file at %s already", path)
		}
		if err := os.Rename(temp, path); err != nil { // a file system without links
			return nil, fmt.Errorf("cannot begin the logbook: %w", err)
		}
	}
	if err := syncFolder(filepath.Dir(path)); err != nil {
		return nil, err
	}
	return Parse(line), nil
}

// Append adds one line. make is given the logbook as it stands, locked against
// other writers, and gives the entry or refuses with an error, which is returned
// as it is; N and Prev are filled in. When Append returns without an error the
// line is on the disk; when it is cut off at any moment, at most this line is
// lost. The log is as it stands after the line.
func Append(path string, make func(*Log) (Entry, error)) (*Log, error) {
	f, unlock, err := openLocked(path)
	if err != nil {
		return nil, err
	}
	defer unlock()
	return appendTo(f, make)
}

func appendTo(f file, make func(*Log) (Entry, error)) (*Log, error) {
	data, err := io.ReadAll(f)
	if err != nil {
		return nil, fmt.Errorf("cannot read the logbook: %w", err)
	}
	l := Parse(data)
	if !l.Whole() {
		return l, ErrFaults
	}
	e, err := make(l)
	if err != nil {
		return l, err
	}
	line, err := l.next(&e)
	if err != nil {
		return l, err
	}
	if l.bare {
		line = append([]byte{'\n'}, line...)
	}
	if err := write(f, int64(l.end), l.Torn > 0, line); err != nil {
		return l, fmt.Errorf("the line was not written: %w", err)
	}
	return Parse(append(data[:l.end:l.end], line...)), nil
}

// next is the line of an entry that is written now.
func (l *Log) next(e *Entry) ([]byte, error) {
	e.Prev = l.Heads()
	e.N = 0
	for _, p := range e.Prev {
		e.N = max(e.N, l.Lines[l.place[p]].N)
	}
	e.N++
	if e.Kind == Start {
		return nil, errors.New("a logbook begins once")
	}
	if fault := e.fault(); fault != "" {
		return nil, fmt.Errorf("the line %s", fault)
	}
	line := Encode(e)
	if len(line) > maxLine {
		return nil, fmt.Errorf("the line has more than %d bytes", maxLine)
	}
	return append(line, '\n'), nil
}

// write puts the line at the end. A line that cannot be written whole is taken
// back, as far as the disk still listens.
func write(f file, end int64, torn bool, line []byte) error {
	if torn {
		if err := f.Truncate(end); err != nil {
			return err
		}
	}
	if _, err := f.Seek(end, io.SeekStart); err != nil {
		return err
	}
	n, err := f.Write(line)
	if err == nil && n < len(line) {
		err = io.ErrShortWrite
	}
	if err == nil {
		err = f.Sync()
	}
	if err != nil {
		return errors.Join(err, f.Truncate(end))
	}
	return nil
}

// Replace writes a merged logbook in the place of one at path: the file is the
// old one or the whole new one. Every line that the old one holds must be in it.
func Replace(path string, merged *Log) error {
	f, unlock, err := openLocked(path)
	if err != nil {
		return err
	}
	defer unlock()
	data, err := io.ReadAll(f)
	if err != nil {
		return fmt.Errorf("cannot read the logbook: %w", err)
	}
	for _, line := range Parse(data).Lines {
		if merged.Find(line.Sum) == nil {
			return fmt.Errorf("line %d of %s is not in the merged logbook; merge again", line.Number, path)
		}
	}
	temp, err := writeTemp(path, merged.Bytes())
	if err != nil {
		return err
	}
	if err := os.Rename(temp, path); err != nil {
		os.Remove(temp)
		return fmt.Errorf("cannot put the merged logbook in place: %w", err)
	}
	return syncFolder(filepath.Dir(path))
}

func writeTemp(path string, data []byte) (string, error) {
	f, err := os.CreateTemp(filepath.Dir(path), ".logbook-*")
	if err != nil {
		return "", fmt.Errorf("cannot write beside the logbook: %w", err)
	}
	_, err = f.Write(data)
	if err == nil {
		err = f.Chmod(0o644)
	}
	if err == nil {
		err = f.Sync()
	}
	if err = errors.Join(err, f.Close()); err != nil {
		os.Remove(f.Name())
		return "", fmt.Errorf("cannot write the logbook: %w", err)
	}
	return f.Name(), nil
}

// openLocked opens the logbook for one writer. A writer that waited while the
// file was replaced takes the new one.
func openLocked(path string) (*os.File, func(), error) {
	for {
		f, err := os.OpenFile(path, os.O_RDWR, 0)
		if errors.Is(err, os.ErrNotExist) {
			return nil, nil, fmt.Errorf("there is no logbook at %s; start one: record start", path)
		}
		if err != nil {
			return nil, nil, fmt.Errorf("cannot open the logbook: %w", err)
		}
		unlock, err := lock(f)
		if err != nil {
			f.Close()
			return nil, nil, fmt.Errorf("cannot lock the logbook: %w", err)
		}
		release := func() { unlock(); f.Close() }
		mine, err := f.Stat()
		if err != nil {
			release()
			return nil, nil, err
		}
		if now, err := os.Stat(path); err == nil && os.SameFile(mine, now) {
			return f, release, nil
		}
		release()
	}
}
