package main

import (
	"github.com/spf13/cobra"

	"fettle/bench/logbook"
	"fettle/bench/revision"
	"fettle/bench/rework"
	"fettle/lang/model"
)

// current is the manual as it stands in the folder, with its digest. A manual
// that cannot be read whole is reported, and ends the command.
func (p *place) current(c *cobra.Command) (*model.Manual, string, error) {
	m, found, err := p.load()
	if err != nil {
		return nil, "", err
	}
	if err := p.stop(c, m, found); err != nil {
		return nil, "", err
	}
	return m, revision.Digest(m), nil
}

// issued finds the revisions of the manual by digest: those under issued/, and
// the manual as it stands; nil for one that is not known.
func (p *place) issued() (func(digest string) *model.Manual, error) {
	history, err := revision.History(p.root.FS(), p.dir)
	if err != nil {
		return nil, err
	}
	m, _, err := p.load()
	if err != nil {
		return nil, err
	}
	digest := revision.Digest(m)
	return func(wanted string) *model.Manual {
		for _, i := range history {
			if i.Digest == wanted {
				return i.Model
			}
		}
		if wanted == digest {
			return m
		}
		return nil
	}, nil
}

// followed is the revision that a logbook follows, or the manual as it stands
// where that is not known.
func (p *place) followed(l *logbook.Log) (*model.Manual, error) {
	issued, err := p.issued()
	if err != nil {
		return nil, err
	}
	if r := logbook.StateOf(l).Revision; r != nil {
		if m := issued(r.Digest); m != nil {
			return m, nil
		}
	}
	m, _, err := p.load()
	return m, err
}

// build reads a logbook against the revision it follows.
func (p *place) build(l *logbook.Log) (*logbook.Build, error) {
	m, err := p.followed(l)
	if err != nil {
		return nil, err
	}
	issued, err := p.issued()
	if err != nil {
		return nil, err
	}
	c, err := rework.Carry(m, l, issued)
	if err != nil {
		return nil, err
	}
	return c.Build(), nil
}
