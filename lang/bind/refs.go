package bind

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
	"fettle/lang/schema"
	"fettle/lang/source"
	"fettle/lang/syntax"
)

// refs reads one address or a list of them, or words that may stand instead.
func (d *decoder) refs(n *model.Node, def *schema.Attr, e syntax.Expr) model.Value {
	list := items(e)
	refs := make(model.Refs, 0, len(list))
	for _, item := range list {
		if r, ok := d.ref(n, def, item); ok {
			refs = append(refs, r)
		}
	}
	if len(refs) == 0 && len(list) > 0 {
		return nil
	}
	return refs
}

func (d *decoder) ref(n *model.Node, def *schema.Attr, e syntax.Expr) (model.Ref, bool) {
	switch e := e.(type) {
	case *syntax.Traversal:
		r, rest, ok := d.resolve(n, e)
		if !ok {
			return r, false
		}
		if len(rest) > 0 {
			d.noSuchThing(n, r, rest[0])
			return r, false
		}
		if got := d.sort(r); !allowed(def.To, got) {
			d.find("form/wrong-value", e.Span(), "`"+def.Name+"` cannot be "+sortName(got)+".",
				def.Doc, "Name "+sortNames(def.To)+"."+elsewhere(n, def, got))
			return r, false
		}
		return r, true
	case *syntax.String:
		if len(def.Words) > 0 {
			if s, ok := d.literal(n, def, e); ok {
				if def.Words[0] == "*" || contains(def.Words, s) {
					return model.Ref{Word: s, Start: e.Span().Start, End: e.Span().End}, true
				}
				d.wrong(n, def, e, "`"+def.Name+"` cannot be \""+s+"\".", "Write "+quoted(def.Words)+", or an address without quotes.")
			}
			return model.Ref{}, false
		}
	}
	d.wrong(n, def, e, "`"+def.Name+"` must be an address.", "Write "+exampleAddress(def.To)+" without quotes.")
	return model.Ref{}, false
}

// elsewhere points to the attribute of the same block that is named after what
// was written, as `fastening` is in a fit step.
func elsewhere(n *model.Node, def *schema.Attr, got string) string {
	if a := n.Def.Attr(got); a != nil && a != def && a.Type == schema.Reference && allowed(a.To, got) {
		return " " + strings.ToUpper(sortName(got)[:1]) + sortName(got)[1:] + " is written as `" + got + " = …`."
	}
	return ""
}

// resolve finds what a traversal names. rest is what follows the address of a
// node, a thing of a part or the place.
func (d *decoder) resolve(n *model.Node, t *syntax.Traversal) (model.Ref, []syntax.Step, bool) {
	r := model.Ref{Start: t.Span().Start, End: t.Span().End}
	if t.Root == entry.Procedure.Name && len(t.Steps) >= 1 {
		p := d.m.Find("procedure." + t.Steps[0].Name)
		if p == nil {
			d.unknown(n, t, 1)
			return r, nil, false
		}
		if len(t.Steps) >= 2 && kind.Of(t.Steps[1].Name) != nil {
			if len(t.Steps) < 3 {
				d.unknown(n, t, 2)
				return r, nil, false
			}
			r.To = d.m.Find(p.Address + "." + t.Steps[1].Name + "." + t.Steps[2].Name)
			if r.To == nil {
				d.unknown(n, t, 3)
				return r, nil, false
			}
			return d.things(n, r, t.Steps[3:])
		}
		r.To = p
		return d.things(n, r, t.Steps[1:])
	}
	if len(t.Steps) == 0 || t.Steps[0].Name == "" {
		d.unknown(n, t, 0)
		return r, nil, false
	}
	if kind.Of(t.Root) != nil {
		r.To = d.localStep(n, t.Root, t.Steps[0].Name)
	} else if topBlock(t.Root) != nil {
		r.To = d.m.Find(t.Root + "." + t.Steps[0].Name)
	} else {
		d.unknown(n, t, 0)
		return r, nil, false
	}
	if r.To == nil {
		d.unknown(n, t, 1)
		return r, nil, false
	}
	return d.things(n, r, t.Steps[1:])
}

// localStep finds a step of the procedure that n stands in. Outside every
// procedure the one step of that name in the manual is meant.
func (d *decoder) localStep(n *model.Node, kindName, id string) *model.Node {
	if p := n.Procedure(); p != nil {
		return d.m.Find(p.Address + "." + kindName + "." + id)
	}
	var found *model.Node
	for _, p := range d.m.Procedures {
		if s := d.m.Find(p.Address + "." + kindName + "." + id); s != nil {
			if found != nil {
				return nil
			}
			found = s
		}
	}
	return found
}

