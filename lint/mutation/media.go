package mutation

import (
	"slices"
	"strings"

	"fettle/lang/model"
	"fettle/lang/source"
)

var media = []*Class{
	{"media", "file missing", []string{"media/file-missing"}, fileMissing},
	{"media", "no alternative text", []string{"media/no-alternative-text"}, noAlternative},
	{"media", "shows an older revision of its step", []string{"media/older-revision"}, olderFigure},
}

var revision = []*Class{
	{"revision", "content changed, letter unchanged", []string{"revision/changed-under-letter"}, changedUnderLetter},
	{"revision", "letter or date going backwards", []string{"revision/letter-goes-back", "revision/day-goes-back"}, backwards},
	{"revision", "was names nothing, or what still exists", []string{"revision/was-names-nothing", "revision/was-still-exists"}, formerStillThere},
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

// olderFigure changes what a figure shows since it was made.
func olderFigure(w *Workshop) {
	next := w.reissued()
	for _, n := range append(w.Own("figure"), w.Own("media")...) {
		if !n.Has("made_at") {
			continue
		}
		for i, r := range n.AllRefs("shows") {
			if r.To.Step == nil || r.To.Shared {
				continue
			}
			s := r.To
			w.Put(next.And(Say(s, "text", "Begin at the left.")).At(n), "%q changed in words, its picture not", s.Title())
			if s.Has("facing") {
				w.Put(next.And(Set(s, "facing", `"The other way round"`)).At(n), "%q the other way round, its picture not", s.Title())
			}
			if p := s.Step; i == 0 && Next(p) != nil && w.Uses(Next(p).Node) == 0 {
				w.Put(next.And(Set(s, "title", quote("Do this before all else"))).At(n), "%q is called otherwise, its picture not", s.Title())
			}
		}
	}
}

// reissued gives the manual the next letter and a later day.
func (s *Sound) reissued() *Change {
	letter := s.Plain("revision")
	next := letter[:len(letter)-1] + string(rune(letter[len(letter)-1]+1))
	return Set(s.Node, "revision", quote(next)).And(Set(s.Node, "issued", `"2031-05-05"`), &Change{Since: true})
}

func changedUnderLetter(w *Workshop) {
	since := &Change{Since: true, Where: []source.Span{w.Node.Extent}}
	for i, s := range w.steps {
		if i%7 != 0 {
			continue
		}
		w.Put(since.And(Say(s.Node, "text", "Do it slowly.")), "%q says more", s.Title())
		if s.Has("takes") && literal(s.Node, "takes") != "" {
			w.Put(since.And(Set(s.Node, "takes", `"0.5 min"`)).At(), "%q takes half a minute", s.Title())
		}
	}
	for _, f := range w.Own("fastening") {
		if f.Has("basis") {
			w.Put(since.And(Set(f, "basis", `"Drawing ZZ-1"`)), "%q rests on another drawing", f.Title())
		}
	}
}

func wasNothing(w *Workshop) {
	next := w.reissued()
	for i, s := range w.steps {
		if i%5 == 0 && !s.Has("was") {
			w.Put(next.And(Set(s.Node, "was", `["a_step_that_never_was"]`)), "%q was what never was", s.Title())
		}
	}
	for _, p := range w.Procedures[:w.Ordered] {
		if !p.Has("was") {
			w.Put(next.And(Set(p, "was", `["a_part_that_never_was"]`)), "%q was what never was", p.Title())
		}
	}
}

func backwards(w *Workshop) {
	issued := w.Plain("issued")
	if issued == "" {
		return
	}
	letter := w.Plain("revision")
	next := letter[:len(letter)-1] + string(rune(letter[len(letter)-1]+1))
	since := &Change{Since: true}
	w.Put(since.And(Set(w.Node, "revision", quote(next)), Set(w.Node, "issued", `"2001-01-01"`)), "revision %s of 2001", next)
	if letter > "A" {
		w.Put(since.And(Set(w.Node, "revision", `"A"`), Set(w.Node, "issued", `"2031-05-05"`)), "revision A after %s", letter)
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
	made := func(letter string) bool {
		return slices.ContainsFunc(w.Entries, func(n *model.Node) bool { return n.Plain("made_at") == letter })
	}
	w.Put(Set(h, "issued", `"2031-05-05"`).At(w.Node), "the history issued later than the manual")
	w.Put(Set(w.Node, "issued", `"2001-01-01"`), "the manual issued before its history")
	w.Put(replace(w.Node, at, "\n"+past(string(rune(letter[0]+3)), "2020-05-05")), "a history of a later letter")
	w.Put(replace(w.Node, at, "\n"+past(letter, "2020-05-05")), "a history of the same letter")
	if !made(letter) {
		w.Put(Set(w.Node, "revision", `"`+h.ID+`"`).At(h), "the letter of the history again")
	}
}

func formerStillThere(w *Workshop) {
	wasNothing(w)
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
