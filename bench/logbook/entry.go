package logbook

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"time"
)

// Kind says what a line records.
type Kind string

// Kinds of line.
const (
	Start      Kind = "start"      // the build begins: serial, options, revision
	Revision   Kind = "revision"   // from here on another revision is in force
	Reading    Kind = "reading"    // what was read at a step
	Done       Kind = "done"       // a step was done; of a judging step, accepted
	Refused    Kind = "refused"    // a judging step was not accepted
	Undone     Kind = "undone"     // what a step did was taken back: loosened, taken off, opened
	Release    Kind = "release"    // a hold was released
	Piece      Kind = "piece"      // the measured values of the pieces of one size
	Correction Kind = "correction" // another line was wrong: its values are these, or it never was
	Note       Kind = "note"       // anything else worth keeping
)

// Entry is what one line says. Which fields a kind has, must have and may have
// stands in the table below and in FORMAT.md.
type Entry struct {
	N          int               `json:"n"`    // 1 for the start, else one more than the greatest of the lines in Prev
	Prev       []string          `json:"prev"` // digests of the lines it was written after, sorted
	Kind       Kind              `json:"kind"`
	At         string            `json:"at"` // RFC 3339
	By         string            `json:"by"` // initials
	Serial     string            `json:"serial,omitempty"`
	Manual     string            `json:"manual,omitempty"` // its label
	Revision   string            `json:"revision,omitempty"`
	Digest     string            `json:"digest,omitempty"` // of that revision
	Options    map[string]string `json:"options,omitempty"`
	Step       string            `json:"step,omitempty"`  // "thrust_end.measure.float"
	Place      string            `json:"place,omitempty"` // or spot
	Part       string            `json:"part,omitempty"`  // the graded part's label
	Size       string            `json:"size,omitempty"`  // the size's label
	Values     []string          `json:"values,omitempty"`
	Tool       string            `json:"tool,omitempty"`       // its label
	Instrument string            `json:"instrument,omitempty"` // which one: its number, its calibration
	Role       string            `json:"role,omitempty"`       // in which the hold was released
	Line       string            `json:"line,omitempty"`       // digest of the line corrected
	Text       string            `json:"text,omitempty"`
}

// field is one field with the kinds that have it: must, may.
type field struct {
	name string
	set  func(*Entry) bool
	must []Kind
	may  []Kind
}

var fields = []field{
	{"serial", func(e *Entry) bool { return e.Serial != "" }, []Kind{Start}, nil},
	{"manual", func(e *Entry) bool { return e.Manual != "" }, []Kind{Start}, nil},
	{"revision", func(e *Entry) bool { return e.Revision != "" }, []Kind{Start, Revision}, nil},
	{"digest", func(e *Entry) bool { return e.Digest != "" }, []Kind{Start, Revision}, nil},
	{"options", func(e *Entry) bool { return len(e.Options) > 0 }, nil, []Kind{Start}},
	{"step", func(e *Entry) bool { return e.Step != "" }, []Kind{Reading, Done, Refused, Undone, Release}, []Kind{Note}},
	{"place", func(e *Entry) bool { return e.Place != "" }, nil, []Kind{Reading, Done, Refused, Undone, Release, Note}},
	{"part", func(e *Entry) bool { return e.Part != "" }, []Kind{Piece}, nil},
	{"size", func(e *Entry) bool { return e.Size != "" }, []Kind{Piece}, nil},
	{"values", func(e *Entry) bool { return len(e.Values) > 0 }, []Kind{Reading, Piece}, []Kind{Correction}},
	{"tool", func(e *Entry) bool { return e.Tool != "" }, nil, []Kind{Reading, Piece, Correction}},
	{"instrument", func(e *Entry) bool { return e.Instrument != "" }, nil, []Kind{Reading, Piece, Correction}},
	{"role", func(e *Entry) bool { return e.Role != "" }, []Kind{Release}, nil},
	{"line", func(e *Entry) bool { return e.Line != "" }, []Kind{Correction}, nil},
	{"text", func(e *Entry) bool { return e.Text != "" }, []Kind{Refused, Correction, Note}, []Kind{Start, Revision, Reading, Done, Undone, Release, Piece}},
}

var (
	kinds  = []Kind{Start, Revision, Reading, Done, Refused, Undone, Release, Piece, Correction, Note}
	digest = regexp.MustCompile(`^[0-9a-f]{64}$`)
	stamp  = regexp.MustCompile(`^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,9})?(Z|[+-]\d{2}:\d{2})$`)
)

// Time is when the line was written; the zero time where At is none.
func (e *Entry) Time() time.Time {
	t, _ := time.Parse(time.RFC3339, e.At)
	return t
}

// fault says what keeps the entry from being a line of this format, or "".
func (e *Entry) fault() string {
	switch {
	case !slices.Contains(kinds, e.Kind):
		return fmt.Sprintf("has a kind that there is not: %q", e.Kind)
	case !stamp.MatchString(e.At) || e.Time().IsZero():
		return fmt.Sprintf("has no time in the form of RFC 3339: %q", e.At)
	case strings.TrimSpace(e.By) == "":
		return "does not say who wrote it"
	}
	for _, f := range fields {
		must := slices.Contains(f.must, e.Kind)
		switch set := f.set(e); {
		case must && !set:
			return fmt.Sprintf("is a %s and has no %s", e.Kind, f.name)
		case set && !must && !slices.Contains(f.may, e.Kind):
			return fmt.Sprintf("is a %s and has a %s", e.Kind, f.name)
		}
	}
	for _, d := range e.Prev {
		if !digest.MatchString(d) {
			return "names a line by something that is no digest"
		}
	}
	switch {
	case !slices.IsSorted(e.Prev) || len(slices.Compact(slices.Clone(e.Prev))) != len(e.Prev):
		return "does not sort the lines that it was written after"
	case e.Digest != "" && !digest.MatchString(e.Digest):
		return "names a revision by something that is no digest"
	case e.Line != "" && !digest.MatchString(e.Line):
		return "corrects a line by something that is no digest"
	case slices.Contains(e.Values, ""):
		return "has an empty value"
	}
	return ""
}

// DigestOf is the digest of a line: SHA-256 of its bytes without the line end, in
// hexadecimal.
func DigestOf(line []byte) string {
	sum := sha256.Sum256(line)
	return hex.EncodeToString(sum[:])
}
