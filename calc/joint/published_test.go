package joint

import (
	"encoding/json"
	"math/big"
	"os"
	"path/filepath"
	"testing"

	"fettle/calc"

	"github.com/stretchr/testify/require"
)

// published reads a table of testdata/published; each says where it comes from.
func published(t *testing.T, name string, into any) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "testdata", "published", name))
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(data, into))
}

// values that are quoted by id in tests; source and status go into the message.
type value struct{ ID, What, Inputs, Expected, Source, Status string }

func cite(t *testing.T, id string) string {
	t.Helper()
	var all []value
	published(t, "fastening_values.json", &all)
	for _, v := range all {
		if v.ID == id {
			return v.ID + " " + v.What + ": " + v.Expected + " [" + v.Source + "; " + v.Status + "]"
		}
	}
	t.Fatalf("no published value %s", id)
	return ""
}

func q(s, unit string) calc.Quantity {
	u := calc.One
	if unit != "" {
		u = calc.MustUnit(unit)
	}
	return counted(s, u)
}

func band(low, high, unit string) Band { return Band{q(low, unit), q(high, unit)} }

func thread(t *testing.T, s string) Thread {
	t.Helper()
	th, p := ParseThread(s)
	require.Nil(t, p, s)
	return th
}

// near asks that got, counted in unit, is want within so many per cent of want.
func near(t *testing.T, want, percent string, got calc.Quantity, unit string, why ...any) {
	t.Helper()
	require.True(t, got.Valid(), why...)
	u := calc.One
	if unit != "" {
		u = calc.MustUnit(unit)
	}
	g, w := got.In(u).Num(), rat(want)
	off := new(big.Rat).Abs(sub(g, w))
	allowed := new(big.Rat).Abs(mul(w, rat(percent), rat("1/100")))
	require.True(t, off.Cmp(allowed) <= 0, "got %s %s, want %s within %s %%: %v", g.FloatString(5), unit, want, percent, why)
}

func same(t *testing.T, want string, got calc.Quantity, unit string, why ...any) {
	t.Helper()
	near(t, want, "0", got, unit, why...)
}

func number(f json.Number) string { return f.String() }
