package bench

import (
	"fettle/lang/kind"
)

// Teardown is the shortest way to get at something: what comes off and in
// which order. Every move is forced by one before or after it, so there is no
// shorter one.
type Teardown struct {
	Moves []Move
	Renew []Renewal
	Stuck *Stuck // why it cannot be done; nil where it can
}

// Move is one thing that is undone.
type Move struct {
	Verb   kind.Verb // Takes, Opens or Slackens
	Object Object
	With   []Object // what comes along
	Seals  []Object // steps whose seals break
}

// Renewal is a part or tool that is spent on the way, and how many of it.
type Renewal struct {
	Object Object
	Count  int
	Short  bool // the kit does not hold as many more
	body   id
}

// Stuck says what cannot be undone.
type Stuck struct {
	Object Object
	Why    string
	act    int32
}

// goal is something that must be off, or only in reach.
type goal struct {
	at  target
	off bool
}

// teardown plans on the state as it is, and leaves it so.
func (r *run) teardown(goals []goal) *Teardown {
	p := &planner{run: r, out: &Teardown{}, busy: map[target]bool{}}
	point := r.begin()
	for _, g := range goals {
		p.reach(g.at)
		if !g.off || p.out.Stuck != nil {
			continue
		}
		switch b := p.owner(g.at); {
		case b != none:
			p.takeOff(b)
		case g.at.sort == aFastening:
			p.openUp(g.at.id)
		}
	}
	for i := range p.out.Renew {
		n := &p.out.Renew[i]
		n.Short = p.items[p.bodies[n.body].item].node.Flag("supplied") && int32(n.Count) > p.left(n.body)
	}
	r.back(point)
	return p.out
}

type planner struct {
	*run
	out  *Teardown
	busy map[target]bool
}

func (p *planner) stuck(t target, why string, act int32) {
	if p.out.Stuck == nil {
		p.out.Stuck = &Stuck{p.object(t), why, act}
	}
}

// reach takes off all that covers a target.
func (p *planner) reach(t target) {
	for l := p.lidOn(t); l != none && p.out.Stuck == nil; l = p.lidOn(t) {
		p.takeOff(l)
		if p.covers(l) { // taken as on, so there is nothing to take off
			p.pieces.edit(l).through = true
		}
	}
}

// takeOff takes a body off after all that holds it.
func (p *planner) takeOff(b id) {
	t := target{aBody, b}
	if p.pieces.at[b].on == 0 || p.out.Stuck != nil {
		return
	}
	if p.busy[t] {
		p.stuck(t, "held by what it holds itself", p.pieces.at[b].fitted)
		return
	}
	p.busy[t] = true
	defer delete(p.busy, t)
	if at := p.pieces.at[b].fitted; at >= 0 && p.ops[p.acts[at].slot].irreversible {
		p.stuck(t, "cannot be undone", at)
		return
	}
	for _, h := range p.bodies[b].heldBy {
		switch {
		case h.sort == aBody && p.together(h.id, b):
			p.takeOff(h.id)
		case h.sort == aFastening:
			p.openUp(h.id)
		}
	}
	for _, j := range p.bodies[b].fastens {
		p.openUp(j)
	}
	p.reach(t)
	if p.pieces.at[b].on == 0 || p.out.Stuck != nil {
		return
	}
	with, across := p.loaded(&p.state, b)
	for _, l := range across {
		if len(p.bodies[l].fastens) == 0 && !p.isLock(l) {
			p.takeOff(l)
		}
	}
	for _, c := range with {
		for _, j := range p.bodies[c].clamps {
			if p.spans(j, with, b) {
				p.openUp(j)
			}
		}
	}
	if p.out.Stuck != nil {
		return
	}
	with, across = p.loaded(&p.state, b)
	with = append(with, across...)
	m := Move{Verb: kind.Takes, Object: p.bodyObject(b), With: p.bodyObjects(with[1:])}
	for _, c := range with {
		for _, slot := range p.bodies[c].seals {
			i := p.words.at[slot].bead
			if i == none || p.beads.at[i].closed < 0 || p.beads.at[i].parted >= 0 {
				continue
			}
			for _, d := range p.ops[slot].seal.bodies {
				if !has(with, d) && p.together(d, c) {
					p.beads.edit(i).parted = p.act
					m.Seals = append(m.Seals, p.slotObject(slot))
					break
				}
			}
		}
	}
	p.out.Moves = append(p.out.Moves, m)
	q := p.pieces.edit(b)
	if p.items[p.bodies[b].item].useOnce {
		n := min(q.on, max(q.least, 1))
		q.spent += n
		p.renew(b, n)
		q = p.pieces.edit(b)
	}
	q.on, q.meant = 0, false
	p.split(with)
}

// openUp takes a joint out.
func (p *planner) openUp(j id) {
	g := p.bolts.at[j]
	t := target{aFastening, j}
	if g.grip == off || p.out.Stuck != nil {
		return
	}
	if p.busy[t] {
		p.stuck(t, "covered by what it holds itself", g.tightAt)
		return
	}
	p.busy[t] = true
	defer delete(p.busy, t)
	if g.tightAt >= 0 && p.ops[p.acts[g.tightAt].slot].irreversible {
		p.stuck(t, "cannot be undone", g.tightAt)
		return
	}
	p.reach(t)
	if p.out.Stuck != nil {
		return
	}
	def := &p.joints[j]
	for _, list := range [...][]id{def.locks, def.pieces} {
		for _, b := range list {
			q := p.pieces.at[b]
			if q.on == 0 || !p.items[p.bodies[b].item].useOnce {
				continue
			}
			p.pieces.edit(b).spent += q.on
			p.pieces.edit(b).on = 0
			p.renew(b, q.on)
		}
	}
	p.out.Moves = append(p.out.Moves, Move{Verb: kind.Opens, Object: p.jointObject(j)})
	p.release(j)
}

func (p *planner) renew(b id, n int32) {
	for i := range p.out.Renew {
		if p.out.Renew[i].body == b {
			p.out.Renew[i].Count += int(n)
			return
		}
	}
	p.out.Renew = append(p.out.Renew, Renewal{Object: p.bodyObject(b), Count: int(n), body: b})
}
