package bench_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// The shop's housing weighs 18 kg, shaft 4 kg, gear 2 kg, cover 6 kg.
func TestLiftsAreSummedOverTheGroup(t *testing.T) {
	traces := tell(t, "lifted with all that it carries", shaftAndGear+gasketAndCover+coverBolts+`
  work "lift" {
    title  = "Lift it onto the mounts"
    on     = [part.housing]
    lifts  = [part.housing]
    people = 2
    tools  = [tool.hoist]
  }
`, "", "")
	require.Len(t, traces[0].Lifts, 1, "nothing else is heavier than one person may lift")
	l := traces[0].Lifts[0]
	require.Equal(t, "30 kg", l.Mass.String())
	require.Equal(t, 2, l.People)
	require.Len(t, l.Hoists, 1)
	var unknown []string
	for _, o := range l.Unknown {
		unknown = append(unknown, o.String())
	}
	require.ElementsMatch(t, []string{"Gasket", "Cover bolt"}, unknown)
}

// A default is said only where a clock runs over it.
func TestAssumedTimes(t *testing.T) {
	traces := tell(t, "a clock over a step without a time", wash+sealLid+`
  inspect "bead" {
    title = "Look at the bead"
    on    = [part.shaft]
  }
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
    takes = "1 min"
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "1 min"
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "1 min"
  }
`+wipe, "", "")
	var assumed []string
	for _, a := range traces[0].Assumed {
		assumed = append(assumed, traces[0].Acts[a].Step.Address)
	}
	require.Equal(t, []string{"procedure.work.inspect.bead"}, assumed)
}
