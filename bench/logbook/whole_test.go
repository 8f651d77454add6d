package logbook_test

import (
	"os"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/bench/logbook"
	"fettle/bench/logbook/logtest"
	"fettle/lang"
	"fettle/lang/values"
)

// Every step of the demo manuals can be recorded, in the order of the work.
func TestAWholeBuildIsRecorded(t *testing.T) {
	root := os.DirFS("../..")
	for _, dir := range []string{"procedures/sedge_2", "procedures/beck"} {
		t.Run(dir, func(t *testing.T) {
			m, _, err := lang.Load(root, dir)
			require.NoError(t, err)
			b := logtest.Start(t, m, nil)
			b.Upto("")
			build := b.Build()
			require.Nil(t, build.Follows())
			require.Empty(t, build.Lost)
			for _, a := range b.Acts() {
				if done, known := build.Env.Done(a.Step, a.Place); !done || !known {
					continue
				}
				keys := values.Keys(a.Step)
				if slices.Contains(keys, a.Place) {
					keys = []string{a.Place}
				}
				for _, key := range keys {
					require.True(t, build.Stands(a.Step, key), "%s %s", a.Step.Key(), key)
				}
			}
			require.Empty(t, logbook.StateOf(b.Log).Conflicts)
		})
	}
}
