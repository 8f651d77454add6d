package revision

import (
	"fmt"
	"strings"

	"fettle/lang/diag"
)

// Refusal is why a revision is not issued.
type Refusal struct{ Message, Reason, Remedy string }

func (r *Refusal) Error() string { return r.Message }

// MayIssue says why a snapshot is not issued, or nil. found is what check finds
// in the manual; history is what was issued, the oldest first.
func (s *Snapshot) MayIssue(found diag.List, history []*Issued) *Refusal {
	errors := 0
	for _, f := range found {
		if f.Severity == diag.Error {
			errors++
		}
	}
	switch {
	case errors == 1:
		return &Refusal{"An error stands in this manual.", "Someone following it will be stopped, hurt, or build it wrong.", "Mend it, and issue again: fettle check shows it."}
	case errors > 1:
		return &Refusal{fmt.Sprintf("%d errors stand in this manual.", errors), "Someone following it will be stopped, hurt, or build it wrong.", "Mend them, and issue again: fettle check shows them."}
	case s.Revision == "":
		return &Refusal{"This manual has no revision.", "Nobody could say which one an engine was built to.", `Write revision = "A" in the manual block.`}
	case s.Issued == "":
		return &Refusal{"Revision " + s.Revision + " has no day of issue.", "A builder could not tell which of two papers is the newer.", "Write issued with the day in the manual block."}
	}
	for _, old := range history {
		if old.Revision != s.Revision {
			if strings.EqualFold(fileName(old.Revision), s.Name()) {
				return &Refusal{"Revisions " + old.Revision + " and " + s.Revision + " would lie in one file.", "The older one would be lost.", "Choose a letter that differs in more than its signs."}
			}
			continue
		}
		if old.Digest == s.Digest && samePictures(old.Snapshot, s) {
			return &Refusal{"Revision " + s.Revision + " is issued already, and nothing has changed since.", "There is nothing to freeze.", "Change the manual and its letter first."}
		}
		return &Refusal{"The manual has changed since revision " + s.Revision + " was issued on " + old.Issued + ".",
			"Two builders with the same letter would hold two manuals.", "Give the manual the next letter and its day, and say in a history block why the last one was replaced."}
	}
	if len(history) == 0 {
		return nil
	}
	last := history[len(history)-1]
	switch c, ok := Compare(last.Revision, s.Revision); {
	case ok && c > 0:
		return &Refusal{"Revision " + s.Revision + " comes before " + last.Revision + ", which is issued.", "Builders would take the older manual for the newer.", "Give it the letter after " + last.Revision + "."}
	case s.Issued < last.Issued:
		return &Refusal{"Revision " + s.Revision + " is dated " + s.Issued + ", before " + last.Revision + " of " + last.Issued + ".", "Builders would take the older manual for the newer.", "Correct the day."}
	}
	return nil
}

// samePictures compares what the digest does not cover.
func samePictures(a, b *Snapshot) bool {
	pictures := func(s *Snapshot) map[File]bool {
		all := map[File]bool{}
		for _, f := range s.Files {
			if !isSource(f.Path) {
				all[f] = true
			}
		}
		return all
	}
	x, y := pictures(a), pictures(b)
	for f := range x {
		if !y[f] {
			return false
		}
	}
	return len(x) == len(y)
}
