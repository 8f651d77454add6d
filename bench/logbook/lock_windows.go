package logbook

import (
	"os"
	"syscall"
	"unsafe"
)

var lockFileEx = syscall.NewLazyDLL("kernel32.dll").NewProc("LockFileEx")

// lock waits until this is the only writer. The system lets go of it when the
// file is closed, however the process ends. It locks a byte far behind the text,
// so that others can read.
func lock(f *os.File) (unlock func(), err error) {
	const exclusive = 2
	at := syscall.Overlapped{OffsetHigh: 1 << 30}
	ok, _, err := lockFileEx.Call(f.Fd(), exclusive, 0, 1, 0, uintptr(unsafe.Pointer(&at)))
	if ok == 0 {
		return nil, err
	}
	return func() {}, nil
}

// syncFolder has nothing to do: the system keeps names by itself.
func syncFolder(string) error { return nil }
