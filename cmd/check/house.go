package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"io"
	"os"
	"strings"

	"benchproof/cmd/check/arrows"
	"benchproof/cmd/check/source"
)

// allowed names what may be longer than the limits, and why.
var allowed = []source.Allowance{}

func checkArrows(ctx context.Context, j *job) error {
	out, err := j.ask(ctx, "go", "list", "-json=ImportPath,Module,Imports,TestImports,XTestImports", "./...")
	if err != nil {
		return err
	}
	module, packages, err := readPackages(out)
	if err != nil {
		return err
	}
	j.say("%d packages", len(packages))
	return j.list(arrows.Check(module, packages))
}

// readPackages reads the objects that go list -json writes one after another.
func readPackages(out []byte) (module string, packages []arrows.Package, err error) {
	stream := json.NewDecoder(bytes.NewReader(out))
	for {
		var p struct {
			ImportPath                         string
			Module                             struct{ Path string }
			Imports, TestImports, XTestImports []string
		}
		err := stream.Decode(&p)
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return "", nil, err
		}
		module = p.Module.Path
		packages = append(packages, arrows.Package{
			Path:        p.ImportPath,
			Imports:     p.Imports,
			TestImports: append(p.TestImports, p.XTestImports...),
		})
	}
	if len(packages) == 0 {
		return "", nil, errors.New("go list knows no package")
	}
	return module, packages, nil
}

func checkMigrations(ctx context.Context, j *job) error {
	return j.overFiles(ctx, func(files []string) ([]string, error) {
		var ours []string
		for _, f := range files {
			if strings.HasPrefix(f, "migrations/") {
				ours = append(ours, f)
			}
		}
		return source.Migrations(os.DirFS(j.root), ours)
	})
}

func checkSize(ctx context.Context, j *job) error {
	return j.overFiles(ctx, func(files []string) ([]string, error) {
		return source.Size(os.DirFS(j.root), files, allowed)
	})
}

func checkWords(ctx context.Context, j *job) error {
	return j.overFiles(ctx, func(files []string) ([]string, error) {
		return source.Words(os.DirFS(j.root), files)
	})
}

// overFiles runs something over the module's files and lists what it finds.
func (j *job) overFiles(ctx context.Context, find func(files []string) ([]string, error)) error {
	files, err := source.Files(ctx, j.root)
	if err != nil {
		return err
	}
	problems, err := find(files)
	if err != nil {
		return err
	}
	return j.list(problems)
}
