package tools_test

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/cmd/check/tools"
)

// module makes a folder with a go.mod and works in a folder below it.
func module(t *testing.T) string {
	t.Helper()
	root, err := filepath.EvalSymlinks(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	below := filepath.Join(root, "kitchen", "food")
	if err := os.MkdirAll(below, 0o755); err != nil {
		t.Fatal(err)
	}
	write(t, filepath.Join(root, "go.mod"), "module invented\n")
	t.Chdir(below)
	return root
}

func write(t *testing.T, path, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(text), 0o755); err != nil {
		t.Fatal(err)
	}
}

func TestRoot(t *testing.T) {
	want := module(t)
	got, err := tools.Root()
	if err != nil || got != want {
		t.Errorf("Root() = %q, %v; want %q from a folder two below it", got, err, want)
	}
}

func TestRootOutsideAModule(t *testing.T) {
	t.Chdir(t.TempDir())
	if got, err := tools.Root(); err == nil {
		t.Errorf("Root() = %q outside a module, want an error", got)
	}
}

func TestChromium(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("PATH", dir)
	t.Setenv("CHROMIUM", "")
	if got, err := tools.Chromium(); err == nil && strings.HasPrefix(got, dir) {
		t.Errorf("Chromium() = %q with nothing on the PATH", got)
	}
	write(t, filepath.Join(dir, "google-chrome"), "#!/bin/sh\n")
	if got, err := tools.Chromium(); err != nil || got != filepath.Join(dir, "google-chrome") {
		t.Errorf("Chromium() = %q, %v; want the google-chrome on the PATH", got, err)
	}
	own := filepath.Join(t.TempDir(), "own-browser")
	t.Setenv("CHROMIUM", own)
	if got, err := tools.Chromium(); err == nil {
		t.Errorf("Chromium() = %q though $CHROMIUM names nothing that runs", got)
	}
	write(t, own, "#!/bin/sh\n")
	if got, err := tools.Chromium(); err != nil || got != own {
		t.Errorf("Chromium() = %q, %v; want $CHROMIUM, %q", got, err, own)
	}
}

func TestJavaThatDoesNotRun(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("PATH", dir)
	write(t, filepath.Join(dir, "java"), "#!/bin/sh\necho get one somewhere\nexit 1\n")
	_, err := tools.Java()
	if err == nil || !strings.Contains(err.Error(), "get one somewhere") {
		t.Errorf("Java() error = %v, want one with the words of the java that does not run", err)
	}
}

func TestNPMFileOfTheWrongVersion(t *testing.T) {
	home := filepath.Join(module(t), ".cache", "npm", "node_modules", "axe-core")
	write(t, filepath.Join(home, "axe.min.js"), "//")
	write(t, filepath.Join(home, "package.json"), `{"version":"0.0.1"}`)
	_, err := tools.Axe()
	if err == nil || !strings.Contains(err.Error(), "0.0.1") {
		t.Errorf("Axe() error = %v, want one that names version 0.0.1", err)
	}
}

// TestInstallBringsWhatNPMHas runs Install with programs of our own making: an
// npm that lays out the packages as the real one does, and an apt-get that does
// nothing.
func TestInstallBringsWhatNPMHas(t *testing.T) {
	root := module(t)
	dir := t.TempDir()
	for _, name := range []string{"chromium", "pdftotext", "java", "gcc", "apt-get"} {
		write(t, filepath.Join(dir, name), "#!/bin/sh\n")
	}
	write(t, filepath.Join(dir, "npm"), `#!/bin/sh
set -e
[ "$1" = ci ]
place() {
	mkdir -p "node_modules/$1/$(dirname "$2")"
	touch "node_modules/$1/$2"
	printf '{"version":"%s"}' "$(sed -n "s/.*\"$1\": \"\([0-9.]*\)\".*/\1/p" package.json)" >"node_modules/$1/package.json"
}
place axe-core axe.min.js
place vnu-jar build/dist/vnu.jar
`)
	t.Setenv("CC", "")
	t.Setenv("CHROMIUM", "")
	t.Setenv("PATH", dir+":/usr/bin:/bin")
	if got := npmTools(tools.Missing()); len(got) != 2 {
		t.Fatalf("Missing() before = %v, want both npm packages", got)
	}
	var out bytes.Buffer
	if err := tools.Install(context.Background(), &out); err != nil && strings.Contains(err.Error(), "axe") {
		t.Fatalf("Install() = %v, printed %s", err, out.String())
	}
	if got := npmTools(tools.Missing()); len(got) != 0 {
		t.Errorf("Missing() after = %v, want no npm package", got)
	}
	want := filepath.Join(root, ".cache", "npm", "node_modules", "axe-core", "axe.min.js")
	if got, err := tools.Axe(); err != nil || got != want {
		t.Errorf("Axe() = %q, %v; want %q", got, err, want)
	}
}

func npmTools(missing []tools.Tool) []string {
	var names []string
	for _, m := range missing {
		if len(m.Debs) == 0 {
			names = append(names, m.Name)
		}
	}
	return names
}

func TestAdviceNamesEachToolAndHow(t *testing.T) {
	missing := []tools.Tool{
		{Name: "Ladle", Debs: []string{"ladle-tools"}, Hint: "buy a ladle", Where: nowhere},
		{Name: "whisk-core", Where: nowhere},
	}
	got := tools.Advice(missing)
	for _, want := range []string{"Ladle is missing", "whisk-core is missing", "no-install-recommends ladle-tools", "buy a ladle", "go run ./cmd/check tools"} {
		if !strings.Contains(got, want) {
			t.Errorf("Advice() lacks %q:\n%s", want, got)
		}
	}
}

func nowhere() (string, error) { return "", os.ErrNotExist }
