package draw

import (
	"encoding/xml"
	"io"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestPattern(t *testing.T) {
	for _, c := range []struct {
		layout string
		order  []string
		turns  []string // in the order of positions
	}{
		{"circle", []string{"1", "3", "2", "4"}, []string{"1", "3", "2", "4"}},
		{"circle", []string{"1", "4", "2", "5", "3", "6"}, []string{"1", "3", "5", "2", "4", "6"}},
		{"row", []string{"2", "3", "1"}, []string{"3", "1", "2"}},
		{"grid 2x2", []string{"1", "4", "2", "3"}, []string{"1", "3", "4", "2"}},
	} {
		svg, ok := Pattern(c.layout, c.order)
		require.True(t, ok)
		d := xml.NewDecoder(strings.NewReader(svg))
		for {
			_, err := d.Token()
			if err == io.EOF {
				break
			}
			require.NoError(t, err)
		}
		var turns []string
		for _, m := range regexp.MustCompile(`<text[^>]*>(\d+)</text>`).FindAllStringSubmatch(svg, -1) {
			turns = append(turns, m[1])
		}
		require.Equal(t, c.turns, turns)
		require.NotContains(t, svg, "NaN")
	}
}

func TestPatternRefuses(t *testing.T) {
	for _, c := range []struct {
		layout string
		order  []string
	}{
		{"circle", nil}, {"circle", []string{"1"}}, {"circle", []string{"1", "1"}}, {"circle", []string{"1", "3"}},
		{"circle", []string{"left", "right"}}, {"grid 2x5", []string{"1", "2"}}, {"grid x", []string{"1", "2"}},
		{"spiral", []string{"1", "2"}}, {"<script>", []string{"1", "2"}},
	} {
		_, ok := Pattern(c.layout, c.order)
		require.False(t, ok, "%v", c)
	}
}
