//go:build unix

package logbook

import (
	"errors"
	"os"
	"syscall"
)

// lock waits until this is the only writer. The system lets go of it when the
// process ends, however it ends.
func lock(f *os.File) (unlock func(), err error) {
	for {
		err = syscall.Flock(int(f.Fd()), syscall.LOCK_EX)
		if !errors.Is(err, syscall.EINTR) {
			break
		}
	}
	return func() { _ = syscall.Flock(int(f.Fd()), syscall.LOCK_UN) }, err
}

// syncFolder makes sure that the name of a new file outlives a power cut.
func syncFolder(dir string) error {
	d, err := os.Open(dir)
	if err != nil {
		return err
	}
	defer d.Close()
	if err := d.Sync(); err != nil && !errors.Is(err, syscall.EINVAL) { // not every file system knows it
		return err
	}
	return nil
}
