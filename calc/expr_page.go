package calc

import _ "embed"

// PageScript is the JavaScript that evaluates encoded expressions in the
// builder's page: exact, with the same values, units, decimals and texts as
// Eval. It defines one name, fettleCalc; see its first comment.
//
//go:embed expr_page.js
var PageScript string
