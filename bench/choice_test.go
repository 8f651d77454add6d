package bench_test

import (
	"fmt"
	"strings"
	"testing"

	"fettle/bench"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// manualWithOptions has a step under each choice of each option.
func manualWithOptions(sizes []int) (steps, entries string) {
	var s, e strings.Builder
	for i, n := range sizes {
		var names []string
		for c := range n {
			names = append(names, fmt.Sprintf(`"c%d"`, c))
		}
		fmt.Fprintf(&e, "option \"o%d\" {\n  name = \"Option\"\n  choices = [%s]\n}\n", i, strings.Join(names, ", "))
		fmt.Fprintf(&s, "  inspect \"i%d\" {\n    title = \"Look\"\n    on = [part.housing]\n    when = option.o%d == \"c0\"\n  }\n", i, i)
	}
	e.WriteString("option \"unseen\" {\n  name = \"No step looks at it\"\n  choices = [\"a\", \"b\"]\n}\n")
	return "procedure \"work\" {\n  title = \"Work\"\n" + s.String() + "}\n", e.String()
}

func TestAllCombinationsUpToTheBound(t *testing.T) {
	steps, entries := manualWithOptions([]int{2, 3, 2})
	m := load(t, steps, entries, "")
	require.Len(t, bench.Choices(m, 12), 12)
	require.Less(t, len(bench.Choices(m, 11)), 12)
	require.Equal(t, "o0=c0, o1=c0, o2=c0", bench.Choices(m, 12)[0].String())

	plain := load(t, "procedure \"work\" {\n  title = \"Work\"\n}\n", "", "")
	require.Len(t, bench.Choices(plain, 64), 1)
}

// Beyond the bound every two values stand together in some choice, and never
// more choices are tried than there are combinations.
func TestEveryPairBeyondTheBound(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		sizes := rapid.SliceOfN(rapid.IntRange(1, 4), 2, 7).Draw(rt, "sizes")
		steps, entries := manualWithOptions(sizes)
		m := load(t, steps, entries, "")
		all := 1
		for _, n := range sizes {
			all *= n
		}
		choices := bench.Choices(m, 1)
		require.LessOrEqual(rt, len(choices), all)
		met := map[string]bool{}
		for _, c := range choices {
			require.Len(rt, c, len(sizes))
			for i := range c {
				for j := range c {
					met[fmt.Sprint(i, c[i].Value, j, c[j].Value)] = true
				}
			}
		}
		for i, n := range sizes {
			for j, k := range sizes {
				for a := range n {
					for b := range k {
						if i != j {
							require.True(rt, met[fmt.Sprintf("%d c%d %d c%d", i, a, j, b)] || met[fmt.Sprint(i, fmt.Sprint("c", a), j, fmt.Sprint("c", b))])
						}
					}
				}
			}
		}
	})
}

func TestConditions(t *testing.T) {
	const measure = `
  measure "gap" {
    title  = "Measure the gap"
    on     = [part.housing]
    tools  = [tool.gauge]
    likely = "1..3 mm"
  }
`
	story(t, "one of two under a reading", gasketAndCover+`
  fit "bolts" {
    title     = "Start the bolts"
    fastening = fastening.cover_bolts
  }
`+measure+`
  torque "thin" {
    title     = "Tighten the bolts, thin gasket"
    fastening = fastening.cover_bolts
    when      = measure.gap < "2 mm"
  }
  torque "thick" {
    title     = "Tighten the bolts, thick gasket"
    fastening = fastening.cover_bolts
    when      = measure.gap >= "2 mm"
  }
`)
	story(t, "fitted under a reading", measure+`
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  fit "one" {
    title    = "Fit one circlip"
    part     = part.circlip
    quantity = 1
    when     = measure.gap < "2 mm"
  }
  fit "two" {
    title    = "Fit two circlips"
    part     = part.circlip
    quantity = 2
    when     = measure.gap >= "2 mm"
  }
`)
	story(t, "read under a reading, and used without", measure+`
  measure "depth" {
    title  = "Measure the depth"
    on     = [part.housing]
    when   = measure.gap > "2 mm"
    tools  = [tool.gauge]
    likely = "1..3 mm"
  }
  calculate "sum" {
    title = "Add them up"
    is    = measure.gap + measure.depth # want "read sometimes"
  }
`)
	tell(t, "an option that removes a whole procedure", `
procedure "first" {
  title = "Shaft"
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
}
procedure "second" {
  title = "Gear"
  after = [procedure.first]
  when  = option.drive == "key"
  fit "gear" {
    title = "Push the gear on"
    part  = part.gear
  }
}
procedure "third" {
  title = "Look"
  after = [procedure.second]
  inspect "shaft" {
    title = "Look at the shaft"
    on    = [part.shaft]
  }
}
`, options, "")
}
