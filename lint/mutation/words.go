package mutation

import (
	"strings"

	"fettle/lang/kind"
	"fettle/lang/model"
)

var words = []*Class{
	{"words", "sentence over the limit", []string{"words/long-sentence"}, longSentence},
	{"words", "title with several actions", []string{"words/several-actions"}, severalActions},
	{"words", "vague amount or criterion", []string{"words/vague-criterion", "words/vague-amount"}, vague},
	{"words", "step without an action", []string{"words/no-action", "form/missing-attribute"}, noAction},
	{"words", "inspection without a criterion", []string{"words/no-criterion"}, noCriterion},
}

// some picks every n-th step.
func (w *Workshop) some(n int, visit func(i int, s *model.Step)) {
	k := 0
	for i, s := range w.steps {
		if i%n == 0 {
			visit(k, s)
			k++
		}
	}
}

func longSentence(w *Workshop) {
	long := []string{
		"Before you go on to the next part of the work, lay everything that you have used so far back into its own place on the bench, and count it twice.",
		"Take the part in your left hand with its longer side towards the window and turn it slowly until the light falls along the whole of the edge that you cleaned.",
		"Put the tray where you can reach it without letting go of the part and where neither your sleeve nor the cable of the lamp can pull it off the bench.",
	}
	w.some(3, func(i int, s *model.Step) {
		attr := []string{"text", "why"}[i%2]
		if attr == "why" {
			w.Put(Say(s.Node, attr, "This is so because the maker of the casting changed the way in which it is cleaned after it leaves the mould, and ever since then a little of the sand has stayed behind in places that nobody sees."), "%q: a long sentence in why", s.Title())
			return
		}
		w.Put(Say(s.Node, attr, long[i%len(long)]), "%q: a long sentence in text", s.Title())
	})
	w.EachNode(func(n *model.Node) {
		if n.Def.Name == "warning" && !n.Shared {
			w.Put(Set(n, "avoid", quote(long[2])), "a long sentence in a warning")
		}
	})
}

func severalActions(w *Workshop) {
	more := []string{" and tighten the bolts", ", then wipe it dry", ", turn it round and measure it", " and check the gap"}
	w.some(3, func(i int, s *model.Step) {
		if t := s.Text("title"); t == nil || strings.Contains(s.Plain("title"), "«") || strings.ContainsAny(s.Plain("title"), ",:") || strings.Contains(s.Plain("title"), " and ") {
			return
		}
		w.Put(Set(s.Node, "title", quote(s.Plain("title")+more[i%len(more)])), "%q%s", s.Title(), more[i%len(more)])
	})
}

func vague(w *Workshop) {
	says := []string{
		"Use a little of it.",
		"Repeat this as required.",
		"Make it nice and tight.",
		"Wait for a while.",
		"Put enough of it on.",
	}
	w.some(4, func(i int, s *model.Step) {
		w.Put(Say(s.Node, "text", says[i%len(says)]), "%q: %s", s.Title(), says[i%len(says)])
	})
	criteria := []string{"It is tight.", "OK", "It looks good.", "It is sufficiently clean."}
	i := 0
	for _, s := range w.steps {
		if s.Has("criterion") {
			w.Put(Set(s.Node, "criterion", quote(criteria[i%len(criteria)])), "%q: %s", s.Title(), criteria[i%len(criteria)])
			i++
		}
	}
}

func noAction(w *Workshop) {
	w.some(3, func(i int, s *model.Step) {
		title := []string{"The next part", "Housing and cover", "A point of care", "Important"}[i%4]
		w.Put(Set(s.Node, "title", quote(title)), "%q called %s", s.Title(), title)
	})
	for _, s := range w.steps {
		for _, v := range []kind.Verb{kind.Joins, kind.Starts} {
			n := Does(s, v)
			if len(n) == 1 && s.Def.Name == "fit" && w.Uses(s.Node) == 0 {
				attr := "part"
				if v == kind.Starts {
					attr = "fastening"
				}
				text := Copy(s.Node, s.ID+"_bare", without(s.Node, attr, "was", "after", "within", "facing", "align", "trial", "without", "quantity", "irreversible"))
				w.Put(InsertAfter(s.Node, text), "%q, which fits nothing", s.Title())
			}
		}
		if Is(s, kind.Waits) && !s.Has("until") && s.Has("for") {
			w.Put(InsertAfter(s.Node, Copy(s.Node, s.ID+"_bare", without(s.Node, "for", "was", "after"))), "%q, for no time", s.Title())
		}
	}
}

func noCriterion(w *Workshop) {
	for _, s := range w.steps {
		if s.Def.Name != "inspect" || !s.Has("criterion") {
			continue
		}
		w.Put(Unset(s.Node, "criterion"), "%q by no criterion", s.Title())
		w.Put(Set(s.Node, "criterion", `""`), "%q by an empty criterion", s.Title())
	}
}
