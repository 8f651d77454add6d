package reference_test

import (
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/lang/entry"
	"fettle/lang/format"
	"fettle/lang/kind"
	"fettle/lang/reference"
	"fettle/lang/schema"
	"fettle/lang/source"
	"fettle/lang/syntax"
)

var update = flag.Bool("update", false, "rewrite the generated page")

func TestThePageIsFresh(t *testing.T) {
	const path = "../REFERENCE.md"
	if *update {
		require.NoError(t, os.WriteFile(path, []byte(reference.Page()), 0o644))
	}
	page, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, string(page), reference.Page(), "run go test ./lang/reference -update")
}

func TestEveryDefinitionIsDocumented(t *testing.T) {
	for _, name := range reference.Names() {
		require.NotEmpty(t, reference.Block(name))
	}
	require.Empty(t, reference.Block("nothing"))
	eachBlock(func(b *schema.Block) {
		require.NotEmpty(t, b.Doc, b.Name)
		seen := map[string]bool{}
		for _, a := range b.Attrs {
			require.NotEmpty(t, a.Doc, b.Name+"."+a.Name)
			require.NotZero(t, a.Role+1, b.Name+"."+a.Name)
			require.False(t, seen[a.Name], "%s.%s is defined twice", b.Name, a.Name)
			seen[a.Name] = true
			require.Equal(t, a.Type == schema.Word, a.Type == schema.Word && len(a.Words) > 0, a.Name)
			if a.Type == schema.Reference {
				require.NotEmpty(t, a.To, b.Name+"."+a.Name)
			}
		}
	})
}

// The examples are printed to authors: they must be readable and laid out.
func TestExamplesAreInTheDialect(t *testing.T) {
	eachBlock(func(b *schema.Block) {
		if b.Example == "" {
			return
		}
		tree := syntax.Parse(source.New(b.Name, b.Example))
		require.Empty(t, tree.Findings, b.Name)
		require.Len(t, tree.Blocks, 1)
		for _, a := range tree.Blocks[0].Attrs {
			_, threshold := entry.ThresholdNamed(a.Name)
			require.True(t, b.Attr(a.Name) != nil || b.Open && threshold, "%s has no %s", b.Name, a.Name)
		}
		laid, ok := format.Format([]byte(b.Example))
		require.True(t, ok)
		require.Equal(t, b.Example, string(laid))
	})
}

func eachBlock(visit func(*schema.Block)) {
	for _, b := range entry.Top() {
		visit(b)
	}
	for _, k := range kind.All() {
		visit(k.Block)
	}
}

func TestThresholdsAreSorted(t *testing.T) {
	names := []string{}
	for _, th := range entry.Thresholds() {
		names = append(names, th.Name)
		require.NotEmpty(t, th.Source)
	}
	require.IsIncreasing(t, names)
	require.True(t, strings.Contains(reference.Page(), "one_person_lift"))
}
