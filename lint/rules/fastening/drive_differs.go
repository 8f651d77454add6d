package fastening

import (
	"strings"

	"fettle/lang/diag"
	"fettle/lint/rule"
	"fettle/lint/tooling"
)

// DriveDiffers: a socket or adapter whose square drive is not that of the wrench it goes on.
var DriveDiffers = &rule.Rule{
	Name:     "fastening/drive-differs",
	Severity: diag.Error,
	Finds:    "A socket or adapter whose square drive is not that of the wrench it goes on.",
	Why:      "The two do not go together, and a reducer put between them is neither named nor rated.",
	Remedy:   "Name a socket with the drive of the wrench, or the reducer between them.",
	Bad: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13_quarter] # want "drive"
  }
}
`,
	Good: `part "bed" {
  name = "Bed"
}

part "bracket" {
  name     = "Bracket"
  in_place = 1
  sits_on  = part.bed
}

fastening "bolts" {
  name         = "Bracket bolts"
  thread       = "M8x1.25"
  bolt_class   = "8.8"
  quantity     = 2
  stack        = [part.bracket, part.bed]
  lubricant    = "dry"
  across_flats = "13 mm"
  torque       = "24 N·m ± 10 %"
}

procedure "settle" {
  title = "Go over the bracket"

  torque "bolts" {
    title     = "Tighten the bracket bolts once more"
    fastening = fastening.bolts
    from      = "tight"
    tools     = [tool.torque_wrench_100, tool.socket_13]
  }
}
`,
	Run: runDriveDiffers,
}

func runDriveDiffers(p *rule.Pass) {
	for _, s := range p.Steps() {
		f, driven := turned(s)
		if f == nil {
			continue
		}
		tools := tooling.Of(s)
		wrench, socket := mismatch(tooling.Wrenches(tools), fitting(driven, f.Plain("across_flats")))
		if wrench == nil || reduced(tools) {
			continue
		}
		p.Report(socket.At, rule.Called(socket.Node)+" has a "+socket.Plain("drive")+" drive, and "+rule.Called(wrench.Node)+" has "+wrench.Plain("drive")+".",
			rule.Related(wrench.Node.At("drive"), "The drive of the wrench stands here."),
			rule.Related(socket.Node.At("drive"), "The drive of the socket stands here."))
	}
}

// mismatch is the first wrench and socket where no wrench has the drive of any socket.
func mismatch(wrenches, driven []tooling.Tool) (wrench, socket *tooling.Tool) {
	for i := range wrenches {
		for j := range driven {
			a, b := strings.TrimSpace(wrenches[i].Plain("drive")), strings.TrimSpace(driven[j].Plain("drive"))
			if a == b || a == "" || b == "" {
				return nil, nil
			}
			if wrench == nil {
				wrench, socket = &wrenches[i], &driven[j]
			}
		}
	}
	return wrench, socket
}

// fitting are the tools that fit a width, or all where none does.
func fitting(tools []tooling.Tool, width string) []tooling.Tool {
	var fit []tooling.Tool
	for _, t := range tools {
		if width != "" && tooling.Fits(t.Plain("size"), width) {
			fit = append(fit, t)
		}
	}
	if fit == nil {
		return tools
	}
	return fit
}

// reduced reports a tool that goes between two drives.
func reduced(tools []tooling.Tool) bool {
	for _, t := range tools {
		if t.Has("size") || t.IsWrench() {
			continue
		}
		k := strings.ToLower(t.Plain("kind") + " " + t.Plain("name"))
		if strings.Contains(k, "reducer") || strings.Contains(k, "drive adapter") || strings.Contains(k, "adapter") || strings.Contains(k, "step") {
			return true
		}
	}
	return false
}
