package joint

import (
	"encoding/json"
	"strings"
	"testing"

	"fettle/calc"

	"github.com/stretchr/testify/require"
)

// ISO 4014/4017/4032, DIN 931/933/934, ISO 4762 and ASME B18.2.1, read as data
// in public fastener libraries. ISO and DIN differ at M10, M12, M14 and M22.
func TestWidthsAcrossFlats(t *testing.T) {
	var table struct {
		ISO  map[string]json.Number `json:"iso4014_4017_4032_s_mm"`
		DIN  map[string]json.Number `json:"din931_933_934_s_mm"`
		Key  map[string]json.Number `json:"iso4762_key_mm"`
		Inch map[string]string      `json:"asme_b18_2_1_hex_cap_screw_s_in"`
	}
	published(t, "widths_across_flats.json", &table)
	for what, widths := range map[string]map[string]json.Number{"ISO hexagon": table.ISO, "DIN hexagon": table.DIN, "socket-head key": table.Key} {
		require.NotEmpty(t, widths)
		for size, w := range widths {
			same(t, number(w), headOf(t, size, what), "mm", what, size)
			fit, _ := SocketFits(number(w)+" mm", thread(t, size))
			require.Equal(t, FitUsual, fit)
		}
	}
	for size, w := range table.Inch {
		width, ok := AcrossFlats(w + " in")
		require.True(t, ok)
		require.Zero(t, width.Cmp(headOf(t, size+" UNC", "inch hexagon")), size)
	}
	for size, pair := range map[string][2]string{"M10": {"16", "17"}, "M12": {"18", "19"}, "M14": {"21", "22"}, "M22": {"34", "32"}} {
		same(t, pair[0], headOf(t, size, "ISO hexagon"), "mm", cite(t, "B23"))
		same(t, pair[1], headOf(t, size, "DIN hexagon"), "mm", cite(t, "B23"))
	}
}

func headOf(t *testing.T, size, what string) calc.Quantity {
	t.Helper()
	for _, h := range Heads(thread(t, size)) {
		if h.What == what {
			return h.Width
		}
	}
	t.Fatalf("no %s for %s", what, size)
	return calc.Quantity{}
}

func TestAcrossFlats(t *testing.T) {
	for text, want := range map[string]string{
		"17 mm": "17 mm", "13": "13 mm", "9/16 in": "9/16 in", "9/16": "9/16 in", `1 1/8"`: "9/8 in", "1-1/8 in": "9/8 in",
		"5.5 mm": "11/2 mm", "1 in": "1 in", "10 mm AF": "10 mm",
		"T30": "", "": "", "1/0 in": "", "0 mm": "", "13,5": "", strings.Repeat("9", 50): "",
	} {
		w, ok := AcrossFlats(text)
		require.Equal(t, want != "", ok, text)
		if ok {
			require.Equal(t, want, w.Num().RatString()+" "+w.Unit.Name, text)
		}
	}
}

func TestSocketFits(t *testing.T) {
	for _, c := range []struct {
		size, thread string
		want         Fit
	}{
		{"16 mm", "M10", FitUsual}, {"17 mm", "M10x1.25", FitUsual}, {"8 mm", "M10", FitUsual}, // a key
		{"13 mm", "M10", FitUnusual}, {"14 mm", "M8", FitUnusual}, {"9/16 in", "3/8-24", FitUsual}, {"1/2 in", "3/8-24", FitUnusual},
		{"9/16 in", "M8", FitUnusual}, {"T30", "M8", FitUnknown}, {"13 mm", "G1/4", FitUnknown}, {"95 mm", "M64", FitUnknown},
	} {
		got, _ := SocketFits(c.size, thread(t, c.thread))
		require.Equal(t, c.want, got, "%s on %s", c.size, c.thread)
	}
}

func TestHeadRowsName(t *testing.T) {
	for _, r := range headRows {
		require.NotEmpty(t, r.widths, r.what)
		require.NotEmpty(t, r.source.Cite, r.what)
	}
}
