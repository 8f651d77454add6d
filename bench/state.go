package bench

import (
	"time"

	"fettle/lang/model"
)

// piece is the state of a body.
type piece struct {
	on          int32 // how many are joined to their seat
	spent, gone int32
	next, prev  id // ring of the bodies that move together
	group       id // label of that ring
	fitted      int32
	taken       int32 // act of the last removal; -1
	byStep      *model.Step
	ever        bool // was on
	trial       bool
	meant       bool // not on yet, but the author meant it to be
	maybe       bool // its state came about under a reading only
	through     bool // something was done under it already: one breach is enough
	wasTrial    bool // the last removal undid a trial fit
	least       int32
	owed        int32 // a later act whose work has been taken as done; -1
}

// grip is how a joint holds.
type grip uint8

const (
	off grip = iota
	started
	tight
	loose
)

// bolt is the state of a joint.
type bolt struct {
	grip     grip
	locked   bool
	trial    bool
	maybe    bool
	fresh    bool // tight as it came; tightening it is not tightening it twice
	settled  bool // a breach about it is out; nothing more is said
	forGood  bool
	oiled    bool // wet with what its torque rests on
	glued    bool // wet with what locks it
	begun    int32
	tightAt  int32
	looseAt  int32
	lockedAt int32
	byStep   *model.Step
	wet      *model.Node
	wetAt    int32
	need     int32 // a run that found it not tight; -1
	owed     int32 // a later act whose work has been taken as done; -1
	needLock int32
}

// film is the state of a surface.
type film struct {
	clean   bool
	since   time.Duration // end of the last cleaning
	cleaned int32         // act; -1
	dirtied int32
}

// word is the state of a slot: what its step said or accepted.
type word struct {
	act       int32 // when it was done; -1
	maybe     bool
	wiped     int32 // of a mark: when it was wiped
	disturbed int32 // when what it accepted was moved again
	held      int32 // the hold that checked it
	lid       id    // what covered it before it was held
	lidAt     int32
	told      bool  // a breach about it is out
	stale     int32 // of a setting: when its lock was tightened; -1
	bead      id    // of a seal: the bead it laid
}

// bead is one seal that was laid.
type bead struct {
	slot     id
	act      int32
	start    time.Duration
	end      time.Duration
	closed   int32 // act; -1
	closedAt time.Duration
	late     bool  // a breach about its time is out
	squeeze  bool  // squeeze-out not cleaned off yet
	parted   int32 // act that parted it; -1
	renewed  bool
	supply   *model.Node
}

// pond is liquid that stands in a body.
type pond struct {
	body    id
	through target
	act     int32
	out     bool
}

// guardian is a hold that was released.
type guardian struct {
	slot id
	act  int32
	void int32 // the act that disturbed what it checked; -1
}

// bench is the state of the work, with the tables that can be taken back.
type state struct {
	pieces table[piece]
	bolts  table[bolt]
	films  table[film]
	words  table[word]
	beads  table[bead]
	ponds  table[pond]
	holds  table[guardian]
	sizes  table[int32] // by group label
	now    time.Duration

	seen []int32 // by body: the last search that met it
	pass int32
}

func newState(x *index, p *plan) state {
	s := state{
		pieces: newTable(len(x.bodies), piece{fitted: -1, taken: -1, owed: -1}),
		bolts:  newTable(len(x.joints), bolt{begun: -1, tightAt: -1, looseAt: -1, lockedAt: -1, wetAt: -1, need: -1, needLock: -1, owed: -1}),
		films:  newTable(len(x.skins), film{cleaned: -1, dirtied: -1}),
		words:  newTable(len(x.ops), word{act: -1, wiped: -1, disturbed: -1, held: -1, lid: none, lidAt: -1, stale: -1, bead: none}),
		sizes:  newTable[int32](len(x.bodies), 1),
		seen:   make([]int32, len(x.bodies)),
	}
	for i := range s.pieces.at {
		s.pieces.at[i].next, s.pieces.at[i].prev, s.pieces.at[i].group = id(i), id(i), id(i)
	}
	for i := range x.bodies {
		if b := &x.bodies[i]; b.inPlace > 0 && p.present[b.item] {
			s.pieces.at[i].on, s.pieces.at[i].ever = b.inPlace, true
			for _, seat := range b.seats {
				s.join(id(i), seat)
			}
		}
	}
	for i := range x.joints {
		if x.joints[i].ready && !p.absent[i] {
			s.bolts.at[i].grip, s.bolts.at[i].fresh, s.bolts.at[i].locked = tight, true, true
		}
	}
	return s
}

