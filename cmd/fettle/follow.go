package main

import (
	"github.com/spf13/cobra"

	"fettle/bench/logbook"
	"fettle/bench/revision"
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

// build reads a logbook against the revision it follows: an issued one where
// there is one with that digest, else the manual as it stands.
func (p *place) build(l *logbook.Log) (*logbook.Build, error) {
	history, err := revision.History(p.root.FS(), p.dir)
	if err != nil {
		return nil, err
	}
	if r := logbook.StateOf(l).Revision; r != nil {
		for _, i := range history {
			if i.Digest == r.Digest {
				return logbook.NewBuild(i.Model, i.Digest, l), nil
			}
		}
	}
	m, _, err := p.load()
	if err != nil {
		return nil, err
	}
	return logbook.NewBuild(m, revision.Digest(m), l), nil
}
