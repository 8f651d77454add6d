package syntax

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/stretchr/testify/require"
)

// manual makes a file of one procedure with that many steps.
func manual(steps int) string {
	var w strings.Builder
	w.WriteString("procedure \"thrust_end\" {\n  title = \"Shim the shaft and close the thrust end\"\n\n")
	for i := range steps {
		fmt.Fprintf(&w, "  # step %d\n", i)
		switch i % 4 {
		case 0:
			fmt.Fprintf(&w, "  measure \"float_%d\" {\n    title        = \"Measure the float without shims\"\n    on           = [part.runner_shaft]\n    tools        = [tool.dial_indicator]\n    likely       = \"0.55..1.45 mm\"\n    repeat       = 3\n    take         = \"mean\"\n    text         = <<-EOT\n      Push the shaft away from you until it stops, set the dial to zero,\n      then pull it towards you. Read the dial.\n    EOT\n  }\n\n", i)
		case 1:
			fmt.Fprintf(&w, "  choose \"pack_%d\" {\n    title  = \"Choose the shim pack\"\n    from   = part.thrust_shim\n    pieces = \"2..5\"\n    gap    = measure.float_%d - limit.end_play.target\n    leaves = limit.shaft_float\n  }\n\n", i, i-1)
		case 2:
			fmt.Fprintf(&w, "  fit \"shims_%d\" {\n    title = \"Slide the shims on: ${choose.pack_%d}\"\n    part  = choose.pack_%d\n    takes = \"5 min\"\n  }\n\n", i, i-1, i-1)
		case 3:
			fmt.Fprintf(&w, "  torque \"nuts_%d\" {\n    title     = \"Tighten the nuts\"\n    fastening = fastening.hub_nut\n    tools     = [tool.wrench, tool.socket_13]\n    why       = \"The gasket settles, so the first stage is run twice — 24 N·m.\"\n  }\n\n", i)
		}
	}
	w.WriteString("}\n")
	return w.String()
}

// BenchmarkParse reads a manual of 60 steps. The metric floor/ours is the time
// hclsyntax takes for the same bytes, in the same run, over ours.
func BenchmarkParse(b *testing.B) {
	f := file(manual(60))
	src := []byte(f.Text)
	start := time.Now()
	const rounds = 50
	for range rounds {
		hclsyntax.ParseConfig(src, "x", hcl.InitialPos)
	}
	floor := time.Since(start) / rounds
	b.SetBytes(int64(len(f.Text)))
	b.ReportAllocs()
	for b.Loop() {
		Parse(f)
	}
	b.ReportMetric(float64(floor)/(float64(b.Elapsed())/float64(b.N)), "floor/ours")
}

// A file of 100,000 steps costs as much per step as a small one.
func BenchmarkParseLong(b *testing.B) {
	f := file(manual(100_000))
	b.SetBytes(int64(len(f.Text)))
	b.ReportAllocs()
	for b.Loop() {
		t := Parse(f)
		require.Empty(b, t.Findings)
	}
}
