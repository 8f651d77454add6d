package draw

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// wellFormed reads a picture as XML. Source: encoding/xml.
func wellFormed(t *testing.T, svg string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		if _, err := d.Token(); err == io.EOF {
			return
		} else {
			require.NoError(t, err)
		}
	}
}

func TestServed(t *testing.T) {
	whole := Served(nil)
	wellFormed(t, whole)
	require.Equal(t, 1, strings.Count(whole, `fill="currentColor"`))
	two := Served([]Span{{0, 0.25}, {0.5, 0.5}})
	wellFormed(t, two)
	require.Equal(t, 2, strings.Count(two, `fill="currentColor"`), "what is served")
	require.Equal(t, 2, strings.Count(two, `fill="none"`), "gaps, a single reading too")
}

func TestOrder(t *testing.T) {
	svg := Order([]string{"1", "2", "3"}, [][]int{nil, {0}, {0, 1, 7}})
	wellFormed(t, svg)
	require.Equal(t, 3, strings.Count(svg, "<circle"))
	require.Equal(t, 3, strings.Count(svg, "<path"), "what comes later is no need")
}
