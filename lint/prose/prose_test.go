package prose_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"fettle/lang"
	"fettle/lang/model"
	"fettle/lint/prose"
)

type fataler interface {
	Helper()
	Errorf(string, ...any)
	FailNow()
}

// text reads a literal as the text of a step.
func text(t fataler, literal string) *model.Text {
	t.Helper()
	m, _, err := lang.Load(fstest.MapFS{"m/m.proc.hcl": {Data: []byte(
		"part \"a\" {\n  name = \"A\"\n}\nprocedure \"p\" {\n  title = \"P\"\n  measure \"r\" {\n    title = \"Read\"\n    on = [part.a]\n    likely = \"1..2 mm\"\n    text = " + literal + "\n  }\n}\n")}}, "m")
	require.NoError(t, err)
	return m.Procedures[0].Steps[0].Text("text")
}

const v = prose.Value

func TestSentences(t *testing.T) {
	for _, c := range []struct {
		literal string
		want    []string
	}{
		{`"Push the shaft. Read 0.10 mm. Then stop!"`, []string{"Push the shaft.", "Read 0.10 mm.", "Then stop!"}},
		{`"Say e.g. this and ${measure.r} there. Go on."`, []string{"Say e.g. this and " + v + " there.", "Go on."}},
		{`"${measure.r} is the gap. Note it."`, []string{v + " is the gap.", "Note it."}},
		{`"Wait 5 min. Then use no. 3 and min. 5 mm. Is it dry? (Touch it.) Go on…"`,
			[]string{"Wait 5 min.", "Then use no. 3 and min. 5 mm.", "Is it dry?", "(Touch it.)", "Go on…"}},
		{"<<-EOT\n      Push the shaft away\n      from you. Read\n      the dial.\n\n      - One item\n      - another\n    EOT",
			[]string{"Push the shaft away from you.", "Read the dial.", "One item", "another"}},
		{"<<-EOT\n      Push it.\n\n      Pull it\n      back.\n    EOT", []string{"Push it.", "Pull it back."}},
		{"<<-EOT\n      # Order\n\n      1. Tighten **all** of `them`.\n      2. A\\*B &amp; C.\n\n      > Stop *now*. Go.\n\n          code. Code.\n    EOT",
			[]string{"Order", "Tighten all of them.", "A*B & C.", "Stop now.", "Go."}},
		{`"See [the sheet](sheet.pdf) and ![a bead](bead.svg). Then <b>stop</b>."`, []string{"See the sheet and .", "Then <b>stop</b>."}},
		{`""`, nil},
		{`"   "`, nil},
	} {
		var got []string
		for _, s := range prose.Sentences(text(t, c.literal)) {
			got = append(got, s.Text)
		}
		require.Equal(t, c.want, got, c.literal)
	}
}

func TestPictures(t *testing.T) {
	p := prose.Read(text(t, `"The bead: ![the bead, unbroken](figures/bead.svg). Then ![](b.svg)."`))
	require.Len(t, p.Pictures, 2)
	require.Equal(t, "figures/bead.svg", p.Pictures[0].File)
	require.Equal(t, "the bead, unbroken", p.Pictures[0].Alt)
	require.Equal(t, "![the bead, unbroken](figures/bead.svg)", p.Pictures[0].Span.Text())
	require.Equal(t, "![](b.svg)", p.Pictures[1].Span.Text())
}

