package prose_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/lint/prose"
)

func TestQuantities(t *testing.T) {
	for _, c := range []struct {
		sentence string
		want     []string // as written, then as read
	}{
		{"Tighten to 24 N·m, then turn 90°.", []string{"24 N·m", "24 N·m", "90°", "90°"}},
		{"The gap is 0.08 to 0.14 mm.", []string{"0.08 to 0.14 mm", "0.08..0.14 mm"}},
		{"The gap is between 0.08 and 0.14 mm wide.", []string{"0.08 and 0.14 mm", "0.08..0.14 mm"}},
		{"Wait at least 5 min. Then go on.", []string{"at least 5 min", "≥ 5 min"}},
		{"It takes 20 ± 2 min.", []string{"20 ± 2 min", "20 ± 2 min"}},
		{"Wait 5 min 30 s.", []string{"5 min", "5 min", "30 s", "30 s"}},
		{"Turn it 1/2 turn back, and 1 1/16 in up.", []string{"1/2 turn", "1/2 turn", "1 1/16 in", "1 1/16 in"}},
		{"Lay 4 in the box and start 2 in turn.", nil},
		{"A 3/8 in drive, 4 in long.", []string{"3/8 in", "3/8 in", "4 in", "4 in"}},
		{"Use the M8x1.25 bolts, part BK-040 of 2026-03-14, step 3.4.", nil},
		{"Fit 4 bolts and 2 washers.", nil},
		{"Heat it to 110 °C (230 °F).", []string{"110 °C", "110 °C", "230 °F", "230 °F"}},
		{"The level falls to 10mm.", []string{"10mm", "10 mm"}},
		{"Hold it at -5 °C.", []string{"-5 °C", "-5 °C"}},
		{"Keep ≥ 5 mm free, 10 % more at 24 N·m ± 10 %.", []string{"≥ 5 mm", "≥ 5 mm", "10 %", "10 %", "24 N·m ± 10 %", "24 N·m ± 10 %"}},
		{"", nil},
	} {
		var got []string
		for _, q := range prose.Quantities(c.sentence, "US") {
			got = append(got, c.sentence[q.Start:q.End], q.Literal.String())
		}
		require.Equal(t, c.want, got, c.sentence)
	}
}
