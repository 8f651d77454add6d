package mutation

import (
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
	"testing/fstest"

	"golang.org/x/tools/txtar"

	"fettle/lint/rule"
)

// The fault cases and the rules' own fragments come with sound halves: hundreds
// of little machines into which faults of every other class can be put.

// OpenCase reads the sound half of a fault case, an archive of which shop is the
// shared catalogue. The sound is nil where there is none.
func OpenCase(name string, archive []byte, shop fs.FS) (*Sound, error) {
	files := map[string]string{}
	for _, f := range txtar.Parse(archive).Files {
		switch side, inner, nested := strings.Cut(f.Name, "/"); {
		case f.Name == "good.proc.hcl":
			files["m/good.proc.hcl"] = string(f.Data)
		case nested && side == "good":
			files["m/"+inner] = string(f.Data)
		case nested && side == "issued":
			return nil, nil // about revisions
		case nested && side != "bad":
			files[f.Name] = string(f.Data)
		}
	}
	if files["m/good.proc.hcl"] == "" {
		return nil, nil
	}
	return little(name, files, shop)
}

// OpenFragment reads the good fragment of a rule.
func OpenFragment(r *rule.Rule, shop fs.FS) (*Sound, error) {
	if r.Good == "" || len(txtar.Parse([]byte(r.Good)).Files) > 0 {
		return nil, nil
	}
	return little(r.Name, map[string]string{"m/fragment.proc.hcl": r.Good}, shop)
}

// little makes a manual of a few blocks: with the shop beside it, and a manual
// block where it has none.
func little(name string, files map[string]string, shop fs.FS) (*Sound, error) {
	root := fstest.MapFS{}
	err := fs.WalkDir(shop, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(shop, name)
		root["shop/"+name] = &fstest.MapFile{Data: data}
		return err
	})
	if err != nil {
		return nil, err
	}
	var names, procedures []string
	for file := range files {
		names = append(names, file)
	}
	slices.Sort(names)
	whole := false
	for _, file := range names {
		root[file] = &fstest.MapFile{Data: []byte(files[file])}
		for _, line := range strings.Split(files[file], "\n") {
			whole = whole || strings.HasPrefix(line, "manual ")
			if p, ok := strings.CutPrefix(line, `procedure "`); ok && path.Dir(file) == "m" {
				procedures = append(procedures, "procedure."+strings.TrimRight(p, `" {`))
			}
		}
	}
	if !whole {
		root["m/manual.proc.hcl"] = &fstest.MapFile{Data: []byte(fmt.Sprintf(`manual "little" {
  title    = "A little machine: assembly"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  shares   = ["../shop"]
  order    = [%s]
}
`, strings.Join(procedures, ", ")))}
	}
	return open(name, root, "m")
}
