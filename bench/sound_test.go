package bench_test

import (
	"io/fs"
	"os"
	"path"
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

// The demo manuals and the sound manuals of testdata have no fault: the bench
// has nothing to say.
func TestSoundManualsAreSound(t *testing.T) {
	sound(t, os.DirFS("../procedures"), "beck", "sedge_2")
	root := os.DirFS("../testdata/sound")
	dirs, err := fs.Glob(root, "*/manual.proc.hcl")
	require.NoError(t, err)
	for i := range dirs {
		dirs[i] = path.Dir(dirs[i])
	}
	sound(t, root, dirs...)
}

func sound(t *testing.T, root fs.FS, dirs ...string) {
	for _, dir := range dirs {
		t.Run(dir, func(t *testing.T) {
			m, _, err := lang.Load(root, dir)
			require.NoError(t, err)
			traces := bench.RunAll(m)
			for _, b := range bench.Gather(traces) {
				t.Error(say(b))
			}
			t.Log(len(traces), "choices,", len(traces[0].Acts), "acts,", traces[0].End)
		})
	}
}