// together says whether two bodies are joined, directly or through others.
func (s *state) together(a, b id) bool { return s.pieces.at[a].group == s.pieces.at[b].group }

// join puts two bodies, and all that is joined to them, into one ring: the
// smaller ring takes the label of the larger.
func (s *state) join(a, b id) {
	small, large := s.pieces.at[a].group, s.pieces.at[b].group
	if small == large {
		return
	}
	from, to := a, b
	if s.sizes.at[small] > s.sizes.at[large] {
		small, large, from, to = large, small, b, a
	}
	*s.sizes.edit(large) += s.sizes.at[small]
	for i, done := from, false; !done; {
		p := s.pieces.edit(i)
		p.group = large
		i = p.next
		done = i == from
	}
	// Two rings become one when two neighbours change hands.
	fromNext, toNext := s.pieces.at[from].next, s.pieces.at[to].next
	s.pieces.edit(from).next, s.pieces.edit(to).next = toNext, fromNext
	s.pieces.edit(toNext).prev, s.pieces.edit(fromNext).prev = from, to
}

// split takes bodies of one ring out of it and gives them a ring of their own.
func (s *state) split(bodies []id) {
	label := s.sizes.add(int32(len(bodies)))
	for _, b := range bodies {
		p := s.pieces.at[b]
		*s.sizes.edit(p.group)--
		s.pieces.edit(p.prev).next = p.next
		s.pieces.edit(p.next).prev = p.prev
	}
	for i, b := range bodies {
		p := s.pieces.edit(b)
		p.group = label
		p.next, p.prev = bodies[(i+1)%len(bodies)], bodies[(i+len(bodies)-1)%len(bodies)]
	}
}

// loaded finds what comes along when b is taken: what sits on it and nowhere
// else, and so on up. across are bodies that sit on it and also on what stays.
func (x *index) loaded(s *state, b id) (with, across []id) {
	s.pass++
	s.seen[b] = s.pass
	with = []id{b}
	for i := 0; i < len(with); i++ {
		for _, l := range x.bodies[with[i]].load {
			if s.pieces.at[l].on == 0 || s.seen[l] == s.pass || !s.together(l, b) {
				continue
			}
			if x.restsOnly(s, l) {
				s.seen[l] = s.pass
				with = append(with, l)
			} else {
				across = append(across, l)
			}
		}
	}
	kept := across[:0]
	for _, l := range across { // met again from its other seats by now
		if s.seen[l] != s.pass && !has(kept, l) {
			kept = append(kept, l)
		}
	}
	return with, kept
}

// restsOnly says whether all that a body sits on is among those just found.
func (x *index) restsOnly(s *state, l id) bool {
	for _, seat := range x.bodies[l].seats {
		if s.seen[seat] != s.pass && s.together(seat, l) {
			return false
		}
	}
	return true
}

// trial is a point to come back to.
type trial struct {
	pieces, bolts, films, words, beads, ponds, holds, sizes mark
	now                                                     time.Duration
}

func (s *state) begin() trial {
	return trial{s.pieces.begin(), s.bolts.begin(), s.films.begin(), s.words.begin(), s.beads.begin(), s.ponds.begin(), s.holds.begin(), s.sizes.begin(), s.now}
}

// back undoes everything since begin.
func (s *state) back(t trial) {
	s.pieces.back(t.pieces)
	s.bolts.back(t.bolts)
	s.films.back(t.films)
	s.words.back(t.words)
	s.beads.back(t.beads)
	s.ponds.back(t.ponds)
	s.holds.back(t.holds)
	s.sizes.back(t.sizes)
	s.now = t.now
}
