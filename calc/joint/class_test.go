package joint

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// EN ISO 898-1 tables of proof load and least ultimate load, read in
// reproductions; the areas they rest on are rounded to three digits.
func TestProofLoads(t *testing.T) {
	var table struct {
		Rows []struct {
			Thread   string
			Proof    map[string]*json.Number `json:"proof_load_N"`
			Ultimate map[string]*json.Number `json:"min_ultimate_N"`
		}
	}
	published(t, "proof_load_iso898_1.json", &table)
	n := 0
	for _, r := range table.Rows {
		th := thread(t, r.Thread)
		for class, load := range r.Proof {
			s, p := ClassStrength(class, th)
			if load == nil {
				require.NotNil(t, p, "%s %s has no row", r.Thread, class)
				continue
			}
			require.Nil(t, p)
			near(t, number(*load), "0.9", s.ProofLoad(th), "N", r.Thread, class)
			n++
		}
		for class, load := range r.Ultimate {
			if load != nil {
				s, p := ClassStrength(class, th)
				require.Nil(t, p)
				near(t, number(*load), "0.9", s.BreakingLoad(th), "N", r.Thread, class)
			}
		}
	}
	require.Greater(t, n, 90)
}

func TestClasses(t *testing.T) {
	for _, c := range []struct{ class, thread, proof, tensile, unit, id string }{
		{"8.8", "M16", "580", "800", "MPa", "B14"}, // 660, on one page, is a misprint
		{"8.8", "M18", "600", "830", "MPa", "B14"},
		{"class 10.9", "M10", "830", "1040", "MPa", "B14"},
		{"12.9", "M10", "970", "1220", "MPa", "B14"},
		{"grade 2", "3/4-10", "55", "74", "ksi", "B16"},
		{"grade 2", "7/8-9", "33", "60", "ksi", "B16"},
		{"grade 5", "1/4-20", "85", "120", "ksi", "B17"},
		{"Grade 5", "1-8", "85", "120", "ksi", "B17"},
		{"SAE J429 grade 5", "1 1/8-7", "74", "105", "ksi", "B17"},
		{"gr. 8", "1 1/2-6", "120", "150", "ksi", "B18"},
	} {
		s, p := ClassStrength(c.class, thread(t, c.thread))
		require.Nil(t, p, c.class)
		same(t, c.proof, s.Proof, c.unit, cite(t, c.id))
		same(t, c.tensile, s.Tensile, c.unit, cite(t, c.id))
	}
	for _, c := range []struct{ class, yield string }{{"A2-70", "450"}, {"A4-80", "600"}} { // ISO 3506-1, from memory
		s, p := ClassStrength(c.class, thread(t, "M8"))
		require.Nil(t, p)
		same(t, c.yield, s.Proof, "MPa")
		require.Equal(t, FromMemory, s.Source.Status)
	}
}

// SAE J429 as quoted in Shigley 9th ed., read.
func TestGradesOfTable(t *testing.T) {
	var table struct {
		Grades []struct {
			Grade, Size           string
			Proof, Yield, Tensile json.Number
		} `json:"sae_j429_ksi"`
	}
	published(t, "stress_area_unified.json", &table)
	require.Len(t, table.Grades, 10)
	for _, g := range table.Grades {
		size := "3/8-16" // inside every range that starts at 1/4
		if !strings.HasPrefix(g.Size, "1/4") {
			size = "1 1/4-7"
		}
		grade, _, _ := strings.Cut(g.Grade, " ")
		s, p := ClassStrength("grade "+grade, thread(t, size))
		require.Nil(t, p, g.Grade)
		same(t, number(g.Proof), s.Proof, "ksi", g)
		same(t, number(g.Yield), s.Yield, "ksi", g)
		same(t, number(g.Tensile), s.Tensile, "ksi", g)
	}
}

func TestClassProblems(t *testing.T) {
	for _, c := range []struct{ class, thread, message, remedy string }{
		{"8,8", "M10", "not a strength class", `"8.8"`},
		{"8", "3/8-24", "not a strength class", `"grade 8"`},
		{"8.9", "M10", "not a strength class", ""},
		{"grade 3", "3/8-24", "not a strength class", ""},
		{"9.8", "M20", "gives no strength", "proof"},
		{"grade 5", "#10-32", "gives no strength", "proof"},
		{"A2-70", "M30", "gives no strength", "proof"},
		{"8.8", "G1/4", "not known here", "basis"},
	} {
		_, p := ClassStrength(c.class, thread(t, c.thread))
		require.NotNil(t, p, c.class)
		require.Contains(t, p.Message, c.message)
		require.Contains(t, p.Remedy, c.remedy)
	}
}

func TestGivenStrength(t *testing.T) {
	s, p := GivenStrength(q("85", "ksi"))
	require.Nil(t, p)
	// T05 of Example 8-3: proof 85 kpsi on 0.373 in² is 31 700 lbf. Shigley 9th ed., read; product computed.
	near(t, "31705", "0.1", s.ProofLoad(thread(t, "3/4-16")), "lbf", cite(t, "T05"))
	require.False(t, s.BreakingLoad(thread(t, "3/4-16")).Valid())
	s, p = GivenStrength(q("25", "kN"))
	require.Nil(t, p)
	same(t, "25", s.ProofLoad(thread(t, "M8")), "kN")
	_, p = GivenStrength(q("25", "mm"))
	require.Contains(t, p.Message, "a length")
	_, p = GivenStrength(q("0", "MPa"))
	require.Contains(t, p.Message, "above zero")
}

func TestNuts(t *testing.T) {
	// ISO 898-2 and SAE J995, from memory.
	for _, c := range []struct {
		nut, bolt string
		message   string
	}{
		{"8", "8.8", ""}, {"10", "8.8", ""}, {"class 10", "10.9", ""}, {"12", "12.9", ""},
		{"grade 5", "grade 5", ""}, {"grade 8", "grade 5", ""}, {"A2-70", "A2-70", ""}, {"A4-80", "A2-70", ""},
		{"8", "10.9", "weaker"}, {"6", "8.8", "weaker"}, {"05", "8.8", "weaker"}, {"04", "4.6", "weaker"},
		{"grade 2", "grade 5", "weaker"}, {"A2-50", "A2-70", "weaker"}, {"A2-70", "8.8", "weaker"},
		{"8", "grade 5", "different kinds"}, {"8", "A2-70", "different kinds"}, {"8", "hard", "not a strength class"},
	} {
		p := NutSuits(c.nut, c.bolt)
		if c.message == "" {
			require.Nil(t, p, "%s on %s", c.nut, c.bolt)
			continue
		}
		require.NotNil(t, p, "%s on %s", c.nut, c.bolt)
		require.Contains(t, p.Message, c.message)
	}
}
