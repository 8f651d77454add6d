package html

// A colour of the page, by its use. The names are those of the style sheet.
type colour struct{ name, light, dark string }

// palette is all colours. Ink on paper keeps well above 7:1, since NASA
// CR-177605 finds contrast and size to matter most in poor light; a test works
// the contrast of every pair in use out as WCAG 2.2 defines it.
//
// The grounds of the signal words are those of ANSI Z535: red, orange, yellow,
// blue. The word itself and a sign carry the meaning; colour only repeats it.
var palette = []colour{
	{"paper", "#f7f5ef", "#15181c"},
	{"card", "#ffffff", "#1d2126"},
	{"ink", "#14171a", "#f0ede6"},
	{"quiet", "#4a4f55", "#b9bcc0"},
	{"line", "#8b8578", "#7d8289"}, // edges of boxes: 3:1
	{"rule", "#d8d2c4", "#363c44"}, // decoration only
	{"blue", "#16407a", "#a9c8f5"}, // marking-out blue: numbers to set, links
	{"wash", "#eaf0f8", "#222c3a"}, // behind them
	{"figure", "#ffffff", "#ffffff"},
	{"danger", "#b00d1e", "#b00d1e"}, {"on-danger", "#ffffff", "#ffffff"},
	{"warning", "#ff8200", "#ff8200"}, {"on-warning", "#000000", "#000000"},
	{"caution", "#ffd100", "#ffd100"}, {"on-caution", "#000000", "#000000"},
	{"notice", "#0b4f9c", "#0b4f9c"}, {"on-notice", "#ffffff", "#ffffff"},
	{"stop", "#8f0a18", "#ffb4ab"}, // words that stop the work
}

// pairs are the foregrounds and grounds that meet, with the least contrast that
// WCAG 2.2 asks for (1.4.3, 1.4.11).
var pairs = []struct {
	over, ground string
	least        float64
}{
	{"ink", "paper", 7}, {"ink", "card", 7}, {"ink", "wash", 7},
	{"quiet", "paper", 4.5}, {"quiet", "card", 4.5}, {"quiet", "wash", 4.5},
	{"blue", "paper", 4.5}, {"blue", "card", 4.5}, {"blue", "wash", 4.5},
	{"line", "paper", 3}, {"line", "card", 3}, {"line", "wash", 3},
	{"on-danger", "danger", 4.5}, {"on-warning", "warning", 4.5}, {"on-caution", "caution", 4.5}, {"on-notice", "notice", 4.5},
	{"stop", "card", 4.5}, {"stop", "paper", 4.5}, {"stop", "wash", 4.5},
}

func colours(dark bool) string {
	out := "color-scheme:light;"
	if dark {
		out = "color-scheme:dark;"
	}
	for _, c := range palette {
		v := c.light
		if dark {
			v = c.dark
		}
		out += "--" + c.name + ":" + v + ";"
	}
	return out
}
