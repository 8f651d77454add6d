// Package pdf prints a checklist to PDF through a Chromium that is installed on the
// machine. It is for the build command.
//
// It refuses to guess: where there is no Chromium it says what to install. The
// page that is printed is that of package html without its script, in a folder of its
// own; its policy keeps the browser from the network.
package pdf

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"time"

	"fettle/render"
	"fettle/render/html"
)

// ErrNoBrowser says that nothing on this machine can print.
var ErrNoBrowser = errors.New("a PDF is printed by Chromium, and there is none on this machine: install chromium, or make the page and print it from any browser")

// names are those under which systems install Chromium.
var names = []string{"chromium", "chromium-browser"}

// Browser is the path of the Chromium that prints. The error is ErrNoBrowser.
func Browser() (string, error) {
	for _, name := range names {
		if path, err := exec.LookPath(name); err == nil {
			return path, nil
		}
	}
	return "", ErrNoBrowser
}

// patience is how long a browser may take for a long manual on a slow machine.
const patience = 3 * time.Minute

// Write prints the document. Every page carries the title, the revision with its
// digest, and its number. Errors are ErrNoBrowser, those of the browser with what
// it said, and those of w.
func Write(w io.Writer, d *render.Document) error {
	browser, err := Browser()
	if err != nil {
		return err
	}
	dir, err := os.MkdirTemp("", "fettle-print-")
	if err != nil {
		return fmt.Errorf("cannot print: %w", err)
	}
	defer os.RemoveAll(dir)
	page, out := filepath.Join(dir, "page.html"), filepath.Join(dir, "page.pdf")
	var b bytes.Buffer
	if err := html.Paper(&b, d); err != nil {
		return err
	}
	if err := os.WriteFile(page, b.Bytes(), 0o600); err != nil {
		return fmt.Errorf("cannot print: %w", err)
	}
	ctx, stop := context.WithTimeout(context.Background(), patience)
	defer stop()
	args := []string{"--headless", "--disable-gpu", "--no-pdf-header-footer", "--generate-pdf-document-outline",
		"--user-data-dir=" + filepath.Join(dir, "profile"), "--print-to-pdf=" + out}
	if os.Geteuid() == 0 { // its sandbox does not run for the superuser
		args = append(args, "--no-sandbox")
	}
	said, err := exec.CommandContext(ctx, browser, append(args, "file://"+filepath.ToSlash(page))...).CombinedOutput()
	if ctx.Err() != nil {
		return fmt.Errorf("cannot print: the browser took longer than %v", patience)
	}
	data, readErr := os.ReadFile(out)
	if readErr != nil {
		return fmt.Errorf("cannot print: %s made no PDF (%v): %s", filepath.Base(browser), err, last(said))
	}
	_, err = w.Write(data)
	return err
}

// last is the end of what a program said.
func last(said []byte) []byte {
	said = bytes.TrimSpace(said)
	return said[max(0, len(said)-400):]
}
