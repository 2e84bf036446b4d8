package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"
	"syscall"
	"time"
)

// job is what a check works with: the module's folder and a place for words.
type job struct {
	root string
	out  io.Writer
}

// say writes a line.
func (j *job) say(format string, args ...any) {
	fmt.Fprintf(j.out, format+"\n", args...)
}

// command prepares a program to run in the module's folder. When the context
// ends, it and what it started are asked to end, and killed ten seconds later.
func (j *job) command(ctx context.Context, name string, args ...string) *exec.Cmd {
	cmd := exec.CommandContext(ctx, name, args...)
	cmd.Dir = j.root
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	cmd.Cancel = func() error { return syscall.Kill(-cmd.Process.Pid, syscall.SIGTERM) }
	cmd.WaitDelay = 10 * time.Second
	return cmd
}

// do runs a program and shows what it writes.
func (j *job) do(ctx context.Context, name string, args ...string) error {
	cmd := j.command(ctx, name, args...)
	cmd.Stdout, cmd.Stderr = j.out, j.out
	return named(cmd.Run(), name, args)
}

// ask runs a program and gives what it writes to standard output; the rest is
// shown.
func (j *job) ask(ctx context.Context, name string, args ...string) ([]byte, error) {
	cmd := j.command(ctx, name, args...)
	cmd.Stderr = j.out
	out, err := cmd.Output()
	return out, named(err, name, args)
}

// named says which program an error is of.
func named(err error, name string, args []string) error {
	if err == nil {
		return nil
	}
	return fmt.Errorf("%s: %w", strings.Join(append([]string{name}, args[:min(len(args), 3)]...), " "), err)
}

// list shows problems, a line each, and sums them up as an error; nil when
// there are none.
func (j *job) list(problems []string) error {
	for _, p := range problems {
		j.say("%s", p)
	}
	switch len(problems) {
	case 0:
		return nil
	case 1:
		return errors.New("1 problem")
	}
	return fmt.Errorf("%d problems", len(problems))
}

// inCI tells whether this run decides about a change, so that nothing may be
// taken from an earlier one.
func inCI() bool { return os.Getenv("CI") == "true" }
