package bench

// table is a row of states whose changes can be taken back, so that an
// otherwise block or a teardown is tried without copying the bench.
type table[T any] struct {
	at  []T
	old []saved[T]
	try int // how many trials are open
}

type saved[T any] struct {
	i   id
	was T
}

func newTable[T any](n int, first T) table[T] {
	t := table[T]{at: make([]T, n)}
	for i := range t.at {
		t.at[i] = first
	}
	return t
}

// edit gives the state to change. The pointer holds until the next edit or add.
func (t *table[T]) edit(i id) *T {
	if t.try > 0 {
		t.old = append(t.old, saved[T]{i, t.at[i]})
	}
	return &t.at[i]
}

func (t *table[T]) add(v T) id {
	t.at = append(t.at, v)
	return id(len(t.at) - 1)
}

// mark is where a trial began.
type mark struct{ changes, length int }

func (t *table[T]) begin() mark {
	t.try++
	return mark{len(t.old), len(t.at)}
}

func (t *table[T]) back(m mark) {
	for i := len(t.old) - 1; i >= m.changes; i-- {
		t.at[t.old[i].i] = t.old[i].was
	}
	t.old, t.at = t.old[:m.changes], t.at[:m.length]
	t.try--
}
