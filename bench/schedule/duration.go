package schedule

import (
	"math/big"
	"time"
)

// duration is a number of seconds, to the nearest microsecond; what no calendar
// holds is the longest there is.
func duration(seconds *big.Rat) time.Duration {
	micro := new(big.Rat).Mul(seconds, big.NewRat(1_000_000, 1))
	n := new(big.Int).Quo(micro.Num(), micro.Denom())
	const longest = int64(100 * 365 * 24 * time.Hour / time.Microsecond)
	if !n.IsInt64() || n.Int64() > longest {
		return time.Duration(longest) * time.Microsecond
	}
	return time.Duration(max(n.Int64(), 0)) * time.Microsecond
}
