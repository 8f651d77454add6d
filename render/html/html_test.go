package html

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	nethtml "golang.org/x/net/html"

	"fettle/lang"
	"fettle/lang/langtest"
	"fettle/render"
)

func page1(t testing.TB, root, dir string) []byte {
	t.Helper()
	fsys := os.DirFS(root)
	m, _, err := lang.Load(fsys, dir)
	require.NoError(t, err)
	var b bytes.Buffer
	require.NoError(t, Write(&b, render.Lower(m, render.Options{Digest: "sha256:00", Figures: fsys})))
	return b.Bytes()
}

var manuals = [][2]string{
	{"../testdata", "press"}, {"../testdata", "hostile"}, {"../../procedures", "beck"}, {"../../procedures", "sedge_2"},
}

// each calls visit for every element, parents first.
func each(n *nethtml.Node, visit func(*nethtml.Node)) {
	if n.Type == nethtml.ElementNode {
		visit(n)
	}
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		each(c, visit)
	}
}

func attr(n *nethtml.Node, name string) (string, bool) {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val, true
		}
	}
	return "", false
}

func text(n *nethtml.Node) string {
	if n.Type == nethtml.TextNode {
		return n.Data
	}
	s := ""
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		s += text(c)
	}
	return s
}

// TestStructure reads every page as a browser does: identifiers once, headings
// in order, every box labelled, every reference within the page, landmarks.
// Source: WCAG 2.2, success criteria 1.3.1, 2.4.1, 2.4.2, 2.4.6, 3.1.1, 4.1.2.
func TestStructure(t *testing.T) {
	for _, m := range manuals {
		t.Run(m[1], func(t *testing.T) {
			doc, err := nethtml.Parse(bytes.NewReader(page1(t, m[0], m[1])))
			require.NoError(t, err)
			ids := map[string]bool{}
			count := map[string]int{}
			level := 0
			each(doc, func(n *nethtml.Node) {
				count[n.Data]++
				if id, ok := attr(n, "id"); ok {
					require.False(t, ids[id], "identifier twice: %s", id)
					require.NotEmpty(t, id)
					require.NotContains(t, id, " ")
					ids[id] = true
				}
				if len(n.Data) == 2 && n.Data[0] == 'h' && n.Data[1] >= '1' && n.Data[1] <= '6' {
					now := int(n.Data[1] - '0')
					require.LessOrEqual(t, now, level+1, "heading skips a level: %s", text(n))
					require.NotEmpty(t, strings.TrimSpace(text(n)))
					level = now
				}
			})
			require.Equal(t, 1, count["h1"])
			require.Equal(t, 1, count["main"])
			require.Equal(t, 1, count["nav"])
			require.Equal(t, 1, count["title"])
			require.Equal(t, 2, count["script"], "what the page knows, and what runs")
			require.Equal(t, 1, count["style"])
			each(doc, func(n *nethtml.Node) {
				for _, name := range [...]string{"aria-labelledby", "for"} {
					if v, ok := attr(n, name); ok {
						require.True(t, ids[v], "%s points nowhere: %s", name, v)
					}
				}
				if v, ok := attr(n, "href"); ok {
					if !strings.HasPrefix(v, "#sign-") {
						require.True(t, strings.HasPrefix(v, "#") && ids[v[1:]], "points nowhere: %s", v)
					}
				}
				if n.Data == "input" {
					require.NotEmpty(t, strings.TrimSpace(labelOf(n)), "a box without a label")
				}
				if n.Data == "img" {
					src, _ := attr(n, "src")
					require.True(t, strings.HasPrefix(src, "data:image/"), src)
					_, ok := attr(n, "alt")
					require.True(t, ok)
				}
				for _, a := range n.Attr {
					require.False(t, strings.HasPrefix(a.Key, "on"), "a handler: %s", a.Key)
					require.NotEqual(t, "style", a.Key)
				}
			})
			lang := ""
			each(doc, func(n *nethtml.Node) {
				if n.Data == "html" {
					lang, _ = attr(n, "lang")
				}
			})
			require.Equal(t, "en", lang)
		})
	}
}

