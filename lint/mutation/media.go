package mutation

import (
	"slices"
	"strings"

	"fettle/lang/model"
)

var media = []*Class{
	{"media", "file missing", []string{"media/file-missing", "media/missing-file"}, fileMissing},
	{"media", "no alternative text", []string{"media/no-alternative", "media/no-alternative-text", "media/no-alt"}, noAlternative},
	{"media", "shows an older revision of its step", []string{"media/older-revision", "media/stale", "revision/stale-figure"}, olderFigure},
}

var revision = []*Class{
	{"revision", "letter or date going backwards", []string{"revision/backwards", "revision/goes-backwards", "revision/letter-backwards", "revision/date-backwards"}, backwards},
	{"revision", "was names what still exists", []string{"revision/was-still-exists", "revision/former-label-in-use", "revision/was"}, formerStillThere},
}

func fileMissing(w *Workshop) {
	for i, n := range w.Own("figure") {
		at := n.ValueSpan(n.Attr("file")).Text()
		path := strings.Trim(at, `"`)
		wrong := []string{strings.Replace(path, ".", "_2.", 1), "figures/" + path, strings.TrimSuffix(path, ".svg") + ".png"}[i%3]
		w.Put(Set(n, "file", quote(wrong)), "%q: %s", n.Title(), wrong)
		w.Put(Set(n, "file", quote(strings.Replace(path, ".", "-old.", 1))), "%q: an old name", n.Title())
	}
	for _, s := range w.steps {
		if s.Index == 1 && !s.Has("figures") {
			text := "figure \"sketch\" {\n  file    = \"figures/sketch_that_nobody_drew.svg\"\n  alt     = \"The part as it lies on the bench.\"\n  made_at = \"" + w.Plain("revision") + "\"\n  shows   = [" + s.Address + "]\n}\n"
			w.Put(InsertAfter(w.Node, text).And(Set(s.Node, "figures", "[figure.sketch]")), "a figure that nobody drew")
		}
	}
}

func noAlternative(w *Workshop) {
	for _, n := range w.Own("figure") {
		w.Put(Unset(n, "alt"), "%q without words", n.Title())
		w.Put(Set(n, "alt", `""`), "%q with empty words", n.Title())
		w.Put(Set(n, "alt", `"  "`), "%q with blank words", n.Title())
	}
}

// olderFigure needs to know that the step was changed since the figure was made.
// Only a frozen revision tells; until a manual has one, a figure made at a
// revision that there never was, or at a later one, is what can be seen.
func olderFigure(w *Workshop) {
	for _, n := range append(w.Own("figure"), w.Own("media")...) {
		if !n.Has("made_at") {
			continue
		}
		for _, letter := range []string{"Q", "T"} {
			if letter > w.Plain("revision") {
				w.Put(Set(n, "made_at", quote(letter)), "%q made at %s", n.Title(), letter)
			}
		}
	}
}

func backwards(w *Workshop) {
	issued := w.Plain("issued")
	if issued == "" {
		return
	}
	past := func(letter, day string) string {
		return "  history \"" + letter + "\" {\n    issued = \"" + day + "\"\n    reason = \"First issue.\"\n  }\n"
	}
	histories := slices.DeleteFunc(slices.Clone(w.Blocks), func(b *model.Node) bool { return b.Def.Name != "history" })
	end := len(w.Node.Extent.Text()) - 1
	at := w.Node.Extent.Sub(end, end)
	if len(histories) == 0 {
		w.Put(Set(w.Node, "revision", `"B"`).And(replace(w.Node, at, "\n"+past("A", "2031-05-05"))), "an older revision issued later")
		w.Put(replace(w.Node, at, "\n"+past("C", "2020-05-05")), "a history of a later letter")
		return
	}
	h := histories[len(histories)-1]
	w.Put(Set(h, "issued", `"2031-05-05"`).At(w.Node), "the history issued later than the manual")
	w.Put(Set(w.Node, "issued", `"2001-01-01"`), "the manual issued before its history")
	w.Put(replace(h, h.Name, `"`+string(w.Plain("revision")[0]+3)+`"`).At(w.Node), "a history of a later letter")
	w.Put(Set(w.Node, "revision", `"`+string(h.ID[0])+`"`).At(h), "the letter of the history again")
}

func formerStillThere(w *Workshop) {
	for i, s := range w.steps {
		if i%4 != 0 {
			continue
		}
		for _, o := range s.Procedure.Steps {
			if o != s && o.Def.Name == s.Def.Name && !s.Has("was") {
				w.Put(Set(s.Node, "was", "["+quote(o.ID)+"]").At(o.Node), "%q was %q, which is there", s.ID, o.ID)
				break
			}
		}
	}
	for i, p := range w.Procedures[:w.Ordered] {
		if i > 0 && !p.Has("was") {
			w.Put(Set(p, "was", "["+quote(w.Procedures[i-1].ID)+"]").At(w.Procedures[i-1]), "%q was %q, which is there", p.ID, w.Procedures[i-1].ID)
		}
	}
}
