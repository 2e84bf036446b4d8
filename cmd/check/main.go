package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"
	"syscall"

	"benchproof/cmd/check/tools"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	if err := run(ctx, os.Args[1:], os.Stdout); err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
}

// run does what the arguments ask. The error is the last line to print.
func run(ctx context.Context, args []string, out io.Writer) error {
	root, err := tools.Root()
	if err != nil {
		return err
	}
	switch {
	case len(args) > 0 && (args[0] == "help" || args[0] == "-h" || args[0] == "--help"):
		help(out)
		return nil
	case len(args) > 0 && args[0] == "look":
		return look(ctx, root, args[1:], out)
	}
	chosen, err := choose(checks(), args)
	if err != nil {
		return err
	}
	return runAll(ctx, root, chosen, out)
}

func help(out io.Writer) {
	fmt.Fprint(out, "go run ./cmd/check [NAME ...]   runs the checks named, or every check:\n\n")
	for _, c := range checks() {
		fmt.Fprintf(out, "  %-12s %s\n", c.name, c.about)
	}
	fmt.Fprintf(out, "\ngo run ./cmd/check look DIR   %s\n", lookAbout)
}

// choose gives the checks named, in the order of the whole list; all of them
// when none is named.
func choose(all []check, names []string) ([]check, error) {
	if len(names) == 0 {
		return all, nil
	}
	wanted := map[string]bool{}
	for _, name := range names {
		wanted[name] = true
	}
	var chosen []check
	for _, c := range all {
		if wanted[c.name] {
			chosen = append(chosen, c)
			delete(wanted, c.name)
		}
	}
	for _, name := range names {
		if wanted[name] {
			return nil, fmt.Errorf("no check is called %q; they are: %s", name, strings.Join(namesOf(all), ", "))
		}
	}
	return chosen, nil
}

func namesOf(checks []check) []string {
	var names []string
	for _, c := range checks {
		names = append(names, c.name)
	}
	return names
}
