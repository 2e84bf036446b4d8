package main

import (
	"bufio"
	"bytes"
	"context"
	"io"
	"regexp"
	"strings"
	"sync"
	"testing"
)

// running is the program serving in this process, and what it printed.
type running struct {
	address string // "http://127.0.0.1:43123"
	code    string // the one-time code; "" if it printed none
}

var (
	addressLine = regexp.MustCompile(`http://127\.0\.0\.1:\d+`)
	codeLine    = regexp.MustCompile(`one-time code: (\S+)`)
)

// start runs the program until the test ends and waits for the lines that
// tell where it is. lines is how many it prints when it is ready.
func start(t testing.TB, lines int, args ...string) running {
	t.Helper()
	ctx, stop := context.WithCancel(context.Background())
	read, write := io.Pipe()
	var wait sync.WaitGroup
	wait.Go(func() {
		if status := run(ctx, args, streams{in: strings.NewReader(""), out: write, err: write}); status != 0 {
			t.Errorf("benchproof %s ended with status %d", strings.Join(args, " "), status)
		}
		write.Close()
	})
	var up running
	printed := bufio.NewScanner(read)
	for range lines {
		if !printed.Scan() {
			t.Fatalf("benchproof %s stopped printing", strings.Join(args, " "))
		}
		if at := addressLine.FindString(printed.Text()); at != "" {
			up.address = at
		}
		if code := codeLine.FindStringSubmatch(printed.Text()); code != nil {
			up.code = code[1]
		}
	}
	wait.Go(func() { io.Copy(io.Discard, read) })
	t.Cleanup(func() { stop(); wait.Wait() })
	return up
}

// command runs one command to its end.
func command(t testing.TB, in string, args ...string) (out, errs string, status int) {
	t.Helper()
	var stdout, stderr bytes.Buffer
	status = run(context.Background(), args, streams{strings.NewReader(in), &stdout, &stderr})
	return stdout.String(), stderr.String(), status
}
