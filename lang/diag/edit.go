package diag

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// ApplyEdits gives text, which is that of one file, with all the edits made, or
// text itself and an error if two of them touch the same bytes or one lies
// outside: never a part of them. The same edit given twice is made once.
// Insertions at one place are made in the order given.
func ApplyEdits(text string, edits []Edit) (string, error) {
	sorted := slices.Clone(edits)
	slices.SortStableFunc(sorted, func(a, b Edit) int {
		return cmp.Or(cmp.Compare(a.Span.Start, b.Span.Start), cmp.Compare(a.Span.End, b.Span.End))
	})
	sorted = slices.Compact(sorted)

	var out strings.Builder
	at := 0
	for _, e := range sorted {
		start, end := int(e.Span.Start), int(e.Span.End)
		if start < 0 || end < start || end > len(text) {
			return text, fmt.Errorf("edit of bytes %d to %d lies outside a file of %d bytes", start, end, len(text))
		}
		if start < at {
			return text, fmt.Errorf("two edits touch byte %d", start)
		}
		out.WriteString(text[at:start])
		out.WriteString(e.New)
		at = end
	}
	out.WriteString(text[at:])
	return out.String(), nil
}
