package calc

import (
	"errors"
	"math/big"
	"strings"
	"testing"

	"github.com/dop251/goja"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// fitPage runs the page's solver in a JavaScript engine.
type fitPage struct{ call goja.Callable }

func newFitPage(t testing.TB) fitPage {
	vm := goja.New()
	v, err := vm.RunString(FitScript + `
		const number = (text) => { const [n, d] = text.split("/"); return { n: BigInt(n), d: BigInt(d) }; };
		const given = (v) => (v === "" ? null : number(v));
		const text = (r) => r.n + "/" + r.d;
		const shown = (p) => (p ? p.counts.join(",") + " " + text(p.total) + " " + text(p.result) : "none");
		(problem, x) => {
			const p = JSON.parse(problem);
			for (const s of p.sizes) for (const k of ["low", "nominal", "high"]) s[k] = number(s[k]);
			for (const k of ["low", "high", "target"]) p[k] = given(p[k]);
			try {
				const f = fettleFit(p), r = number(x);
				return [shown(f.solve(r)), ...f.neighbours(r).map(shown)].join("; ");
			} catch (e) {
				if (e.problem) return e.problem;
				throw e;
			}
		}`)
	require.NoError(t, err)
	call, ok := goja.AssertFunction(v)
	require.True(t, ok)
	return fitPage{call}
}

func (p fitPage) run(t require.TestingT, f *Fit, given FitProblem, x *big.Rat) string {
	var b strings.Builder
	text := func(r *big.Rat) string {
		if r == nil {
			return ""
		}
		return r.Num().String() + "/" + r.Denom().String()
	}
	b.WriteString(`{"sizes":[`)
	for i, s := range f.sizes {
		if i > 0 {
			b.WriteString(",")
		}
		b.WriteString(`{"low":"` + text(s.Low) + `","nominal":"` + text(s.Nominal) + `","high":"` + text(s.High) + `","stock":` + itoa(s.Stock) + `}`)
	}
	b.WriteString(`],"min":` + itoa(given.MinPieces) + `,"max":` + itoa(given.MaxPieces) +
		`,"low":"` + text(given.Low) + `","high":"` + text(given.High) + `","target":"` + text(given.Target) + `"`)
	if given.BuildUp {
		b.WriteString(`,"buildUp":true`)
	}
	if given.Nearest {
		b.WriteString(`,"nearest":true`)
	}
	b.WriteString("}")
	vm := goja.New()
	v, err := p.call(goja.Undefined(), vm.ToValue(b.String()), vm.ToValue(text(x)))
	require.NoError(t, err)
	return v.String()
}

// asThePage writes what Go picks as the page's test script does.
func asThePage(t require.TestingT, f *Fit, x *big.Rat) string {
	shown := func(p *Pack) string {
		if p == nil {
			return "none"
		}
		counts := make([]string, len(p.Counts))
		for i, c := range p.Counts {
			counts[i] = itoa(c)
		}
		return strings.Join(counts, ",") + " " + p.Total.Num().String() + "/" + p.Total.Denom().String() +
			" " + p.Result.Num().String() + "/" + p.Result.Denom().String()
	}
	var pick *Pack
	if p, err := f.Solve(x); err == nil {
		pick = &p
	} else {
		require.True(t, errors.Is(err, ErrNoPack))
	}
	thinner, thicker, err := f.Neighbours(x)
	require.NoError(t, err)
	return shown(pick) + "; " + shown(thinner) + "; " + shown(thicker)
}

// The page picks what Go picks: bands, twins, negative sizes, both forms, both
// preferences, open limits, and numbers beyond machine words.
func TestFitPageEqualsGo(t *testing.T) {
	page := newFitPage(t)
	rapid.Check(t, func(r *rapid.T) {
		p := drawProblem(r)
		f, err := NewFit(p)
		if err != nil {
			return
		}
		low, high := drawRange(r, p)
		part := rapid.IntRange(0, 24).Draw(r, "part")
		x := new(big.Rat).Sub(high, low)
		x.Mul(x, big.NewRat(int64(part), 24))
		x.Add(x, low)
		require.Equal(r, asThePage(r, f, x), page.run(r, f, p, x))
	})
}

func TestFitPageOfLargeNumbersEqualsGo(t *testing.T) {
	page := newFitPage(t)
	huge := new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(30), nil))
	size := func(n, d int64) FitSize {
		return FitSize{Nominal: new(big.Rat).Add(huge, big.NewRat(n, d)), Stock: 3}
	}
	p := FitProblem{Sizes: []FitSize{size(1, 7), size(2, 9), size(5, 11)}, MaxPieces: 4,
		Low: big.NewRat(-1, 3), High: big.NewRat(1, 5)}
	f, err := NewFit(p)
	require.NoError(t, err)
	for n := int64(-2); n < 12; n++ {
		x := new(big.Rat).Mul(huge, big.NewRat(3, 1))
		x.Add(x, big.NewRat(n, 7))
		require.Equal(t, asThePage(t, f, x), page.run(t, f, p, x))
	}
}
