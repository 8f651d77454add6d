package bench_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"fettle/bench"

	"github.com/stretchr/testify/require"
)

// Parts that sit on, hold and cover each other in a ring make no sense, and
// must not keep the bench from coming to an end.
func TestRings(t *testing.T) {
	m := load(t, `procedure "work" {
  title = "Work"
  fit "all" {
    title = "Fit them"
    part  = [part.a, part.b, part.c]
  }
  inspect "all" {
    title    = "Look at them"
    on       = [part.a, part.b, part.c, fastening.f]
    critical = true

    otherwise {
      text = "Begin again."
      then = fit.all
    }
  }
  torque "f" {
    title     = "Tighten it"
    fastening = fastening.f
  }
  remove "all" {
    title = "Take them off"
    part  = [part.a, part.b, part.c]
  }
}
`, `
part "a" {
  name    = "A"
  sits_on = part.b
  covers  = [part.a, part.b, fastening.f]
  held_by = part.c
}
part "b" {
  name    = "B"
  sits_on = part.c
  covers  = [part.c]
  held_by = part.a
}
part "c" {
  name    = "C"
  sits_on = [part.a, part.c]
  covers  = [part.a]
  held_by = [part.b, fastening.f]
}
fastening "f" {
  name      = "F"
  stack     = [part.a, part.b, part.c, part.a]
  fasteners = [part.a]
  locked_by = part.b
}
`, "")
	trace := bench.Run(m, nil)
	require.Len(t, trace.Acts, 4)
	trace.Before(3).Reach(bench.Object{Node: m.Find("fastening.f")}, bench.Object{Node: m.Find("part.b")})
}

// Many places times many steps are more acts than a machine holds.
func TestPlacesMultiply(t *testing.T) {
	var names, steps strings.Builder
	for i := range 5000 {
		fmt.Fprintf(&names, "%q, ", fmt.Sprint("p", i))
	}
	for i := range 2000 {
		fmt.Fprintf(&steps, "  inspect \"i%d\" {\n    title   = \"Look\"\n    on      = [part.housing]\n    at_each = places.many\n  }\n", i)
	}
	m := load(t, "procedure \"work\" {\n  title = \"Work\"\n"+steps.String()+"}\n", "places \"many\" {\n  names = ["+names.String()+"]\n}\n", "")
	began := time.Now()
	require.LessOrEqual(t, len(bench.Run(m, nil).Acts), 1<<18)
	require.Less(t, time.Since(began), 20*time.Second)
}
