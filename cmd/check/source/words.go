package source

import (
	"bytes"
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"unicode/utf8"
)

// unwanted is what must not stand in any file, each with what to do about it.
// The patterns are written so that they do not find themselves.
var unwanted = []struct {
	pattern *regexp.Regexp
	advice  string
}{
	{regexp.MustCompile(`(^|[\s"'` + "`" + `(=:])/(wor[k]|roo[t]|hom[e]/[a-z][a-z0-9_-]*|User[s]/[A-Za-z][A-Za-z0-9_-]*)/`), "a path of one machine: write it from the module's folder"},
	{regexp.MustCompile(`\b(TOD[O]|FIXM[E])\b`), "an unfinished thought: finish it, or take it out"},
	{regexp.MustCompile(`\b(registry\.npmj[s]|proxy\.golan[g]|deb\.debia[n]|sum\.golan[g])\b`), "a registry's host: name the package only"},
	{regexp.MustCompile(`(?i)\bissu[e] #?[0-9]+\b`), "a number that means nothing to a reader: say the reason itself"},
}

// Words gives every line of the text files in paths that holds something
// unwanted: "path:line: the words: advice". Files that are not UTF-8 text
// (pictures, fonts) and sums of modules are left out.
func Words(fsys fs.FS, paths []string) ([]string, error) {
	var problems []string
	for _, p := range paths {
		if path.Base(p) == "go.sum" || path.Base(p) == "package-lock.json" {
			continue
		}
		text, err := fs.ReadFile(fsys, p)
		if err != nil {
			return nil, err
		}
		if bytes.IndexByte(text, 0) >= 0 || !utf8.Valid(text) {
			continue
		}
		number := 0
		for line := range bytes.Lines(text) {
			number++
			for _, u := range unwanted {
				if found := u.pattern.Find(line); found != nil {
					problems = append(problems, fmt.Sprintf("%s:%d: %q is %s", p, number, bytes.TrimSpace(found), u.advice))
				}
			}
		}
	}
	return problems, nil
}
