package calc

// quantity joins number and unit after the unit has been judged. A number
// without one is reported from start to end.
func (p *literalParser) quantity(a *side, start, end int) (*Quantity, bool) {
	if p.lost {
		return nil, false
	}
	if !p.judge(a, start, end) {
		return nil, false
	}
	u := a.unit
	if u == nil {
		u = One
	}
	q := NewQuantity(a.num, u, a.decimals)
	return &q, true
}

// judge holds a unit against what the place takes, and bends it to the place
// where only one meaning is left.
func (p *literalParser) judge(a *side, start, end int) bool {
	u, want := a.unit, p.ctx.Want
	if u == nil {
		if !p.ctx.HasWant || want == Plain || p.ctx.AllowPlain {
			return true
		}
		p.fail(p.problemBare(start, end))
		return false
	}
	if u.point != nil && u.Name == "K" && p.ctx.HasWant && want.IsPoint() && !p.ctx.Difference {
		a.unit = u.point
		return true
	}
	if p.ctx.Difference {
		a.unit = u.Difference()
	}
	if !p.ctx.HasWant || want.Fits(a.unit.Dim) || u == percent && p.ctx.AllowPercent {
		return true
	}
	switch {
	case u.Dim.IsPoint() && want.Fits(TemperatureDiff):
		p.report(p.problemTemperature(*a))
		a.unit = u.Difference()
		return true
	case u.Dim == Energy && want == Torque:
		p.report(p.problemEnergy(*a))
		if u.Name == "J" {
			a.unit = MustUnit("N·m")
			return true
		}
	default:
		p.report(p.problemDimension(*a))
	}
	p.lost = true
	return false
}
