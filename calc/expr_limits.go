package calc

// LowOf is the low end of an expression for limits, nil where it is open.
func LowOf(limits Expr) Expr {
	return partOf(limits, ".low", func(b *Between) Expr { return b.Low })
}

// HighOf is the high end of an expression for limits, nil where it is open.
func HighOf(limits Expr) Expr {
	return partOf(limits, ".high", func(b *Between) Expr { return b.High })
}

// TargetOf is what to aim for, nil where no target is given.
func TargetOf(limits Expr) Expr {
	return partOf(limits, ".target", func(b *Between) Expr { return b.Target })
}

// WidthOf is the high end less the low end, nil where one of them is open.
func WidthOf(limits Expr, at Span) Expr {
	low, high := LowOf(limits), HighOf(limits)
	if low == nil || high == nil {
		return nil
	}
	return &Binary{Op: Sub, X: high, Y: low, Of: widthType(high.Type()), At: at}
}

// Inside is whether x lies within limits, the ends included: what `accept` asks.
// The problem is one of dimensions.
func Inside(x, limits Expr, at Span) (Expr, *Problem) {
	var both Expr
	for _, end := range []struct {
		op Op
		e  Expr
	}{{GreaterEqual, LowOf(limits)}, {LessEqual, HighOf(limits)}} {
		if end.e == nil {
			continue
		}
		c, p := NewBinary(end.op, x, end.e, at)
		if p != nil {
			return nil, p
		}
		if both != nil {
			c = &Binary{Op: And, X: both, Y: c, Of: TruthType, At: at}
		}
		both = c
	}
	if both == nil {
		return NewConst(Truth(true), "", at), nil
	}
	return both, nil
}

// partOf finds one part of limits, whatever expression they come from. A
// variable of limits has a variable for each part.
func partOf(limits Expr, field string, of func(*Between) Expr) Expr {
	switch e := limits.(type) {
	case *Const:
		l := e.Value.(Limits)
		part := of(&Between{Low: quantityExpr(l.Low, e.At), High: quantityExpr(l.High, e.At), Target: quantityExpr(l.Target, e.At)})
		if c, ok := part.(*Const); ok && e.Label != "" {
			return NewConst(c.Value, field[1:]+" of "+e.Label, e.At)
		}
		return part
	case *Between:
		return of(e)
	case *Call:
		return partOf(e.Body, field, of)
	case *Cond:
		then, els := partOf(e.Then, field, of), partOf(e.Else, field, of)
		if then == nil || els == nil {
			return nil
		}
		return &Cond{e.If, then, els, e.At}
	case *Var:
		part := *e
		part.Name += field
		part.Of = NumberOf(e.Of.Dim)
		return &part
	}
	panic("calc: not limits")
}

// quantityExpr keeps a missing end a nil Expr.
func quantityExpr(q *Quantity, at Span) Expr {
	if q == nil {
		return nil
	}
	return NewConst(*q, "", at)
}

func widthType(t Type) Type {
	if t.Dim.IsPoint() {
		return NumberOf(TemperatureDiff)
	}
	return NumberOf(t.Dim)
}