func labelOf(n *nethtml.Node) string {
	for _, name := range [...]string{"aria-label", "aria-labelledby"} {
		if v, ok := attr(n, name); ok {
			return v
		}
	}
	for p := n.Parent; p != nil; p = p.Parent {
		if p.Data == "label" {
			return text(p)
		}
	}
	return ""
}

// TestHostile: nothing of a manual becomes an element, an attribute, a rule of
// the style sheet, or a request.
func TestHostile(t *testing.T) {
	out := page1(t, "../testdata", "hostile")
	doc, err := nethtml.Parse(bytes.NewReader(out))
	require.NoError(t, err)
	own := map[string]bool{}
	for _, s := range strings.Fields(`html head meta title style body a svg symbol path text use g circle header div span h1 h2 h3 h4 h5
		main section nav table thead tbody tfoot tr th td caption ul ol li p b i em strong code pre hr br blockquote dl dt dd
		article label input figure figcaption img footer script details summary`) {
		own[s] = true
	}
	title := ""
	each(doc, func(n *nethtml.Node) {
		require.True(t, own[n.Data], "an element of the manual's: %s", n.Data)
		if n.Data == "title" {
			title = text(n)
		}
	})
	require.Contains(t, title, "<script>alert(1)</script> ]]> </style></title>", "it is printed as it is")
	require.Contains(t, string(out), "https://example.invalid/a?b=c", "an address is printed")
	policy := regexp.MustCompile(`script-src '(sha256-[^']+)'`).FindSubmatch(out)[1]
	runs := 0
	each(doc, func(n *nethtml.Node) {
		if _, isData := attr(n, "type"); n.Data == "script" && !isData {
			runs++
			sum := sha256.Sum256([]byte(text(n)))
			require.Equal(t, "sha256-"+base64.StdEncoding.EncodeToString(sum[:]), string(policy))
			require.Equal(t, script, text(n), "only the page's own")
		}
	})
	require.Equal(t, 1, runs)
	require.NotContains(t, string(out), "unsafe-")
	require.NotContains(t, string(out), `href="https:`)
	require.NotContains(t, string(out), "\u202e")
	require.Contains(t, string(out), "Picture left out: it lies outside the manual")
	require.Contains(t, string(out), "Picture left out: it is no SVG")
	style := regexp.MustCompile(`(?s)<style>(.*?)</style>`).FindSubmatch(out)[1]
	require.NotContains(t, string(style), "<")
	require.Equal(t, strings.Count(string(style), "{"), strings.Count(string(style), "}"))
	require.NotContains(t, string(style), "url(")
	require.NotContains(t, string(style), "@import")
}

// TestContrast works out the contrast of every pair of colours in use, light and
// dark. Source: WCAG 2.2, definitions of relative luminance and contrast ratio.
func TestContrast(t *testing.T) {
	at := func(name string, dark bool) float64 {
		for _, c := range palette {
			if c.name == name {
				if dark {
					return luminance(t, c.dark)
				}
				return luminance(t, c.light)
			}
		}
		t.Fatalf("no colour %s", name)
		return 0
	}
	for _, dark := range []bool{false, true} {
		for _, p := range pairs {
			a, b := at(p.over, dark), at(p.ground, dark)
			ratio := (math.Max(a, b) + 0.05) / (math.Min(a, b) + 0.05)
			require.GreaterOrEqual(t, ratio, p.least, "%s on %s, dark %v", p.over, p.ground, dark)
		}
	}
	// The definition's own ends: black on white is 21:1.
	require.InDelta(t, 21, (luminance(t, "#ffffff")+0.05)/(luminance(t, "#000000")+0.05), 1e-9)
}

func luminance(t *testing.T, hex string) float64 {
	var rgb [3]float64
	for i := range rgb {
		v, err := strconv.ParseUint(hex[1+2*i:3+2*i], 16, 8)
		require.NoError(t, err)
		c := float64(v) / 255
		if c <= 0.04045 {
			rgb[i] = c / 12.92
		} else {
			rgb[i] = math.Pow((c+0.055)/1.055, 2.4)
		}
	}
	return 0.2126*rgb[0] + 0.7152*rgb[1] + 0.0722*rgb[2]
}