// things takes places in brackets, and the named things of a part, off steps.
func (d *decoder) things(n *model.Node, r model.Ref, steps []syntax.Step) (model.Ref, []syntax.Step, bool) {
	for len(steps) > 0 {
		s := steps[0]
		if s.Name == "" {
			place, ok := d.place(r, s)
			if !ok {
				return r, nil, false
			}
			r.Place = place
			steps = steps[1:]
			continue
		}
		list := thingAttr(s.Name)
		if r.Sub != "" || list == "" || r.To.Def.Attr(list) == nil {
			break
		}
		if len(steps) < 2 || !contains(r.To.Names(list), steps[1].Name) && !contains(d.written(r.To, list), steps[1].Name) {
			d.noSuchThing(n, r, steps[min(1, len(steps)-1)])
			return r, nil, false
		}
		r.Sub, r.Name = s.Name, steps[1].Name
		steps = steps[2:]
	}
	return r, steps, true
}

// written reads names of an entry that is not decoded yet.
func (d *decoder) written(n *model.Node, list string) []string {
	sb := d.source[n]
	for i := len(d.open) - 1; i >= 0 && sb == nil; i-- {
		if d.open[i].node == n {
			sb = d.open[i].block
		}
	}
	if sb == nil {
		return nil
	}
	a := sb.Attr(list)
	if a == nil {
		return nil
	}
	var names []string
	for _, item := range items(a.Expr) {
		if s, ok := item.(*syntax.String); ok {
			name, _ := s.Literal()
			names = append(names, name)
		}
	}
	return names
}

func thingAttr(word string) string {
	switch word {
	case "face", "port", "feature", "mark":
		return word + "s"
	}
	return ""
}

// place reads ["left"] and checks that the thing is there.
func (d *decoder) place(r model.Ref, s syntax.Step) (string, bool) {
	str, ok := s.Index.(*syntax.String)
	if ok {
		if name, plain := str.Literal(); plain {
			names := d.keysOf(r.To)
			if len(names) == 0 && d.source[r.To] != nil && r.To.Step == nil {
				return name, true // an entry that is not read yet
			}
			if contains(names, name) {
				return name, true
			}
			f := diag.Finding{Rule: "values/unknown-reference", Span: s.Span,
				Message: "`" + r.To.ID + "` has no place called \"" + name + "\".",
				Reason:  "Nobody can tell which one is meant.", Remedy: "It is not at any places; take the brackets out."}
			if len(names) > 0 {
				f.Remedy = "Its places are: " + strings.Join(names, ", ") + "."
			}
			d.add(f)
			return "", false
		}
	}
	d.find("form/wrong-value", s.Span, "A place must be its name in quotes.", "Brackets say which of several is meant.", `Write ["left"].`)
	return "", false
}

// keysOf are the names that may stand in brackets after a node: its places, or
// the spots of which each reading counts.
func (d *decoder) keysOf(n *model.Node) []string {
	if n.Step != nil {
		if p := n.Step.Places; p != nil {
			return p.Names("names")
		}
		if y := d.types[n]; y != nil {
			return y.spots
		}
		return nil
	}
	if p := d.placesOf(n); p != nil {
		return p.Names("names")
	}
	return nil
}

// sort says what a reference names, in the words of schema.Attr.To.
func (d *decoder) sort(r model.Ref) string {
	switch {
	case r.Sub != "":
		return r.Sub
	case r.To.Step == nil:
		return r.To.Def.Name
	}
	switch r.To.Step.Kind.Yields {
	case kind.Pack:
		return "pack"
	case kind.Mark:
		return "mark"
	}
	return "step"
}

func allowed(to []string, got string) bool {
	if contains(to, got) {
		return true
	}
	return (got == "pack" || got == "mark") && contains(to, "step")
}

func sortName(s string) string {
	switch s {
	case "ppe":
		return "PPE"
	case "places":
		return "places"
	case "pack":
		return "a pack that is chosen"
	}
	if strings.ContainsRune("aeiou", rune(s[0])) {
		return "an " + s
	}
	return "a " + s
}

func sortNames(to []string) string {
	names := make([]string, len(to))
	for i, t := range to {
		names[i] = sortName(t)
	}
	if len(names) > 1 {
		return strings.Join(names[:len(names)-1], ", ") + " or " + names[len(names)-1]
	}
	return names[0]
}

func exampleAddress(to []string) string {
	switch to[0] {
	case "step":
		return "the step's address, such as fit.cover,"
	case "face", "port", "feature":
		return "an address such as part.housing." + to[0] + ".name"
	}
	return "an address such as " + to[0] + ".name"
}

