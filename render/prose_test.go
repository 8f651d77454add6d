package render

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"github.com/yuin/goldmark/text"
	"pgregory.net/rapid"
)

// parsed is the prose of src through CommonMark, without the short way.
func parsed(src string, values []Inline) []Block {
	p := &proseReader{lowering: &lowering{}, src: []byte(src), values: values}
	return p.blocks(commonMark.Parse(text.NewReader(p.src)))
}

// TestEveryKindOfMarkdown: nothing that CommonMark knows is lost. Source: the
// sections of the CommonMark specification, 0.31.2.
func TestEveryKindOfMarkdown(t *testing.T) {
	kinds := map[BlockKind]int{}
	inlines := map[InlineKind]int{}
	var count func([]Block)
	var line func(Line)
	line = func(l Line) {
		for _, in := range l {
			inlines[in.Kind]++
			line(in.Line)
		}
	}
	count = func(all []Block) {
		for _, b := range all {
			kinds[b.Kind]++
			line(b.Line)
			count(b.Quote)
			for _, item := range b.Items {
				count(item)
			}
		}
	}
	src := "# ATX\n\nSetext\n---\n\npara with *em*, **strong**, `code`, [text](to \"title\"), <http://a.example>, ![alt](x.svg)  \nhard\\\nbreak, <b>raw</b> &copy; \\*\n\n" +
		"- a\n- b\n\n  loose\n\n3. c\n\n> quote\n\n    indented\n\n```\nfenced\n```\n\n---\n\n<div>\nhtml block\n</div>\n\n[ref]\n\n[ref]: /x\n"
	blocks := parsed(src, nil)
	count(blocks)
	for _, k := range []BlockKind{Paragraph, Heading, Bullets, Numbers, Quote, Verbatim, Rule} {
		require.Positive(t, kinds[k], k)
	}
	for _, k := range []InlineKind{Text, Emphasis, Strong, Code, Link, Picture, Break} {
		require.Positive(t, inlines[k], k)
	}
	all := ""
	for _, b := range blocks {
		all += b.Line.Plain() + "\n"
	}
	for _, want := range []string{"<b>raw</b>", "©", " *", "<div>", "html block", "http://a.example"} {
		require.Contains(t, all, want)
	}
}

// TestShortWay: text that is taken for one plain paragraph is one to CommonMark too.
func TestShortWay(t *testing.T) {
	piece := rapid.SampledFrom([]string{"Turn", "the nut", " ", "\n", "\n\n", ".", "1. ", "- ", "+", "*", "_a_", "# ", "> ", "  \n", "\t", "0.10 mm",
		"\\", "`x`", "<b>", "&amp;", "ü", "°", "=", "===\n", "---\n", "~~~\n", "|", "(x)", "[x]", "!", "\u00a0", "a", "    code"})
	rapid.Check(t, func(t *rapid.T) {
		src := strings.Join(rapid.SliceOfN(piece, 1, 12).Draw(t, "pieces"), "")
		if !plainParagraph(src) || strings.TrimSpace(src) == "" {
			return
		}
		require.Equal(t, parsed(src, nil), []Block{{Kind: Paragraph, Line: standIns(oneLine(src), nil)}}, "%q", src)
	})
}

// TestValuesInProse: a value keeps its place through any mark, and an author's
// own text cannot stand for one.
func TestValuesInProse(t *testing.T) {
	v := []Inline{{Kind: Value, Text: "0.10 mm"}}
	src := "take *" + string(firstStand) + "* and `" + string(firstStand) + "`"
	b := parsed(src, v)
	require.Equal(t, "take 0.10 mm and 0.10 mm", b[0].Line.Plain())
	require.Equal(t, Value, b[0].Line[1].Line[0].Kind)
	require.Equal(t, "a\ufffdb", withoutStandIns("a"+string(firstStand)+"b"))
	require.Equal(t, "\ufffd", unescape("&#xF0000;"), "nor by a character reference")
}

func TestUnescape(t *testing.T) {
	for in, want := range map[string]string{
		`\*`: "*", `\a`: `\a`, "&lt;b&gt;": "<b>", "&#60;": "<", `\&lt;`: "&lt;", "&nope;": "&nope;", "a & b": "a & b", "&": "&", `\`: `\`,
		"&CounterClockwiseContourIntegral;": "∳", // the longest name of HTML's table
	} {
		require.Equal(t, want, unescape(in), in)
	}
}

func FuzzProse(f *testing.F) {
	for _, s := range []string{"*a* _b_", "[x](<y>)", "```\n", "> > >", "- - -", "<![CDATA[", "![", "&#x0;", "\x00", "1) a\n2) b", strings.Repeat("*a", 50)} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		for _, b := range parsed(withoutStandIns(s), nil) {
			_ = b.Line.Plain()
			require.NotEmpty(t, b.Kind)
		}
	})
}

func TestPrintable(t *testing.T) {
	require.Equal(t, "a\ufffdb", Printable("a\u202eb"))
	require.Equal(t, "a\ufffdb", Printable("a\x1bb"))
	require.Equal(t, "a\n\tb·°", Printable("a\n\tb·°"))
	require.Equal(t, "a\ufffd", Printable("a\xff"))
}
