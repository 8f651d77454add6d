package bench

import (
	"fettle/lang/model"
)

// String names the object as a foreman would: "drive face of Crankcase, left",
// `step 3.4 "Tighten the head nuts"`.
func (o Object) String() string {
	if o.Node == nil {
		return ""
	}
	s := o.Node.Title()
	switch {
	case o.Node.Step != nil:
		s = "step " + o.Node.Step.Number + ` "` + s + `"`
	case o.Sub == "feature":
		s = o.Name + " of " + s
	case o.Sub != "":
		s = o.Name + " " + o.Sub + " of " + s
	}
	if o.Place != "" {
		s += ", " + o.Place
	}
	return s
}

// Ref gives the object as a reference of the model.
func (o Object) Ref() model.Ref {
	return model.Ref{To: o.Node, Sub: o.Sub, Name: o.Name, Place: o.Place}
}

func (x *index) object(t target) Object {
	switch t.sort {
	case aBody:
		return x.bodyObject(t.id)
	case aSurface:
		b := &x.bodies[x.skins[t.id].body]
		o := x.bodyObject(x.skins[t.id].body)
		if i := t.id - b.first; i > 0 {
			n := x.items[b.item].names[i-1]
			o.Sub, o.Name = n.sub, n.name
		}
		return o
	case aFastening:
		return x.jointObject(t.id)
	case aSlot:
		return x.slotObject(t.id)
	}
	return Object{}
}

func (x *index) bodyObject(b id) Object {
	return Object{Node: x.items[x.bodies[b].item].node, Place: x.bodies[b].place}
}

func (x *index) jointObject(j id) Object {
	return Object{Node: x.joints[j].node, Place: x.joints[j].place}
}

func (x *index) slotObject(s id) Object {
	return Object{Node: x.ops[s].step.Node, Place: x.ops[s].place}
}

func (x *index) bodyObjects(bodies []id) []Object {
	all := make([]Object, len(bodies))
	for i, b := range bodies {
		all[i] = x.bodyObject(b)
	}
	return all
}
