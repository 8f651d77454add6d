package syntax

// Walk calls visit for x and, where visit gives true, for the expressions in
// it, in source order.
func Walk(x Expr, visit func(Expr) bool) {
	if x == nil || !visit(x) {
		return
	}
	switch x := x.(type) {
	case *String:
		if x.parts != nil {
			for _, p := range *x.parts {
				Walk(p.X, visit)
			}
		}
	case *Traversal:
		walkSteps(x.Steps, visit)
	case *Access:
		Walk(x.X, visit)
		walkSteps(x.Steps, visit)
	case *List:
		walkAll(x.Items, visit)
	case *Object:
		for _, p := range x.Pairs {
			Walk(p.Key, visit)
			Walk(p.Value, visit)
		}
	case *Unary:
		Walk(x.X, visit)
	case *Binary:
		Walk(x.X, visit)
		Walk(x.Y, visit)
	case *Cond:
		Walk(x.If, visit)
		Walk(x.Then, visit)
		Walk(x.Else, visit)
	case *Call:
		walkAll(x.Args, visit)
	case *Paren:
		Walk(x.X, visit)
	}
}

func walkAll(xs []Expr, visit func(Expr) bool) {
	for _, x := range xs {
		Walk(x, visit)
	}
}

func walkSteps(steps []Step, visit func(Expr) bool) {
	for _, s := range steps {
		Walk(s.Index, visit)
	}
}
