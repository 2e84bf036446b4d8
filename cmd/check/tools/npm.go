package tools

import (
	"context"
	_ "embed"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
)

//go:embed package.json
var manifest []byte

//go:embed package-lock.json
var lock []byte

// npmFolder is where the npm packages live: below the module, out of sight of
// git and of go's "./...".
func npmFolder() (string, error) {
	root, err := Root()
	if err != nil {
		return "", err
	}
	return filepath.Join(root, ".cache", "npm"), nil
}

// npmFile tells the path of one file of an npm package, and an error when it
// is missing or of another version than the manifest pins.
func npmFile(name, file string) (string, error) {
	folder, err := npmFolder()
	if err != nil {
		return "", err
	}
	home := filepath.Join(folder, "node_modules", name)
	have, err := installed(filepath.Join(home, "package.json"))
	if err != nil {
		return "", err
	}
	want, err := pinned(name)
	if err != nil {
		return "", err
	}
	if have != want {
		return "", fmt.Errorf("%s is here in version %s, wanted is %s", name, have, want)
	}
	path := filepath.Join(home, filepath.FromSlash(file))
	_, err = os.Stat(path)
	return path, err
}

// pinned tells the version of a package that the manifest asks for.
func pinned(name string) (string, error) {
	var m struct {
		Dependencies map[string]string `json:"dependencies"`
	}
	if err := json.Unmarshal(manifest, &m); err != nil {
		return "", fmt.Errorf("package.json of the checks: %w", err)
	}
	version, ok := m.Dependencies[name]
	if !ok {
		return "", fmt.Errorf("package.json of the checks does not name %s", name)
	}
	return version, nil
}

func installed(packageJSON string) (string, error) {
	data, err := os.ReadFile(packageJSON)
	if err != nil {
		return "", err
	}
	var m struct {
		Version string `json:"version"`
	}
	if err := json.Unmarshal(data, &m); err != nil {
		return "", fmt.Errorf("%s: %w", packageJSON, err)
	}
	return m.Version, nil
}

// installNPM brings the pinned packages. No script of theirs is run.
func installNPM(ctx context.Context, out io.Writer) error {
	fmt.Fprintln(out, "installing with npm what package-lock.json of the checks pins")
	folder, err := npmFolder()
	if err != nil {
		return err
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	for name, data := range map[string][]byte{"package.json": manifest, "package-lock.json": lock} {
		if err := os.WriteFile(filepath.Join(folder, name), data, 0o644); err != nil {
			return err
		}
	}
	cmd := exec.CommandContext(ctx, "npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund")
	cmd.Dir = folder
	if said, err := cmd.CombinedOutput(); err != nil {
		fmt.Fprintf(out, "%s", said)
		return fmt.Errorf("npm ci: %w", err)
	}
	return nil
}
