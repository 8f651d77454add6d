package html

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// TestAccessible runs axe-core on the main states. Source: WCAG 2.2, levels A and
// AA, as far as a program can judge. The file is fetched by .ci/run into a folder of
// its own; FETTLE_AXE names it.
func TestAccessible(t *testing.T) {
	path := os.Getenv("FETTLE_AXE")
	if path == "" {
		t.Skip("left out: FETTLE_AXE names no axe.min.js, so no page was judged for access")
	}
	axe, err := os.ReadFile(path)
	require.NoError(t, err)
	for _, m := range manuals[2:] {
		ctx, _ := open(t, page1(t, m[0], m[1]), 390, 844)
		js[any](t, ctx, string(axe)+"; 1")
		states := []struct{ name, act string }{
			{"as opened", "1"},
			{"menu open", `document.querySelector("button[aria-controls=panel]").click()`},
			{"readings, good and bad", `document.querySelectorAll(".read[data-unit] .box input:not([readonly])").forEach((b, i) => { b.value = ["0.9", "x", "9999"][i % 3]; b.dispatchEvent(new Event("input")); })`},
			{"one step", `document.querySelector(".keys button:nth-child(2)").click()`},
		}
		for _, s := range states {
			js[any](t, ctx, s.act+"; 1")
			for _, scheme := range []string{"light", "dark"} {
				do(t, ctx, emulateScheme(scheme))
				found := awaited(t, ctx, `axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }).then((r) =>
					r.violations.map((v) => v.id + ": " + v.help + " " + v.nodes.slice(0, 3).map((n) => n.target + " " + n.failureSummary).join("; ")).join("\n"))`)
				require.Empty(t, found, "%s, %s, %s", m[1], s.name, scheme)
			}
		}
	}
}

// TestScreens keeps pictures of the main states for people to look at.
func TestScreens(t *testing.T) {
	if os.Getenv("FETTLE_SCREENS") == "" {
		t.Skip("left out: FETTLE_SCREENS asks for pictures of the page, to be looked at")
	}
	page := page1(t, "../../procedures", "sedge_2")
	type value = map[string]string
	typeIn := func(values value) string {
		s := ""
		for key, v := range values {
			s += fmt.Sprintf(`{ const b = document.querySelector('[data-key="%s"] input'); b.disabled = false; b.value = "%s"; b.dispatchEvent(new Event("input")); }`, key, v)
		}
		return s
	}
	to := func(selector string) string { return `document.querySelector('` + selector + `').scrollIntoView();` }
	for _, s := range []struct {
		name          string
		width, height int64
		scheme, act   string
	}{
		{"tablet", 820, 1180, "light", typeIn(value{"crankshaft.measure.float": "0.93"}) + to(`[id="crankshaft.choose.pack"]`)},
		{"tablet_stop", 820, 1180, "dark", typeIn(value{"crankshaft.measure.float": "1,9"}) + to(`[id="crankshaft.measure.float"]`)},
		{"phone", 390, 844, "light", `document.querySelector(".keys button:nth-child(2)").click();`},
		{"phone_dark", 390, 844, "dark", to(`[id="camshaft.hold.timing"]`)},
		{"desktop", 1280, 800, "light", to(`[id="sump-h"]`)},
	} {
		ctx, _ := open(t, page, s.width, s.height)
		do(t, ctx, emulateScheme(s.scheme))
		js[any](t, ctx, s.act+"; 1")
		png, err := chromedp.Run(ctx, chromedp.CaptureScreenshot())
		require.NoError(t, err)
		require.NoError(t, os.MkdirAll(filepath.Join("testdata", "screens"), 0o755))
		require.NoError(t, os.WriteFile(filepath.Join("testdata", "screens", s.name+".png"), png, 0o644))
	}
}
