package diff

import (
	"bytes"
	_ "embed"
	"encoding/json"

	"fettle/bench/revision"
	"fettle/calc"
	"fettle/lang/model"
)

// Schema is the JSON Schema of what JSON gives.
//
//go:embed schema.json
var Schema string

type codedChanges struct {
	Old     codedSide     `json:"old"`
	New     codedSide     `json:"new"`
	Changes []codedChange `json:"changes"`
}

type codedSide struct {
	Manual   string `json:"manual"`
	Revision string `json:"revision"`
	Issued   string `json:"issued,omitempty"`
	Digest   string `json:"digest"`
}

type codedChange struct {
	Class   string       `json:"class"`
	What    string       `json:"what"` // added, removed, changed
	Block   string       `json:"block"`
	Address string       `json:"address"`
	Was     string       `json:"was,omitempty"` // the former address, where it is another
	Title   string       `json:"title"`
	Moved   bool         `json:"moved,omitempty"`
	Fields  []codedField `json:"fields,omitempty"`
	UsedBy  []string     `json:"used_by,omitempty"`
}

type codedField struct {
	Name     string             `json:"name"`
	In       string             `json:"in,omitempty"`
	Place    string             `json:"place,omitempty"`
	Class    string             `json:"class"`
	Old      *string            `json:"old,omitempty"`
	New      *string            `json:"new,omitempty"`
	OldValue *calc.CodedLiteral `json:"old_value,omitempty"`
	NewValue *calc.CodedLiteral `json:"new_value,omitempty"`
	Trend    string             `json:"trend,omitempty"`
	Words    []codedPart        `json:"words,omitempty"`
}

type codedPart struct {
	Op   string `json:"op"`
	Text string `json:"text"`
}

func codedSideOf(m *model.Manual) codedSide {
	return codedSide{m.ID, m.Plain("revision"), m.Plain("issued"), revision.Digest(m)}
}

// JSON is the changes for machines, as FORMAT.md describes.
func (c *Changes) JSON() []byte {
	out := codedChanges{codedSideOf(c.Old), codedSideOf(c.New), []codedChange{}}
	show := newShower(c.New)
	for i := range c.List {
		x := &c.List[i]
		n := x.Node()
		k := codedChange{Class: x.Class.String(), What: "changed", Block: n.Def.Name, Address: address(n), Title: n.Title(), Moved: x.Moved}
		switch {
		case x.Added():
			k.What = "added"
		case x.Removed():
			k.What = "removed"
		case address(x.Old) != address(x.New):
			k.Was = address(x.Old)
		}
		for j := range x.Fields {
			k.Fields = append(k.Fields, x.Fields[j].coded(show))
		}
		for _, s := range x.UsedBy {
			k.UsedBy = append(k.UsedBy, s.Key())
		}
		out.Changes = append(out.Changes, k)
	}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", " ")
	if err := e.Encode(out); err != nil {
		panic("internal error: " + err.Error()) // strings always encode
	}
	return b.Bytes()
}

func (f *Field) coded(show shower) codedField {
	k := codedField{Name: f.Name, In: f.In, Place: f.Place, Class: f.Class.String(), Trend: f.Trend.String()}
	k.Old, k.OldValue = codedValue(f.Old, show)
	k.New, k.NewValue = codedValue(f.New, show)
	for _, p := range f.Parts {
		k.Words = append(k.Words, codedPart{[...]string{"same", "out", "in"}[p.Op], p.Text})
	}
	return k
}

func codedValue(v model.Value, show shower) (*string, *calc.CodedLiteral) {
	if v == nil {
		return nil, nil
	}
	s := show.value(v)
	f, ok := v.(*model.Formula)
	if !ok {
		return &s, nil
	}
	if f.Literal != nil && f.Literal.Valid() {
		l := f.Literal.Coded()
		return &s, &l
	}
	return &s, nil
}
