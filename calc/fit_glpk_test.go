package calc

import (
	"bytes"
	"errors"
	"fmt"
	"math/big"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// GLPK, a solver of integer programs that knows nothing of this one, is asked
// for the fewest pieces, then for the nearest result with so many, then for the
// fewest different sizes with both. All numbers are whole thousandths.
func TestFitAgreesWithGLPK(t *testing.T) {
	glpsol, err := exec.LookPath("glpsol")
	if err != nil {
		t.Skip("glpsol is not installed: the selective fit is not compared with GLPK (Debian package glpk-utils)")
	}
	r := rand.New(rand.NewPCG(7, 11))
	served := 0
	for kit := range 40 {
		p := FitProblem{
			MinPieces: r.IntN(2), MaxPieces: 2 + r.IntN(4),
			BuildUp: r.IntN(2) == 0, Nearest: r.IntN(2) == 0,
		}
		thou := func(n int) *big.Rat { return big.NewRat(int64(n), 1000) }
		for range 3 + r.IntN(8) {
			n, band := 40+r.IntN(60)*10, r.IntN(2)*r.IntN(8)
			p.Sizes = append(p.Sizes, FitSize{Nominal: thou(n), Low: thou(n - band), High: thou(n + band), Stock: 1 + r.IntN(6)})
		}
		low, width := -50+r.IntN(150), 20+2*r.IntN(30)
		p.Low, p.High = thou(low), thou(low+width)
		reading := 100 + r.IntN(2200)
		if p.BuildUp {
			reading = -reading
		}

		f, err := NewFit(p)
		require.NoError(t, err)
		pick, err := f.Solve(thou(reading))

		model := glpkModel{glpsol: glpsol, file: filepath.Join(t.TempDir(), "fit"), p: p, reading: thou(reading), target: f.Target()}
		stages := []string{"pieces", "off"}
		if p.Nearest {
			stages = []string{"off", "pieces"}
		}
		var found []string
		for _, stage := range append(stages, "different") {
			best, ok := model.minimise(t, stage)
			require.Equal(t, !errors.Is(err, ErrNoPack), ok, "kit %d", kit)
			if !ok {
				break
			}
			model.fixed = append(model.fixed, fmt.Sprintf("%s <= %d", stage, best))
			found = append(found, fmt.Sprintf("%s %d", stage, best))
		}
		if err != nil {
			continue
		}
		served++
		off := new(big.Rat).Sub(pick.Result, f.Target())
		off.Mul(off.Abs(off), big.NewRat(1000, 1))
		mine := map[string]string{
			"pieces": strconv.Itoa(pick.Pieces), "off": off.RatString(), "different": strconv.Itoa(pick.Different()),
		}
		for i, stage := range append(stages, "different") {
			require.Equal(t, found[i], stage+" "+mine[stage], "kit %d", kit)
		}
	}
	require.Greater(t, served, 10)
}

// glpkModel is a fit as an integer program in the LP format.
type glpkModel struct {
	glpsol, file    string
	p               FitProblem
	reading, target *big.Rat
	fixed           []string
}

func (m *glpkModel) minimise(t *testing.T, goal string) (int, bool) {
	thou := func(r *big.Rat) string { return new(big.Rat).Mul(r, big.NewRat(1000, 1)).RatString() }
	sum := func(sign string, term func(i int, s FitSize) string) string {
		var b strings.Builder
		for i, s := range m.p.Sizes {
			fmt.Fprintf(&b, " %s %s c%d", sign, term(i, s), i)
		}
		return b.String()
	}
	sign := "-"
	if m.p.BuildUp {
		sign = "+"
	}
	less := func(a, b *big.Rat) string { return thou(new(big.Rat).Sub(a, b)) }
	var lp strings.Builder
	fmt.Fprintf(&lp, "Minimize\n goal: %s\nSubject To\n", goal)
	fmt.Fprintf(&lp, " n: pieces%s = 0\n", sum("-", func(int, FitSize) string { return "1" }))
	fmt.Fprintf(&lp, " d: different")
	for i := range m.p.Sizes {
		fmt.Fprintf(&lp, " - u%d", i)
	}
	fmt.Fprintf(&lp, " = 0\n")
	for i, s := range m.p.Sizes {
		fmt.Fprintf(&lp, " s%d: c%d - %d u%d <= 0\n", i, i, s.Stock, i)
	}
	for _, end := range []func(FitSize) *big.Rat{
		func(s FitSize) *big.Rat { return s.Low }, func(s FitSize) *big.Rat { return s.High },
	} {
		total := sum(sign, func(_ int, s FitSize) string { return thou(end(s)) })
		fmt.Fprintf(&lp, "%s >= %s\n%s <= %s\n", total, less(m.p.Low, m.reading), total, less(m.p.High, m.reading))
	}
	nominal := sum(sign, func(_ int, s FitSize) string { return thou(s.Nominal) })
	fmt.Fprintf(&lp, "%s - off <= %s\n%s + off >= %s\n", nominal, less(m.target, m.reading), nominal, less(m.target, m.reading))
	for _, f := range m.fixed {
		fmt.Fprintf(&lp, " %s\n", f)
	}
	fmt.Fprintf(&lp, "Bounds\n %d <= pieces <= %d\n", m.p.MinPieces, m.p.MaxPieces)
	for i, s := range m.p.Sizes {
		fmt.Fprintf(&lp, " c%d <= %d\n u%d <= 1\n", i, s.Stock, i)
	}
	fmt.Fprintf(&lp, "General\n pieces\n")
	for i := range m.p.Sizes {
		fmt.Fprintf(&lp, " c%d\n u%d\n", i, i)
	}
	fmt.Fprintf(&lp, "End\n")

	require.NoError(t, os.WriteFile(m.file, []byte(lp.String()), 0o600))
	out, err := exec.Command(m.glpsol, "--lp", m.file, "--write", m.file+".out").CombinedOutput()
	require.NoError(t, err, "%s\n%s", out, lp.String())
	solution, err := os.ReadFile(m.file + ".out")
	require.NoError(t, err)
	for line := range bytes.Lines(solution) {
		field := strings.Fields(string(line)) // s mip rows columns status goal
		if len(field) == 6 && field[0] == "s" && field[1] == "mip" {
			if field[4] != "o" {
				return 0, false
			}
			value, err := strconv.ParseFloat(field[5], 64)
			require.NoError(t, err)
			return int(value + 0.5), true
		}
	}
	require.Fail(t, "no solution line", "%s", solution)
	return 0, false
}
