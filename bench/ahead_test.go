package bench_test

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/bench"
	"fettle/lang"
	"fettle/lang/model"
)

func nothing(*model.Step, string) bool { return false }

// All of the work in one go is the run itself; step after step, a seal could not
// know what will close it.
func TestDoAllIsARun(t *testing.T) {
	for _, dir := range []string{"sedge_2", "beck"} {
		m, _, err := lang.Load(os.DirFS("../procedures"), dir)
		require.NoError(t, err)
		run := bench.Run(m, nil)
		s := bench.After(m, nil, nothing)
		require.Empty(t, s.DoAll(run.Acts))
		require.Empty(t, s.Finish())
		require.Equal(t, run.Before(len(run.Acts)).On(), s.On())
		require.Equal(t, run.End, s.Time())
	}
}

// A trial fit that is still on is one where its removal is still to come, and
// carried on as final where it is not.
func TestMidwayKnowsWhatIsToCome(t *testing.T) {
	m, _, err := lang.Load(os.DirFS("../procedures"), "sedge_2")
	require.NoError(t, err)
	run := bench.Run(m, nil)
	upto := run.Find(m.Find("crankshaft.measure.float").Step, "")
	done := func(s *model.Step, place string) bool { return run.Find(s, place) <= upto }
	trials := func(s *bench.State) (n int) {
		for _, p := range s.On() {
			if p.Trial {
				n++
			}
		}
		return n
	}
	s := bench.Midway(m, nil, done)
	require.Empty(t, s.Breaches())
	require.Equal(t, 1, trials(s))
	require.Equal(t, bench.TrialAsFinal, bench.After(m, nil, done).Breaches()[0].What)
}
