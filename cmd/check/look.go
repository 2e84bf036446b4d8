package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"

	"benchproof/cmd/check/browser"
	"benchproof/cmd/check/tools"
)

const lookAbout = "photographs every page of the demo into a folder: desk and phone, light and dark, and its print sheet"

// look takes pictures for people to judge; it checks nothing.
func look(ctx context.Context, root string, args []string, out io.Writer) error {
	flags := flag.NewFlagSet("look", flag.ContinueOnError)
	flags.SetOutput(out)
	start := flags.String("start", "", "begin at this address of a server that runs already, instead of starting the demo")
	each := flags.Int("each", 2, "pictures of at most so many pages that differ only in numbers")
	flags.Usage = func() {
		fmt.Fprintf(out, "go run ./cmd/check look [-start ADDRESS] [-each N] DIR\n%s\n", lookAbout)
		flags.PrintDefaults()
	}
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return nil
		}
		return err
	}
	if flags.NArg() != 1 {
		flags.Usage()
		return errors.New("look wants one folder for the pictures")
	}
	if err := tools.Install(ctx, out); err != nil {
		return err
	}
	return byHand(out, func(tb browser.TB) { photograph(ctx, tb, root, flags.Arg(0), *start, *each) })
}

func photograph(ctx context.Context, tb browser.TB, root, dir, start string, each int) {
	if start == "" {
		program := filepath.Join(tb.TempDir(), "benchproof")
		j := &job{root: root, out: os.Stdout}
		if err := j.do(ctx, "go", "build", "-o", program, "./cmd/benchproof"); err != nil {
			tb.Fatalf("%v", err)
		}
		start = browser.Serve(tb, program, "demo")
	}
	tab := browser.Start(tb, browser.Desk)
	tab.Open(start) // a start address that signs in does so here
	pages := browser.Crawl(tb, tab.Client(), tab.Address().String())
	for _, p := range pages {
		if p.Status != 200 {
			tb.Logf("%s answers %d, linked from %s", p.Name(), p.Status, p.From)
		}
	}
	some := browser.Sample(browser.HTML(pages), each)
	tb.Logf("%d addresses found, pictures of %d pages", len(pages), len(some))
	for _, path := range browser.Look(tb, tab, some, dir) {
		tb.Logf("%s", path)
	}
}

// hand stands in for a test where there is none: what a test would clean up is
// cleaned up at the end, and what would end a test ends the work.
type hand struct {
	out      io.Writer
	cleanups []func()
	failed   error
}

// byHand runs f and then, last first, what it asked to be cleaned up.
func byHand(out io.Writer, f func(tb browser.TB)) error {
	h := &hand{out: out}
	done := make(chan struct{})
	go func() {
		defer close(done)
		defer func() {
			for i := len(h.cleanups) - 1; i >= 0; i-- {
				h.cleanups[i]()
			}
		}()
		f(h)
	}()
	<-done
	return h.failed
}

func (h *hand) Helper()          {}
func (h *hand) Name() string     { return "look" }
func (h *hand) Cleanup(f func()) { h.cleanups = append(h.cleanups, f) }

func (h *hand) TempDir() string {
	dir, err := os.MkdirTemp("", "benchproof-look-")
	if err != nil {
		h.Fatalf("%v", err)
	}
	h.Cleanup(func() { _ = os.RemoveAll(dir) }) // a folder left behind in the system's temporary place
	return dir
}

func (h *hand) Logf(format string, args ...any) { fmt.Fprintf(h.out, format+"\n", args...) }

func (h *hand) Skipf(format string, args ...any) { h.Fatalf(format, args...) }

// Fatalf ends the goroutine of the work, as a test's does.
func (h *hand) Fatalf(format string, args ...any) {
	h.failed = fmt.Errorf(format, args...)
	runtime.Goexit()
}
