package html

import (
	"flag"
	"fmt"
	"math/big"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/dop251/goja"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/calc"
	"fettle/lang"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/values"
	"fettle/render"
)

// probe runs the page's engine in a JavaScript engine: for readings as they are
// typed, what every value of the manual comes to.
const probe = `
(data) => {
	const live = JSON.parse(data), engine = fettleEngine(live, live.words);
	const said = (v) => (v ? engine.text(v, live.first).filter(Boolean).join(" | ") : "");
	return (given) => {
		const { options, readings, pieces } = JSON.parse(given), read = {}, measured = {};
		for (const [key, list] of Object.entries(readings)) read[key] = list.map((text) => engine.read(key, text).quantity);
		for (const [part, list] of Object.entries(pieces)) measured[part] = list.map(({ size, is }) => ({ size, is: engine.quantity(is) }));
		engine.give({ options: { ...live.options, ...options }, readings: read, pieces: measured });
		return live.values.map(({ key }) => {
			const r = engine.result(key), j = engine.judge(key);
			const out = [key, said(r.value), j.verdict || "", said(j.limits && (j.limits.low || j.limits.high) && !r.pack && !r.problem && j.limits)];
			if (r.pack) out.push(engine.listed(r.pack), said(r.pack.total), said(r.pack.result), r.pack.tentative);
			else out.push(r.problem || "", r.remedy || "");
			return out.join("; ");
		}).join("\n");
	};
}`

type engineProbe struct {
	vm  *goja.Runtime
	run goja.Callable
}

var probeScript = goja.MustCompile("probe", small(engine)+probe, true)

func newProbe(t require.TestingT, m *model.Manual) engineProbe {
	vm := goja.New()
	v, err := vm.RunProgram(probeScript)
	require.NoError(t, err)
	open, _ := goja.AssertFunction(v)
	run, err := open(goja.Undefined(), vm.ToValue(data(render.Lower(m, render.Options{}).Live)))
	require.NoError(t, err)
	f, ok := goja.AssertFunction(run)
	require.True(t, ok)
	return engineProbe{vm, f}
}

func (p engineProbe) values(t require.TestingT, g values.Given, typed map[string][]string) string {
	var b strings.Builder
	list := func(n int, item func(i int)) {
		b.WriteString("[")
		for i := range n {
			if i > 0 {
				b.WriteString(",")
			}
			item(i)
		}
		b.WriteString("]")
	}
	object := func(keys []string, item func(k string)) {
		b.WriteString("{")
		for i, k := range keys {
			if i > 0 {
				b.WriteString(",")
			}
			fmt.Fprintf(&b, "%q:", k)
			item(k)
		}
		b.WriteString("}")
	}
	b.WriteString(`{"options":`)
	object(keysOf(g.Options), func(k string) { fmt.Fprintf(&b, "%q", g.Options[k]) })
	b.WriteString(`,"readings":`)
	object(keysOf(typed), func(k string) { list(len(typed[k]), func(i int) { fmt.Fprintf(&b, "%q", typed[k][i]) }) })
	b.WriteString(`,"pieces":`)
	object(keysOf(g.Pieces), func(k string) {
		list(len(g.Pieces[k]), func(i int) {
			fmt.Fprintf(&b, `{"size":%q,"is":%q}`, g.Pieces[k][i].Size, g.Pieces[k][i].Is)
		})
	})
	b.WriteString("}")
	v, err := p.run(goja.Undefined(), p.vm.ToValue(b.String()))
	require.NoError(t, err, b.String())
	return v.String()
}

func keysOf[V any](m map[string]V) (keys []string) {
	for k := range m {
		keys = append(keys, k)
	}
	return keys
}

// goValues is what the Go program makes of the same, written as probe does.
func goValues(m *model.Manual, g values.Given) string {
	env := values.New(m, g)
	style := calc.Style{First: m.System(), Gallon: m.Plain("gallon")}
	said := func(s calc.Shown) string {
		if s.Other == "" {
			return s.First
		}
		return s.First + " | " + s.Other
	}
	var lines []string
	m.EachStep(func(s *model.Step) {
		if s.Kind.Yields != kind.Reading && s.Kind.Yields != kind.Number && s.Kind.Yields != kind.Pack {
			return
		}
		for _, place := range values.Keys(s) {
			value, limits := "", ""
			if q, ok := env.Of(s, place).(calc.Quantity); ok {
				value = said(style.Quantity(q))
			}
			v, l := env.Judge(s, place)
			if v == values.Unjudged { // the page shows limits before there is a value
				if f := s.Formula("accept", place); f != nil {
					if x, p := calc.Eval(f.Expr, env.At(place)); p == nil {
						switch x := x.(type) {
						case calc.Limits:
							l = x
						case calc.Quantity:
							l = calc.Limits{Low: &x, High: &x}
						}
					}
				}
			}
			problem := env.Problem(s, place)
			pack := env.Pack(s, place)
			if (l.Low != nil || l.High != nil) && problem == nil && pack == nil {
				limits = said(style.Limits(l.Low, l.High))
			}
			out := []string{values.Key(s, place), value, [...]string{"", "inside", "outside"}[v], limits}
			switch {
			case pack != nil:
				out = append(out, pack.String(), said(style.Quantity(pack.Total)), said(style.Quantity(pack.Result)), fmt.Sprint(pack.Tentative))
			case problem != nil && s.Kind.Yields == kind.Pack && strings.HasPrefix(problem.Message, "No pack"):
				out = append(out, problem.Message+" "+problem.Reason, problem.Remedy)
			case problem != nil && s.Kind.Yields == kind.Pack && strings.HasPrefix(problem.Message, "The kit"):
				out = append(out, problem.Message+" "+problem.Remedy, "")
			case problem != nil:
				out = append(out, "problem", "")
			default:
				out = append(out, "", "")
			}
			lines = append(lines, strings.Join(out, "; "))
		}
	})
	return strings.Join(lines, "\n")
}

