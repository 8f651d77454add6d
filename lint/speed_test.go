package lint_test

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"strings"
	"syscall"
	"testing"
	"testing/fstest"
	"time"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/lang/langtest"
	"fettle/lint"
)

// The stated bounds, as ratios to hclsyntax parsing the same bytes on one
// goroutine in the same run (memory: to the bytes themselves).
const (
	mostProcessor = 1.5
	mostWall      = 1.0 // on two cores
	mostMemory    = 12.0
)

// BenchmarkCheck measures a whole check against the floor. It reports ratios,
// which hold on a noisy machine, and says which bound is missed.
func BenchmarkCheck(b *testing.B) {
	for _, c := range []struct {
		name string
		make func() fstest.MapFS
	}{
		{"1000x60", func() fstest.MapFS { return langtest.Generate(1000, 60) }},
		{"100x60", func() fstest.MapFS { return langtest.Generate(100, 60) }},
		{"one-file-100000", func() fstest.MapFS { return langtest.OneFile(1000, 100) }},
	} {
		b.Run(c.name, func(b *testing.B) { benchmarkCheck(b, c.make()) })
	}
}

func benchmarkCheck(b *testing.B, fsys fstest.MapFS) {
	size := 0
	for _, f := range fsys {
		size += len(f.Data)
	}
	b.SetBytes(int64(size))
	floorWall, floorCPU := time.Duration(0), time.Duration(0)
	wall, cpu := time.Duration(0), time.Duration(0)
	for b.Loop() {
		w, c := measured(func() { floor(b, fsys) })
		floorWall, floorCPU = floorWall+w, floorCPU+c
		w, c = measured(func() {
			m, found, err := lang.Load(fsys, "m")
			require.NoError(b, err)
			require.Empty(b, lint.Check(m, found).Findings)
		})
		wall, cpu = wall+w, cpu+c
	}
	bound(b, "cpu/floor", float64(cpu)/float64(floorCPU), mostProcessor)
	bound(b, "wall/floor", float64(wall)/float64(floorWall), mostWall)
	bound(b, "peak/bytes", peak(b, fsys)/float64(size), mostMemory)
}

func bound(b *testing.B, unit string, got, most float64) {
	b.ReportMetric(got, unit)
	if got > most {
		b.Logf("%s is %.2f, and at most %.2f is wanted", unit, got, most)
	}
}

// floor is hclsyntax parsing every file, one after the other.
func floor(tb testing.TB, fsys fstest.MapFS) {
	for name, f := range fsys {
		_, diags := hclsyntax.ParseConfig(f.Data, name, hcl.InitialPos)
		require.False(tb, diags.HasErrors())
	}
}

// measured gives wall time and processor time of all threads.
func measured(do func()) (wall, cpu time.Duration) {
	before, start := processor(), time.Now()
	do()
	return time.Since(start), processor() - before
}

func processor() time.Duration {
	var u syscall.Rusage
	_ = syscall.Getrusage(syscall.RUSAGE_SELF, &u)
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

const peakFolder = "FETTLE_PEAK_FOLDER"

// peak is the greatest resident memory of a process that checks the manual from
// the disk, in bytes.
func peak(b *testing.B, fsys fstest.MapFS) float64 {
	dir := b.TempDir()
	for name, f := range fsys {
		path := filepath.Join(dir, filepath.FromSlash(name))
		require.NoError(b, os.MkdirAll(filepath.Dir(path), 0o755))
		require.NoError(b, os.WriteFile(path, f.Data, 0o600))
	}
	c := exec.Command(os.Args[0], "-test.run", "^TestPeakProcess$")
	c.Env = append(os.Environ(), peakFolder+"="+dir)
	out, err := c.CombinedOutput()
	require.NoError(b, err, string(out))
	for line := range strings.Lines(string(out)) {
		var kB float64
		if _, err := fmt.Sscanf(line, "VmHWM: %f kB", &kB); err == nil {
			return kB * 1024
		}
	}
	b.Skip("this system does not say how much memory a process had")
	return 0
}

// TestPeakProcess is the process that peak measures, set up like the command.
func TestPeakProcess(t *testing.T) {
	dir := os.Getenv(peakFolder)
	if dir == "" {
		t.Skip("runs in a process of its own, for BenchmarkCheck")
	}
	debug.SetGCPercent(50)
	m, found, err := lang.Load(os.DirFS(dir), "m")
	require.NoError(t, err)
	require.Empty(t, lint.Check(m, found).Findings)
	// Not the parent's rusage: a child inherits the peak of who started it.
	status, _ := os.ReadFile("/proc/self/status")
	os.Stdout.Write(status)
}
