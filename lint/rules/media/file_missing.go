package media

import (
	"io/fs"
	"path"
	"strconv"
	"strings"

	"fettle/lang/diag"
	"fettle/lang/model"
	"fettle/lint/rule"
)

// FileMissing: a picture that is not in the manual's folder.
var FileMissing = &rule.Rule{
	Name:     "media/file-missing",
	Severity: diag.Error,
	Finds:    "A figure whose file is not in the manual's folder.",
	Why:      "The checklist has an empty frame where the builder looks for the way round it goes.",
	Remedy:   "Put the file into the manual's folder, or correct its name; capitals count.",
	Bad: `
-- m/figures/gate.svg --
<svg xmlns="http://www.w3.org/2000/svg"/>
-- m/gate.proc.hcl --
manual "gate" {
  title    = "Gate: last look"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.look]
}

part "gate" {
  name = "Gate"
}

figure "hinge" {
  file    = "figures/hinge.svg" # want "no file figures/hinge.svg"
  alt     = "The upper hinge, its pin pointing up."
  made_at = "A"
  shows   = [procedure.look.inspect.swing]
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    figures   = [figure.hinge]
    text      = "Start with the gate shut: ![The gate from the yard.](../gate.svg)" # want "outside the manual's folder"
    criterion = "It touches nothing."
    otherwise = "Plane off what touches."
  }
}
`,
	Good: `
-- m/figures/gate.svg --
<svg xmlns="http://www.w3.org/2000/svg"/>
-- m/figures/hinge.svg --
<svg xmlns="http://www.w3.org/2000/svg"/>
-- m/gate.proc.hcl --
manual "gate" {
  title    = "Gate: last look"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  contact  = "The workshop's office"
  order    = [procedure.look]
}

part "gate" {
  name = "Gate"
}

figure "hinge" {
  file    = "figures/hinge.svg"
  alt     = "The upper hinge, its pin pointing up."
  made_at = "A"
  shows   = [procedure.look.inspect.swing]
}

procedure "look" {
  title = "Look at the gate"

  inspect "swing" {
    title     = "Swing the gate through its whole way"
    on        = [part.gate]
    figures   = [figure.hinge]
    text      = "Start with the gate shut: ![The gate from the yard.](figures/gate.svg)"
    criterion = "It touches nothing."
    otherwise = "Plane off what touches."
  }
}
`,
	Run: func(p *rule.Pass) {
		if p.Files == nil {
			return
		}
		eachPicture(p, func(c picture) {
			name := path.Join(p.Dir, c.file)
			inside := p.Dir == "." || strings.HasPrefix(name, p.Dir+"/")
			if c.file == "" {
				p.Report(c.at, c.name+" names no file.")
				return
			}
			if strings.Contains(c.file, "://") || path.IsAbs(c.file) || !fs.ValidPath(name) || !inside {
				p.Report(c.at, c.name+" lies outside the manual's folder: "+c.file+".",
					rule.Reason("A checklist fetches nothing, and reads no file outside its folder: the builder sees an empty frame."),
					rule.Remedy("Put a copy into the manual's folder."))
				return
			}
			info, err := fs.Stat(p.Files, name)
			switch {
			case err == nil && info.IsDir():
				p.Report(c.at, c.name+": "+c.file+" is a folder, not a picture.")
			case err == nil:
			default:
				more := []func(*diag.Finding){}
				if like := alike(p.Manual, p.Files, c.file); like != "" {
					more = append(more, rule.Remedy("Write "+like+" if that is meant."))
					if at := c.at.Text(); at == strconv.Quote(c.file) {
						more = append(more, rule.Fix("Write "+like, false, diag.Edit{Span: c.at, New: strconv.Quote(like)}))
					}
				}
				p.Report(c.at, c.name+": there is no file "+c.file+" in the manual's folder.", more...)
			}
		})
	},
}

// alike is a file of the same folder that is called the same but for capitals or
// what follows the dot, or "".
func alike(m *model.Manual, files fs.FS, file string) string {
	dir, base := path.Split(file)
	entries, err := fs.ReadDir(files, path.Join(m.Dir, dir))
	if err != nil {
		return ""
	}
	stem := strings.TrimSuffix(base, path.Ext(base))
	for _, e := range entries {
		if n := e.Name(); !e.IsDir() && (strings.EqualFold(n, base) || strings.EqualFold(strings.TrimSuffix(n, path.Ext(n)), stem)) {
			return dir + n
		}
	}
	return ""
}
