package logbook

import "errors"

// Why two logbooks do not merge.
var (
	ErrNotWhole    = errors.New("a logbook that is not whole cannot be merged")
	ErrOtherEngine = errors.New("these are the logbooks of two builds: they do not begin with the same line")
)

// Merge joins two copies of one logbook. Every line of either is in the result,
// once, as it was written: the result is the same whichever copy comes first and
// however often it is done. What the copies disagree in, StateOf shows.
func Merge(a, b *Log) (*Log, error) {
	if !a.Whole() || !b.Whole() {
		return nil, ErrNotWhole
	}
	if a.Lines[0].Sum != b.Lines[0].Sum {
		return nil, ErrOtherEngine
	}
	all := append([]Line{}, a.Lines...)
	for _, line := range b.Lines {
		if _, both := a.place[line.Sum]; !both {
			all = append(all, line)
		}
	}
	var data []byte
	for _, i := range order(all) {
		data = append(append(data, Encode(&all[i].Entry)...), '\n')
	}
	return Parse(data), nil
}

// Bytes is the logbook as a file, without a torn last line.
func (l *Log) Bytes() []byte {
	var data []byte
	for i := range l.Lines {
		data = append(append(data, Encode(&l.Lines[i].Entry)...), '\n')
	}
	return data
}
