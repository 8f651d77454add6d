package rework

import (
	"slices"

	"fettle/bench"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// objectsOf are what an attribute of a step names at the place of the act; of a
// pack the part that it is picked from.
func objectsOf(a bench.Act, attr string) []bench.Object {
	var all []bench.Object
	for _, r := range a.Step.Refs(attr, a.Place) {
		n := r.To
		if n != nil && n.Step != nil && n.Step.Kind.Yields == kind.Pack {
			n = n.Ref("from")
		}
		if n == nil {
			continue
		}
		o := bench.Object{Node: n, Sub: r.Sub, Name: r.Name, Place: a.Place}
		if r.Place != "" {
			o.Place = r.Place
		}
		all = append(all, o)
	}
	return all
}

// acts lists what an act does by a verb.
func on(a bench.Act, verbs ...kind.Verb) []bench.Object {
	var all []bench.Object
	for _, e := range a.Step.Kind.Does {
		if slices.Contains(verbs, e.Verb) {
			all = append(all, objectsOf(a, e.Attr)...)
		}
	}
	return all
}

// alike reports that two objects are one part or fastening, or belong to one.
// What is at no place is at every place.
func alike(a, b bench.Object) bool {
	return a.Node == b.Node && (a.Place == b.Place || a.Place == "" || b.Place == "" || !perPlace(a.Node))
}

// perPlace reports that there is one at each place, or pieces of a heap at each.
func perPlace(n *model.Node) bool {
	return n.Has("at_each") || len(n.Blocks) > 0 && n.Blocks[0].Def.Name == "size"
}

// meets reports that an act does something to an object by one of the verbs.
func meets(a bench.Act, o bench.Object, verbs ...kind.Verb) bool {
	return slices.ContainsFunc(on(a, verbs...), func(x bench.Object) bool { return alike(x, o) })
}

// seats are what a part sits on.
func seats(o bench.Object) []bench.Object {
	var all []bench.Object
	for _, r := range o.Node.Refs("sits_on", o.Place) {
		if r.To != nil {
			place := o.Place
			if r.Place != "" {
				place = r.Place
			}
			all = append(all, bench.Object{Node: r.To, Place: place})
		}
	}
	return all
}

// ground are its seats, what these sit on, and so on down.
func ground(o bench.Object) []bench.Object {
	all := seats(o)
	for i := 0; i < len(all); i++ {
		for _, s := range seats(all[i]) {
			if !slices.Contains(all, s) {
				all = append(all, s)
			}
		}
	}
	return all
}

// stack is what a fastening clamps.
func stack(o bench.Object) []bench.Object {
	var all []bench.Object
	for _, r := range o.Node.Refs("stack", o.Place) {
		if r.To != nil {
			all = append(all, bench.Object{Node: r.To, Place: o.Place})
		}
	}
	return all
}

// between reports a judgement on how things stand to one another, which moving
// one of them makes void; not one on a face or bore of a single part.
func between(a bench.Act) bool {
	objects := objectsOf(a, "on")
	for _, o := range objects {
		if o.Sub == "" || o.Node != objects[0].Node {
			return true
		}
	}
	return false
}

// overlap reports that two lists share a thing, or name the whole of one and a
// face of it.
func overlap(a, b []bench.Object) bool {
	return slices.ContainsFunc(a, func(x bench.Object) bool {
		return slices.ContainsFunc(b, func(y bench.Object) bool {
			return alike(x, y) && (x.Sub == "" || y.Sub == "" || x.Name == y.Name)
		})
	})
}
