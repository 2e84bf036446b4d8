package main

import (
	"context"
	"errors"
	"os"

	"benchproof/cmd/check/tally"
	"benchproof/cmd/check/tools"
)

func checkTools(ctx context.Context, j *job) error {
	if err := tools.Install(ctx, j.out); err != nil {
		j.say("%v", err)
		return errors.New("something the tests need is missing")
	}
	for _, t := range tools.All() {
		path, err := t.Where()
		if err != nil {
			return err
		}
		if path != "" {
			j.say("%-18s%s", t.Name, path)
		}
	}
	return nil
}

// checkTests runs every test under the race detector. A test that needs a tool
// fails here without it. Where a run decides about a change, no result is taken
// from an earlier one.
func checkTests(ctx context.Context, j *job) error {
	if missing := tools.Missing(); len(missing) > 0 {
		if err := tools.Install(ctx, j.out); err != nil {
			j.say("%v", err)
			return errors.New("not run: something they need is missing")
		}
	}
	args := []string{"test", "-race", "-json", "-vet=off"} // vet is a check of its own
	if inCI() {
		args = append(args, "-count=1")
	}
	cmd := j.command(ctx, "go", append(args, "./...")...)
	cmd.Env = append(os.Environ(), tools.CheckVariable+"=1", "CGO_ENABLED=1")
	cmd.Stderr = j.out
	events, err := cmd.StdoutPipe()
	if err != nil {
		return err
	}
	if err := cmd.Start(); err != nil {
		return err
	}
	counted, readErr := tally.Read(events, j.out)
	err = errors.Join(readErr, named(cmd.Wait(), "go", args))
	for _, skip := range counted.Skips {
		j.say("skipped: %s", skip)
	}
	j.say("%s", counted.Line())
	if err == nil && counted.Passed == 0 {
		return errors.New("no test was run")
	}
	return err
}
