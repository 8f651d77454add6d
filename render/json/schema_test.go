package json

import (
	"bytes"
	"encoding/json"
	"flag"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/require"

	"fettle/lang"
	"fettle/render"
)

var update = flag.Bool("update", false, "rewrite schema.json")

// TestSchemaIsFresh makes the schema from the types and their comments, so that
// what is written and what is documented are one.
func TestSchemaIsFresh(t *testing.T) {
	s := &schema{t: t, types: map[string]*ast.TypeSpec{}, docs: map[string]string{}, words: map[string][]string{}}
	for _, pattern := range []string{"../*_tree.go", "../../calc/display.go"} {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		require.NotEmpty(t, files)
		for _, f := range files {
			s.read(f)
		}
	}
	defs := object{}
	s.defs = defs
	s.need("Document")
	root := object{
		"$schema":              "https://json-schema.org/draft/2020-12/schema",
		"title":                "Checklist of fettle",
		"description":          "A checklist as a document tree. " + s.docs["Document"],
		"type":                 "object",
		"additionalProperties": false,
		"required":             []string{"form", "document"},
		"properties": object{
			"form":     object{"const": Form, "description": "The form of this output. It changes when a reader of the former one would misread the new one."},
			"document": object{"$ref": "#/$defs/Document"},
		},
		"$defs": defs,
	}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	require.NoError(t, e.Encode(root))
	if *update {
		require.NoError(t, os.WriteFile("schema.json", b.Bytes(), 0o644))
	}
	have, err := os.ReadFile("schema.json")
	require.NoError(t, err)
	require.Equal(t, string(have), b.String(), "schema.json is stale: go test ./render/json -update")
}

// TestOutputMeetsSchema validates what is written with a validator of others.
func TestOutputMeetsSchema(t *testing.T) {
	compiled, err := jsonschema.NewCompiler().Compile("schema.json")
	require.NoError(t, err)
	for _, m := range [][2]string{{"../testdata", "press"}, {"../testdata", "hostile"}, {"../../procedures", "beck"}, {"../../procedures", "sedge_2"}} {
		fsys := os.DirFS(m[0])
		manual, _, err := lang.Load(fsys, m[1])
		require.NoError(t, err)
		var b bytes.Buffer
		require.NoError(t, Write(&b, render.Lower(manual, render.Options{Digest: "sha256:00", Figures: fsys})))
		value, err := jsonschema.UnmarshalJSON(&b)
		require.NoError(t, err)
		require.NoError(t, compiled.Validate(value), m[1])
	}
	wrong, err := jsonschema.UnmarshalJSON(strings.NewReader(`{"form": "fettle-checklist-1", "document": {"title": 3}}`))
	require.NoError(t, err)
	require.Error(t, compiled.Validate(wrong), "a schema that takes everything says nothing")
}

type object = map[string]any

type schema struct {
	t     *testing.T
	types map[string]*ast.TypeSpec
	docs  map[string]string
	words map[string][]string // constants by their type
	defs  object
}

func (s *schema) read(name string) {
	f, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ParseComments)
	require.NoError(s.t, err)
	for _, d := range f.Decls {
		g, ok := d.(*ast.GenDecl)
		if !ok {
			continue
		}
		of := ""
		for _, sp := range g.Specs {
			switch sp := sp.(type) {
			case *ast.TypeSpec:
				s.types[sp.Name.Name] = sp
				s.docs[sp.Name.Name] = strings.Join(strings.Fields(g.Doc.Text()), " ")
			case *ast.ValueSpec:
				if id, ok := sp.Type.(*ast.Ident); ok {
					of = id.Name
				}
				if len(sp.Values) == 1 {
					if lit, ok := sp.Values[0].(*ast.BasicLit); ok && lit.Kind == token.STRING {
						w, err := strconv.Unquote(lit.Value)
						require.NoError(s.t, err)
						s.words[of] = append(s.words[of], w)
					}
				}
			}
		}
	}
}

// need describes a type once.
func (s *schema) need(name string) {
	if _, done := s.defs[name]; done {
		return
	}
	spec := s.types[name]
	require.NotNil(s.t, spec, name)
	d := object{"description": s.docs[name]}
	s.defs[name] = d
	st, ok := spec.Type.(*ast.StructType)
	if !ok {
		for k, v := range s.of(spec.Type) {
			d[k] = v
		}
		if w := s.words[name]; w != nil {
			d["enum"] = w
		}
		return
	}
	properties, required := object{}, []string{}
	s.fields(st, properties, &required)
	d["type"], d["properties"], d["additionalProperties"] = "object", properties, false
	if len(required) > 0 {
		d["required"] = required
	}
}

func (s *schema) fields(st *ast.StructType, properties object, required *[]string) {
	for _, f := range st.Fields.List {
		if f.Names == nil { // embedded: its fields stand among these
			inner := s.types[f.Type.(*ast.Ident).Name].Type.(*ast.StructType)
			s.fields(inner, properties, required)
			continue
		}
		tag := reflect.StructTag(strings.Trim(f.Tag.Value, "`")).Get("json")
		name, rest, _ := strings.Cut(tag, ",")
		if name == "-" {
			continue
		}
		require.NotEmpty(s.t, name)
		p := s.of(f.Type)
		if c := strings.Join(strings.Fields(f.Comment.Text()), " "); c != "" {
			p["description"] = c
		}
		properties[name] = p
		if !strings.Contains(rest, "omitempty") {
			*required = append(*required, name)
		}
	}
}

// of describes a type where it is used.
func (s *schema) of(e ast.Expr) object {
	switch e := e.(type) {
	case *ast.StarExpr:
		return s.of(e.X)
	case *ast.ArrayType:
		return object{"type": []string{"array", "null"}, "items": s.of(e.Elt)}
	case *ast.SelectorExpr: // of calc
		s.need(e.Sel.Name)
		return object{"$ref": "#/$defs/" + e.Sel.Name}
	case *ast.Ident:
		switch e.Name {
		case "string":
			return object{"type": "string"}
		case "int", "int64":
			return object{"type": "integer"}
		case "bool":
			return object{"type": "boolean"}
		}
		s.need(e.Name)
		return object{"$ref": "#/$defs/" + e.Name}
	}
	s.t.Fatalf("no schema for %T", e)
	return nil
}
