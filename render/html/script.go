package html

import (
	_ "embed"
	"encoding/json"

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

//go:embed page/draw.js
var drawScript string

//go:embed page/page.js
var pageScript string

//go:embed page/engine.js
var engineScript string

// engine works values out and knows no document.
var engine = calc.PageScript + calc.FitScript + engineScript

// script is all that runs in the page: one name for each part, and none outside.
var script = "(() => {\n" + small(engine+logbookScript+storeScript+drawScript+buildScript+pageScript) + "})();\n"

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
