package render_test

import (
	"fmt"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/calc"
)

type quantity = calc.Quantity

func itoa(n int) string { return strconv.Itoa(n) }

func atoi(t *testing.T, s string) int {
	t.Helper()
	n, err := strconv.Atoi(s)
	require.NoError(t, err)
	return n
}

// totalOf names a pack by its pieces.
func totalOf(take []int) string { return fmt.Sprint(take) }
