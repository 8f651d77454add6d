package rework

import "fettle/bench/logbook"

// Entries are the lines that say for the logbook what no longer stands once the
// rework begins, for the builder to sign. They mark nothing as done. Those of
// first are of steps that the new revision does not have: they are written while
// the old one is in force, the others after the change of revision, one for each
// step on record that is done, read or released again.
func (p *Plan) Entries() (first, then []logbook.Entry) {
	for _, r := range p.gone {
		if len(p.leftovers(r)) > 0 {
			first = append(first, undo(r.old.Key(), r.fact.Line.Place, "the new revision has no such step"))
		}
	}
	for _, a := range p.Again {
		for _, key := range keys(a.Step, a.Place) {
			if p.records[slot{a.Step, key}].fact.Is(logbook.Done, logbook.Reading, logbook.Release) {
				then = append(then, undo(a.Step.Key(), key, a.Why))
			}
		}
	}
	return first, then
}

func undo(step, place, why string) logbook.Entry {
	return logbook.Entry{Kind: logbook.Undone, Step: step, Place: place, Text: "rework: " + why}
}
