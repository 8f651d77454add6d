package main

import (
	"fmt"
	"io/fs"
	"os"
	"path"
)

// replace writes a file that is there, whole or not at all.
func (p *place) replace(name string, data []byte) error {
	info, err := fs.Stat(p.root.FS(), name)
	if err != nil {
		return err
	}
	return p.write(name, data, info.Mode().Perm())
}

// create writes a new file, whole or not at all.
func (p *place) create(name string, data []byte) error { return p.write(name, data, 0o644) }

func (p *place) write(name string, data []byte, perm fs.FileMode) error {
	tmp := path.Join(path.Dir(name), "."+path.Base(name)+".new")
	f, err := p.root.OpenFile(tmp, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, perm)
	if err != nil {
		return fmt.Errorf("cannot write beside %s: %w", p.shown(name), err)
	}
	_, err = f.Write(data)
	if err == nil {
		err = f.Sync()
	}
	if e := f.Close(); err == nil {
		err = e
	}
	if err == nil {
		err = p.root.Rename(tmp, name)
	}
	if err != nil {
		p.root.Remove(tmp)
		return fmt.Errorf("cannot write %s: %w", p.shown(name), err)
	}
	return nil
}
