package calc

import _ "embed"

// FitScript defines fettleFit, the selective fit for the builder's page: the
// algorithm of this package, in JavaScript.
//
//go:embed fit_page.js
var FitScript string
