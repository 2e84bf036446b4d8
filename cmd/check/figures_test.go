package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/cmd/check/tools"
)

// TestLarderWithoutTheDatabase reads the module's own tables from a folder that
// has no database beside it.
func TestLarderWithoutTheDatabase(t *testing.T) {
	root, err := tools.Root()
	if err != nil {
		t.Fatal(err)
	}
	alone := filepath.Join(t.TempDir(), "module")
	if err := os.Mkdir(alone, 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(filepath.Join(root, "seed"), filepath.Join(alone, "seed")); err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	j := &job{root: alone, out: &out}

	t.Setenv(referenceVariable, "")
	if err := checkLarder(context.Background(), j); err != nil {
		t.Errorf("checkLarder() = %v where no database is expected", err)
	}
	if !strings.Contains(out.String(), "not checked") || !strings.Contains(out.String(), referenceVariable) {
		t.Errorf("it does not say what was left out: %q", out.String())
	}

	t.Setenv(referenceVariable, filepath.Join(alone, "none"))
	if err := checkLarder(context.Background(), j); err == nil {
		t.Error("checkLarder() = nil though the folder that is named is not there")
	}
}