// noSuchThing reports a name that follows an address and means nothing there.
func (d *decoder) noSuchThing(n *model.Node, r model.Ref, s syntax.Step) {
	at := s.Span
	if s.Name != "" {
		at = s.NameSpan()
	}
	f := diag.Finding{Rule: "values/unknown-reference", Span: at,
		Message: "`" + r.Address() + "` has no `" + s.Name + "`.",
		Reason:  "Nobody can tell what is meant."}
	if d.minus(&f, s.Name, at) {
		d.add(f)
		return
	}
	var names []string
	for _, list := range [...]string{"faces", "ports", "features", "marks"} {
		names = append(names, r.To.Names(list)...)
	}
	switch {
	case contains(names, s.Name):
		f.Remedy = "Say what it is: " + r.To.Address + ".face." + s.Name + ", .port., .feature. or .mark."
	case len(names) > 0:
		f.Remedy = "It has: " + strings.Join(names, ", ") + "."
		suggest(&f, s.Name, at, names)
	default:
		f.Remedy = "Take it out, or declare it there."
	}
	f.Related = []diag.Related{{Span: r.To.Name, Message: "It is declared here."}}
	d.add(f)
}

// unknown reports an address whose part number upTo leads nowhere.
func (d *decoder) unknown(n *model.Node, t *syntax.Traversal, upTo int) {
	at, name := t.RootSpan(), t.Root
	prefix := ""
	if upTo > 0 {
		s := t.Steps[min(upTo, len(t.Steps))-1]
		at, name = s.NameSpan(), s.Name
		prefix = t.Root + "."
		for _, s := range t.Steps[:min(upTo, len(t.Steps))-1] {
			prefix += s.Name + "."
		}
	}
	f := diag.Finding{Rule: "values/unknown-reference", Span: at,
		Message: "There is no `" + prefix + name + "`.",
		Reason:  "A builder would look for something that is not there.",
		Remedy:  "Declare it, or correct the address."}
	switch t.Root {
	case "part", "tool", "supply", "ppe", "fastening":
		if upTo == 1 {
			f.Rule = "kit/unknown-entry"
			f.Message = "There is no " + t.Root + " called `" + name + "`."
			f.Remedy = "Add " + t.Root + ` "` + name + `" to the catalogue, or correct the name.`
		}
	}
	if d.minus(&f, name, at) {
		d.add(f)
		return
	}
	suggest(&f, name, at, d.candidates(n, t, upTo))
	if upTo == 0 && len(f.Fixes) == 0 {
		f.Message = "Nothing can be called `" + name + "` here."
		f.Remedy = "An address begins with what it names: part, tool, supply, limit, option, procedure, or a kind of step. Text stands in quotes."
	}
	d.add(f)
}

// minus recognises a name that was meant as a subtraction: a.b-c.d is one
// address with a step b-c.
func (d *decoder) minus(f *diag.Finding, name string, at source.Span) bool {
	i := strings.IndexByte(name, '-')
	if i < 0 {
		return false
	}
	f.Rule = "values/minus-in-name"
	f.Message = "`" + name + "` is read as one name."
	f.Reason = "A hyphen without spaces belongs to the name, so nothing is subtracted."
	f.Remedy = "Put spaces round the minus: " + name[:i] + " - " + name[i+1:] + "."
	f.Fixes = []diag.Fix{{Title: "Put spaces round the minus", Edits: []diag.Edit{{Span: at.Sub(i, i+1), New: " - "}}}}
	return true
}

// candidates are the names that could have been meant at that place.
func (d *decoder) candidates(n *model.Node, t *syntax.Traversal, upTo int) []string {
	var names []string
	switch {
	case upTo == 0:
		for _, b := range top {
			names = append(names, b.Name)
		}
		for _, k := range kind.All() {
			names = append(names, k.Block.Name)
		}
		return names
	case t.Root == entry.Procedure.Name && upTo == 1:
		for _, p := range d.m.Procedures {
			names = append(names, p.ID)
		}
		return names
	case t.Root == entry.Procedure.Name:
		if p := d.m.Find("procedure." + t.Steps[0].Name); p != nil {
			return stepNames(p.Steps, t.Steps[1].Name)
		}
		return nil
	case kind.Of(t.Root) != nil:
		if p := n.Procedure(); p != nil {
			return stepNames(p.Steps, t.Root)
		}
		return nil
	}
	for _, e := range d.m.Of(t.Root) {
		names = append(names, e.ID)
	}
	return names
}

func stepNames(steps []*model.Step, kindName string) []string {
	var names []string
	for _, s := range steps {
		if s.Kind.Block.Name == kindName {
			names = append(names, s.ID)
		}
		for _, b := range s.Blocks {
			names = append(names, stepNames(b.Steps, kindName)...)
		}
	}
	return names
}
