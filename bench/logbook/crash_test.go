package logbook

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// disk is a file in memory that dies after a number of operations and bytes:
// what was written until then is there, and nothing after.
type disk struct {
	data  []byte
	at    int64
	bytes int // that are still written; -1 without end
	calls int // that still succeed; -1 without end
	kill  bool
}

var errDead = errors.New("no power")

func (d *disk) call() error {
	if d.calls == 0 {
		return errDead
	}
	if d.calls > 0 {
		d.calls--
	}
	return nil
}

func (d *disk) Read(p []byte) (int, error) {
	if d.at >= int64(len(d.data)) {
		return 0, io.EOF
	}
	n := copy(p, d.data[d.at:])
	d.at += int64(n)
	return n, nil
}

func (d *disk) Seek(offset int64, whence int) (int64, error) {
	d.at = offset
	return offset, d.call()
}

func (d *disk) Write(p []byte) (int, error) {
	if err := d.call(); err != nil {
		return 0, err
	}
	n := len(p)
	if d.bytes >= 0 && d.bytes < n {
		n = d.bytes
	}
	d.data = append(d.data[:d.at:d.at], p[:n]...)
	d.at += int64(n)
	if n < len(p) {
		if d.kill {
			d.calls = 0
		}
		return n, io.ErrShortWrite
	}
	return n, nil
}

func (d *disk) Truncate(size int64) error {
	if err := d.call(); err != nil {
		return err
	}
	d.data = d.data[:size]
	return nil
}

func (d *disk) Sync() error { return d.call() }

func note(l *Log) (Entry, error) {
	return Entry{Kind: Note, At: at(len(l.Lines)), By: "HB", Text: fmt.Sprintf("note %d: the quick brown fox", len(l.Lines))}, nil
}

// The power goes after any number of bytes: the lines before are there, and the
// next line is written as if nothing had happened.
func TestPowerCutAtEveryByteOfAWrite(t *testing.T) {
	before := sample(t)
	full := &disk{data: before.Bytes(), bytes: -1, calls: -1}
	after, err := appendTo(full, note)
	require.NoError(t, err)
	line := len(after.Bytes()) - len(before.Bytes())
	for _, torn := range []string{"", `{"n":11,"pr`} {
		for n := range line + 1 {
			d := &disk{data: append(before.Bytes(), torn...), bytes: n, calls: -1, kill: true}
			_, err := appendTo(d, note)
			require.Equal(t, n == line, err == nil, "%d bytes", n)
			l := Parse(d.data)
			require.True(t, l.Whole(), "%d bytes: %v", n, l.Faults)
			require.GreaterOrEqual(t, len(l.Lines), len(before.Lines))
			if err == nil {
				require.Len(t, l.Lines, len(before.Lines)+1)
			}
			d.bytes, d.calls = -1, -1
			d.at = 0
			next, err := appendTo(d, note)
			require.NoError(t, err)
			require.Equal(t, next.Bytes(), Parse(d.data).Bytes())
			require.Equal(t, string(d.data), string(next.Bytes()), "nothing torn is left")
		}
	}
}

// A disk that is full says so, and nothing of the line is left.
func TestAFullDiskLeavesTheOldBook(t *testing.T) {
	before := sample(t)
	for n := range 40 {
		d := &disk{data: before.Bytes(), bytes: n, calls: -1}
		_, err := appendTo(d, note)
		require.ErrorIs(t, err, io.ErrShortWrite)
		require.Equal(t, string(before.Bytes()), string(d.data))
	}
}

// Any call to the disk fails: no line that was reported as written is missing.
func TestEveryCallToTheDiskMayFail(t *testing.T) {
	before := sample(t)
	for calls := range 6 {
		d := &disk{data: append(before.Bytes(), `{"n"`...), bytes: -1, calls: calls}
		_, err := appendTo(d, note)
		l := Parse(d.data)
		require.True(t, l.Whole())
		require.GreaterOrEqual(t, len(l.Lines), len(before.Lines))
		if err == nil {
			require.Len(t, l.Lines, len(before.Lines)+1)
		}
	}
}

