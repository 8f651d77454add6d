package media

import (
	"strings"

	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/source"
	"fettle/lint/prose"
	"fettle/lint/rule"
)

// picture is a picture that a manual prints: a figure, or one that stands in a text.
type picture struct {
	file string // as written
	alt  string
	name string // what people call it
	at   source.Span
	of   source.Span // the words that stand instead of it, or where they are missed
}

// eachPicture calls visit for every picture of the manual's own folder, in source order.
func eachPicture(p *rule.Pass, visit func(picture)) {
	for _, n := range p.Of(entry.Figure.Name) {
		a := n.Attr("file")
		if a == nil || n.Shared || n.Damaged {
			continue
		}
		paths, _ := a.Value.(model.Paths)
		for _, f := range paths {
			visit(picture{file: f.Text, alt: n.Plain("alt"), name: rule.Called(n), at: f.Span, of: n.At("alt")})
		}
	}
	for _, t := range p.Texts() {
		if t.Attr.Def.Type != schema.Prose || t.In.Shared || !prose.Any(t.Words, mayShow) {
			continue
		}
		for _, c := range p.Prose(t.Attr).Pictures {
			visit(picture{c.File, c.Alt, "The picture “" + c.File + "”", c.Span, c.Span})
		}
	}
}

// mayShow is a quick look for Markdown's picture.
func mayShow(s string) bool { return strings.Contains(s, "![") }
