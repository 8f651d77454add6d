package bench

// checkTools asks that no tool is needed at two places at once. What holds the
// part may well be fitted to it.
func (r *run) checkTools(o *op) {
	for _, t := range o.tools {
		if !has(o.heldBy, t) {
			r.checkFree(o, t, "tools")
		}
	}
	r.checkHolder(o)
}

// checkHolder asks that the tool which holds the part is not the only one there
// is to turn the fastening with.
func (r *run) checkHolder(o *op) {
	if len(o.heldBy) == 0 {
		return
	}
	driven := false // a wrench turns a socket, not a spanner
	for _, t := range o.tools {
		n := r.items[t].node
		driven = driven || n.Has("drive") && !n.Has("size")
	}
	turns := func(t id) bool {
		n := r.items[t].node
		return n.Has("size") && (!driven || n.Has("drive"))
	}
	for _, t := range o.tools {
		if turns(t) && !has(o.heldBy, t) {
			return
		}
	}
	for _, t := range o.heldBy {
		if it := &r.items[t]; has(o.tools, t) && turns(t) && it.tool && it.count < 2 {
			r.breach(ToolElsewhere, o, "held_by", Object{Node: it.node}, Object{Node: o.step.Node, Place: o.place})
		}
	}
}

// checkFree asks that one of a tool is not fitted somewhere else. Where it is
// fitted to what the step works on, it is used there.
func (r *run) checkFree(o *op, t id, attr string) {
	it := &r.items[t]
	on, where := int32(0), none
	for _, b := range it.bodies {
		if p := &r.pieces.at[b]; p.on > 0 {
			on += p.on
			where = b
			for _, u := range o.objects() {
				if c := r.owner(u); c != none && r.together(c, b) || u.sort == aFastening && r.jointMeets(u.id, b) {
					return
				}
			}
		}
	}
	if !it.tool || on == 0 || on < it.count || r.maybe {
		return
	}
	b := r.breach(ToolElsewhere, o, attr, Object{Node: it.node}, r.seatObject(where))
	r.cause(b, r.pieces.at[where].fitted, "", "put on here, and still on")
}

func (r *run) jointMeets(j, b id) bool {
	for _, c := range r.joints[j].stack {
		if r.together(c, b) {
			return true
		}
	}
	return len(r.joints[j].stack) == 0
}
