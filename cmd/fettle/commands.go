package main

import (
	"os"

	"github.com/spf13/cobra"
)

const createNew = os.O_WRONLY | os.O_CREATE | os.O_TRUNC

// commands lists them in the order of the help.
func commands() []*cobra.Command {
	return []*cobra.Command{formatCommand()}
}
