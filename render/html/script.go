package html

import (
	_ "embed"
	"encoding/json"
	"strings"

	"fettle/calc"
	"fettle/render"
	"fettle/render/words"
)

//go:embed page/logbook.js
var logbookScript string

//go:embed page/store.js
var storeScript string

//go:embed page/build.js
var buildScript string

//go:embed page/page.js
var pageScript string

//go:embed page/engine.js
var engineScript string

// engine works values out and knows no document.
var engine = calc.PageScript + calc.FitScript + engineScript

// script is all that runs in the page: one name for each part, and none outside.
var script = "(() => {\n" + small(engine+logbookScript+storeScript+buildScript+pageScript) + "})();\n"

// data is what the script knows of the manual, as JSON that ends no element.
func data(l *render.Live) string {
	b, err := json.Marshal(struct {
		*render.Live
		Words map[string]string `json:"words"`
	}{l, words.Live})
	if err != nil { // it holds nothing that JSON cannot
		panic("internal error: " + err.Error())
	}
	return string(b)
}

// small leaves out comments and the blanks that begin lines. It goes by lines: a
// comment of the scripts stands on a line of its own, or after two blanks or a
// code character and " // ".
func small(script string) string {
	var b strings.Builder
	for line := range strings.Lines(script) {
		line = strings.TrimSpace(line)
		if line == "" || strings.HasPrefix(line, "//") {
			continue
		}
		if i := strings.LastIndex(line, " // "); i >= 0 {
			line = strings.TrimRight(line[:i], " ")
		}
		b.WriteString(line)
		b.WriteByte('\n')
	}
	return b.String()
}
