package tools

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// CheckVariable is the environment variable that cmd/check sets to "1" for the
// tests it starts. Under it a tool that is not there is a failure; without it,
// in a plain go test, the tests that need the tool are skipped with a word.
const CheckVariable = "BENCHPROOF_CHECK"

// Demanded tells whether a missing tool must fail the test: see CheckVariable.
func Demanded() bool { return os.Getenv(CheckVariable) == "1" }

// Tool is one thing from outside: a program, a font, a file of an npm package.
type Tool struct {
	Name  string                 // as people say it: "Chromium"
	Debs  []string               // Debian packages that bring it; none for npm's
	Hint  string                 // how to get it where there is no apt-get
	Where func() (string, error) // its path, or an error that says what was looked for
}

// All lists every tool the whole check needs, npm's own files last: they can
// be installed once the rest is there.
func All() []Tool {
	return []Tool{
		{"Chromium", []string{"chromium"}, "install Chromium or Google Chrome, or name it in $CHROMIUM", Chromium},
		{"Liberation fonts", []string{"fonts-liberation2"}, "install the Liberation fonts", font("liberation*/LiberationSans-Regular.ttf")},
		{"Noto Color Emoji", []string{"fonts-noto-color-emoji"}, "install Noto Color Emoji", font("noto/NotoColorEmoji.ttf")},
		{"pdftotext", []string{"poppler-utils"}, "install poppler's tools", PDFToText},
		{"Java", []string{"default-jre-headless"}, "install a Java runtime, 17 or later", Java},
		{"gcc", []string{"gcc", "libc6-dev"}, "install gcc or clang: the race detector needs cgo", compiler},
		{"npm", []string{"nodejs", "npm"}, "install Node.js with npm", npm},
		{"axe-core", nil, "", Axe},
		{"Nu HTML checker", nil, "", Vnu},
	}
}

// Missing lists those of All that are not there.
func Missing() []Tool {
	var missing []Tool
	for _, t := range All() {
		if _, err := t.Where(); err != nil {
			missing = append(missing, t)
		}
	}
	return missing
}

// Chromium tells the path of the browser: $CHROMIUM where it is set, else the
// first of its usual names on the PATH.
func Chromium() (string, error) {
	if named := os.Getenv("CHROMIUM"); named != "" {
		path, err := exec.LookPath(named)
		if err != nil {
			return "", fmt.Errorf("$CHROMIUM names %s, which cannot be run: %w", named, err)
		}
		return path, nil
	}
	return onPath("chromium", "chromium-browser", "google-chrome", "google-chrome-stable",
		"/Applications/Chromium.app/Contents/MacOS/Chromium",
		"/Applications/Google Chrome.app/Contents/MacOS/Google Chrome")
}

// Java tells the path of a Java runtime that runs. Some systems ship a java
// that only says where to get one, so it is asked for its version.
func Java() (string, error) {
	path, err := onPath("java")
	if err != nil {
		return "", err
	}
	if out, err := exec.Command(path, "-version").CombinedOutput(); err != nil {
		return "", fmt.Errorf("%s does not run: %w: %s", path, err, firstLine(string(out)))
	}
	return path, nil
}

// PDFToText tells the path of poppler's pdftotext.
func PDFToText() (string, error) { return onPath("pdftotext") }

// Axe tells the path of axe-core's script, at the version package.json pins.
func Axe() (string, error) { return npmFile("axe-core", "axe.min.js") }

// Vnu tells the path of the Nu HTML checker, at the version package.json pins.
func Vnu() (string, error) { return npmFile("vnu-jar", "build/dist/vnu.jar") }

func npm() (string, error) { return onPath("npm") }

// compiler finds the C compiler that cgo would use.
func compiler() (string, error) {
	if cc := os.Getenv("CC"); cc != "" {
		return onPath(strings.Fields(cc)[0])
	}
	return onPath("gcc", "clang")
}

// font looks for a font where Debian puts it. Elsewhere a system keeps fonts as
// it likes, and the product brings its own: only pictures of pages differ.
func font(pattern string) func() (string, error) {
	return func() (string, error) {
		if !debian() {
			return "", nil
		}
		pattern := filepath.Join("/usr/share/fonts/truetype", pattern)
		found, err := filepath.Glob(pattern)
		if err != nil {
			return "", err
		}
		if len(found) == 0 {
			return "", errors.New("nothing at " + pattern)
		}
		return found[0], nil
	}
}

func onPath(names ...string) (string, error) {
	for _, name := range names {
		if path, err := exec.LookPath(name); err == nil {
			return path, nil
		}
	}
	return "", errors.New("none of these is on the PATH: " + strings.Join(names, ", "))
}

func firstLine(s string) string {
	line, _, _ := strings.Cut(s, "\n")
	return line
}
