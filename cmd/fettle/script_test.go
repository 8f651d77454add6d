package main

import (
	"flag"
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "rewrite what the scripts expect")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"fettle": func() { os.Exit(run()) }})
}

// The scripts run the program as its users do: exit codes, streams, files.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{Dir: "testdata/script", RequireExplicitExec: true, RequireUniqueNames: true,
		UpdateScripts: *update,
		Setup: func(e *testscript.Env) error {
			wd, err := os.Getwd()
			e.Setenv("PROCEDURES", wd+"/../../procedures")
			return err
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){"code": code}})
}

// code runs fettle and holds its exit code: code 2 fettle check nowhere.
func code(ts *testscript.TestScript, neg bool, args []string) {
	if len(args) < 2 || neg {
		ts.Fatalf("usage: code N command…")
	}
	err := ts.Exec(args[1], args[2:]...)
	got := "0"
	if err != nil {
		got = err.Error()
	}
	if got != args[0] && got != "exit status "+args[0] {
		ts.Fatalf("exit code %s wanted, and it was: %s", args[0], got)
	}
}
