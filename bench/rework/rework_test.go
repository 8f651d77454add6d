package rework_test

import (
	"flag"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/require"

	"fettle/bench/logbook"
	"fettle/bench/logbook/logtest"
	"fettle/bench/revision"
	"fettle/bench/rework"
	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lang/model"
)

// sedge is a copy of the demo engine to edit.
func sedge(t require.TestingT) fstest.MapFS {
	all := fstest.MapFS{}
	root := os.DirFS("../../procedures")
	err := fs.WalkDir(root, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(name, ".proc.hcl") {
			return err
		}
		data, err := fs.ReadFile(root, name)
		all[name] = &fstest.MapFile{Data: data}
		return err
	})
	require.NoError(t, err)
	return all
}

// edit makes another revision: in every file old becomes new; each must be found.
func edit(t require.TestingT, base fstest.MapFS, changes ...string) fstest.MapFS {
	out := fstest.MapFS{}
	for name, f := range base {
		out[name] = f
	}
	for i := 0; i < len(changes); i += 2 {
		found := 0
		for name, f := range out {
			text := string(f.Data)
			if n := strings.Count(text, changes[i]); n > 0 {
				found += n
				out[name] = &fstest.MapFile{Data: []byte(strings.Replace(text, changes[i], changes[i+1], 1))}
			}
		}
		require.Equal(t, 1, found, changes[i])
	}
	return out
}

func load(t require.TestingT, fsys fs.FS) *model.Manual {
	m, found, err := lang.Load(fsys, "sedge_2")
	require.NoError(t, err)
	for _, f := range found {
		require.NotEqual(t, diag.Error, f.Severity, "%s: %s", f.Span, f.Message)
	}
	return m
}

var digests sync.Map // of manuals, which take a while

func digestOf(m *model.Manual) string {
	if d, ok := digests.Load(m); ok {
		return d.(string)
	}
	d := revision.Digest(m)
	digests.Store(m, d)
	return d
}

func issued(all ...*model.Manual) func(string) *model.Manual {
	return func(digest string) *model.Manual {
		for _, m := range all {
			if digestOf(m) == digest {
				return m
			}
		}
		return nil
	}
}

// plan compares, and checks what holds for every plan.
func plan(t require.TestingT, b *logtest.Book, m *model.Manual, all ...*model.Manual) *rework.Plan {
	p, err := rework.Make(m, b.Log, issued(append(all, b.Manual)...))
	require.NoError(t, err)
	require.Nil(t, p.Stuck)
	for _, r := range p.Refused {
		require.Fail(t, "the bench does not accept", "%s %s %v %s", r.What, r.Place, r.Objects, r.Node.Address)
	}
	return p
}

func again(p *rework.Plan) []string {
	var all []string
	for _, a := range p.Again {
		s := a.Step.Key()
		if a.Place != "" {
			s += " " + a.Place
		}
		all = append(all, s)
	}
	return all
}

func wayIn(p *rework.Plan) []string {
	var all []string
	for _, m := range p.WayIn {
		all = append(all, m.Object.String())
	}
	return all
}

func TestARevisionThatWasNotTouchedAsksNothing(t *testing.T) {
	m := load(t, sedge(t))
	for _, upto := range []string{"crankcase.clean.casting", "crankshaft.measure.float", "crankshaft.hold.float", "barrels.measure.deck_final", ""} {
		b := book(t, m, upto)
		p := plan(t, b, load(t, sedge(t)))
		require.True(t, p.Empty(), "%s", upto)
		require.NotEmpty(t, p.Items)
		require.Len(t, p.Of(rework.AsItWas), len(p.Items))
	}
}

