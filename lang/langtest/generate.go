// Package langtest makes manuals for tests and benchmarks of any package. It is
// not part of the program.
package langtest

import (
	"fmt"
	"strings"
	"testing/fstest"
)

// Generate writes a sound manual with the given numbers of procedures and of
// steps in each (at least 16), one file a procedure, in the folder "m". All that
// is in it is invented.
func Generate(procedures, steps int) fstest.MapFS {
	fsys := fstest.MapFS{}
	var order []string
	for p := range procedures {
		fsys[fmt.Sprintf("m/%05d.proc.hcl", p)] = file(procedure(p, steps))
		order = append(order, fmt.Sprintf("procedure.p%d", p))
	}
	fsys["m/manual.proc.hcl"] = file(head(order))
	return fsys
}

// OneFile is Generate with everything in one file.
func OneFile(procedures, steps int) fstest.MapFS {
	var b strings.Builder
	var order []string
	for p := range procedures {
		order = append(order, fmt.Sprintf("procedure.p%d", p))
	}
	b.WriteString(head(order))
	for p := range procedures {
		b.WriteString("\n")
		b.WriteString(procedure(p, steps))
	}
	return fstest.MapFS{"m/manual.proc.hcl": file(b.String())}
}

func file(s string) *fstest.MapFile { return &fstest.MapFile{Data: []byte(s)} }

func head(order []string) string {
	return `manual "generated" {
  title    = "Rack of plates"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-05"
  supplier = "Withybrook Engine Kits"
  order    = [
    ` + strings.Join(order, ",\n    ") + `,
  ]
}

part "bed" {
  name   = "Bed"
  number = "GN-1"
  mass   = "40 kg"
}

tool "torque_wrench" {
  name       = "Torque wrench, 5 to 60 N·m"
  kind       = "torque wrench"
  range      = "5..60 N·m"
  resolution = "0.5 N·m"
  accuracy   = "± 4 %"
  drive      = "3/8 in"
}

tool "socket" {
  name  = "Socket, 13 mm"
  kind  = "socket"
  size  = "13 mm"
  drive = "3/8 in"
}

tool "depth_gauge" {
  name       = "Depth gauge"
  kind       = "depth gauge"
  range      = "0..25 mm"
  resolution = "0.005 mm"
  accuracy   = "± 0.005 mm"
}

supply "solvent" {
  name = "Degreasing solvent"
  kind = "solvent"
  ppe  = [ppe.gloves]
  warning {
    hazard = "The solvent's vapour is flammable."
    result = "A spark sets it alight and burns you."
    avoid  = "Work where air moves, away from flames."
  }
}

supply "oil" {
  name = "Engine oil"
  kind = "engine oil"
}

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}
`
}

func procedure(p, steps int) string {
	var b strings.Builder
	b.Grow(steps * 500)
	fmt.Fprintf(&b, `part "frame%[1]d" {
  name    = "Frame %[1]d"
  number  = "GN-F%[1]d"
  mass    = "6 kg"
  sits_on = part.bed
}

`, p)
	plates := (steps - 2) / 8
	for k := range plates {
		catalogue(&b, p, k)
	}
	fmt.Fprintf(&b, `procedure "p%[1]d" {
  title = "Dress frame %[1]d"
  intro = "The frame carries its plates on one side. Work from the left to the right."

  fit "frame" {
    title = "Put frame %[1]d on the bed"
    part  = part.frame%[1]d
    takes = "4 min"
  }
`, p)
	for k := range plates {
		plate(&b, p, k)
	}
	for i := range steps - 1 - 8*plates {
		fmt.Fprintf(&b, `
  inspect "look%[1]d" {
    title     = "Look along the plates"
    on        = [part.frame%[2]d]
    criterion = "No plate stands proud of its neighbour."
    otherwise = "Loosen that plate and set it again."
    takes     = "2 min"
  }
`, i, p)
	}
	b.WriteString("}\n")
	return b.String()
}

