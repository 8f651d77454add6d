package fn

import (
	"flag"
	"math/big"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/calc"
)

var update = flag.Bool("update", false, "rewrite FUNCTIONS.md")

func TestAllIsSorted(t *testing.T) {
	require.True(t, slices.IsSortedFunc(All(), func(a, b *calc.Function) int { return strings.Compare(a.Name, b.Name) }))
	for _, f := range All() {
		g, ok := Lookup(f.Name)
		require.True(t, ok)
		require.Same(t, f, g)
	}
	_, ok := Lookup("median")
	require.False(t, ok)
}

// Every function says what it is, what it takes and where it comes from.
func TestDefinitionsAreWhole(t *testing.T) {
	for _, f := range All() {
		t.Run(f.Name, func(t *testing.T) {
			require.NotEmpty(t, f.Doc)
			require.NotEmpty(t, f.Source)
			require.NotEmpty(t, f.Examples)
			require.True(t, f.Body != nil || f.Exact != nil && f.Result != nil && f.Range != nil)
			for i, a := range f.Args {
				require.NotEmpty(t, a.Name)
				require.NotEmpty(t, a.Doc)
				require.True(t, !a.Variadic || i == len(f.Args)-1)
			}
			for _, e := range f.Examples {
				require.NotEmpty(t, e.Source)
				require.True(t, strings.HasPrefix(e.Call, f.Name+"("), e.Call)
			}
		})
	}
}

// The examples are run from their own text: the value at the decimals published.
func TestExamples(t *testing.T) {
	for _, f := range All() {
		for _, e := range f.Examples {
			t.Run(e.Call, func(t *testing.T) {
				call := parseCall(t, e.Call)
				got, p := calc.Eval(call, calc.Readings{})
				require.Nil(t, p)
				if limits, ok := got.(calc.Limits); ok {
					want := literal(t, e.Gives, call.Type().Dim)
					require.Equal(t, 0, limits.Low.Cmp(*want.Low))
					require.Equal(t, 0, limits.High.Cmp(*want.High))
					return
				}
				want := literal(t, e.Gives, call.Type().Dim).Any()
				q := got.(calc.Quantity).In(want.Unit)
				require.Equal(t, want.String(), calc.NewQuantity(q.Num(), want.Unit, want.Decimals).String())

				// The other readings agree.
				in := calc.RangeOf(call, nothing{}).Number
				require.True(t, in.Contains(got.(calc.Quantity).Base()))
				require.NotContains(t, calc.FormulaWith(call, calc.Readings{}), calc.Blank)
			})
		}
	}
}

type nothing struct{}

func (nothing) Possible(*calc.Var) calc.Possible { return calc.Possible{} }

var (
	callForm = regexp.MustCompile(`^(\w+)\((.*)\)$`)
	argForm  = regexp.MustCompile(`"[^"]*"|[^,\s]+`)
)

func parseCall(t testing.TB, text string) calc.Expr {
	parts := callForm.FindStringSubmatch(text)
	require.NotNil(t, parts, text)
	f, ok := Lookup(parts[1])
	require.True(t, ok, text)
	var args []calc.Expr
	for i, s := range argForm.FindAllString(parts[2], -1) {
		dim := f.Arg(i).Of.Dim
		if s[0] == '"' {
			args = append(args, calc.NewConst(literal(t, strings.Trim(s, `"`), dim).Any(), "", calc.Span{}))
			continue
		}
		r, ok := new(big.Rat).SetString(s)
		require.True(t, ok, s)
		args = append(args, calc.NewConst(calc.PlainNumber(r), "", calc.Span{}))
	}
	call, p := calc.NewCall(f, args, calc.Span{})
	require.Nil(t, p)
	return call
}

func literal(t testing.TB, s string, dim calc.Dim) calc.Literal {
	l, problems := calc.ParseLiteral(s, calc.Context{Want: dim, HasWant: dim != calc.Plain, Difference: dim == calc.TemperatureDiff, AllowPlain: true})
	require.Empty(t, problems, s)
	return l
}

func TestFunctionsPage(t *testing.T) {
	const path = "../FUNCTIONS.md"
	page := functionsPage()
	if *update {
		require.NoError(t, os.WriteFile(path, []byte(page), 0o644))
	}
	got, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, page, string(got), "FUNCTIONS.md is stale: go test ./calc/fn -update")
}

func functionsPage() string {
	var b strings.Builder
	b.WriteString("# Functions\n\nGenerated from package fn: `go test ./calc/fn -update`.\n\n")
	b.WriteString("Engineering functions are screens. They serve a competent person and replace neither the drawing nor local codes nor licensed practice.\n")
	for _, f := range All() {
		b.WriteString("\n" + Describe(f))
	}
	return b.String()
}