// A word found in a sentence stands at the same word of the source.
func TestSpan(t *testing.T) {
	for _, literal := range []string{
		`"Turn it \"left\". Now turn the nut ${measure.r} clockwise and stop."`,
		"<<-EOT\n      Hold the bar. Do not let go.\n      Turn the nut\n      clockwise, and stop.\n    EOT",
		"<<-EOT\n      Hold it. ${measure.r}\n\n      - *Turn* &lt; the\n        nut **clockwise**, and stop ${measure.r}.\n    EOT",
		`"\u00b5\u00b5 Å **Turn clockwise.**"`,
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
	s := prose.Sentences(text(t, `"Read ${measure.r} now. Set ${measure.r}"`))
	require.Equal(t, "Read ${measure.r} now.", s[0].Whole().Text())
	require.Equal(t, "Set ${measure.r}", s[1].Whole().Text())
	require.Equal(t, "${measure.r}", s[0].Span(5, 5+len(v)).Text())
}

// Every word of a sentence stands in the source as it is, whatever surrounds it,
// and the sentences come in the order of the source.
func TestSpansHold(t *testing.T) {
	word := rapid.SampledFrom([]string{"nut", "größe", "Turn", "24", "µm", "bolt’s", "N·m", "Stop.", "go,", "dry?", "${measure.r}"})
	glue := rapid.SampledFrom([]string{" ", " ", " ", "\n      ", "\n\n      ", "\n      - ", " **", "** ", " *", "* ", " &amp; ", " ` ", " \\\\ ", " ![x](y) ", "\n      1. "})
	rapid.Check(t, func(t *rapid.T) {
		var b strings.Builder
		for range rapid.IntRange(1, 12).Draw(t, "words") {
			b.WriteString(word.Draw(t, "word") + glue.Draw(t, "glue"))
		}
		literal := "<<-EOT\n      x" + b.String() + "\n    EOT"
		last := int32(-1)
		for _, s := range prose.Sentences(text(t, literal)) {
			for _, w := range prose.Words(s.Text) {
				span := s.Span(w.Start, w.End)
				written := s.Text[w.Start:w.End]
				if !strings.Contains(written, v) {
					require.Equal(t, written, span.Text(), literal)
				}
				require.Greater(t, span.Start, last, literal)
				last = span.Start
			}
		}
	})
}

// What need not go through the Markdown tree reads the same through it.
func TestPlainReadsAsMarkdown(t *testing.T) {
	line := rapid.SampledFrom([]string{"Turn the nut. Stop", "12 bolts, and go on.", "(A hint.) More", "${measure.r} mm", "größe – so", "", "\"Yes\" he said. No", "3.5 mm"})
	rapid.Check(t, func(t *rapid.T) {
		var lines []string
		for range rapid.IntRange(1, 6).Draw(t, "lines") {
			lines = append(lines, "      "+line.Draw(t, "line"))
		}
		body := strings.Join(lines, "\n")
		read := func(tail string) (all []string) {
			for _, s := range prose.Sentences(text(t, "<<-EOT\n"+body+tail+"\n    EOT")) {
				all = append(all, fmt.Sprint(s.Block, s.Text, s.Whole().Start))
			}
			return all
		}
		plain, tree := read(""), read("\n\n      ***")
		require.Equal(t, plain, tree, body)
	})
}

func TestFind(t *testing.T) {
	at, word := prose.Find("Turn anticlockwise, then Clockwise.", "clockwise")
	require.Equal(t, 25, at)
	require.Equal(t, "clockwise", word)
	require.False(t, prose.Has("the nuts", "nut"))
}

// Counted as ASD-STE100 counts; the section on word counts of its forerunner was
// read in a reproduction (rules 8.2, 8.6 to 8.9).
func TestLongestRun(t *testing.T) {
	for _, c := range []struct {
		sentence string
		want     int
	}{
		{"Turn the nut.", 3},
		{"Turn the M8x1.25 nut to 24 N·m.", 7},
		{"Do these in order: lift, turn, and lower it.", 5},
		{"Lift it (two people hold the far end) and turn it.", 6},
		{"Lift (both of you together, one at each end) it.", 8},
		{"Lift the top-hat washer – the thin one.", 4},
		{"Read " + v + " and set it.", 5},
		{"", 0},
	} {
		require.Equal(t, c.want, prose.LongestRun(c.sentence).Words, c.sentence)
	}
}

func TestOpens(t *testing.T) {
	for _, c := range []struct {
		sentence string
		want     prose.Opening
		verb     string
	}{
		{"Turn the nut.", prose.Imperative, "turn"},
		{"Do not turn it.", prose.Imperative, "turn"},
		{"Then, slowly, lower it.", prose.Imperative, "lower"},
		{"If the ring sticks, tap it.", prose.Imperative, "tap"},
		{"With the shaft level, read the dial.", prose.Imperative, "read"},
		{"Re-tighten the nuts.", prose.Imperative, "re-tighten"},
		{"Trial fit the cover.", prose.Imperative, "fit"},
		{"Dry the face.", prose.Imperative, "dry"},
		{"Part the halves.", prose.Imperative, "part"},
		{"The nut turns.", prose.NoVerb, "the"},
		{"Tightening of the bolts", prose.NoVerb, "tightening"},
		{"Check of the clearance", prose.NoVerb, "check"},
		{"Installation of the shaft", prose.NoVerb, "installation"},
		{"Crankshaft and bearings", prose.NoVerb, "crankshaft"},
		{"You turn the nut.", prose.NoVerb, "you"},
		{"Fettle the casting.", prose.Unsure, "fettle"},
		{"Fan the plates out.", prose.Unsure, "fan"},
		{"Both sides: tighten the nuts", prose.Unsure, "both"},
		{"Bring the dial up.", prose.Imperative, "bring"},
		{"", prose.Unsure, ""},
	} {
		got, w := prose.Opens(c.sentence)
		require.Equal(t, c.want, got, c.sentence)
		require.Equal(t, c.verb, w.Text, c.sentence)
	}
}

// A text that is dear to parse costs no more than a long one.
func TestLongTextsAreReadAsWritten(t *testing.T) {
	p := prose.Read(text(t, `"`+strings.Repeat("[a](", 1<<18)+`. Stop."`))
	require.Len(t, p.Sentences, 2)
	require.Equal(t, "Stop.", p.Sentences[1].Whole().Text())
}

func BenchmarkRead(b *testing.B) {
	plain := text(b, "<<-EOT\n      Push the shaft away from you until it stops, set the dial to zero, then\n      pull it towards you. Read the dial.\n    EOT")
	marked := text(b, "<<-EOT\n      Push the shaft **away** from you until it stops, set the dial to zero, then\n      pull it towards you. Read the dial.\n    EOT")
	b.Run("plain", func(b *testing.B) {
		for b.Loop() {
			prose.Read(plain)
		}
	})
	b.Run("marked", func(b *testing.B) {
		for b.Loop() {
			prose.Read(marked)
		}
	})
}
