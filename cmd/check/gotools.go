package main

import (
	"bytes"
	"context"
	"errors"
	"strings"
	"time"

	"benchproof/cmd/check/source"
)

func checkFormat(ctx context.Context, j *job) error {
	files, err := source.Files(ctx, j.root)
	if err != nil {
		return err
	}
	out, err := j.ask(ctx, "gofmt", append([]string{"-l"}, source.Ending(files, ".go")...)...)
	if err != nil {
		return err
	}
	unlike := strings.Fields(string(out))
	if len(unlike) > 0 {
		j.say("gofmt -w would change:")
	}
	return j.list(unlike)
}

func checkVet(ctx context.Context, j *job) error {
	return j.do(ctx, "go", "vet", "./...")
}

func checkStatic(ctx context.Context, j *job) error {
	return j.do(ctx, "go", "tool", "staticcheck", "./...")
}

// checkTidy changes nothing: it shows what go mod tidy would change.
func checkTidy(ctx context.Context, j *job) error {
	return errors.Join(
		j.do(ctx, "go", "mod", "tidy", "-diff"),
		j.do(ctx, "go", "mod", "verify"),
	)
}

// checkGenerated asks templ whether each template's Go file is what it would
// write, and looks for Go files whose template is gone.
func checkGenerated(ctx context.Context, j *job) error {
	files, err := source.Files(ctx, j.root)
	if err != nil {
		return err
	}
	if err := j.list(generatedPairs(files)); err != nil {
		return err
	}
	return j.do(ctx, "go", "tool", "templ", "generate", "-check", "-log-level", "error", "-path", "views")
}

// generatedPairs gives each template without its Go file and each Go file
// without its template.
func generatedPairs(files []string) []string {
	there := map[string]bool{}
	for _, f := range files {
		there[f] = true
	}
	templates := source.Ending(files, ".templ")
	if len(templates) == 0 {
		return []string{"no template found"}
	}
	var problems []string
	for _, f := range templates {
		if made := strings.TrimSuffix(f, ".templ") + "_templ.go"; !there[made] {
			problems = append(problems, made+" is missing: go tool templ generate -path views")
		}
	}
	for _, f := range source.Ending(files, "_templ.go") {
		if from := strings.TrimSuffix(f, "_templ.go") + ".templ"; !there[from] {
			problems = append(problems, f+" is made from "+from+", which is gone: delete it")
		}
	}
	return problems
}

// patience for govulncheck, whose first need is its database on the net.
const holesPatience = 3 * time.Minute

// checkHoles leaves itself out where the database cannot be reached, and says
// so: a laptop on a train must be able to run the check.
func checkHoles(ctx context.Context, j *job) error {
	limited, cancel := context.WithTimeout(ctx, holesPatience)
	defer cancel()
	var out bytes.Buffer
	cmd := j.command(limited, "go", "tool", "govulncheck", "./...")
	cmd.Stdout, cmd.Stderr = &out, &out
	err := cmd.Run()
	if ctx.Err() != nil {
		return ctx.Err()
	}
	if err != nil && (limited.Err() != nil || unreached(out.String())) {
		j.say("the database was not reached, left out")
		return nil
	}
	if strings.Contains(out.String(), "loading packages") {
		return errors.New("the packages do not compile: vet shows where")
	}
	j.say("%s", strings.TrimSpace(out.String()))
	return err
}

// unreached tells whether govulncheck failed for want of its database.
func unreached(said string) bool {
	return strings.Contains(said, "fetching vulnerabilities") || strings.Contains(said, "dial tcp") || strings.Contains(said, "no such host")
}
