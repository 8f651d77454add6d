package bind

import (
	"strconv"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/syntax"
)

// wrong reports a value of the wrong kind.
func (d *decoder) wrong(n *model.Node, def *schema.Attr, e syntax.Expr, message, remedy string) {
	if _, bad := e.(*syntax.Bad); bad {
		return // said already
	}
	d.find("form/wrong-value", e.Span(), message, def.Doc, remedy)
}

// literal is the text of a string without values in it.
func (d *decoder) literal(n *model.Node, def *schema.Attr, e syntax.Expr) (string, bool) {
	switch e := e.(type) {
	case *syntax.String:
		if s, ok := e.Literal(); ok {
			return s, true
		}
		d.wrong(n, def, e, "`"+def.Name+"` cannot hold a value in ${…}.", "Write it out.")
		return "", false
	case *syntax.Number:
		if def.Type == schema.Designation || def.Type == schema.Names {
			return e.Text, true
		}
	}
	d.wrong(n, def, e, "`"+def.Name+"` must be text in quotes.", `Write `+def.Name+` = "…".`)
	return "", false
}

func (d *decoder) word(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	s, ok := d.literal(n, def, e)
	if !ok {
		return nil
	}
	if !contains(def.Words, s) {
		f := diag.Finding{Rule: "form/unknown-word", Span: e.Span(),
			Message: "`" + def.Name + "` cannot be \"" + s + "\".",
			Reason:  def.Doc,
			Remedy:  "Use one of: " + quoted(def.Words) + "."}
		if w := nearest(s, def.Words); w != "" {
			f.Remedy = `Did you mean "` + w + `"?`
			f.Fixes = []diag.Fix{{Title: "Write " + w, Edits: []diag.Edit{{Span: e.Span(), New: strconv.Quote(w)}}}}
		}
		d.add(f)
		return nil
	}
	return model.Word(s)
}

func quoted(words []string) string {
	return `"` + strings.Join(words, `", "`) + `"`
}

func (d *decoder) flag(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	if b, ok := e.(*syntax.Bool); ok {
		return model.Flag(b.Value)
	}
	d.wrong(n, def, e, "`"+def.Name+"` must be true or false.", "Write true or false without quotes.")
	return nil
}

func (d *decoder) whole(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	if num, ok := e.(*syntax.Number); ok {
		if w, err := strconv.Atoi(num.Text); err == nil && w <= 1_000_000 {
			return model.Whole(w)
		}
	}
	d.wrong(n, def, e, "`"+def.Name+"` must be a whole number.", "Write a whole number without quotes: "+def.Name+" = 4.")
	return nil
}

func (d *decoder) day(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	s, ok := d.literal(n, def, e)
	if !ok {
		return nil
	}
	if !isDay(s) {
		d.wrong(n, def, e, "\""+s+"\" is not a day.", `Write year, month and day: "2026-03-14".`)
		return nil
	}
	return model.Day(s)
}

// names reads labels: one, a list, or how many.
func (d *decoder) names(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	if num, ok := e.(*syntax.Number); ok && def.Role == schema.Method {
		if w, err := strconv.Atoi(num.Text); err == nil && 0 < w && w <= 1000 {
			return model.Whole(w)
		}
	}
	names := model.Names{}
	for _, item := range items(e) {
		s, ok := d.literal(n, def, item)
		if !ok {
			continue
		}
		for _, old := range names {
			if old.Text == s && def.Role != schema.Method {
				d.add(diag.Finding{Rule: "form/name-used-twice", Span: item.Span(),
					Message: "\"" + s + "\" is named twice.", Reason: "Nobody can tell which one is meant.",
					Remedy: "Take one out, or rename it.", Related: []diag.Related{{Span: old.Span, Message: "The first stands here."}}})
			}
		}
		names = append(names, model.Name{Text: s, Span: item.Span()})
	}
	return names
}

func items(e syntax.Expr) []syntax.Expr {
	if l, ok := e.(*syntax.List); ok {
		return l.Items
	}
	return []syntax.Expr{e}
}

func (d *decoder) paths(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	paths := model.Paths{}
	for _, item := range items(e) {
		if s, ok := d.literal(n, def, item); ok {
			paths = append(paths, model.Name{Text: s, Span: item.Span()})
		}
	}
	return paths
}

// text reads words with the values in them.
func (d *decoder) text(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	s, ok := e.(*syntax.String)
	if !ok {
		d.wrong(n, def, e, "`"+def.Name+"` must be text in quotes.", `Write `+def.Name+` = "…".`)
		return nil
	}
	t := &model.Text{Source: s.Alone()}
	if _, plain := s.Literal(); plain {
		return t
	}
	for _, p := range s.Parts() {
		if p.X != nil {
			t.Values = append(t.Values, d.insert(n, p.X))
		}
	}
	return t
}