// drawReadings gives readings to a manual, near what is likely or accepted.
func drawReadings(t *rapid.T, m *model.Manual) (values.Given, map[string][]string) {
	g := values.Given{Options: map[string]string{}, Readings: map[string][]calc.Quantity{}, Pieces: map[string][]values.Piece{}}
	typed := map[string][]string{}
	for _, o := range m.Of("option") {
		g.Options[o.ID] = rapid.SampledFrom(o.Names("choices")).Draw(t, o.ID)
	}
	m.EachStep(func(s *model.Step) {
		if s.Kind.Yields != kind.Reading {
			return
		}
		for _, place := range values.Keys(s) {
			key := values.Key(s, place)
			if rapid.IntRange(0, 5).Draw(t, "leave out "+key) == 0 {
				continue
			}
			l, ok := s.Limits("likely", place)
			if !ok {
				l, ok = s.Limits("accept", place)
			}
			if !ok {
				continue
			}
			low, high := ends(l)
			n := 1
			if rapid.Bool().Draw(t, "all of them") {
				n = values.Readings(s)
			}
			part := big.NewRat(rapid.Int64Range(-2, 26).Draw(t, key), 24)
			num := new(big.Rat).Sub(high.In(low.Unit).Num(), low.Num())
			num.Add(num.Mul(num, part), low.Num())
			for range n {
				q := calc.NewQuantity(num, low.Unit, rapid.IntRange(0, 4).Draw(t, "decimals"))
				text := calc.FormatRat(q.Num(), q.Decimals) + " " + low.Unit.Name
				k, read, _ := values.ParseReading(m, key, text)
				if k == "" {
					return
				}
				typed[key] = append(typed[key], text)
				g.Readings[key] = append(g.Readings[key], read...)
			}
		}
	})
	return g, typed
}

func ends(l calc.Limits) (low, high calc.Quantity) {
	switch {
	case l.Low == nil:
		return calc.NewQuantity(new(big.Rat), l.High.Unit, 0), *l.High
	case l.High == nil:
		return *l.Low, calc.NewQuantity(new(big.Rat).Add(l.Low.Num(), big.NewRat(5, 1)), l.Low.Unit, l.Low.Decimals)
	}
	return *l.Low, *l.High
}

// alike compares line by line; of a problem that is not a pack's only that there
// is one, for its words are the page's own.
func alike(t require.TestingT, want, got string) {
	a, b := strings.Split(want, "\n"), strings.Split(got, "\n")
	require.Len(t, b, len(a))
	for i := range a {
		if head, ok := strings.CutSuffix(a[i], "problem; "); ok {
			require.True(t, strings.HasPrefix(b[i], head) && len(b[i]) > len(head)+4, "%s\n%s", a[i], b[i])
			continue
		}
		require.Equal(t, a[i], b[i])
	}
}

// The page works out what Go works out: values, verdicts, limits, packs, and
// which pieces an earlier choice has taken, for both manuals.
func TestEngineEqualsGo(t *testing.T) {
	for _, dir := range []string{"sedge_2", "beck"} {
		m, _, err := lang.Load(os.DirFS("../../procedures"), dir)
		require.NoError(t, err)
		p := newProbe(t, m)
		rapid.Check(t, few(func(t *rapid.T) {
			g, typed := drawReadings(t, m)
			alike(t, goValues(m, g), p.values(t, g, typed))
		}))
	}
}

