package fastening

import (
	"math/big"
	"strings"

	"fettle/calc"
	"fettle/calc/joint"
	"fettle/lang/model"
)

// clamp is what the screens know of a fastening that clamps.
type clamp struct {
	thread   joint.Thread
	strength joint.Strength
	factor   joint.Band // nut factor K
	rests    string     // the assumption that the preload rests on
	proof    calc.Quantity
	drag     joint.Band // what a self-locking nut takes of the torque; not valid for none
}

// missing is what keeps a fastening from being screened.
type missing struct {
	attr    string // the attribute at fault, or the one that is not written
	message string
	remedy  string
	unread  bool // it is written, and cannot be read
}

// clampOf reads what the preload of a fastening is worked out from.
func clampOf(f *model.Node) (*clamp, *missing) {
	c := &clamp{}
	if m := c.readThread(f); m != nil {
		return nil, m
	}
	if m := c.readStrength(f); m != nil {
		return nil, m
	}
	if m := c.readFactor(f); m != nil {
		return nil, m
	}
	if f.Flag("drag_included") {
		if l, ok := f.Limits("drag", ""); ok && l.Low != nil && l.High != nil {
			c.drag = joint.Band{Low: *l.Low, High: *l.High}
		}
	}
	return c, nil
}

func (c *clamp) readThread(f *model.Node) *missing {
	text := f.Plain("thread")
	if text == "" {
		return &missing{attr: "thread", message: "states no thread", remedy: `Give thread, such as "M8x1.25".`}
	}
	t, p := joint.ParseThread(text)
	if p != nil {
		return &missing{attr: "thread", message: "has a thread that cannot be read: " + unstop(p.Message), remedy: p.Remedy, unread: true}
	}
	if !t.Screened() {
		return &missing{attr: "thread", message: "clamps with a thread that is not screened",
			remedy: "Give basis: where the torque comes from."}
	}
	c.thread = t
	return nil
}

func (c *clamp) readStrength(f *model.Node) *missing {
	var p *calc.Problem
	attr := "bolt_class"
	switch {
	case f.Has("proof"):
		q := f.Quantity("proof", "")
		if q == nil {
			return &missing{attr: "proof", message: "has a proof that is not one value", remedy: "Give one stress or one force."}
		}
		attr = "proof"
		c.strength, p = joint.GivenStrength(*q)
	case f.Has("bolt_class"):
		c.strength, p = joint.ClassStrength(f.Plain("bolt_class"), c.thread)
	default:
		return &missing{attr: attr, message: "states neither bolt_class nor proof", remedy: `Give bolt_class, such as "8.8", or proof.`}
	}
	if p != nil {
		return &missing{attr: attr, message: "has a strength that cannot be told: " + unstop(p.Message), remedy: p.Remedy, unread: true}
	}
	c.proof = c.strength.ProofLoad(c.thread)
	return nil
}

func (c *clamp) readFactor(f *model.Node) *missing {
	lubricant := "dry"
	if r := f.AllRefs("lubricant"); len(r) > 0 && r[0].To != nil {
		lubricant = r[0].To.Plain("kind")
	}
	switch {
	case f.Has("nut_factor"):
		return c.authored(f, "nut_factor")
	case f.Has("friction"):
		return c.authored(f, "friction")
	case !f.Has("lubricant"):
		return &missing{attr: "lubricant", message: "does not say what is on its threads",
			remedy: `Give lubricant: a supply, or "dry". Or give nut_factor or friction.`}
	}
	l, p := joint.LubricantOf(lubricant)
	if p != nil {
		return &missing{attr: "lubricant", message: "has a lubricant whose nut factor is not known", remedy: p.Remedy}
	}
	c.factor = l.NutFactor
	c.rests = "the short form T = K·F·d with K " + spread(l.NutFactor) + " for " + threads(l.Kind) + ", from " + l.NutSource.String()
	if full, p := joint.NutFactorOf(joint.Contact{Thread: l.Friction, Head: l.Friction}, c.thread); p == nil {
		c.rests += "; the full form with friction " + spread(l.Friction) + " and pitch " + decimal(c.thread.Pitch) + " comes to K " + spread(full)
	}
	return nil
}

func threads(lubricant string) string {
	if lubricant == "dry" {
		return "dry threads"
	}
	return "threads with " + lubricant
}

func (c *clamp) authored(f *model.Node, attr string) *missing {
	l, ok := f.Limits(attr, "")
	band, bounded := joint.BandOf(l)
	if !ok || !bounded || band.Low.Sign() <= 0 {
		return &missing{attr: attr, message: "has a " + attr + " without two ends above zero", remedy: `Write it as "0.16..0.24".`, unread: true}
	}
	if attr == "nut_factor" {
		c.factor = band
		c.rests = "the short form T = K·F·d with K " + spread(band) + ", as authored"
		return nil
	}
	contact := joint.Contact{Thread: band, Head: band}
	factor, p := joint.NutFactorOf(contact, c.thread)
	if p != nil {
		return &missing{attr: attr, message: "has a friction that cannot be used: " + unstop(p.Message), remedy: p.Remedy, unread: true}
	}
	c.factor = factor
	c.rests = "the full form with friction " + spread(band) + ", as authored, and pitch " + decimal(c.thread.Pitch)
	return nil
}

