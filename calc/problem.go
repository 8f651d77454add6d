package calc

// Problem is what is wrong with an expression, in an author's words. It is also
// an error, so that a caller without places can print it.
type Problem struct {
	Rule    string
	Span    Span
	Message string // one sentence: what is wrong
	Reason  string // why it matters at the bench
	Remedy  string // the way out
	Edit    *Edit  // the remedy as a change of the text, nil where there is none
	Unknown *Var   // Eval: the variable that has no value yet; nil otherwise
}

func (p *Problem) Error() string { return p.Message }

// Rules that calc itself can break. lint describes each.
const (
	RuleWrongDimension = "units/wrong-dimension"
	RuleBareNumber     = "units/bare-number"
	RuleEnergyTorque   = "units/energy-for-torque"
	RuleTemperature    = "units/temperature-for-difference"
	RuleNotNumber      = "values/not-a-number"
	RuleWrongType      = "values/wrong-type"
	RuleArguments      = "values/wrong-arguments"
	RuleDivisionByZero = "values/division-by-zero"
	RuleOutOfReach     = "values/out-of-reach" // a result beyond what can be worked out
	RuleUnknown        = "values/not-known-yet"
)
