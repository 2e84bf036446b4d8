package browser

import (
	"bufio"
	"context"
	"io"
	"os"
	"os/exec"
	"regexp"
	"sync"
	"syscall"
	"time"
)

// address is the first loopback address on a line.
var address = regexp.MustCompile(`https?://(?:127\.0\.0\.1|localhost|\[::1\]):[0-9]+[^\s"'<>]*`)

// Serve starts a program that serves pages, and gives the first loopback
// address it prints on standard output, path and all. What it prints goes to
// the log. The program is asked to end when the test does, and killed if it
// has not after ten seconds.
func Serve(tb TB, program string, args ...string) string {
	tb.Helper()
	ctx, stop := context.WithCancel(context.Background())
	cmd := exec.CommandContext(ctx, program, args...)
	cmd.Cancel = func() error { return cmd.Process.Signal(syscall.SIGTERM) }
	cmd.WaitDelay = 10 * time.Second
	cmd.Stderr = os.Stderr
	printed, write := io.Pipe()
	cmd.Stdout = write
	if err := cmd.Start(); err != nil {
		stop()
		tb.Fatalf("start %s: %v", program, err)
	}
	var wait sync.WaitGroup
	found := make(chan string, 1)
	wait.Go(func() { readAddress(printed, found) })
	wait.Go(func() {
		_ = cmd.Wait() // its status does not matter: it is stopped by us, or the address never came
		_ = write.Close()
	})
	tb.Cleanup(func() { stop(); wait.Wait() })
	select {
	case at, ok := <-found:
		if !ok {
			tb.Fatalf("%s ended without printing an address", program)
		}
		return at
	case <-time.After(patience):
		tb.Fatalf("%s printed no address within %v", program, patience)
	}
	return ""
}

// readAddress reads lines to the end, so that the program never waits for a
// reader, and hands over the first address. It closes found at the end.
func readAddress(r io.Reader, found chan<- string) {
	defer close(found)
	sent := false
	lines := bufio.NewScanner(r)
	for lines.Scan() {
		if at := address.FindString(lines.Text()); at != "" && !sent {
			found <- at
			sent = true
		}
	}
	_, _ = io.Copy(io.Discard, r)
}
