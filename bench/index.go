package bench

import (
	"sync"

	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/model"
)

// id is the place of something in one of the index's lists.
type id = int32

const none id = -1

// sort says in which list a target's id counts.
type sort uint8

const (
	aBody      sort = iota + 1 // a part or tool at one place
	aSurface                   // a face, port, feature or mark of a body
	aFastening                 // a fastening at one place
	aSlot                      // a step at one place
)

type target struct {
	sort sort
	id   id
}

// item is a part or tool of the catalogue.
type item struct {
	node    *model.Node
	tool    bool
	each    bool // count is for each place
	graded  bool
	useOnce bool
	count   int32
	bodies  []id // one for each place where it occurs
	names   []named
}

// named is a face, port, feature or mark.
type named struct{ sub, name string }

// body is an item at one place.
type body struct {
	item     id
	place    string
	seats    []id     // what it sits on
	load     []id     // what sits on it
	covers   []target // what cannot be reached while it is on
	lids     []id     // what covers the whole of it
	heldBy   []target // what must come off first
	clamps   []id     // fastenings whose stack holds it
	fastens  []id     // fastenings that it is a piece of
	seals    []id     // slots that lay sealant on it
	marked   []id     // slots that make a mark on it
	settings []id     // slots that set something of it and lock it
	guards   []id     // slots that judge it or something of it, and are critical
	checked  []id     // slots of which a hold checks that they accept it
	first    id       // its first surface, the whole; the named ones follow
	quantity int32
	inPlace  int32
	locks    []id // joints that it locks
	base     bool // sits on nothing: stands on the bench from the start
	grams    float64
}

// skin is what the index knows of a surface.
type skin struct {
	body   id
	lids   []id
	guards []id
}

// joint is a fastening at one place.
type joint struct {
	node     *model.Node
	place    string
	stack    []id
	pieces   []id // the bodies it is made of
	locks    []id // the bodies that lock it
	glue     *model.Node
	wet      *model.Node // what its torque rests on; nil where it says nothing, or dry
	dry      bool
	slips    bool // slackened, it lets go: a set screw, a gland, a pipe
	opens    bool // taken out, it lets a liquid out
	moves    bool // made to be slack at times: an adjuster, a lock nut
	lids     []id
	guards   []id
	checked  []id
	ready    bool // tight at the start
	settings []id // slots that set what it locks
	set      []id // slots that set the fastening itself
}

// index is a manual as numbers. Nothing in it depends on a choice of options.
type index struct {
	m      *model.Manual
	items  []item
	bodies []body
	skins  []skin
	joints []joint
	ops    []op // by slot

	entries map[*model.Node]target // of an item (aBody, id of the item) or the first joint
	count   map[*model.Node]int    // joints of a fastening
	first   map[*model.Step]id     // the first slot of a step; the places follow
	names   map[*model.Node][]string
	house   house
	packs   map[*model.Step]*model.Node // the graded part of a step that picks
	curing  sync.Mutex
	cures   map[cureKey]cureTime // guarded by curing; all else is only read once made
	holders []id                 // items that hold the machine still
	coats   []id                 // slots that lay something on a fastening that cures
}

func newIndex(m *model.Manual) *index {
	x := &index{m: m, entries: make(map[*model.Node]target, len(m.Entries)), count: map[*model.Node]int{},
		names: map[*model.Node][]string{}, packs: map[*model.Step]*model.Node{}, cures: map[cureKey]cureTime{}}
	x.house = houseOf(m)
	x.addPlaces()
	x.addSteps()
	x.addBodies(x.extraPlaces())
	x.addJoints()
	x.relate()
	x.compile()
	x.guard()
	return x
}

// placesOf lists the names of a places entry, or one nameless place.
func (x *index) placesOf(p *model.Node) []string {
	if p == nil {
		return nowhere
	}
	return x.names[p]
}

var nowhere = []string{""}

// addSteps gives every step its slots and finds what packs are picked from.
func (x *index) addSteps() {
	n, steps := id(0), 0
	x.m.EachStep(func(*model.Step) { steps++ })
	x.first = make(map[*model.Step]id, steps)
	x.m.EachStep(func(s *model.Step) {
		x.first[s] = n
		n += id(len(x.placesOf(s.Places)))
		for _, e := range s.Kind.Does {
			if e.Verb == kind.Picks {
				if from := s.Ref(e.Attr); from != nil {
					x.packs[s] = from
				}
			}
		}
	})
	x.ops = make([]op, n)
}

// extraPlaces finds the places at which parts are fitted that are not declared
// at any: graded ones, mostly, which share one heap.
func (x *index) extraPlaces() map[*model.Node][]string {
	extra := map[*model.Node][]string{}
	x.m.EachStep(func(s *model.Step) {
		for _, e := range s.Kind.Does {
			if e.Verb != kind.Joins && e.Verb != kind.PutsOn {
				continue
			}
			for _, r := range s.AllRefs(e.Attr) {
				if n := x.itemOf(r.To); n != nil && !n.Has("at_each") {
					for _, p := range x.placesOf(s.Places) {
						extra[n] = addName(extra[n], p)
					}
				}
			}
		}
	})
	return extra
}

func addName(names []string, name string) []string {
	for _, n := range names {
		if n == name {
			return names
		}
	}
	return append(names, name)
}

// itemOf is the part or tool that a reference means; of a pack the graded part.
func (x *index) itemOf(n *model.Node) *model.Node {
	if n == nil {
		return nil
	}
	if n.Step != nil {
		return x.packs[n.Step]
	}
	return n
}