// The same for kits made up: bands, twins, heaps of several places, sizes and
// gaps below zero, both forms, both preferences, pieces that were measured.
func TestEngineEqualsGoOnKits(t *testing.T) {
	rapid.Check(t, few(func(t *rapid.T) {
		m, _, err := lang.Load(fstest.MapFS{"m/m.proc.hcl": {Data: []byte(kitManual(t))}}, "m")
		require.NoError(t, err)
		p := newProbe(t, m)
		for range 4 {
			g, typed := drawReadings(t, m)
			for _, size := range m.Find("part.shim").Nested(entry.Size) {
				if l, ok := size.Limits("is", ""); ok && rapid.IntRange(0, 3).Draw(t, "measured") == 0 {
					low, _ := ends(l)
					is := calc.NewQuantity(new(big.Rat).Add(low.Num(), big.NewRat(rapid.Int64Range(0, 3).Draw(t, "more"), 100)), low.Unit, 3)
					g.Pieces["shim"] = append(g.Pieces["shim"], values.Piece{Size: size.ID, Is: is})
				}
			}
			alike(t, goValues(m, g), p.values(t, g, typed))
		}
	}))
}

// few leaves out all but the first of the cases: the JavaScript engine of the
// tests is slow. More: -rapid.checks=1000 -many.
func few(check func(*rapid.T)) func(*rapid.T) {
	n := 0
	return func(t *rapid.T) {
		if n++; n <= 30 || *many {
			check(t)
		}
	}
}

var many = flag.Bool("many", false, "run every case that rapid draws")

// kitManual is a manual with two choices at two places and one at none, all from
// one part of random sizes.
func kitManual(t *rapid.T) string {
	var b strings.Builder
	p := func(format string, args ...any) { fmt.Fprintf(&b, format, args...) }
	p("manual \"kit\" {\n  title = \"Kit\"\n  units = %q\n  revision = \"A\"\n  order = [procedure.a]\n}\n",
		rapid.SampledFrom([]string{"metric", "inch"}).Draw(t, "units"))
	p("places \"side\" {\n  names = [\"left\", \"far right\"]\n}\n")
	p("part \"bed\" {\n  name = \"Bed\"\n  number = \"N-1\"\n}\npart \"shim\" {\n  name = \"Shim\"\n  sits_on = part.bed\n")
	unit := rapid.SampledFrom([]string{"mm", "in"}).Draw(t, "unit")
	decimals := rapid.IntRange(1, 3).Draw(t, "decimals of sizes")
	number := func(name string, low, high int64) string {
		return calc.FormatRat(big.NewRat(rapid.Int64Range(low, high).Draw(t, name), 40), decimals)
	}
	negative := rapid.IntRange(0, 4).Draw(t, "below zero") == 0
	for i := range rapid.IntRange(1, 4).Draw(t, "sizes") {
		low := int64(2)
		if negative {
			low = -20
		}
		is := number("size", low, 40) + " " + unit
		if rapid.IntRange(0, 2).Draw(t, "band") == 0 {
			is = number("low", 2, 20) + ".." + number("high", 21, 40) + " " + unit
		}
		p("  size \"s%d\" {\n    in_kit = %d\n    is = %q\n  }\n", i, rapid.IntRange(0, 4).Draw(t, "held"), is)
	}
	p("}\nprocedure \"a\" {\n  title = \"Shim it\"\n")
	step := func(id, each string) {
		p("  measure \"gap_%s\" {\n    title = \"Measure\"\n    on = [part.bed]\n    likely = \"-1.00..4.00 mm\"\n", id)
		if rapid.Bool().Draw(t, "several") {
			p("    repeat = 3\n    agree_within = \"0.5 mm\"\n    take = %q\n", rapid.SampledFrom([]string{"mean", "largest", "smallest"}).Draw(t, "take"))
		}
		p("%s  }\n  choose \"pack_%s\" {\n    title = \"Choose\"\n    from = part.shim\n    pieces = \"%d..%d\"\n%s", each, id,
			rapid.IntRange(0, 1).Draw(t, "least"), rapid.IntRange(1, 5).Draw(t, "most"), each)
		form := [...]string{"gap", "leaves"}
		if rapid.Bool().Draw(t, "build up") {
			form = [...]string{"base", "makes"}
		}
		low := rapid.Int64Range(-4, 30).Draw(t, "low")
		p("    %s = measure.gap_%s - \"0.05 mm\"\n    %s = \"%s..%s mm\"\n", form[0], id, form[1],
			calc.FormatRat(big.NewRat(low, 40), 3), calc.FormatRat(big.NewRat(low+rapid.Int64Range(1, 12).Draw(t, "wide"), 40), 3))
		if rapid.Bool().Draw(t, "nearest") {
			p("    prefer = \"nearest\"\n")
		}
		if rapid.Bool().Draw(t, "words") {
			p("    otherwise = \"Stop, and ask.\"\n")
		}
		p("  }\n  calculate \"rest_%s\" {\n    title = \"Work out\"\n    is = choose.pack_%s.result * 2\n    accept = \"0.1..3 mm\"\n%s  }\n", id, id, each)
	}
	each := "    at_each = places.side\n"
	step("one", each)
	step("two", "")
	step("three", each)
	p("}\n")
	return b.String()
}
