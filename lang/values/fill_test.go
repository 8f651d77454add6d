package values_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/calc"
	"fettle/lang/model"
	"fettle/lang/values"
)

func TestFill(t *testing.T) {
	m := load(t, `manual "m" {
  title    = "M"
  units    = "metric"
  revision = "A"
  order    = [procedure.p]
}

places "side" {
  names = ["left", "right"]
}

part "bed" {
  name = "Bed"
}

procedure "p" {
  title = "P"

  measure "gap" {
    title  = "Measure the gap"
    on     = [part.bed]
    likely = "0.10..0.50 mm"
  }

  work "set" {
    title   = "Set the ${place} end to ${measure.gap}"
    on      = [part.bed]
    at_each = places.side
  }
}
`)
	title := m.Find("procedure.p.work.set").Text("title")
	style := calc.Style{First: m.System()}
	plan := values.NewPlan(m)
	require.Equal(t, "Set the left end to …", plan.With(values.Given{}).Fill(title, "left", style))
	g := values.Given{Readings: map[string][]calc.Quantity{}}
	key, read, _ := values.ParseReading(m, "p.measure.gap", "0.20 mm")
	g.Readings[key] = read
	env := plan.With(g)
	require.Equal(t, "Set the right end to 0.20 mm (0.0079 in)", env.Fill(title, "right", style))
	require.Equal(t, "Set the … end to 0.20 mm (0.0079 in)", env.Fill(title, "", style))
	require.Equal(t, "Measure the gap", env.Fill(m.Find("procedure.p.measure.gap").Text("title"), "", style))
	require.Empty(t, env.Fill((*model.Text)(nil), "", style))
}
