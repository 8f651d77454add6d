package main

import (
	"github.com/spf13/cobra"
)

// version is set when a release is built: -ldflags "-X main.version=1.2.0".
var version = "unreleased"

// commands lists them in the order of the help.
func commands() []*cobra.Command {
	return []*cobra.Command{newCommand(), checkCommand(), buildCommand(), calcCommand(), formatCommand(), issueCommand(), diffCommand(), recordCommand(), progressCommand(), reworkCommand(), scheduleCommand(), explainCommand()}
}
