package lang_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"
	"github.com/stretchr/testify/require"

	"fettle/calc"
	"fettle/lang"
	"fettle/lang/model"
)

var update = flag.Bool("update", false, "rewrite the expected models")

// Each case is a manual and the model that it must be read as, with what is
// found in it.
func TestDialect(t *testing.T) {
	cases, err := filepath.Glob("../testdata/dialect/*.txtar")
	require.NoError(t, err)
	require.NotEmpty(t, cases)
	for _, path := range cases {
		t.Run(strings.TrimSuffix(filepath.Base(path), ".txtar"), func(t *testing.T) {
			a, err := txtar.ParseFile(path)
			require.NoError(t, err)
			fsys := fstest.MapFS{}
			want := ""
			for _, f := range a.Files {
				if f.Name == "model" {
					want = string(f.Data)
				} else {
					fsys[f.Name] = &fstest.MapFile{Data: f.Data}
				}
			}
			m, found, err := lang.Load(fsys, "m")
			require.NoError(t, err)
			got := dump(m)
			for _, s := range said(found) {
				got += "! " + s + "\n"
			}
			if *update {
				files := a.Files[:0]
				for _, f := range a.Files {
					if f.Name != "model" {
						files = append(files, f)
					}
				}
				a.Files = append(files, txtar.File{Name: "model", Data: []byte(got)})
				require.NoError(t, os.WriteFile(path, txtar.Format(a), 0o644))
				return
			}
			require.Equal(t, want, got)
		})
	}
}

// dump prints a model, one node or attribute a line.
func dump(m *model.Manual) string {
	var b strings.Builder
	m.EachNode(func(n *model.Node) {
		indent := ""
		for p := n.Parent; p != nil; p = p.Parent {
			indent += "  "
		}
		name := n.Address
		if name == "" {
			name = strings.TrimSpace(n.Def.Name + " " + n.ID)
		}
		b.WriteString(indent + name)
		if s := n.Step; s != nil {
			b.WriteString(" = step " + s.Number)
			if s.Places != nil {
				b.WriteString(" at " + strings.Join(s.Places.Names("names"), ", "))
			}
		}
		b.WriteString("\n")
		for i := range n.Attrs {
			a := &n.Attrs[i]
			fmt.Fprintf(&b, "%s  .%s %s\n", indent, a.Def.Name, shown(a.Value))
		}
	})
	for _, e := range m.Examples {
		fmt.Fprintf(&b, "example %q\n", e.ID)
		for i := range e.Attrs {
			fmt.Fprintf(&b, "  .%s %s\n", e.Attrs[i].Def.Name, shown(e.Attrs[i].Value))
		}
	}
	return b.String()
}

func shown(v model.Value) string {
	switch v := v.(type) {
	case *model.Text:
		s := fmt.Sprintf("text %q", v.Plain())
		for _, f := range v.Values {
			s += " " + shown(f)
		}
		return s
	case *model.Formula:
		if v == nil {
			return "nothing"
		}
		s := calc.Formula(v.Expr) + " : " + v.Expr.Type().String()
		if v.Const != nil {
			s += " = " + constant(v.Const)
		}
		if len(v.Refs) > 0 {
			s += " of"
			for _, r := range v.Refs {
				s += " " + r.Address()
			}
		}
		return s
	case model.Refs:
		parts := make([]string, len(v))
		for i, r := range v {
			parts[i] = r.Address()
			if r.To == nil {
				parts[i] = fmt.Sprintf("%q", r.Word)
			}
		}
		return "-> " + strings.Join(parts, ", ")
	case model.Names:
		parts := make([]string, len(v))
		for i, n := range v {
			parts[i] = n.Text
		}
		return "names " + strings.Join(parts, " | ")
	case model.List:
		parts := make([]string, len(v))
		for i, item := range v {
			parts[i] = shown(item)
		}
		return "[" + strings.Join(parts, "; ") + "]"
	case model.ByPlace:
		parts := make([]string, len(v))
		for i, p := range v {
			parts[i] = p.Place + ": " + shown(p.Value)
		}
		return "{" + strings.Join(parts, "; ") + "}"
	case *model.Table:
		parts := make([]string, len(v.Pairs))
		for i, p := range v.Pairs {
			parts[i] = p.Key.Address() + ": " + shown(p.Value)
		}
		return "{" + strings.Join(parts, "; ") + "}"
	case model.Times:
		parts := make([]string, len(v))
		for i, x := range v {
			parts[i] = x.For.String()
			if x.At != nil {
				parts[i] += " at " + x.At.String()
			}
		}
		return strings.Join(parts, " | ")
	}
	return fmt.Sprintf("%v", v)
}

func constant(v calc.Value) string {
	end := func(q *calc.Quantity) string {
		if q == nil {
			return "open"
		}
		return q.String()
	}
	switch v := v.(type) {
	case calc.Quantity:
		return v.String()
	case calc.Limits:
		return end(v.Low) + " to " + end(v.High) + ", aim " + end(v.Target)
	}
	return fmt.Sprint(v)
}
