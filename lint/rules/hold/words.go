package hold

import (
	"fettle/bench"
	"fettle/lang/diag"
	"fettle/lint/rule"
)

// bore is the little machine of most fragments: something critical, and what
// covers it.
const bore = `
part "body" {
  name     = "Pump body"
  features = ["bore"]
}

part "cover" {
  name    = "Pump cover"
  sits_on = part.body
  covers  = [part.body.feature.bore]
}
`

// disturbed says why a hold that stood before a step counts no more: what it
// checked has been moved since.
func disturbed(b bench.Breach) func(*diag.Finding) {
	if len(b.Causes) < 2 || b.Causes[1].Node == nil {
		return func(*diag.Finding) {}
	}
	return rule.Reason("The hold " + rule.Called(b.Causes[0].Node) + " does not count any more: " +
		rule.Called(b.Causes[1].Node) + " moved what it had checked.")
}
