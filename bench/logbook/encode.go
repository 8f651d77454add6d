package logbook

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"sort"
	"strconv"
)

// Encode gives the line of an entry, without its line end. There is one way to
// write an entry: keys in the order of Entry's fields, those that are empty left
// out (but n and prev), keys of options sorted, no blanks, strings as JSON.stringify of
// ECMA-262 writes them.
func Encode(e *Entry) []byte {
	b := append([]byte(nil), `{"n":`...)
	b = strconv.AppendInt(b, int64(e.N), 10)
	b = append(b, `,"prev":`...)
	b = appendList(b, e.Prev)
	text := func(key, s string) {
		if s != "" {
			b = append(append(append(b, `,"`...), key...), `":`...)
			b = appendString(b, s)
		}
	}
	text("kind", string(e.Kind))
	text("at", e.At)
	text("by", e.By)
	text("serial", e.Serial)
	text("manual", e.Manual)
	text("revision", e.Revision)
	text("digest", e.Digest)
	if len(e.Options) > 0 {
		names := make([]string, 0, len(e.Options))
		for name := range e.Options {
			names = append(names, name)
		}
		sort.Strings(names)
		b = append(b, `,"options":{`...)
		for i, name := range names {
			if i > 0 {
				b = append(b, ',')
			}
			b = append(appendString(b, name), ':')
			b = appendString(b, e.Options[name])
		}
		b = append(b, '}')
	}
	text("step", e.Step)
	text("place", e.Place)
	text("part", e.Part)
	text("size", e.Size)
	if len(e.Values) > 0 {
		b = appendList(append(b, `,"values":`...), e.Values)
	}
	text("tool", e.Tool)
	text("instrument", e.Instrument)
	text("role", e.Role)
	text("line", e.Line)
	text("text", e.Text)
	return append(b, '}')
}

func appendList(b []byte, list []string) []byte {
	b = append(b, '[')
	for i, s := range list {
		if i > 0 {
			b = append(b, ',')
		}
		b = appendString(b, s)
	}
	return append(b, ']')
}

// appendString writes s as QuoteJSONString of ECMA-262 does. What is not UTF-8
// becomes U+FFFD, so that a line is always UTF-8.
func appendString(b []byte, s string) []byte {
	const hex = "0123456789abcdef"
	b = append(b, '"')
	for _, r := range s {
		switch r {
		case '"', '\\':
			b = append(b, '\\', byte(r))
		case '\b':
			b = append(b, `\b`...)
		case '\f':
			b = append(b, `\f`...)
		case '\n':
			b = append(b, `\n`...)
		case '\r':
			b = append(b, `\r`...)
		case '\t':
			b = append(b, `\t`...)
		default:
			if r < 0x20 {
				b = append(b, '\\', 'u', '0', '0', hex[r>>4], hex[r&15])
			} else {
				b = append(b, string(r)...)
			}
		}
	}
	return append(b, '"')
}

var errNotOneObject = errors.New("something stands after the object")

// decode reads a line. canonical is false where Encode would write the same
// entry in other bytes.
func decode(line []byte) (e Entry, canonical bool, err error) {
	d := json.NewDecoder(bytes.NewReader(line))
	d.DisallowUnknownFields()
	if err := d.Decode(&e); err != nil {
		return e, false, err
	}
	if _, err := d.Token(); err != io.EOF {
		return e, false, errNotOneObject
	}
	return e, bytes.Equal(Encode(&e), line), nil
}