// TestColoursHaveNames: the style sheet uses no colour that the palette, and so
// the test of contrast, does not know.
func TestColoursHaveNames(t *testing.T) {
	require.Empty(t, regexp.MustCompile(`#[0-9a-fA-F]{3,8}\b|rgb\(|hsl\(`).FindAllString(css, -1))
	known := map[string]bool{}
	for _, c := range palette {
		known[c.name] = true
	}
	for _, m := range regexp.MustCompile(`var\(--([a-z-]+)\)`).FindAllStringSubmatch(css, -1) {
		require.True(t, known[m[1]], m[1])
	}
}

// TestCSSText: a number ends at the blank after it (CSS Syntax Level 3, 4.3.7),
// so a blank of the text's own needs a second one.
func TestCSSText(t *testing.T) {
	require.Equal(t, `a\00003a  b\000022 c`, cssText(`a: b"c`))
}

func FuzzText(f *testing.F) {
	for _, s := range []string{"<script>", `" onclick="x`, "a & b &amp; c", "</style>", "\x00\u202e\xff", "'`{}=", "--><!--"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		p := &page{}
		p.s("<p")
		p.a("title", s)
		p.s(">")
		p.t(s)
		p.s("</p>")
		doc, err := nethtml.Parse(bytes.NewReader(p.Bytes()))
		require.NoError(t, err)
		n := 0
		each(doc, func(e *nethtml.Node) {
			n++
			if e.Data == "p" {
				require.Len(t, e.Attr, 1)
				require.Equal(t, render.Printable(s), e.Attr[0].Val)
				require.Equal(t, render.Printable(s), text(e))
			}
		})
		require.Equal(t, 4, n, "html, head, body and p")
		sheet := cssText(s)
		require.NotContains(t, sheet, "<")
		require.NotContains(t, sheet, `"`)
		require.NotContains(t, sheet, "\n")
	})
}

// BenchmarkPage lowers and writes a generated manual of 12,000 steps; load is
// what comes before.
func BenchmarkPage(b *testing.B) {
	fsys := langtest.Generate(200, 60)
	m, _, err := lang.Load(fsys, "m")
	require.NoError(b, err)
	b.Run("load", func(b *testing.B) {
		for b.Loop() {
			if _, _, err := lang.Load(fsys, "m"); err != nil {
				b.Fatal(err)
			}
		}
	})
	var d *render.Document
	b.Run("lower", func(b *testing.B) {
		for b.Loop() {
			d = render.Lower(m, render.Options{})
		}
	})
	b.Run("write", func(b *testing.B) {
		for b.Loop() {
			var out bytes.Buffer
			if err := Write(&out, d); err != nil {
				b.Fatal(err)
			}
			b.SetBytes(int64(out.Len()))
		}
	})
}

// TestLean: a browser reads the same tree with and without the end tags. Source:
// the parser of golang.org/x/net/html.
func TestLean(t *testing.T) {
	for _, s := range []string{
		"<ul><li>a</li>\n<li><p>b</p><p>c</p></li></ul><dl><dt>x</dt><dd>y</dd></dl>",
		"<div><p>a</p>text</div><table><thead><tr><th>a</th></tr></thead><tbody>\n<tr><td>b</td></tr>\n</tbody><tfoot><tr><td>c</td></tr></tfoot></table>",
		"<blockquote><p>a</p></blockquote><ul><li><p>a</p><ul><li>b</li></ul></li></ul><div><p>a</p>\n</div>",
	} {
		tree := func(s string) string {
			doc, err := nethtml.Parse(strings.NewReader(s))
			require.NoError(t, err)
			var b bytes.Buffer
			require.NoError(t, nethtml.Render(&b, doc))
			return strings.ReplaceAll(b.String(), "\n", "")
		}
		short := string(lean([]byte(s)))
		require.Less(t, len(short), len(s))
		require.Equal(t, tree(s), tree(short))
	}
}
