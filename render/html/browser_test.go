package html

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// chromium is the browser that pages are tried in, "" where there is none.
func chromium() string {
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	return ""
}

// open shows a page from disk, as a builder does, and waits until its script is ready.
func open(t *testing.T, page []byte, width, height int64) (context.Context, string) {
	t.Helper()
	if testing.Short() {
		t.Skip("left out: the pages in a real browser take a while")
	}
	path := chromium()
	if path == "" {
		t.Skip("left out: no Chromium on this machine, so no page was tried in a browser")
	}
	file := filepath.Join(t.TempDir(), "page.html")
	require.NoError(t, os.WriteFile(file, page, 0o600))
	flags := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(path), chromedp.NoSandbox,
		chromedp.Flag("force-prefers-reduced-motion", true))
	allocator, stop := chromedp.NewExecAllocator(context.Background(), flags...)
	t.Cleanup(stop)
	ctx, done := chromedp.NewContext(allocator)
	t.Cleanup(done)
	ctx, cancel := context.WithTimeout(ctx, 60*time.Second)
	t.Cleanup(cancel)
	url := "file://" + file
	do(t, ctx, chromedp.EmulateViewport(width, height), chromedp.Navigate(url), chromedp.WaitReady("body[data-ready]"))
	return ctx, url
}

func do(t *testing.T, ctx context.Context, actions ...chromedp.Action[chromedp.Void]) {
	t.Helper()
	require.NoError(t, chromedp.Do(ctx, actions...))
}

// js is the value of an expression in the page.
func js[T any](t *testing.T, ctx context.Context, expression string) T {
	t.Helper()
	v, err := chromedp.Run(ctx, chromedp.Evaluate[T](expression))
	require.NoError(t, err)
	return v
}

// emulateScheme asks for light or dark.
func emulateScheme(scheme string) chromedp.Action[chromedp.Void] {
	return chromedp.Func(func(ctx context.Context, target *chromedp.Target) error {
		_, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
			Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}}})
		return err
	})
}

// awaited is what a promise in the page comes to.
func awaited(t *testing.T, ctx context.Context, expression string) string {
	t.Helper()
	v, err := chromedp.Run(ctx, chromedp.Evaluate[string](expression, chromedp.EvalAwaitPromise))
	require.NoError(t, err)
	return v
}
