package browser_test

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"benchproof/cmd/check/browser"
	"benchproof/cmd/check/tools"
)

// recorder is a test of its own that notes how it ended.
type recorder struct {
	testing.TB
	how, said string
}

func (r *recorder) Skipf(format string, args ...any) { r.end("skipped", format, args) }

func (r *recorder) Fatalf(format string, args ...any) { r.end("failed", format, args) }

func (r *recorder) end(how, format string, args []any) {
	r.how, r.said = how, fmt.Sprintf(format, args...)
	runtime.Goexit()
}

// record runs f as a test would be run: in a goroutine that may end early.
func record(t *testing.T, f func(tb browser.TB)) *recorder {
	t.Helper()
	r := &recorder{TB: t}
	done := make(chan struct{})
	go func() {
		defer close(done)
		f(r)
	}()
	<-done
	return r
}

func TestMissingBrowser(t *testing.T) {
	tests := []struct{ name, check, want string }{
		{"in a plain test", "", "skipped"},
		{"when the check runs it", "1", "failed"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			t.Setenv("CHROMIUM", filepath.Join(t.TempDir(), "none"))
			t.Setenv(tools.CheckVariable, tt.check)
			r := record(t, func(tb browser.TB) { browser.Start(tb, browser.Desk) })
			if r.how != tt.want || !strings.Contains(r.said, "go run ./cmd/check tools") {
				t.Errorf("without Chromium the test is %q, saying %q; want %s, with the command that helps", r.how, r.said, tt.want)
			}
		})
	}
}

func TestServe(t *testing.T) {
	program := script(t, `echo 'starting'; echo 'listening on http://127.0.0.1:8099/in?code=x now'; exec cat`)
	if got, want := browser.Serve(t, program), "http://127.0.0.1:8099/in?code=x"; got != want {
		t.Errorf("Serve() = %q, want %q", got, want)
	}
	silent := script(t, `echo 'no address'; exit 3`)
	r := record(t, func(tb browser.TB) { browser.Serve(tb, silent) })
	if r.how != "failed" || !strings.Contains(r.said, "without printing an address") {
		t.Errorf("Serve() of a program without an address %q, saying %q", r.how, r.said)
	}
}

func script(t *testing.T, body string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "program")
	if err := os.WriteFile(path, []byte("#!/bin/sh\n"+body+"\n"), 0o755); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestLook(t *testing.T) {
	base := site(t, map[string]string{"/": page(`<a href="/two/">two</a>`), "/two/": page("<p>Two</p>")})
	tab := browser.Start(t, browser.Desk)
	pages := browser.Crawl(t, nil, base)
	dir := filepath.Join(t.TempDir(), "pictures")
	wrote := browser.Look(t, tab, browser.HTML(pages), dir)
	if len(wrote) != 10 {
		t.Errorf("Look() wrote %d files, want 5 for each of 2 pages: %q", len(wrote), wrote)
	}
	for _, path := range wrote {
		if info, err := os.Stat(path); err != nil || info.Size() < 500 {
			t.Errorf("%s: %v, or too small to be a picture", path, err)
		}
	}
}
