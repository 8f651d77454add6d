package lint_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/lint/report"
	"fettle/lint/rules"
)

// The handbook says what the rules say.
func TestHandbookIsFresh(t *testing.T) {
	const file = "RULES.md"
	want := report.Handbook(rules.All())
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(want), 0o644))
	}
	got, err := os.ReadFile(file)
	require.NoError(t, err)
	require.True(t, string(got) == want, "stale: go test ./lint -run Handbook -update")
	for _, r := range rules.All() {
		require.True(t, strings.Contains(want, "## `"+r.Name+"`"), "the handbook leaves out %s", r.Name)
	}
}
