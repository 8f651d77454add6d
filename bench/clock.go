package bench

import (
	"math/big"
	"time"

	"fettle/calc"
	screen "fettle/calc/joint"
	"fettle/lang/entry"
	"fettle/lang/model"
)

// duration is q on the bench's clock, which counts nanoseconds. A third of a
// second is rounded down; so is a limit that is compared with it, and slack
// makes up for what many such steps lose.
func duration(q calc.Quantity) time.Duration {
	n, f := q.Num(), q.Unit.Factor
	if n.IsInt() && f.IsInt() && n.Num().IsInt64() && f.Num().IsInt64() {
		if a, b := n.Num().Int64(), f.Num().Int64(); a >= 0 && a < longest/b {
			return time.Duration(a*b) * time.Second
		}
	}
	s := q.Base()
	s.Mul(s, big.NewRat(int64(time.Second), 1))
	i := new(big.Int).Quo(s.Num(), s.Denom())
	if i.Sign() < 0 {
		return 0
	}
	if !i.IsInt64() || i.Int64() > longest*int64(time.Second) {
		return longest * time.Second
	}
	return time.Duration(i.Int64())
}

// longest is the most seconds that one step may take: a year. More is a slip
// of the pen, and the clock must not overflow.
const longest = 366 * 24 * 3600

// slack is what rounding may lose over a whole manual.
const slack = 100 * time.Microsecond

// quantity is a time to show: in hours, minutes or seconds, whichever comes out even.
func quantity(d time.Duration) calc.Quantity {
	u := second
	switch {
	case d%time.Hour == 0 && d > 0:
		u = hour
	case d%time.Minute == 0:
		u = minute
	}
	n := big.NewRat(int64(d), int64(time.Second))
	return calc.NewQuantity(n.Quo(n, u.Factor), u, calc.Exact)
}

var second, minute, hour = calc.MustUnit("s"), calc.MustUnit("min"), calc.MustUnit("h")

// house is what the house rules say of time and mass.
type house struct {
	takes    time.Duration
	cleanFor time.Duration
	slower   calc.Quantity
	lift     calc.Quantity
	bound    int
}

func houseOf(m *model.Manual) house {
	bound, _ := threshold(m, "option_combinations").Num().Float64()
	return house{
		takes:    duration(threshold(m, "default_takes")),
		cleanFor: duration(threshold(m, "clean_for")),
		slower:   threshold(m, "cure_in_the_cold"),
		lift:     threshold(m, "one_person_lift"),
		bound:    int(min(max(bound, 1), 1<<16)),
	}
}

// threshold is a number as the house rules of m set it, or its default.
func threshold(m *model.Manual, name string) calc.Quantity {
	for _, h := range m.Of(entry.HouseRules.Name) {
		if q := h.Quantity(name, ""); q != nil {
			return *q
		}
	}
	t, ok := entry.ThresholdNamed(name)
	if !ok {
		panic("internal error: no threshold " + name)
	}
	l, _ := calc.ParseLiteral(t.Default, calc.Context{Want: t.Dim, HasWant: true})
	return *l.Nominal
}

type cureKey struct {
	supply *model.Node
	at     *model.Node // the procedure, for its temperature
}

type cureTime struct {
	d     time.Duration
	known bool
}

// cure is how long a supply takes to cure in the workshop of a procedure.
func (x *index) cure(supply, procedure *model.Node) (time.Duration, bool) {
	if supply == nil {
		return 0, false
	}
	x.curing.Lock()
	defer x.curing.Unlock()
	key := cureKey{supply, procedure}
	if c, ok := x.cures[key]; ok {
		return c.d, c.known
	}
	var c cureTime
	room := x.temperature(procedure)
	times, _ := supply.Get("cure", "").(model.Times)
	var stated []screen.Cure
	for _, t := range times {
		at := room
		if t.At != nil {
			at = *t.At
		}
		stated = append(stated, screen.Cure{Time: *t.For, At: at})
	}
	if len(stated) > 0 {
		if q, p := screen.CureTime(stated, room, x.house.slower); p == nil {
			c = cureTime{duration(q), true}
		}
	}
	x.cures[key] = c
	return c.d, c.known
}

// temperature is that of the workshop during a procedure.
func (x *index) temperature(procedure *model.Node) calc.Quantity {
	if q := procedure.Quantity("conditions", ""); q != nil {
		return *q
	}
	if x.m.Node != nil {
		if q := x.m.Quantity("conditions", ""); q != nil {
			return *q
		}
	}
	l, _ := calc.ParseLiteral(entry.Manual.Attr("conditions").Default, calc.Context{Want: calc.Temperature, HasWant: true})
	return *l.Nominal
}
