package joint

// Status says how a figure came here.
type Status string

// Statuses, in falling order of trust.
const (
	ReadInDocument     Status = "read in the document"
	ReadInReproduction Status = "read in a reproduction"
	Computed           Status = "computed from read inputs"
	FromMemory         Status = "from memory"
	Authored           Status = "as authored"
	CommonPractice     Status = "common practice, no source"
)

// Source is where a figure or a formula comes from. No conformity with a cited
// standard is claimed from it.
type Source struct {
	Cite   string // "Shigley 9th ed., Table 8-15"; "" for common practice
	Status Status
}

// String is the source as printed beside a figure.
func (s Source) String() string {
	if s.Cite == "" {
		return string(s.Status)
	}
	return s.Cite + " (" + string(s.Status) + ")"
}
