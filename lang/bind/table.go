package bind

import (
	"strings"

	"fettle/calc"
	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/syntax"
)

// table reads a map whose keys are addresses of values, options, or words.
func (d *decoder) table(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	obj, ok := e.(*syntax.Object)
	if !ok {
		d.wrong(n, def, e, "`"+def.Name+"` must be a map.", "Write "+def.Name+" = { … }.")
		return nil
	}
	t := &model.Table{}
	for _, p := range obj.Pairs {
		key, v := model.Ref{Start: p.Key.Span().Start, End: p.Key.Span().End}, model.Value(nil)
		switch {
		case contains(def.To, "value"):
			key, v = d.valuePair(n, p)
		case contains(def.To, "option"):
			key, v = d.optionPair(n, def, p)
		default:
			if name, ok := keyName(p.Key); ok {
				key.Word = name
				if s, ok := d.literal(n, def, p.Value); ok {
					v = model.Exact(s)
				}
			}
		}
		if v != nil {
			t.Pairs = append(t.Pairs, model.Pair{Key: key, Value: v, Span: p.Value.Span()})
		}
	}
	return t
}

// valuePair reads `choose.pack.total = "0.90 mm"`.
func (d *decoder) valuePair(n *model.Node, p syntax.Pair) (model.Ref, model.Value) {
	t, ok := p.Key.(*syntax.Traversal)
	if !ok {
		d.find("form/wrong-value", p.Key.Span(), "A key must be the address of a value.", "The example is worked out from it.", "Write measure.float = \"…\".")
		return model.Ref{}, nil
	}
	l := &lowering{decoder: d, node: n}
	x := l.value(t)
	if x == nil || len(l.refs) == 0 {
		return model.Ref{}, nil
	}
	key := l.refs[0]
	if key.To.Step == nil {
		d.find("form/wrong-value", t.Span(), "`"+key.Address()+"` is not a value that a step gives.", "The example is worked out from it.",
			"Name a measure, choose, calculate or adjust step.")
		return key, nil
	}
	if x.Type().Shape == calc.WordShape {
		if s, ok := p.Value.(*syntax.String); ok {
			if text, plain := s.Literal(); plain {
				return key, model.Exact(text)
			}
		}
	}
	if x.Type().Shape == calc.ListShape {
		d.find("form/wrong-value", t.Span(), "`"+key.Address()+"` is read at several places.", "Nobody can tell which one is meant.",
			`Say which place: `+t.Span().Text()+`["…"].`)
		return key, nil
	}
	x = l.lower(p.Value, dimension(x.Type().Dim))
	if x == nil {
		return key, nil
	}
	f := finish(x, nil)
	if s, ok := p.Value.(*syntax.String); ok {
		f.Literal = d.silently(s)
	}
	return key, f
}

func (d *decoder) optionPair(n *model.Node, def *schema.Attr, p syntax.Pair) (model.Ref, model.Value) {
	name, _ := keyName(p.Key)
	if t, ok := p.Key.(*syntax.Traversal); ok && t.Root == "option" && len(t.Steps) == 1 {
		name = t.Steps[0].Name
	}
	key := model.Ref{Start: p.Key.Span().Start, End: p.Key.Span().End, To: d.m.Find("option." + name)}
	if key.To == nil {
		f := diag.Finding{Rule: "values/unknown-reference", Span: p.Key.Span(), Message: "There is no option called `" + name + "`.",
			Reason: "The example cannot choose it.", Remedy: "Declare the option, or correct the name."}
		var names []string
		for _, o := range d.m.Of("option") {
			names = append(names, o.ID)
		}
		suggest(&f, name, p.Key.Span(), names)
		d.add(f)
		return key, nil
	}
	s, ok := d.literal(n, def, p.Value)
	if !ok {
		return key, nil
	}
	if choices := key.To.Names("choices"); !contains(choices, s) {
		d.find("values/unknown-reference", p.Value.Span(), "`"+name+"` has no choice called \""+s+"\".", "The example cannot choose it.",
			"Its choices are: "+strings.Join(choices, ", ")+".")
		return key, nil
	}
	return key, model.Exact(s)
}
