package main

import (
	"os"

	"github.com/spf13/cobra"
)

// version is set when a release is built: -ldflags "-X main.version=1.2.0".
var version = "unreleased"

const createNew = os.O_WRONLY | os.O_CREATE | os.O_TRUNC

// commands lists them in the order of the help.
func commands() []*cobra.Command {
	return []*cobra.Command{checkCommand(), buildCommand(), calcCommand(), formatCommand(), explainCommand()}
}
