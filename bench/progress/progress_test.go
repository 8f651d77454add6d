package progress_test

import (
	"os"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"fettle/bench/logbook"
	"fettle/bench/logbook/logtest"
	"fettle/bench/progress"
	"fettle/bench/rework"
	"fettle/lang"
	"fettle/lang/model"
)

func sedge(t *testing.T) *model.Manual {
	m, _, err := lang.Load(os.DirFS("../../procedures"), "sedge_2")
	require.NoError(t, err)
	return m
}

func of(t *testing.T, b *logtest.Book, after time.Duration) *progress.Progress {
	c, err := rework.Carry(b.Manual, b.Log, func(string) *model.Manual { return nil })
	require.NoError(t, err)
	return progress.Of(c, b.Now.Add(after))
}

func TestInTheMiddleOfATrialFit(t *testing.T) {
	b := logtest.Start(t, sedge(t), nil)
	b.Upto("crankshaft.measure.float")
	p := of(t, b, 0)
	require.Equal(t, p.Done, p.Next, "all up to here, and nothing beyond")
	require.Equal(t, "crankshaft.remove.aft_bolts", p.Steps[p.Next].Key())
	require.Len(t, p.Trials, 1)
	require.Equal(t, "Aft main bearing housing", p.Trials[0].Object.String())
	require.Empty(t, p.Loose)
	require.True(t, p.Plan.Empty())
	require.Contains(t, p.Text(), "ON FOR TRIAL, TO COME OFF AGAIN\n  Aft main bearing housing\n")
}

func TestFastenersThatAreOnlyStarted(t *testing.T) {
	b := logtest.Start(t, sedge(t), nil)
	b.Upto("crankshaft.fit.aft_bolts")
	p := of(t, b, 0)
	require.Len(t, p.Loose, 1)
	require.Contains(t, p.Text(), "FASTENINGS NOT TIGHT\n  Bolts of the aft main bearing housing: started by hand\n")
}

func TestAHoldIsNext(t *testing.T) {
	b := logtest.Start(t, sedge(t), nil)
	b.Upto("crankshaft.wait.gear_cool")
	p := of(t, b, 0)
	require.Equal(t, []int{p.Next}, p.Holds)
	require.Contains(t, p.Text(), "HOLDS TO BE RELEASED\n  2.30 Stop before the crankcase fills up: second person\n")
}

func TestCuresRunByTheClock(t *testing.T) {
	b := logtest.Start(t, sedge(t), nil)
	b.Upto("sump.torque.sump_bolts")
	p := of(t, b, 0)
	require.NotEmpty(t, p.Curing)
	c := p.Curing[len(p.Curing)-1]
	require.Equal(t, "sump.seal.sump", c.Step.Key())
	closed := b.Build().Fact(b.Manual.Find("sump.fit.sump").Step, "").Line.Time()
	cure := c.Until.Sub(closed)
	require.Equal(t, 24*time.Hour, cure, "24 h at 20 °C from closing, as the sealant says")
	require.Empty(t, of(t, b, 48*time.Hour).Curing)
}

func TestWhatIsNotAcceptedDisputedOrPassedOver(t *testing.T) {
	b := logtest.Start(t, sedge(t), nil)
	b.Upto("crankshaft.torque.aft_bolts")
	b.Write(logbook.Entry{Kind: logbook.Reading, Step: "crankshaft.measure.float_shimmed", Values: []string{"0.30 mm"}})
	b.Do(b.Manual.Find("crankshaft.measure.nose").Step, "")
	p := of(t, b, 0)
	require.Equal(t, progress.NotAccepted, p.Steps[p.Next].Status)
	text := p.Text()
	require.Contains(t, text, "NOT ACCEPTED\n  2.20 Measure the float again\n")
	require.Contains(t, text, "PASSED OVER: later work is on record, these are not\n  2.21 Turn the crankshaft ten times by hand\n")

	other := *b
	b.Write(logbook.Entry{Kind: logbook.Reading, Step: "crankshaft.measure.float_shimmed", Values: []string{"0.15 mm"}})
	other.Write(logbook.Entry{Kind: logbook.Reading, Step: "crankshaft.measure.float_shimmed", Values: []string{"0.16 mm"}, By: "KM"})
	m, err := logbook.Merge(b.Log, other.Log)
	require.NoError(t, err)
	b.Log = m
	p = of(t, b, 0)
	require.Equal(t, progress.Disputed, p.Steps[p.Next].Status)
	require.Contains(t, p.Text(), "TWO COPIES DISAGREE about crankshaft.measure.float_shimmed:")
}
