// Package html writes a checklist as one page that needs nothing else: it reads,
// prints and is filled in by pen without a script, and fetches nothing. It is for
// whoever stands at the engine.
//
// It refuses markup from a manual: all text is escaped in one place, and a
// picture is shown as an image, in which no script runs.
//
// Invariant: elements keep their identifiers, made from addresses, as long as
// the manual keeps its labels, so that a script can find them.
package html

import (
	"bytes"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"fmt"
	"io"
	"strconv"
	"strings"

	"fettle/render"
	"fettle/render/words"
)

//go:embed style.css
var css string

// Write writes the page. The error is that of w.
func Write(w io.Writer, d *render.Document) error {
	return write(w, &page{d: d, said: map[string]saying{}})
}

// Paper is Write without what a screen needs, for printing.
func Paper(w io.Writer, d *render.Document) error {
	return write(w, &page{d: d, said: map[string]saying{}, paper: true})
}

func write(w io.Writer, p *page) error {
	d := p.d
	p.Grow(1 << 16)
	p.head()
	p.front()
	for i := range d.Procedures {
		p.procedure(&d.Procedures[i])
	}
	p.back()
	p.s("</main>\n")
	p.foot()
	body := lean(p.Bytes())
	p.Reset()
	p.Write(body)
	if !p.paper {
		p.s(`<script type="application/json" id=data>`, data(p.d.Live), "</script>\n<script>", script, "</script>\n")
	}
	p.s("</body>\n</html>\n")
	_, err := w.Write(p.Bytes())
	return err
}

// page is the page as far as it is written.
type page struct {
	bytes.Buffer
	d    *render.Document
	said map[string]saying // by the address of a step

	paper bool
}

// s writes markup.
func (p *page) s(markup ...string) {
	for _, m := range markup {
		p.WriteString(m)
	}
}

// t writes text.
func (p *page) t(text string) {
	text = render.Printable(text)
	from := 0
	for i := 0; i < len(text); i++ {
		var ref string
		switch text[i] {
		case '&':
			ref = "&amp;"
		case '<':
			ref = "&lt;"
		case '>':
			ref = "&gt;"
		case '"':
			ref = "&#34;"
		case '\'':
			ref = "&#39;"
		default:
			continue
		}
		p.WriteString(text[from:i])
		p.WriteString(ref)
		from = i + 1
	}
	p.WriteString(text[from:])
}

// a writes an attribute.
func (p *page) a(name, value string) {
	p.s(" ", name, "=")
	if bare(value) {
		p.s(value)
		return
	}
	p.s(`"`)
	p.t(value)
	p.s(`"`)
}

// bare reports a value that needs no quotes.
func bare(value string) bool {
	for i := range len(value) {
		c := value[i]
		if !('a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || '0' <= c && c <= '9' || c == '_' || c == '-' || c == '.' || c == '#') {
			return false
		}
	}
	return value != ""
}

// el writes an element that holds text. Open is its name with attributes that are ours.
func (p *page) el(open, text string) {
	name, _, _ := strings.Cut(open, " ")
	p.s("<", open, ">")
	p.t(text)
	p.s("</", name, ">")
}

func (p *page) head() {
	style := sheet(p.d)
	if p.paper { // a printer's own dialog asks for its paper; a file must say
		size := "A4"
		if p.d.Units == "inch" {
			size = "letter"
		}
		style += "@page{size:" + size + "}\n"
	}
	hash := func(s string) string {
		sum := sha256.Sum256([]byte(s))
		return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
	}
	p.s("<!DOCTYPE html>\n<html lang=en>\n<head>\n<meta charset=\"utf-8\">\n")
	// Nothing is fetched: the one style sheet and the one script are known by
	// their hashes, and pictures stand in the page.
	p.s(`<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src '`, hash(script), `'; style-src '`,
		hash(style), `'; img-src data:; base-uri 'none'; form-action 'none'">`, "\n")
	p.s(`<meta name=viewport content="width=device-width, initial-scale=1">`, "\n")
	p.s(`<meta name=color-scheme content="light dark">`, "\n")
	p.el("title", p.d.Title+", "+strings.ToLower(words.RevisionWord)+" "+p.d.Revision)
	p.s("\n<style>", style, "</style>\n</head>\n<body")
	p.a("data-manual", p.d.ID)
	p.a("data-revision", p.d.Revision)
	p.a("data-digest", p.d.Digest)
	p.s(">\n")
}

// sheet is the style sheet: colours by light and dark, paper always light, and
// what stands at the foot of every printed page.
func sheet(d *render.Document) string {
	foot := d.Title + " · " + words.RevisionWord + " " + d.Revision
	if d.Digest != "" {
		foot += " · " + d.Digest
	}
	return ":root{" + colours(false) + "}\n" +
		"@media screen and (prefers-color-scheme:dark){:root{" + colours(true) + "}}\n" +
		plain(css) +
		"@page{margin:13mm 12mm 16mm;@bottom-left{content:\"" + cssText(foot) + "\";font-size:7.5pt;width:85%}" +
		"@bottom-right{content:counter(page) \" / \" counter(pages);font-size:8pt}}\n"
}

// plain leaves the comments and line ends of a style sheet out.
func plain(css string) string {
	var b strings.Builder
	for {
		before, after, found := strings.Cut(css, "/*")
		b.WriteString(before)
		if !found {
			return strings.ReplaceAll(strings.ReplaceAll(b.String(), "\n", ""), "  ", "")
		}
		_, css, _ = strings.Cut(after, "*/")
	}
}

// cssText is text inside a quoted CSS string: all but letters, digits and a few
// harmless characters as numbers, so that it ends neither string nor element.
func cssText(s string) string {
	var b strings.Builder
	for _, r := range render.Printable(s) {
		if 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z' || '0' <= r && r <= '9' || r == ' ' || r == '.' || r == ',' || r == '-' {
			b.WriteRune(r)
		} else {
			fmt.Fprintf(&b, `\%06x `, r) // the blank ends the number and is not printed
		}
	}
	return b.String()
}

func (p *page) foot() {
	p.s("<footer>\n")
	p.s(`<p class=quiet>`)
	p.t(p.d.Title + ", " + strings.ToLower(words.RevisionWord) + " " + p.d.Revision + ". " + words.Cautions[0])
	p.s("</p>\n</footer>\n")
}

// tick is a box to tick with its label.
func (p *page) tick(class, label string) {
	p.s(`<label class=`, class, `><input type=checkbox>`)
	p.t(label)
	p.s("</label>")
}

// input is a box to write in, inside its label.
func (p *page) input(label, value string, attrs ...string) {
	p.s("<label>")
	p.t(label)
	p.field(value, attrs...)
	p.s("</label>")
}

// field is a box to write in without its label. Attrs are names and values.
func (p *page) field(value string, attrs ...string) {
	p.s("<input")
	for i := 0; i+1 < len(attrs); i += 2 {
		p.a(attrs[i], attrs[i+1])
	}
	if value != "" {
		p.a("value", value)
	}
	p.s(">")
}

func itoa(n int) string { return strconv.Itoa(n) }