// carryOut does what a plan asks, as a builder would record it, and checks that
// nothing is asked after it.
func carryOut(t require.TestingT, b *logtest.Book, p *rework.Plan, all ...*model.Manual) {
	all = append(all, b.Manual, p.Manual)
	if slices.ContainsFunc(p.Items, func(i rework.Item) bool { return i.Line != nil && i.Line.Step != i.Step.Key() }) {
		b.On = func(m *model.Manual, l *logbook.Log) *logbook.Build { // by new names
			c, err := rework.Carry(m, l, issued(all...))
			require.NoError(t, err)
			return c.Build()
		}
	}
	before := rework.Choice(p.Manual, p.Given)
	first, then := p.Entries()
	for _, e := range first {
		b.Write(e)
	}
	b.Adopt(p.Manual)
	require.Equal(t, before, rework.Choice(p.Manual, p.Given))
	still := plan(t, b, p.Manual, all...)
	if len(first) == 0 {
		require.Equal(t, again(p), again(still), "to adopt a revision does none of its work")
	}
	for _, e := range then {
		b.Write(e)
	}
	for _, a := range p.Again {
		b.Do(a.Step, a.Place)
	}
	after := plan(t, b, p.Manual, all...)
	require.Empty(t, again(after))
	require.True(t, after.Empty(), "%v", wayIn(after))
}

const aftTorque = `torque          = "21.5 N·m ± 5 %"`

func TestATorqueBehindACover(t *testing.T) {
	base := sedge(t)
	m := load(t, base)
	n := load(t, edit(t, base, aftTorque, `torque          = "23.5 N·m ± 5 %"`))
	half := book(t, m, "barrels.measure.deck_final")
	p := plan(t, half, n)
	require.Equal(t, []string{"Bolts of the aft main bearing housing"}, wayIn(p))
	require.Equal(t, []string{"crankshaft.fit.aft_bolts", "crankshaft.torque.aft_bolts", "crankshaft.measure.float_shimmed",
		"crankshaft.run.by_hand", "crankshaft.hold.float"}, again(p))
	require.Empty(t, p.Renew)
	why := p.Of(rework.DoAgain)[0].Why
	require.Equal(t, "tightened to 21.5 N·m (15.86 lb·ft); now only 22.325 to 24.675 N·m (16.4661 to 18.1993 lb·ft) is accepted", why)
	carryOut(t, half, p)

	whole := book(t, m, "")
	p = plan(t, whole, n)
	require.Equal(t, []string{"Bolts of the coupling", "Flexible half coupling", "Flywheel nut", "Flywheel with starter ring",
		"Bolts of the aft main bearing housing"}, wayIn(p), "the flywheel is over it by now")
	require.Len(t, p.Renew, 1)
	require.Equal(t, "Split pin 4x36", p.Renew[0].Object.String())
	require.Equal(t, 1, p.Renew[0].Count)
	require.Contains(t, again(p), "flywheel.hold.flywheel_nut")
	carryOut(t, whole, p)

	// A new torque that accepts the old one asks nothing.
	p = plan(t, logtest.Start(t, m, nil), load(t, edit(t, base, aftTorque, `torque          = "22 N·m ± 5 %"`)))
	require.True(t, p.Empty())
}

func TestATightenedLimitThatOneEngineMeetsAndTheOtherDoesNot(t *testing.T) {
	base := sedge(t)
	m := load(t, base)
	n := load(t, edit(t, base, `range    = "0.10..0.22 mm"`, `range    = "0.10..0.18 mm"`, `target   = "0.16 mm"`, `target   = "0.14 mm"`))
	good := logtest.Start(t, m, nil)
	good.Read["crankshaft.measure.float"] = "0.94 mm" // 0.80 mm of shims leave 0.14 mm
	good.Read["crankshaft.measure.float_shimmed"] = "0.14 mm"
	good.Upto("barrels.measure.deck_final")
	p := plan(t, good, n)
	require.True(t, p.Empty())
	for _, i := range p.Items {
		if i.Step.Key() == "crankshaft.measure.float_shimmed" {
			require.Equal(t, rework.AsItWas, i.Verdict)
			require.Equal(t, "0.14 mm (0.0055 in) is inside 0.10 to 0.18 mm (0.0040 to 0.0070 in)", i.Why)
		}
	}

	bad := logtest.Start(t, m, nil)
	bad.Read["crankshaft.measure.float"] = "1.00 mm"
	bad.Read["crankshaft.measure.float_shimmed"] = "0.20 mm"
	bad.Upto("barrels.measure.deck_final")
	p = plan(t, bad, n)
	var verdicts []string
	for _, i := range p.Items {
		if i.Verdict != rework.AsItWas && !i.Follows {
			verdicts = append(verdicts, i.Step.Key()+": "+i.Verdict.String()+": "+i.Why)
		}
	}
	require.Equal(t, []string{
		"crankshaft.choose.pack: to be done again: the pieces that are in, 2 × 0.40 mm, do not fit any more; now 1 × 0.40 mm, 1 × 0.30 mm, 1 × 0.15 mm does",
		"crankshaft.measure.float_shimmed: to be read again: 0.20 mm (0.0079 in) is outside 0.10 to 0.18 mm (0.0040 to 0.0070 in)",
	}, verdicts)
	bad.Read["crankshaft.measure.float_shimmed"] = "0.15 mm"
	carryOut(t, bad, p)
}

