package words_test

import (
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/lang/diag"
	"fettle/lint"
	"fettle/lint/rules"
)

// sentence is a line of testdata/prose: what stands in an attribute of a step.
type sentence struct {
	attr, kind, text string
	rule, part       string // of bad ones
}

func read(t *testing.T, name string) (all []sentence) {
	data, err := os.ReadFile("../../../testdata/prose/" + name)
	require.NoError(t, err)
	var s sentence
	for line := range strings.Lines(string(data)) {
		line = strings.TrimSpace(line)
		if head, ok := strings.CutPrefix(line, "== "); ok {
			s.attr, s.kind, _ = strings.Cut(head, " ")
			continue
		}
		if line == "" {
			continue
		}
		s.text = line
		if rule, text, ok := strings.Cut(line, " | "); ok {
			s.rule, s.part, _ = strings.Cut(rule, " ")
			s.text = text
		}
		all = append(all, s)
	}
	return all
}

// manual puts the sentence into a step, and says on which line it stands.
func (s sentence) manual() (text string, line int) {
	attrs := map[string]string{"title": "Do it", "criterion": "Nothing touches."}
	if s.kind != "inspect" {
		delete(attrs, "criterion")
	}
	attrs[s.attr] = s.text
	body := ""
	switch s.kind {
	case "fit", "remove":
		body = "    part = part.shaft\n"
	case "torque", "loosen", "lock":
		body = "    fastening = fastening.nut\n"
	case "seal":
		body = "    on = [part.shaft]\n"
	case "hold":
	case "wait":
		body = "    for = \"2 h\"\n"
	case "heat":
		body = "    on = [part.shaft]\n    to = \"80..100 °C\"\n"
	case "mark":
		body = "    on = [part.shaft]\n    how = \"pen\"\n"
	case "run":
		body = "    on = [part.shaft]\n    by = \"hand\"\n"
	default:
		body = "    on = [part.shaft]\n"
	}
	avoid := ""
	if s.attr == "avoid" {
		avoid = "    caution {\n      hazard = \"It is sharp.\"\n      result = \"Cuts.\"\n      avoid = " + quote(s.text) + "\n    }\n"
		delete(attrs, "avoid")
	}
	for _, name := range []string{"title", "text", "why", "criterion"} {
		if attrs[name] != "" {
			body += "    " + name + " = " + quote(attrs[name]) + "\n"
		}
	}
	text = "part \"shaft\" {\n  name = \"Shaft\"\n}\npart \"front\" {\n  name = \"Front cover\"\n}\nfastening \"nut\" {\n  name = \"Nut\"\n  thread = \"M8x1.25\"\n}\n" +
		"tool \"dial\" {\n  name = \"Dial indicator\"\n  kind = \"movement\"\n}\ntool \"puller\" {\n  name = \"Puller\"\n  kind = \"puller\"\n}\n" +
		"procedure \"p\" {\n  title = \"Work\"\n  " + s.kind + " \"it\" {\n    tools = [tool.dial, tool.puller]\n" + body + avoid + "  }\n}\n"
	return text, strings.Count(text[:strings.Index(text, quote(s.text))], "\n") + 1
}

func quote(s string) string {
	return strings.NewReplacer("${", "$${", "%{", "%%{").Replace(strconv.Quote(s))
}

// said is what is found on the line of the sentence.
func (s sentence) said(t *testing.T) (found []diag.Finding) {
	text, line := s.manual()
	fsys := fstest.MapFS{"m/m.proc.hcl": {Data: []byte(text)}}
	m, loaded, err := lang.Load(fsys, "m")
	require.NoError(t, err)
	require.False(t, m.Incomplete || m.Procedures[0].Steps[0].Damaged, "%s\n%v", text, loaded)
	for _, f := range lint.Check(m, loaded).Findings {
		if f.Span.Position().Line == line && strings.Contains(quote(s.text), f.Span.Text()) || strings.HasPrefix(f.Rule, "words/") {
			found = append(found, f)
		}
	}
	return found
}

func TestGoodProseIsSilent(t *testing.T) {
	all := read(t, "good.txt")
	require.GreaterOrEqual(t, len(all), 300)
	for _, s := range all {
		for _, f := range s.said(t) {
			t.Errorf("%s %s: %s\n    %s: %s", s.attr, s.kind, s.text, f.Rule, f.Message)
		}
	}
}

func TestBadProseIsFound(t *testing.T) {
	all := read(t, "bad.txt")
	require.GreaterOrEqual(t, len(all), 60)
	for _, s := range all {
		require.NotNil(t, rules.Find(s.rule), s.rule)
		var said []string
		right := 0
		for _, f := range s.said(t) {
			if f.Rule == s.rule && strings.Contains(f.Message, s.part) {
				right++
				continue
			}
			said = append(said, fmt.Sprintf("%s: %s", f.Rule, f.Message))
		}
		if right != 1 || len(said) > 0 {
			t.Errorf("%s %s: %s\n    found %d times by %s; besides: %q", s.attr, s.kind, s.text, right, s.rule, said)
		}
	}
}
