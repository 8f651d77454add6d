package render

import (
	"bytes"
	"io"
	"io/fs"
	"path"
	"strings"

	"fettle/lang/entry"
	"fettle/lang/model"
	"fettle/render/words"
)

// largestPicture keeps one figure from making a checklist too heavy to open.
const largestPicture = 2 << 20

// figure is a picture of the manual, or a film or page elsewhere.
func (l *lowering) figure(n *model.Node) Figure {
	f := Figure{Address: n.Address, Alt: n.Plain("alt")}
	if made := n.Plain("made_at"); made != "" && made != l.m.Plain("revision") {
		f.Note = words.MadeAt(made)
	}
	if n.Is(entry.Media) {
		f.Film = n.Plain("address")
		if g := n.Plain("governs"); g != "" {
			f.Note = strings.TrimSpace(g + " " + f.Note)
		}
		return f
	}
	if a := n.Attr("file"); a != nil {
		if paths, _ := a.Value.(model.Paths); len(paths) > 0 {
			l.load(&f, paths[0].Text)
		}
	}
	return f
}

// picture is an image in prose.
func (l *lowering) picture(file, alt string) Figure {
	f := Figure{Alt: alt}
	l.load(&f, file)
	return f
}

// load reads a picture from the manual's folder. What it is follows from its
// bytes, not from its name.
func (l *lowering) load(f *Figure, file string) {
	f.File = file
	if l.o.Figures == nil {
		f.Missing = words.NoPicture
		return
	}
	name := path.Join(l.m.Dir, file)
	inside := l.m.Dir == "." || name == l.m.Dir || strings.HasPrefix(name, l.m.Dir+"/")
	if path.IsAbs(file) || !fs.ValidPath(name) || !inside {
		f.Missing = words.OutsideFolder
		return
	}
	in, err := l.o.Figures.Open(name)
	if err != nil {
		f.Missing = words.NoPicture
		return
	}
	defer in.Close()
	data, err := io.ReadAll(io.LimitReader(in, largestPicture+1))
	switch {
	case err != nil:
		f.Missing = words.NoPicture
	case len(data) > largestPicture:
		f.Missing = words.PictureTooLarge
	default:
		if f.Type = pictureType(data); f.Type == "" {
			f.Missing = words.NotAPicture
			return
		}
		f.Data = data
	}
}

// pictureType is the media type of the pictures that every browser shows, or "".
func pictureType(data []byte) string {
	for _, t := range [...]struct{ magic, name string }{
		{"\x89PNG\r\n\x1a\n", "image/png"},
		{"\xff\xd8\xff", "image/jpeg"},
		{"GIF8", "image/gif"},
	} {
		if bytes.HasPrefix(data, []byte(t.magic)) {
			return t.name
		}
	}
	if len(data) > 12 && string(data[:4]) == "RIFF" && string(data[8:12]) == "WEBP" {
		return "image/webp"
	}
	head := data[:min(len(data), 1024)]
	if bytes.Contains(head, []byte("<svg")) && !bytes.Contains(data, []byte{0}) {
		return "image/svg+xml"
	}
	return ""
}
