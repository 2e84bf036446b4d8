package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"strings"
	"sync"
	"time"
)

// atOnce is how many checks run side by side. Most of them compile, and the
// go command spreads over the cores by itself.
const atOnce = 2

// result is how a check ended.
type result struct {
	name    string
	seconds float64
	err     error
}

// runAll runs the checks, first those that go side by side, then those that
// want the machine alone, and shows a summary. The error names what failed.
func runAll(ctx context.Context, root string, chosen []check, out io.Writer) error {
	var together, alone []check
	for _, c := range chosen {
		if c.alone {
			alone = append(alone, c)
		} else {
			together = append(together, c)
		}
	}
	begin := time.Now()
	results := runTogether(ctx, root, together, out)
	for _, c := range alone {
		fmt.Fprintf(out, "== %s\n", c.name)
		r := runOne(ctx, root, c, out)
		if r.err != nil {
			fmt.Fprintf(out, "%s: %v\n", c.name, r.err)
		}
		results = append(results, r)
	}
	return summary(results, time.Since(begin), out)
}

// runTogether runs checks side by side. What each writes is held back until it
// has ended, and shown in the order of the list, so that it can be read.
func runTogether(ctx context.Context, root string, list []check, out io.Writer) []result {
	results := make([]result, len(list))
	texts := make([]bytes.Buffer, len(list))
	ended := make([]chan struct{}, len(list))
	free := make(chan struct{}, atOnce)
	var all sync.WaitGroup
	for i := range list {
		ended[i] = make(chan struct{})
	}
	all.Go(func() {
		for i, c := range list {
			free <- struct{}{}
			all.Go(func() {
				results[i] = runOne(ctx, root, c, &texts[i])
				close(ended[i])
				<-free
			})
		}
	})
	for i, c := range list {
		<-ended[i]
		fmt.Fprintf(out, "== %s (%.1f s)\n%s", c.name, results[i].seconds, texts[i].String())
		if err := results[i].err; err != nil {
			fmt.Fprintf(out, "%s: %v\n", c.name, err)
		}
	}
	all.Wait()
	return results
}

func runOne(ctx context.Context, root string, c check, out io.Writer) result {
	begin := time.Now()
	err := ctx.Err()
	if err == nil {
		err = c.run(ctx, &job{root: root, out: out})
	}
	return result{c.name, time.Since(begin).Seconds(), err}
}

// summary shows the seconds of each check and gives the last line as an error
// where something failed.
func summary(results []result, took time.Duration, out io.Writer) error {
	fmt.Fprint(out, "\nseconds  check\n")
	var passed, failed []string
	for _, r := range results {
		mark := ""
		if r.err != nil {
			mark = "  FAILED"
			failed = append(failed, r.name)
		} else {
			passed = append(passed, r.name)
		}
		fmt.Fprintf(out, "%7.1f  %s%s\n", r.seconds, r.name, mark)
	}
	fmt.Fprintf(out, "%7.1f  in all, %d side by side\n\n", took.Seconds(), atOnce)
	if len(failed) > 0 {
		return fmt.Errorf("failed: %s", strings.Join(failed, ", "))
	}
	fmt.Fprintf(out, "in order: %s\n", strings.Join(passed, ", "))
	return nil
}