func (x *index) addBodies(extra map[*model.Node][]string) {
	n := len(x.m.Entries)
	x.items, x.bodies, x.skins = make([]item, 0, n), make([]body, 0, n), make([]skin, 0, 2*n)
	for _, n := range x.m.Entries {
		if !n.Is(entry.Part) && !n.Is(entry.Tool) {
			continue
		}
		it := item{node: n, tool: n.Is(entry.Tool), each: n.Has("at_each"), useOnce: n.Flag("use_once")}
		quantity := max(n.Whole("quantity", "", 1), n.Whole("in_place", "", 0))
		if sizes := n.Nested(entry.Size); len(sizes) > 0 {
			it.graded, quantity = true, 0
			for _, s := range sizes {
				quantity += s.Whole("in_kit", "", 0)
			}
		}
		it.count = count(quantity)
		for _, list := range [...]string{"faces", "ports", "features", "marks"} {
			for _, name := range n.Names(list) {
				it.names = append(it.names, named{list[:len(list)-1], name})
			}
		}
		places := extra[n]
		if it.each {
			places = x.placesOf(n.Ref("at_each"))
		} else if len(places) == 0 {
			places = nowhere
		}
		at := id(len(x.items))
		x.entries[n] = target{aBody, at}
		grams := 0.0
		if q := n.Quantity("mass", ""); q != nil {
			kilos, _ := q.Base().Float64()
			grams = kilos * 1000
		}
		for _, p := range places {
			b := body{item: at, place: p, first: id(len(x.skins)), grams: grams,
				quantity: count(n.Whole("quantity", p, 1)), inPlace: count(n.Whole("in_place", p, 0))}
			if len(places) == 1 || it.each {
				b.quantity = max(b.quantity, b.inPlace)
			} else {
				b.quantity = max(1, it.count/id(len(places)))
			}
			me := id(len(x.bodies))
			for range len(it.names) + 1 {
				x.skins = append(x.skins, skin{body: me})
			}
			it.bodies = append(it.bodies, me)
			x.bodies = append(x.bodies, b)
		}
		x.items = append(x.items, it)
	}
}

// count is a number of pieces, kept in bounds.
func count(n int) int32 { return int32(min(max(n, 0), 1<<20)) }

// bodiesOf are the bodies of a part or tool, seen from a place: the one there,
// or all of them.
func (x *index) bodiesOf(n *model.Node, place string) []id {
	t, ok := x.entries[n]
	if !ok || t.sort != aBody {
		return nil
	}
	all := x.items[t.id].bodies
	if len(all) == 1 {
		return all
	}
	for i, b := range all {
		if p := x.bodies[b].place; p == place {
			return all[i : i+1]
		}
	}
	return all
}

// jointsOf are the joints of a fastening, seen from a place.
func (x *index) jointsOf(n *model.Node, place string) []id {
	t, ok := x.entries[n]
	if !ok || t.sort != aFastening {
		return nil
	}
	var all []id
	for i := range id(x.count[n]) {
		if x.joints[t.id+i].place == place {
			return []id{t.id + i}
		}
		all = append(all, t.id+i)
	}
	return all
}

// surface finds a named surface of a body, or the whole.
func (x *index) surface(b id, sub, name string) id {
	for i, n := range x.items[x.bodies[b].item].names {
		if n.sub == sub && n.name == name {
			return x.bodies[b].first + id(i) + 1
		}
	}
	return x.bodies[b].first
}

// whole says whether a surface is the whole of its body.
func (x *index) whole(s id) bool { return x.bodies[x.skins[s].body].first == s }

// targets resolves references at a place.
func (x *index) targets(refs []model.Ref, place string) []target {
	all := make([]target, 0, len(refs))
	for i := range refs {
		all = x.resolve(all, &refs[i], place)
	}
	return all
}

func (x *index) resolve(all []target, r *model.Ref, place string) []target {
	if r.To == nil {
		return all
	}
	if r.Place != "" {
		place = r.Place
	}
	if s := r.To.Step; s != nil {
		if s.Kind.Yields == kind.Pack {
			for _, b := range x.bodiesOf(x.packs[s], place) {
				all = append(all, target{aBody, b})
			}
			return all
		}
		for _, slot := range x.slotsOf(s, place) {
			all = append(all, target{aSlot, slot})
		}
		return all
	}
	if r.To.Is(entry.Fastening) {
		for _, j := range x.jointsOf(r.To, place) {
			all = append(all, target{aFastening, j})
		}
		return all
	}
	for _, b := range x.bodiesOf(r.To, place) {
		if r.Sub == "" {
			all = append(all, target{aBody, b})
		} else {
			all = append(all, target{aSurface, x.surface(b, r.Sub, r.Name)})
		}
	}
	return all
}

// slotsOf are the slots of a step, seen from a place: the one there, or all.
func (x *index) slotsOf(s *model.Step, place string) []id {
	first, ok := x.first[s]
	if !ok {
		return nil
	}
	names := x.placesOf(s.Places)
	if place != "" {
		for i, n := range names {
			if n == place {
				return []id{first + id(i)}
			}
		}
	}
	all := make([]id, len(names))
	for i := range all {
		all[i] = first + id(i)
	}
	return all
}

// owner is the body that a target is, or that it belongs to.
func (x *index) owner(t target) id {
	switch t.sort {
	case aBody:
		return t.id
	case aSurface:
		return x.skins[t.id].body
	}
	return none
}
