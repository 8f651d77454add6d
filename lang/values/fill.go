package values

import (
	"strings"

	"fettle/calc"
	"fettle/lang/model"
)

// Fill is a text as it reads at a place of this build, each value in its words;
// "…" stands for one that is not known yet.
func (e *Env) Fill(t *model.Text, place string, style calc.Style) string {
	if t == nil {
		return ""
	}
	var b strings.Builder
	n := 0
	for _, p := range t.Source.Parts() {
		if p.X == nil {
			b.WriteString(p.Text)
			continue
		}
		said := "…"
		if n < len(t.Values) && t.Values[n] != nil {
			if v, problem := calc.Eval(t.Values[n].Expr, e.At(place)); problem == nil {
				said = in(v, style)
			}
		}
		b.WriteString(said)
		n++
	}
	return b.String()
}

func in(v calc.Value, style calc.Style) string {
	switch v := v.(type) {
	case calc.Quantity:
		return style.Quantity(v).String()
	case calc.Limits:
		return style.Limits(v.Low, v.High).String()
	case calc.Word:
		if v != "" {
			return string(v)
		}
	}
	return "…"
}
