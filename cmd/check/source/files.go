package source

import (
	"context"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// Files lists the files of the module below root, with slashes and sorted:
// those git keeps and those it would keep. Where root is not a git work tree
// (an unpacked archive) it lists everything but hidden folders and
// node_modules.
func Files(ctx context.Context, root string) ([]string, error) {
	if _, err := os.Stat(filepath.Join(root, ".git")); err != nil {
		return walk(root)
	}
	cmd := exec.CommandContext(ctx, "git", "ls-files", "-z", "--cached", "--others", "--exclude-standard")
	cmd.Dir = root
	var said strings.Builder
	cmd.Stderr = &said
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("git ls-files: %w: %s", err, strings.TrimSpace(said.String()))
	}
	var files []string
	for name := range strings.SplitSeq(string(out), "\x00") {
		if name == "" {
			continue
		}
		// A file that git knows may have been deleted and not yet committed.
		if info, err := os.Stat(filepath.Join(root, name)); err == nil && info.Mode().IsRegular() {
			files = append(files, name)
		}
	}
	slices.Sort(files)
	return slices.Compact(files), nil
}

func walk(root string) ([]string, error) {
	var files []string
	err := fs.WalkDir(os.DirFS(root), ".", func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && path != "." && (strings.HasPrefix(d.Name(), ".") && d.Name() != ".ci" || d.Name() == "node_modules"):
			return fs.SkipDir
		case d.Type().IsRegular():
			files = append(files, path)
		}
		return nil
	})
	return files, err
}

// Ending gives those paths that end in one of the suffixes.
func Ending(paths []string, suffixes ...string) []string {
	var some []string
	for _, p := range paths {
		if slices.ContainsFunc(suffixes, func(s string) bool { return strings.HasSuffix(p, s) }) {
			some = append(some, p)
		}
	}
	return some
}
