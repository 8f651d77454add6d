package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"fettle/bench/revision"
	"fettle/lang/model"
	"fettle/render"
	"fettle/render/html"
	"fettle/render/json"
	"fettle/render/markdown"
	"fettle/render/pdf"
)

// writers are the formats of a checklist.
var writers = map[string]func(io.Writer, *render.Document) error{
	"html":     html.Write,
	"markdown": markdown.Write,
	"json":     json.Write,
	"pdf":      pdf.Write,
}

func formats() string {
	var names []string
	for n := range writers {
		names = append(names, n)
	}
	slices.Sort(names)
	return strings.Join(names, ", ")
}

func buildCommand() *cobra.Command {
	var given givenFlags
	to, output := "html", ""
	c := &cobra.Command{
		Use:   "build [folder]",
		Short: "Make a checklist of a manual",
		Long: `Build makes a checklist of a manual: a page, Markdown, JSON, or a PDF through an
installed Chromium. Where readings
are given, the values that rest on them are worked out; otherwise there are
blanks to fill in.

It goes to standard output, or to the file that --output names, which is written
whole or not at all.`,
		Example: `  fettle build procedures/beck --output beck.html
  fettle build procedures/sedge_2 --to markdown --option ignition=magneto`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			write := writers[to]
			if write == nil {
				return fmt.Errorf("--to %s: choose %s", to, formats())
			}
			p, err := locate(c, args)
			if err != nil {
				return err
			}
			m, found, err := p.load()
			if err != nil {
				return err
			}
			if err := p.stop(c, m, found); err != nil {
				return err
			}
			g, err := given.read(c, m)
			if err != nil {
				return err
			}
			var b bytes.Buffer
			if err := write(&b, p.document(m, render.Options{Given: g})); err != nil {
				return err
			}
			return deliver(c, output, b.Bytes())
		},
	}
	given.add(c)
	c.Flags().StringVar(&to, "to", "html", formats())
	c.Flags().StringVar(&output, "output", "", "the file to write (default: standard output)")
	return c
}

func (p *place) document(m *model.Manual, o render.Options) *render.Document {
	o.Figures, o.Digest = p.root.FS(), revision.Digest(m)
	return render.Lower(m, o)
}

// deliver writes to standard output, or to a file whole or not at all.
func deliver(c *cobra.Command, output string, data []byte) error {
	if output == "" {
		_, err := c.OutOrStdout().Write(data)
		return err
	}
	f, err := os.CreateTemp(filepath.Dir(output), ".fettle-*")
	if err != nil {
		return fmt.Errorf("cannot write %s: %w", output, err)
	}
	defer os.Remove(f.Name()) // gone already when all went well
	_, err = f.Write(data)
	if err == nil {
		err = f.Chmod(0o644)
	}
	if err == nil {
		err = f.Sync()
	}
	if e := f.Close(); err == nil {
		err = e
	}
	if err == nil {
		err = os.Rename(f.Name(), output)
	}
	if err != nil {
		return fmt.Errorf("cannot write %s: %w", output, err)
	}
	return nil
}
