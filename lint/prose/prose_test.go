package prose_test

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/lang/model"
	"fettle/lint/prose"
)

func text(t *testing.T, literal string) *model.Text {
	m, _, err := lang.Load(fstest.MapFS{"m/m.proc.hcl": {Data: []byte(
		"part \"a\" {\n  name = \"A\"\n}\nprocedure \"p\" {\n  title = \"P\"\n  measure \"r\" {\n    title = \"Read\"\n    on = [part.a]\n    likely = \"1..2 mm\"\n    text = " + literal + "\n  }\n}\n")}}, "m")
	require.NoError(t, err)
	return m.Procedures[0].Steps[0].Text("text")
}

func TestSentences(t *testing.T) {
	for _, c := range []struct {
		literal string
		want    []string
	}{
		{`"Push the shaft. Read 0.10 mm. Then stop!"`, []string{"Push the shaft.", " Read 0.10 mm.", " Then stop!"}},
		{`"Say e.g. this and ${measure.r} there. Go on."`, []string{"Say e.g. this and " + prose.Value + " there.", " Go on."}},
		{"<<-EOT\n      Push the shaft away\n      from you. Read\n      the dial.\n\n      - One item\n      - another\n    EOT", []string{"Push the shaft away from you.", " Read the dial.", "- One item", "- another"}},
		{`""`, nil},
	} {
		var got []string
		for _, s := range prose.Sentences(text(t, c.literal)) {
			got = append(got, s.Text)
		}
		require.Equal(t, c.want, got, c.literal)
	}
}

// A word found in a sentence stands at the same word of the source.
func TestSpan(t *testing.T) {
	for _, literal := range []string{
		`"Turn it \"left\". Now turn the nut ${measure.r} clockwise and stop."`,
		"<<-EOT\n      Hold the bar. Do not let go.\n      Turn the nut\n      clockwise, and stop.\n    EOT",
	} {
		found := false
		for _, s := range prose.Sentences(text(t, literal)) {
			if at, word := prose.Find(s.Text, "clockwise"); at >= 0 {
				found = true
				require.Equal(t, "clockwise", s.Span(at, at+len(word)).Text(), literal)
			}
		}
		require.True(t, found, literal)
	}
}

func TestFind(t *testing.T) {
	at, word := prose.Find("Turn anticlockwise, then Clockwise.", "clockwise")
	require.Equal(t, 25, at)
	require.Equal(t, "clockwise", word)
	require.False(t, prose.Has("the nuts", "nut"))
}