var books sync.Map // logs of the engine as it is, by how far it is built

// book is the engine built up to a step, all readings in the middle of what is
// accepted.
func book(t require.TestingT, m *model.Manual, upto string) *logtest.Book {
	b := logtest.Start(t, m, nil)
	if data, ok := books.Load(upto); ok {
		b.Log = logbook.Parse(data.([]byte))
		b.Now = b.Now.AddDate(0, 0, 1)
		return b
	}
	b.Upto(upto)
	books.Store(upto, b.Log.Bytes())
	return b
}

const lip = `  inspect "lip" {
    title     = "Look at the lip of the aft seal"
    on        = [part.aft_seal]
    criterion = "The lip lies on the taper all round."
    otherwise = "Stop."
    takes     = "2 min"
  }

`

const byHand = `  run "by_hand" {
    title     = "Turn the crankshaft ten times by hand"`

func TestANewInspectionOfWhatIsCovered(t *testing.T) {
	base := sedge(t)
	m := load(t, base)
	n := load(t, edit(t, base, byHand, lip+byHand))
	b := book(t, m, "")
	p := plan(t, b, n)
	require.Equal(t, []string{"Bolts of the coupling", "Flexible half coupling", "Flywheel nut", "Flywheel with starter ring"}, wayIn(p))
	require.Equal(t, "crankshaft.inspect.lip", again(p)[0])
	require.Equal(t, "new, to be done", p.Of(rework.DoNew)[0].Verdict.String())
	carryOut(t, b, p)

	early := book(t, m, "crankshaft.measure.float")
	require.True(t, plan(t, early, n).Empty(), "it is not there yet")
}

func TestWhatIsOnlyWordsOrMovedOrRenamedAsksNothing(t *testing.T) {
	base := sedge(t)
	m := load(t, base)
	n := load(t, edit(t, base,
		`title     = "Turn the crankshaft ten times by hand"`, `title     = "Turn the crankshaft by hand, ten times"`,
		`measure "nose" {`, "measure \"gear_seat\" {\n    was       = [\"nose\"]",
		`is        = measure.nose - measure.gear_bore`, `is        = measure.gear_seat - measure.gear_bore`,
		`readings = { measure.nose = "30.041 mm", measure.gear_bore = "30.010 mm" }`, `readings = { measure.gear_seat = "30.041 mm", measure.gear_bore = "30.010 mm" }`,
		`  coat "aft_seal" {
    title    = "Grease the lip of the seal"
    on       = [part.aft_seal]
    supplies = [supply.grease]
    takes    = "1 min"
    why      = "A dry lip burns in the first ten seconds of the first run."
  }

  fit "aft_oring" {
    title = "Roll the O-ring into its groove"
    part  = part.aft_oring
    takes = "2 min"
  }

`, `  fit "aft_oring" {
    title = "Roll the O-ring into its groove"
    part  = part.aft_oring
    takes = "2 min"
  }

  coat "aft_seal" {
    title    = "Grease the lip of the seal"
    on       = [part.aft_seal]
    supplies = [supply.grease]
    takes    = "1 min"
    why      = "A dry lip burns in the first ten seconds of the first run."
  }

`))
	b := book(t, m, "barrels.measure.deck_final")
	p := plan(t, b, n)
	require.True(t, p.Empty())
	require.Len(t, p.Of(rework.AsItWas), len(p.Items))
	lines := len(b.Log.Lines)
	// The work goes on under the new revision, with what was read under the old name.
	carryOut(t, b, p)
	b.Upto("crankshaft.measure.gear_seat") // all on record, by its new name
	require.Equal(t, 1+lines, len(b.Log.Lines))
	require.True(t, plan(t, b, n, m).Empty())
}

