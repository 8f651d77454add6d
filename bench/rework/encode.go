package rework

import (
	"bytes"
	_ "embed"
	"encoding/json"
)

// Schema is the JSON Schema of what JSON gives.
//
//go:embed schema.json
var Schema string

type codedPlan struct {
	Serial   string       `json:"serial"`
	Revision string       `json:"revision"`
	Digest   string       `json:"digest"`
	Steps    []codedItem  `json:"steps"`
	WayIn    []codedMove  `json:"way_in"`
	Remove   []string     `json:"remove,omitempty"`
	Renew    []codedRenew `json:"renew"`
	Supplies []codedNeed  `json:"supplies"`
	Again    []codedAct   `json:"again"`
	Stuck    string       `json:"stuck,omitempty"`
}

type codedItem struct {
	Step    string `json:"step"`
	Place   string `json:"place,omitempty"`
	Verdict string `json:"verdict"`
	Why     string `json:"why,omitempty"`
	Line    string `json:"line,omitempty"`
	Follows bool   `json:"follows,omitempty"`
}

type codedMove struct {
	Do     string   `json:"do"`
	Object string   `json:"object"`
	With   []string `json:"with,omitempty"`
	Seals  []string `json:"seals,omitempty"`
}

type codedRenew struct {
	Part   string `json:"part"`
	Place  string `json:"place,omitempty"`
	Number string `json:"number,omitempty"`
	Count  int    `json:"count"`
	Why    string `json:"why"`
}

type codedNeed struct {
	Supply string   `json:"supply"`
	Steps  []string `json:"steps"`
}

type codedAct struct {
	Step  string `json:"step"`
	Place string `json:"place,omitempty"`
	Why   string `json:"why"`
	Asked bool   `json:"asked"`
	Cured string `json:"cured,omitempty"`
}

var verdictCodes = [...]string{"as-it-was", "gone", "release-again", "read-again", "do-again", "new"}

// JSON is the plan for machines, as FORMAT.md describes.
func (p *Plan) JSON() []byte {
	out := codedPlan{p.State.Start.Serial, p.Manual.Plain("revision"), p.Digest, []codedItem{}, []codedMove{}, objects(p.Remove), []codedRenew{}, []codedNeed{}, []codedAct{}, ""}
	for _, i := range p.Items {
		k := codedItem{Step: i.Step.Key(), Place: i.Place, Verdict: verdictCodes[i.Verdict], Why: i.Why, Follows: i.Follows}
		if i.Line != nil {
			k.Line = i.Line.Sum
		}
		out.Steps = append(out.Steps, k)
	}
	for _, m := range p.WayIn {
		out.WayIn = append(out.WayIn, codedMove{verb(m), m.Object.Node.Address + placed(m.Object.Place), objects(m.With), objects(m.Seals)})
	}
	for _, r := range p.Renew {
		out.Renew = append(out.Renew, codedRenew{r.Object.Node.Address, r.Object.Place, r.Number, r.Count, r.Why})
	}
	for _, n := range p.Needs() {
		k := codedNeed{Supply: n.Supply.Address}
		for _, a := range n.For {
			k.Steps = append(k.Steps, a.Step.Key()+placed(a.Place))
		}
		out.Supplies = append(out.Supplies, k)
	}
	for _, a := range p.Again {
		out.Again = append(out.Again, codedAct{a.Step.Key(), a.Place, a.Why, a.Asked, a.First})
	}
	if p.Stuck != nil {
		out.Stuck = p.Stuck.Object.String() + " " + p.Stuck.Why
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

func placed(place string) string {
	if place == "" {
		return ""
	}
	return `["` + place + `"]`
}
