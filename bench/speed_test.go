package bench_test

import (
	"runtime"
	"testing"

	"fettle/bench"
	"fettle/lang"
	"fettle/lang/langtest"

	"github.com/stretchr/testify/require"
)

// BenchmarkRun executes a manual of 60,000 steps, index included.
func BenchmarkRun(b *testing.B) {
	m, _, err := lang.Load(langtest.Generate(1000, 60), "m")
	require.NoError(b, err)
	var before, after runtime.MemStats
	var kept []*bench.Trace
	runtime.GC()
	runtime.ReadMemStats(&before)
	b.ReportAllocs()
	for b.Loop() {
		t := bench.Run(m, nil)
		require.Empty(b, len(t.Breaches))
		require.Len(b, t.Acts, 60000)
		kept = append(kept, t)
	}
	runtime.GC()
	runtime.ReadMemStats(&after)
	b.ReportMetric(float64(after.HeapAlloc-before.HeapAlloc)/float64(len(kept))/1e6, "MB/trace")
	runtime.KeepAlive(kept)
}
