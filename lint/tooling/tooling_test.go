package tooling_test

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/calc"
	"fettle/lang"
	"fettle/lang/model"
	"fettle/lint/tooling"
)

func tools(t *testing.T, text string) map[string]tooling.Tool {
	t.Helper()
	m, _, err := lang.Load(fstest.MapFS{"m/m.proc.hcl": {Data: []byte(text)}}, "m")
	require.NoError(t, err)
	all := map[string]tooling.Tool{}
	for _, n := range m.Of("tool") {
		all[n.ID] = tooling.Tool{Node: n}
	}
	return all
}

func TestWhatToolsAre(t *testing.T) {
	all := tools(t, `
tool "wrench" {
  name   = "Torque wrench"
  kind   = "Torque wrench"
  range  = "20..100 N·m"
  drive  = "3/8 in"
  length = "350 mm"
}
tool "odd" {
  name  = "Clicker"
  kind  = "clicker"
  range = "10..50 lb·ft"
}
tool "crowfoot" {
  name   = "Crowfoot"
  kind   = "crowfoot"
  size   = "13 mm"
  drive  = "3/8 in"
  length = "40 mm"
}
tool "square" {
  name   = "Crowfoot, square"
  kind   = "crowfoot"
  size   = "13 mm"
  drive  = "3/8 in"
  length = "40 mm"
  offset = "90°"
}
tool "socket" {
  name  = "Socket"
  kind  = "socket"
  size  = "13 mm"
  drive = "3/8 in"
}
tool "spanner" {
  name = "Spanner"
  kind = "spanner"
  size = "13 mm"
}
tool "counter" {
  name  = "Drop counter"
  kind  = "drop counter"
  reads = "count"
}
`)
	var list []tooling.Tool
	for _, id := range []string{"wrench", "odd", "crowfoot", "square", "socket", "spanner", "counter"} {
		list = append(list, all[id])
	}
	ids := func(tools []tooling.Tool) (ids []string) {
		for _, tool := range tools {
			ids = append(ids, tool.ID)
		}
		return ids
	}
	require.Equal(t, []string{"wrench", "odd"}, ids(tooling.Wrenches(list)))
	require.Equal(t, []string{"crowfoot"}, ids(tooling.Adapters(list)), "a square adapter changes nothing")
	require.Equal(t, []string{"crowfoot", "square", "socket"}, ids(tooling.Driven(list)))
	require.True(t, all["counter"].Shows(calc.Drops.Div(calc.Time)))
	require.False(t, all["counter"].Shows(calc.Length))
	require.True(t, all["wrench"].Shows(calc.Torque))
}

// The worked examples of TM 1-1500-204-23-9, para 8-5 and its like stand in
// package joint; here the lengths must come from the right tools.
func TestSetting(t *testing.T) {
	all := tools(t, `
tool "wrench" {
  name   = "Torque wrench"
  kind   = "torque wrench"
  range  = "20..100 N·m"
  length = "300 mm"
}
tool "adapter" {
  name   = "Adapter"
  kind   = "adapter"
  length = "100 mm"
}
`)
	torque := *literal(t, "40 N·m").Nominal
	got, ok := tooling.Setting(torque, all["wrench"], all["adapter"])
	require.True(t, ok)
	require.Equal(t, "30 N·m", got.Rounded().String(), "40 × 300 / 400")
	_, ok = tooling.Setting(torque, all["wrench"], tooling.Tool{Node: &model.Node{Def: all["wrench"].Def}})
	require.False(t, ok, "a length is missing")
}

func TestFits(t *testing.T) {
	for _, c := range []struct {
		size, width string
		fits        bool
	}{
		{"13 mm", "13 mm", true}, {"13", "13 mm", true}, {"13 mm", "12 mm", false}, {"1/2 in", "13 mm", false},
		{"hex 5 mm", "hex 5 mm", true}, {"hex 5 mm", "hex 6 mm", false}, {"T30", "T30", true}, {"T30", "T40", false},
	} {
		require.Equal(t, c.fits, tooling.Fits(c.size, c.width), "%s on %s", c.size, c.width)
	}
}

func literal(t *testing.T, s string) calc.Literal {
	t.Helper()
	lit, problems := calc.ParseLiteral(s, calc.Context{})
	require.Empty(t, problems)
	return lit
}