func catalogue(b *strings.Builder, p, k int) {
	fmt.Fprintf(b, `part "plate%[1]d_%[2]d" {
  name    = "Plate %[1]d/%[2]d"
  number  = "GN-P%[1]d-%[2]d"
  mass    = "0.8 kg"
  sits_on = part.frame%[1]d
  faces   = ["back", "front"]
}

part "bolt%[1]d_%[2]d" {
  name     = "Bolt M8 × 25, plate %[1]d/%[2]d"
  number   = "GN-B%[1]d-%[2]d"
  quantity = 4
}

part "shim%[1]d_%[2]d" {
  name    = "Shim, plate %[1]d/%[2]d"
  number  = "GN-S%[1]d-%[2]d"
  sits_on = part.plate%[1]d_%[2]d
  size "0.20 mm" { in_kit = 4 }
  size "0.30 mm" { in_kit = 4 }
}

limit "lift%[1]d_%[2]d" {
  name   = "Play of plate %[1]d/%[2]d"
  range  = "0.05..0.25 mm"
  target = "0.15 mm"
  basis  = "Drawing GN-%[1]d"
}

fastening "bolts%[1]d_%[2]d" {
  name         = "Bolts of plate %[1]d/%[2]d"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 4
  stack        = [part.plate%[1]d_%[2]d, part.frame%[1]d]
  fasteners    = [part.bolt%[1]d_%[2]d]
  lubricant    = supply.oil
  across_flats = "13 mm"
  torque       = "20 N·m ± 10 %%"
  layout       = "circle"
  pattern      = "criss-cross"
}

`, p, k)
}

func plate(b *strings.Builder, p, k int) {
	fmt.Fprintf(b, `
  clean "back%[2]d" {
    title    = "Clean the back of plate %[2]d"
    on       = [part.plate%[1]d_%[2]d.face.back]
    supplies = [supply.solvent]
    takes    = "3 min"
    text     = <<-EOT
      Wet a lint-free cloth with solvent. Wipe the back in one direction
      until the cloth stays white. Do not touch it again.
    EOT
  }

  coat "threads%[2]d" {
    title    = "Oil the bolts of plate %[2]d"
    on       = [fastening.bolts%[1]d_%[2]d]
    supplies = [supply.oil]
    takes    = "1 min"
  }

  fit "plate%[2]d" {
    title  = "Put plate %[2]d on the frame"
    part   = part.plate%[1]d_%[2]d
    facing = "Stamped number outwards"
    takes  = "1 min"
    why    = "The stamped number shows which bore it was lapped with."
  }

  fit "bolts%[2]d" {
    title     = "Start the bolts of plate %[2]d by hand"
    fastening = fastening.bolts%[1]d_%[2]d
    takes     = "2 min"
  }

  torque "bolts%[2]d" {
    title     = "Tighten the bolts of plate %[2]d"
    fastening = fastening.bolts%[1]d_%[2]d
    tools     = [tool.torque_wrench, tool.socket]
    takes     = "3 min"
    text      = "Pull smoothly until the wrench clicks. Stop at the click."
  }

  measure "gap%[2]d" {
    title     = "Measure the gap of plate %[2]d"
    on        = [part.plate%[1]d_%[2]d.face.front]
    tools     = [tool.depth_gauge]
    likely    = "0.35..0.95 mm"
    otherwise = "Clean the gauge's foot, and measure again."
    takes     = "2 min"
    text      = <<-EOT
      Set the foot of the gauge on the front. Push the rod until it meets the
      frame. Read the scale, and write down ${measure.gap%[2]d}.
    EOT
  }

  choose "pack%[2]d" {
    title  = "Choose the shims for plate %[2]d"
    from   = part.shim%[1]d_%[2]d
    pieces = "1..4"
    gap    = measure.gap%[2]d
    leaves = limit.lift%[1]d_%[2]d
    takes  = "2 min"
  }

  fit "shims%[2]d" {
    title = "Slide the shims in: ${choose.pack%[2]d}"
    part  = choose.pack%[2]d
    takes = "1 min"
  }

  example "shims of plate %[2]d" {
    readings = { measure.gap%[2]d = "0.45 mm" }
    gives    = { choose.pack%[2]d.total = "0.30 mm", choose.pack%[2]d.result = "0.15 mm" }
  }
`, p, k)
}
