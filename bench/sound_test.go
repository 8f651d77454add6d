package bench_test

import (
	"os"
	"strings"
	"testing"

	"fettle/bench"
	"fettle/lang"

	"github.com/stretchr/testify/require"
)

// say writes a breach in a line, for failures.
func say(b bench.Breach) string {
	at := "-"
	if b.Node != nil {
		at = b.Node.Name.String() + " " + b.Node.Address
	}
	var objects, causes []string
	for _, o := range b.Objects {
		objects = append(objects, o.String())
	}
	for _, c := range b.Causes {
		causes = append(causes, c.Words+" ("+c.Node.Address+"."+c.Attr+")")
	}
	return at + ": " + b.What.String() + " [" + strings.Join(objects, "; ") + "] " + b.Attr + " {" + strings.Join(causes, "; ") + "}"
}

// The demo manuals are sound: the bench has nothing to say.
func TestDemoManualsAreSound(t *testing.T) {
	for _, dir := range []string{"beck", "sedge_2"} {
		t.Run(dir, func(t *testing.T) {
			m, _, err := lang.Load(os.DirFS("../procedures"), dir)
			require.NoError(t, err)
			traces := bench.RunAll(m)
			for _, b := range bench.Gather(traces) {
				t.Error(say(b))
			}
			t.Log(len(traces), "choices,", len(traces[0].Acts), "acts,", traces[0].End)
		})
	}
}
