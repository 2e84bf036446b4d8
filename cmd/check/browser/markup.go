package browser

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"benchproof/cmd/check/tools"
)

// Mark is one error the Nu HTML checker found.
type Mark struct {
	Name    string // the name the file was given under
	Message string
	Extract string // the markup around it; the checker's line numbers are one off
}

// String gives the mark in one line.
func (m Mark) String() string {
	return fmt.Sprintf("%s: %s [%s]", m.Name, m.Message, strings.Join(strings.Fields(m.Extract), " "))
}

// Markup runs the Nu HTML checker once over a batch of files and gives the
// errors, in the order of names; warnings are left out. A name is what a Mark
// calls the file; one that ends in .css or .svg is checked as such, every other
// as HTML.
func Markup(tb TB, files map[string][]byte) []Mark {
	tb.Helper()
	java, jar := need(tb, "Java", tools.Java), need(tb, "the Nu HTML checker", tools.Vnu)
	if len(files) == 0 {
		tb.Fatalf("no file to check the markup of")
	}
	dir := tb.TempDir()
	names := layOut(tb, dir, files)
	args := []string{"-jar", jar, "--errors-only", "--format", "json", "--exit-zero-always", "--also-check-css", "--also-check-svg", dir}
	ctx, cancel := context.WithTimeout(context.Background(), 5*time.Minute)
	defer cancel()
	cmd := exec.CommandContext(ctx, java, args...)
	var report, rest bytes.Buffer
	cmd.Stderr, cmd.Stdout = &report, &rest
	if err := cmd.Run(); err != nil {
		tb.Fatalf("the Nu HTML checker: %v: %s%s", err, report.String(), rest.String())
	}
	marks, err := readMarks(report.Bytes(), names)
	if err != nil {
		tb.Fatalf("the Nu HTML checker: %v: %s", err, report.String())
	}
	return marks
}

// layOut writes the files under plain numbered names, and tells which is which.
func layOut(tb TB, dir string, files map[string][]byte) map[string]string {
	tb.Helper()
	names := map[string]string{}
	for name, text := range files {
		extension := path.Ext(name)
		if extension != ".css" && extension != ".svg" {
			extension = ".html"
		}
		plain := fmt.Sprintf("%05d%s", len(names), extension)
		names[plain] = name
		if err := os.WriteFile(filepath.Join(dir, plain), text, 0o644); err != nil {
			tb.Fatalf("%v", err)
		}
	}
	return names
}

// newCSS lists properties of the current CSS drafts that the pinned checker does
// not know yet; what it says of them is left out.
var newCSS = []string{"field-sizing"} // CSS Basic User Interface Level 4

// readMarks reads the checker's JSON. Anything that is not a remark on a
// document, as a file it could not read, is an error of the run.
func readMarks(report []byte, names map[string]string) ([]Mark, error) {
	var r struct {
		Messages []struct {
			Type, URL, Message, Extract string
		}
	}
	if err := json.Unmarshal(report, &r); err != nil {
		return nil, err
	}
	var marks []Mark
	for _, m := range r.Messages {
		if m.Type == "non-document-error" {
			return nil, errors.New(m.Message)
		}
		if m.Type != "error" || slices.ContainsFunc(newCSS, func(p string) bool { return strings.Contains(m.Message, "Property “"+p+"”") }) {
			continue
		}
		plain := path.Base(m.URL)
		if u, err := url.Parse(m.URL); err == nil {
			plain = path.Base(u.Path)
		}
		marks = append(marks, Mark{Name: names[plain], Message: m.Message, Extract: m.Extract})
	}
	slices.SortStableFunc(marks, func(a, b Mark) int { return strings.Compare(a.Name, b.Name) })
	return marks, nil
}
