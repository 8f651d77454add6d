package words

import (
	"slices"
	"strings"

	"fettle/lint/prose"
)

// sort is what a verb does on the bench, roughly.
type sort string

const (
	cleaning   sort = "clean"
	joining    sort = "join"
	opening    sort = "open" // loosening and taking off
	tightening sort = "tighten"
	locking    sort = "lock"
	wetting    sort = "wet"
	judging    sort = "judge"
	picking    sort = "pick"
	heating    sort = "heat"
	filling    sort = "fill"
	draining   sort = "drain"
	marking    sort = "mark"
	driving    sort = "drive"
	waiting    sort = "wait"
	stopping   sort = "stop"
	working    sort = "work" // whatever no other step is for
)

// sorts are the verbs that can hardly mean anything else.
var sorts = func() map[string]sort {
	m := map[string]sort{}
	for s, verbs := range map[sort]string{
		cleaning:   "clean wash wipe degrease dry rinse scrub deglaze",
		joining:    "fit install mount insert attach assemble refit reinstall reassemble reattach replace connect reconnect bolt clip join strap snap click hook plug",
		opening:    "loosen slacken remove detach disassemble dismantle unbolt unscrew unclip unhook disconnect withdraw extract",
		tightening: "tighten torque retighten retorque snug nip",
		locking:    "lock",
		wetting:    "oil wet grease coat lubricate smear seal reseal prime",
		judging:    "measure read gauge inspect examine check verify recheck adjust weigh remeasure compare",
		picking:    "choose select calculate",
		heating:    "heat warm cool chill",
		filling:    "fill refill",
		draining:   "drain empty",
		marking:    "mark scribe",
		waiting:    "wait",
	} {
		for v := range strings.FieldsSeq(verbs) {
			m[v] = s
		}
	}
	return m
}()

// onto are verbs that join or take off by the little word that follows.
var onto = set("slide push press drop lower put lay hang place screw set take pull lift draw tap roll feed thread")

// sortOf is the sort of a verb by itself; loose says that it may be part of
// another action.
func sortOf(verb string, object []prose.Word) (s sort, loose bool) {
	if i := strings.LastIndexByte(verb, '-'); i >= 0 {
		verb = verb[i+1:]
	}
	if s = sorts[verb]; s != "" {
		return s, false
	}
	has := func(words string) bool {
		return slices.ContainsFunc(object, func(w prose.Word) bool { return strings.Contains(" "+words+" ", " "+w.Text+" ") })
	}
	first := ""
	if len(object) > 0 {
		first = object[0].Text
	}
	switch verb {
	case "run", "start":
		switch {
		case has("engine machine motor pump turbine generator"):
			return driving, false
		case verb == "start" && has("by hand bolt bolts screw screws plug plugs stud studs fasteners"):
			return joining, false
		case verb == "run" && has("on down up") && has("nut nuts bolt bolts screw screws"):
			return joining, false
		}
	case "look", "listen":
		if strings.Contains(" at through over for under into along ", " "+first+" ") {
			return judging, false
		}
	case "work":
		if first == "out" {
			return picking, false
		}
	case "let":
		switch {
		case has("cool dry cure harden set settle"):
			return waiting, false
		case has("off out"):
			return draining, false
		}
	case "pour":
		if has("in into over") {
			return filling, false
		}
	case "bend":
		if has("tab tabs plate ear ears leg legs") {
			return locking, false
		}
	case "stop":
		if first == "before" || first == "until" {
			return stopping, false
		}
	case "apply", "spread":
		if has("sealant threadlocker oil grease adhesive compound") {
			return wetting, false
		}
	}
	if onto[verb] {
		switch {
		case has("off out"):
			return opening, true
		case has("on onto into in over home"):
			return joining, true
		}
	}
	return "", true
}
