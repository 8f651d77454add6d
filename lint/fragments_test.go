package lint_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"fettle/lint/rule"
	"fettle/lint/rules"
)

// What cannot be written down as a fragment, and where it is tested instead.
var withoutFragment = map[string]string{
	"form/file-too-large":       "lang/source/folder",
	"form/folder-named-as-file": "lang/source/folder",
	"form/link-out-of-root":     "lang/source/folder",
	"form/missing-folder":       "lang/source/folder",
	"form/unreadable-file":      "lang/source/folder",
	"form/too-many-faults":      "lang/syntax",
}

// Every rule finds in its bad fragment what the fragment says, and nothing else
// is found there; nobody has anything to say about its good fragment.
func TestFragments(t *testing.T) {
	for _, r := range rules.All() {
		if withoutFragment[r.Name] != "" {
			continue
		}
		t.Run(r.Name, func(t *testing.T) {
			t.Parallel()
			root, wanted := fragment(r.Bad)
			asked := wanted(t, r.Name)
			require.NotEmpty(t, asked, "the bad fragment wants nothing")
			_, found := check(t, root)
			compare(t, asked, found)
			root, _ = fragment(r.Good)
			_, found = check(t, root)
			silent(t, found)
		})
	}
}

// Every rule is described in whole sentences, in a file of its own.
func TestRulesAreDescribed(t *testing.T) {
	for _, r := range rules.All() {
		t.Run(r.Name, func(t *testing.T) {
			require.Regexp(t, `^[a-z]+/[a-z0-9]+(-[a-z0-9]+)*$`, r.Name)
			require.Contains(t, "error doubt advice", r.Severity.String())
			for _, s := range []string{r.Finds, r.Why, r.Remedy} {
				require.Regexp(t, `(?s)^[A-Z0-9“`+"`"+`].*[.!?)]$`, s)
			}
			_, err := os.Stat(filepath.Join("rules", fileOf(r)))
			require.NoError(t, err)
		})
	}
}

func fileOf(r *rule.Rule) string { return strings.ReplaceAll(r.Name, "-", "_") + ".go" }

// What calc says of the values of one build is never said of a manual.
var ofOneBuild = map[string]bool{"values/not-known-yet": true, "values/out-of-reach": true}

var namesRule = regexp.MustCompile(`"((?:form|units|values|fit|kit|order)/[a-z-]+)"`)

// What is found while a manual is read is described, too.
func TestRulesOfTheReaderAreDescribed(t *testing.T) {
	for _, dir := range []string{"../lang", "../calc", "."} {
		err := filepath.WalkDir(dir, func(path string, d os.DirEntry, err error) error {
			if err == nil && d.IsDir() && path == "mutation" {
				return filepath.SkipDir
			}
			if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
				return err
			}
			text, err := os.ReadFile(path)
			for _, m := range namesRule.FindAllStringSubmatch(string(text), -1) {
				if rules.Find(m[1]) == nil && !ofOneBuild[m[1]] {
					t.Errorf("%s reports %s, which no file of lint/rules describes", path, m[1])
				}
			}
			return err
		})
		require.NoError(t, err)
	}
}
