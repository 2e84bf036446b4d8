// Command benchproof produces a food episode, from the pasted recipe to the
// published page: a web app in one file, and the same computing on the
// command line.
package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"syscall"

	_ "time/tzdata" // a scratch container has no time zones of its own

	"github.com/alecthomas/kong"

	"benchproof/kitchen/fault"
)

// Exit statuses, as the README promises.
const (
	exitInput = 1 // what was read cannot be used, or the program failed
	exitUsage = 2 // the command itself is wrong
)

// streams are where a command reads and writes.
type streams struct {
	in  io.Reader
	out io.Writer
	err io.Writer
}

// program is the whole command line.
type program struct {
	Demo      demoCommand      `cmd:"" help:"Serve a sample show on this machine; nothing to set up."`
	Serve     serveCommand     `cmd:"" help:"Serve your own show from a data folder."`
	User      userCommand      `cmd:"" help:"List people, add one, or replace a password."`
	Backup    backupCommand    `cmd:"" help:"Copy the data to a file, also while the program runs."`
	Restore   restoreCommand   `cmd:"" help:"Put a backup into an empty data folder."`
	Read      readCommand      `cmd:"" help:"Show what is understood of a recipe."`
	Scale     scaleCommand     `cmd:"" help:"Scale a recipe by a factor, to a number of pieces, to a tin, or to what is in hand."`
	Nutrition nutritionCommand `cmd:"" help:"Reckon a recipe's energy, nutrients and allergens."`
	Convert   convertCommand   `cmd:"" help:"Convert one ingredient line to another measure."`
	Plan      planCommand      `cmd:"" help:"Plan tasks around stations and waits so that the last ends early."`
	Chapters  chaptersCommand  `cmd:"" help:"Find where a script's segments begin in a cut."`
	Verify    verifyCommand    `cmd:"" help:"Compare what a cut says with what its recipe writes."`
	Describe  describeCommand  `cmd:"" help:"Print an episode's description block."`
}

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	status := run(ctx, os.Args[1:], streams{os.Stdin, os.Stdout, os.Stderr})
	stop()
	os.Exit(status)
}

// usageError is a mistake in the command itself.
type usageError struct{ error }

// run carries out one command line and gives its exit status.
func run(ctx context.Context, args []string, std streams) int {
	ended := -1 // set when kong has answered by itself, as for --help
	parser, err := kong.New(&program{},
		kong.Name("benchproof"),
		kong.Description("Proves a food episode at the bench before it goes out."),
		kong.UsageOnError(),
		kong.Writers(std.out, std.err),
		kong.Exit(func(status int) { ended = status }),
		kong.BindTo(ctx, (*context.Context)(nil)),
		kong.Bind(std),
	)
	if err != nil {
		panic(err) // the program's own table of commands is wrong
	}
	command, err := parser.Parse(args)
	if ended >= 0 {
		return ended
	}
	if err != nil {
		fmt.Fprintf(std.err, "benchproof: %v\nSee “benchproof --help”.\n", err)
		return exitUsage
	}
	return status(command.Run(), std.err)
}

// status words err for the person and picks the exit status.
func status(err error, out io.Writer) int {
	if err == nil {
		return 0
	}
	say := fault.Say(err)
	if say == "" {
		say = err.Error()
	}
	fmt.Fprintf(out, "benchproof: %s\n", say)
	var usage usageError
	if errors.As(err, &usage) {
		return exitUsage
	}
	return exitInput
}
