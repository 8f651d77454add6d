// Command fettle checks assembly manuals and makes checklists of them. Each
// command has a file of its own and decides nothing: it opens the folder, calls
// a package and prints.
package main

import (
	"errors"
	"fmt"
	"os"
	"runtime/debug"

	"github.com/spf13/cobra"
)

func main() { os.Exit(run()) }

// run gives the exit code: 0 clean, 1 findings, 2 could not run.
func run() (code int) {
	defer func() {
		if r := recover(); r != nil {
			fmt.Fprintf(os.Stderr, "fettle: internal error: %v\n\n%s\nThis is a fault of fettle, not of the manual. Please report it with the manual.\n", r, debug.Stack())
			code = 2
		}
	}()
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(50) // peak memory is what a large manual runs out of
	}
	err := root().Execute()
	var found findings
	switch {
	case err == nil:
		return 0
	case errors.As(err, &found):
		return 1
	}
	fmt.Fprintln(os.Stderr, "fettle: "+err.Error())
	return 2
}

// findings is the error of a command that ran and found something.
type findings struct{}

func (findings) Error() string { return "there are findings" }

func root() *cobra.Command {
	c := &cobra.Command{
		Use:   "fettle",
		Short: "Check assembly manuals and make checklists of them",
		Long: `fettle keeps the manual of a machine as text, proves what can be proved about
it, and makes checklists with the numbers already worked out.

It is an aid to a competent person. Nothing it prints approves a machine for
service; local codes and licensed practice come first.`,
		SilenceErrors: true, SilenceUsage: true,
		CompletionOptions: cobra.CompletionOptions{HiddenDefaultCmd: true},
	}
	c.PersistentFlags().String("root", "", "the folder that no path may leave (default: the working folder, or the manual's parent)")
	c.AddCommand(commands()...)
	return c
}
