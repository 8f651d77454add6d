package values_test

import (
	"math/big"

	"fettle/calc"
)

func rat(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(s)
	}
	return r
}

func quantity(s string) calc.Quantity {
	l, problems := calc.ParseLiteral(s, calc.Context{})
	if len(problems) > 0 {
		panic(problems[0].Message)
	}
	return *l.Nominal
}