func TestAPartOfAnotherNumber(t *testing.T) {
	base := sedge(t)
	m := load(t, base)
	number := m.Find("part.aft_seal").Plain("number")
	n := load(t, edit(t, base, `"`+number+`"`, `"`+number+`/2"`))
	b := book(t, m, "barrels.measure.deck_final")
	p := plan(t, b, n)
	require.Equal(t, "crankshaft.fit.aft_seal", p.Of(rework.DoAgain)[0].Step.Key())
	require.Equal(t, number+"/2", p.Renew[0].Number)
	require.Equal(t, "replaces number "+number, p.Renew[0].Why)
	require.Equal(t, []string{"Aft lip seal"}, wayIn(p))
	carryOut(t, b, p)
}

func TestAStepThatIsGoneLeavesNothingBehind(t *testing.T) {
	base := sedge(t)
	m := load(t, base)
	oring := `  fit "aft_oring" {
    title = "Roll the O-ring into its groove"
    part  = part.aft_oring
    takes = "2 min"
  }

`
	n := load(t, edit(t, base, oring, ""))
	b := book(t, m, "barrels.measure.deck_final")
	p := plan(t, b, n)
	require.Equal(t, "the new revision has no such step; what it fitted comes off", p.Of(rework.Gone)[0].Why)
	require.Equal(t, []string{"Bolts of the aft main bearing housing", "Aft main bearing housing"}, wayIn(p))
	require.Equal(t, "O-ring of the aft housing", p.Remove[0].String())
	require.NotContains(t, again(p), "crankshaft.fit.aft_oring")
	carryOut(t, b, p)
}

func TestAHoldThatAsksForSomebodyElse(t *testing.T) {
	base := sedge(t)
	m := load(t, base)
	n := load(t, edit(t, base, `    before  = procedure.camshaft.fit.tappets
    release = "second person"`, `    before  = procedure.camshaft.fit.tappets
    release = "supplier"`))
	b := book(t, m, "barrels.measure.deck_final")
	p := plan(t, b, n)
	require.Empty(t, wayIn(p))
	require.Equal(t, []string{"crankshaft.hold.float"}, again(p))
	carryOut(t, b, p)
}

func TestARevisionThatNobodyCanShow(t *testing.T) {
	m := load(t, sedge(t))
	b := book(t, m, "crankcase.clean.casting")
	n := load(t, edit(t, sedge(t), aftTorque, `torque          = "23.5 N·m ± 5 %"`))
	_, err := rework.Make(n, b.Log, issued(n))
	require.ErrorContains(t, err, "the logbook follows revision D (")
}

var update = flag.Bool("update", false, "rewrite goldens")

func TestGoldens(t *testing.T) {
	doc, err := jsonschema.UnmarshalJSON(strings.NewReader(rework.Schema))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("urn:fettle:rework", doc))
	schema, err := c.Compile("urn:fettle:rework")
	require.NoError(t, err)

	base := sedge(t)
	m := load(t, base)
	n := load(t, edit(t, base, `torque       = "100 N·m ± 5 %"`, `torque       = "110 N·m ± 4 %"`, byHand, lip+byHand, `range    = "0.10..0.22 mm"`, `range    = "0.12..0.20 mm"`))
	for name, p := range map[string]*rework.Plan{
		"half":  plan(t, book(t, m, "barrels.measure.deck_final"), n),
		"whole": plan(t, book(t, m, ""), n),
		"same":  plan(t, book(t, m, "barrels.measure.deck_final"), m),
	} {
		v, err := jsonschema.UnmarshalJSON(strings.NewReader(string(p.JSON())))
		require.NoError(t, err)
		require.NoError(t, schema.Validate(v))
		for ext, got := range map[string]string{".txt": p.Text(), ".md": p.Markdown()} {
			file := filepath.Join("testdata", name+ext)
			if *update {
				require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
			}
			want, err := os.ReadFile(file)
			require.NoError(t, err)
			require.Equal(t, string(want), got, file)
		}
	}
}
