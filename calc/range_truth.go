package calc

import "slices"

// compare judges x - y against zero.
func compare(op Op, d Interval) reach {
	low, high := sign(d.Lo, -1), sign(d.Hi, 1)
	switch op {
	case Less:
		return reach{yes: low < 0, no: high >= 0}
	case LessEqual:
		return reach{yes: low <= 0, no: high > 0}
	case Greater:
		return reach{yes: high > 0, no: low <= 0}
	case GreaterEqual:
		return reach{yes: high >= 0, no: low < 0}
	}
	return equal(op, low <= 0 && high >= 0, low != 0 || high != 0)
}

func equal(op Op, same, differ bool) reach {
	if op == NotEqual {
		return reach{yes: differ, no: same}
	}
	return reach{yes: same, no: differ}
}

// overlap reports whether one word may be both; nil is any word.
func overlap(a, b []string) bool {
	if a == nil || b == nil {
		return true
	}
	return slices.ContainsFunc(a, func(w string) bool { return slices.Contains(b, w) })
}
