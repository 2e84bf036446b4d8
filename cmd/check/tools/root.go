package tools

import (
	"errors"
	"os"
	"path/filepath"
)

// Root tells the folder of the module: the nearest one, from the working
// directory upwards, that holds a go.mod. Tests run in the folder of their
// package, so it serves them too.
func Root() (string, error) {
	dir, err := os.Getwd()
	if err != nil {
		return "", err
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return dir, nil
		}
		parent := filepath.Dir(dir)
		if parent == dir {
			return "", errors.New("no go.mod in this folder or above it: run this inside the module")
		}
		dir = parent
	}
}