func TestNothingIsAddedToABookThatIsNotWhole(t *testing.T) {
	data := bytes.Replace(sample(t).Bytes(), []byte("0.93"), []byte("0.13"), 1)
	d := &disk{data: append([]byte{}, data...), bytes: -1, calls: -1}
	_, err := appendTo(d, note)
	require.ErrorIs(t, err, ErrFaults)
	require.Equal(t, data, d.data)
}

const writerEnv = "FETTLE_TEST_LOGBOOK"

// TestMain lets the test binary be the writer that another test kills.
func TestMain(m *testing.M) {
	if path := os.Getenv(writerEnv); path != "" {
		for {
			l, err := Append(path, note)
			if err != nil {
				fmt.Println("failed:", err)
				os.Exit(1)
			}
			fmt.Println(l.Lines[len(l.Lines)-1].Sum) // told as written
		}
	}
	os.Exit(m.Run())
}

// A writer is killed by the system while it writes, many times over: no line
// that it reported is missing, and the book is whole.
func TestAKilledWriterLosesNothingItReported(t *testing.T) {
	path := filepath.Join(t.TempDir(), "book.log")
	_, err := Create(path, startEntry())
	require.NoError(t, err)
	told := []string{}
	for round := range 12 {
		cmd := exec.Command(os.Args[0])
		cmd.Env = append(os.Environ(), writerEnv+"="+path)
		out, err := cmd.StdoutPipe()
		require.NoError(t, err)
		require.NoError(t, cmd.Start())
		lines := bufio.NewScanner(out)
		for n := 0; n <= round%4 && lines.Scan(); n++ {
			told = append(told, lines.Text())
		}
		time.Sleep(time.Duration(round*137) * time.Microsecond)
		require.NoError(t, cmd.Process.Kill())
		for lines.Scan() {
			if s := lines.Text(); len(s) == 64 {
				told = append(told, s)
			}
		}
		_ = cmd.Wait()
		l, err := Open(path)
		require.NoError(t, err)
		require.True(t, l.Whole(), "%v", l.Faults)
		for _, sum := range told {
			require.Len(t, sum, 64, sum)
			require.NotNil(t, l.Find(sum))
		}
	}
	require.Greater(t, len(told), 12)
}

// Writers that come at the same time wait for one another.
func TestWritersTakeTurns(t *testing.T) {
	path := filepath.Join(t.TempDir(), "book.log")
	_, err := Create(path, startEntry())
	require.NoError(t, err)
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for range 5 {
				if _, err := Append(path, note); err != nil {
					t.Error(err)
				}
			}
		})
	}
	wg.Wait()
	l, err := Open(path)
	require.NoError(t, err)
	require.True(t, l.Whole())
	require.Len(t, l.Lines, 41)
	require.Len(t, l.Heads(), 1)
}

func TestCreateNeverTakesAPlace(t *testing.T) {
	path := filepath.Join(t.TempDir(), "book.log")
	require.NoError(t, os.WriteFile(path, []byte("mine"), 0o600))
	_, err := Create(path, startEntry())
	require.ErrorContains(t, err, "there is a file")
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, "mine", string(data))
	files, err := os.ReadDir(filepath.Dir(path))
	require.NoError(t, err)
	require.Len(t, files, 1, "nothing is left lying about")
}

func TestReplaceKeepsEveryLine(t *testing.T) {
	path := filepath.Join(t.TempDir(), "book.log")
	base, err := Create(path, startEntry())
	require.NoError(t, err)
	other := add(t, base, Entry{Kind: Note, At: at(3), By: "KM", Text: "from the tablet"})
	mine, err := Append(path, note)
	require.NoError(t, err)
	require.ErrorContains(t, Replace(path, other), "merge again")
	require.NoError(t, Replace(path, merge(t, mine, other)))
	l, err := Append(path, note)
	require.NoError(t, err)
	require.Len(t, l.Lines, 4)
	require.Len(t, l.Lines[3].Prev, 2, "the next line knows of both")
	onDisk, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, l.Bytes(), onDisk)
	require.True(t, strings.HasSuffix(string(onDisk), "}\n"))
}