// share is the preload of a torque over the proof load, at a nut factor.
func (c *clamp) share(torque, factor calc.Quantity) *big.Rat {
	preload, p := joint.PreloadByNutFactor(joint.Point(torque), joint.Point(factor), c.thread)
	if p != nil {
		return new(big.Rat)
	}
	share, p := joint.ProofShare(preload, c.strength, c.thread)
	if p != nil {
		return new(big.Rat)
	}
	return share.Low.Base()
}

// middle is the middle of the band of nut factors.
func (c *clamp) middle() calc.Quantity { return midpoint(c.factor) }

func midpoint(b joint.Band) calc.Quantity {
	sum := new(big.Rat).Add(b.Low.Base(), b.High.Base())
	return calc.PlainNumber(sum.Quo(sum, big.NewRat(2, 1)))
}

// net is what of a torque stretches the bolt.
func (c *clamp) net(torque, drag calc.Quantity) calc.Quantity {
	if !drag.Valid() {
		return torque
	}
	b, p := joint.Net(joint.Point(torque), drag, joint.DragIncluded)
	if p != nil {
		return torque
	}
	return b.Low
}

// torqueFor is the torque at the middle of the band for a share of proof load, in
// the unit of another torque.
func (c *clamp) torqueFor(share *big.Rat, like calc.Quantity) calc.Quantity {
	load := calc.FromBase(new(big.Rat).Mul(share, c.proof.Base()), c.proof.Unit, 2)
	b, p := joint.TorqueByNutFactor(joint.Point(load), joint.Point(c.middle()), c.thread)
	if p != nil {
		return calc.Quantity{}
	}
	return calc.FromBase(b.Low.Base(), like.Unit, max(like.Decimals, 0))
}

// assumption says what a screen of the clamp rests on.
func (c *clamp) assumption() string {
	class := "a proof load of " + c.proof.In(c.proof.Unit).Rounded().String()
	if c.strength.Class != "" {
		name := c.strength.Class
		if name[0] >= '0' && name[0] <= '9' {
			name = "class " + name
		}
		class = name + ", from " + c.strength.Source.String() + ", with " + class
	}
	return "This rests on " + c.rests + ", and on " + class + "."
}

// spread prints a band of plain numbers.
func spread(b joint.Band) string {
	low, high := short(b.Low.Base()), short(b.High.Base())
	if low == high {
		return low
	}
	return low + " to " + high
}

// decimal prints a length without a fraction.
func decimal(q calc.Quantity) string {
	s := strings.TrimRight(q.Num().FloatString(4), "0")
	return strings.TrimSuffix(s, ".") + " " + q.Unit.Name
}

func short(r *big.Rat) string { return calc.FormatRat(r, 2) }

// percent prints a share; beside is what it must not look equal to.
func percent(share, beside *big.Rat) string {
	hundred := big.NewRat(100, 1)
	x, y := new(big.Rat).Mul(share, hundred), new(big.Rat).Mul(beside, hundred)
	s := calc.FormatRat(x, 0)
	if s == calc.FormatRat(y, 0) {
		s = calc.FormatRat(x, 2)
	}
	return s + " %"
}

// unstop takes the full stop off a sentence that goes on.
func unstop(s string) string { return strings.TrimSuffix(s, ".") }

// screen remembers what is known of clamps: most fastenings of a manual are alike.
type screen struct {
	clamps map[string]looked
	shares map[asked]verdict
}

type looked struct {
	clamp   *clamp
	missing *missing
}

type asked struct {
	clamp  *clamp
	torque string
}

type verdict struct{ share, limit *big.Rat }

func newScreen() *screen {
	return &screen{clamps: map[string]looked{}, shares: map[asked]verdict{}}
}

// of is what is known of a fastening that clamps, or what is missing; neither for
// one that does not clamp.
func (s *screen) of(f *model.Node) (*clamp, *missing) {
	if !clamps(f) {
		return nil, nil
	}
	var key strings.Builder
	for i := range f.Attrs {
		switch a := &f.Attrs[i]; a.Def.Name {
		case "thread", "bolt_class", "proof", "lubricant", "nut_factor", "friction", "drag", "drag_included":
			key.WriteString(a.Def.Name)
			key.WriteString(f.ValueSpan(a).Text())
			key.WriteByte(0)
		}
	}
	l, ok := s.clamps[key.String()]
	if !ok {
		l.clamp, l.missing = clampOf(f)
		s.clamps[key.String()] = l
	}
	return l.clamp, l.missing
}

// judge is the verdict of work on a torque of a clamp, worked out once for all
// torques that are written alike.
func (s *screen) judge(c *clamp, text string, work func() (share, limit *big.Rat)) (share, limit *big.Rat) {
	v, ok := s.shares[asked{c, text}]
	if !ok {
		v.share, v.limit = work()
		s.shares[asked{c, text}] = v
	}
	return v.share, v.limit
}
