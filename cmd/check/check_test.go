package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/cmd/check/arrows"
	"benchproof/cmd/check/browser"
)

// passing and failing are checks of our own making.
func passing(name string) check {
	return check{name: name, run: func(_ context.Context, j *job) error {
		j.say("%s speaks", name)
		return nil
	}}
}

func failing(name string) check {
	return check{name: name, run: func(_ context.Context, j *job) error {
		return j.list([]string{name + " is wrong here", name + " is wrong there"})
	}}
}

func TestRunAllNamesWhatFailedLast(t *testing.T) {
	var out bytes.Buffer
	last := failing("boil")
	last.alone = true
	err := runAll(context.Background(), t.TempDir(), []check{passing("knead"), failing("prove"), last}, &out)
	if err == nil || err.Error() != "failed: prove, boil" {
		t.Errorf("runAll() = %v, want it to name prove and boil", err)
	}
	for _, want := range []string{"knead speaks\n", "prove is wrong here\nprove is wrong there\nprove: 2 problems\n", "boil: 2 problems\n", "prove  FAILED", "seconds  check"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("the output lacks %q:\n%s", want, out.String())
		}
	}
}

func TestRunAllInOrder(t *testing.T) {
	var out bytes.Buffer
	if err := runAll(context.Background(), t.TempDir(), []check{passing("knead"), passing("prove")}, &out); err != nil {
		t.Errorf("runAll() = %v, want nil", err)
	}
	if !strings.HasSuffix(out.String(), "\nin order: knead, prove\n") {
		t.Errorf("the last line does not say so:\n%s", out.String())
	}
}

// TestRunTogetherKeepsTheOrder lets the first check wait for the second: they
// run side by side, and what they say still comes in the order of the list.
func TestRunTogetherKeepsTheOrder(t *testing.T) {
	second := make(chan struct{})
	list := []check{
		{name: "slow", run: func(_ context.Context, j *job) error { <-second; j.say("slow"); return nil }},
		{name: "quick", run: func(_ context.Context, j *job) error { j.say("quick"); close(second); return nil }},
	}
	var out bytes.Buffer
	runTogether(context.Background(), t.TempDir(), list, &out)
	if slow, quick := strings.Index(out.String(), "== slow"), strings.Index(out.String(), "== quick"); slow < 0 || quick < slow {
		t.Errorf("the output is not in the order of the list:\n%s", out.String())
	}
}

func TestRunAllStopsWhenAsked(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	err := runAll(ctx, t.TempDir(), []check{passing("knead")}, &bytes.Buffer{})
	if err == nil {
		t.Error("runAll() = nil after the context ended")
	}
}

func TestChoose(t *testing.T) {
	all := []check{passing("fmt"), passing("vet"), passing("tests")}
	tests := []struct {
		name  string
		names []string
		want  []string
		err   string
	}{
		{"all", nil, []string{"fmt", "vet", "tests"}, ""},
		{"in the list's order", []string{"tests", "fmt"}, []string{"fmt", "tests"}, ""},
		{"twice", []string{"vet", "vet"}, []string{"vet"}, ""},
		{"unknown", []string{"vet", "knead"}, nil, `no check is called "knead"; they are: fmt, vet, tests`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			chosen, err := choose(all, tt.names)
			if fmt.Sprint(err) != fmt.Sprint(errorOf(tt.err)) {
				t.Errorf("choose(%v) error = %v, want %q", tt.names, err, tt.err)
			}
			if diff := cmp.Diff(tt.want, namesOf(chosen)); diff != "" {
				t.Errorf("choose(%v) (-want +got):\n%s", tt.names, diff)
			}
		})
	}
}

func errorOf(text string) error {
	if text == "" {
		return nil
	}
	return errors.New(text)
}

func TestHelpNamesEveryCheck(t *testing.T) {
	var out bytes.Buffer
	if err := run(context.Background(), []string{"help"}, &out); err != nil {
		t.Fatal(err)
	}
	for _, c := range checks() {
		if !strings.Contains(out.String(), "  "+c.name+" ") || c.about == "" {
			t.Errorf("help does not tell of %s:\n%s", c.name, out.String())
		}
	}
}

func TestGeneratedPairs(t *testing.T) {
	tests := []struct {
		name  string
		files []string
		want  []string
	}{
		{"in order", []string{"views/a.templ", "views/a_templ.go", "views/page.go"}, nil},
		{"not generated", []string{"views/a.templ"}, []string{"views/a_templ.go is missing: go tool templ generate -path views"}},
		{"the template gone", []string{"views/a.templ", "views/a_templ.go", "views/b_templ.go"}, []string{"views/b_templ.go is made from views/b.templ, which is gone: delete it"}},
		{"none at all", []string{"views/page.go"}, []string{"no template found"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if diff := cmp.Diff(tt.want, generatedPairs(tt.files)); diff != "" {
				t.Errorf("generatedPairs(%v) (-want +got):\n%s", tt.files, diff)
			}
		})
	}
}

func TestReadPackages(t *testing.T) {
	const listed = `{"ImportPath":"m/web","Module":{"Path":"m"},"Imports":["fmt"],"TestImports":["testing"],"XTestImports":["m/store"]}
{"ImportPath":"m/store","Module":{"Path":"m"}}
`
	module, packages, err := readPackages([]byte(listed))
	if err != nil || module != "m" {
		t.Fatalf("readPackages() = %q, %v; want m", module, err)
	}
	want := []arrows.Package{
		{Path: "m/web", Imports: []string{"fmt"}, TestImports: []string{"testing", "m/store"}},
		{Path: "m/store"},
	}
	if diff := cmp.Diff(want, packages); diff != "" {
		t.Errorf("readPackages() (-want +got):\n%s", diff)
	}
	for name, text := range map[string]string{"nothing": "", "broken": `{"ImportPath":`} {
		if _, _, err := readPackages([]byte(text)); err == nil {
			t.Errorf("readPackages() of %s gives no error", name)
		}
	}
}

func TestUnreached(t *testing.T) {
	tests := []struct {
		name, said string
		want       bool
	}{
		{"no net", `govulncheck: fetching vulnerabilities: Get "https://x.example/": dial tcp: no such host`, true},
		{"a hole found", "Vulnerability #1: GO-2026-0001\n  A hole.", false},
		{"does not compile", "govulncheck: loading packages:\nundefined: x", false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if got := unreached(tt.said); got != tt.want {
				t.Errorf("unreached(%q) = %v, want %v", tt.said, got, tt.want)
			}
		})
	}
}

func TestByHand(t *testing.T) {
	var out bytes.Buffer
	var dir string
	err := byHand(&out, func(tb browser.TB) {
		dir = tb.TempDir()
		tb.Cleanup(func() { tb.Logf("last in, first out") })
		tb.Fatalf("no flour in %s", "the bin")
		tb.Logf("never said")
	})
	if err == nil || err.Error() != "no flour in the bin" || out.String() != "last in, first out\n" {
		t.Errorf("byHand() = %v, saying %q", err, out.String())
	}
	if _, err := os.Stat(dir); !os.IsNotExist(err) {
		t.Errorf("the temporary folder is still there: %v", err)
	}
	if err := byHand(&out, func(browser.TB) {}); err != nil {
		t.Errorf("byHand() = %v of work that went well", err)
	}
}

// TestJobEndsWhatItStarted asks a program that would wait for ever to end.
func TestJobEndsWhatItStarted(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	j := &job{root: t.TempDir(), out: w}
	ended := make(chan error, 1)
	go func() { ended <- j.do(ctx, "sh", "-c", "echo started; exec tail -f /dev/null") }()
	started := make([]byte, 8)
	if _, err := r.Read(started); err != nil {
		t.Fatal(err)
	}
	stop()
	if err := <-ended; err == nil || !strings.HasPrefix(err.Error(), "sh -c") {
		t.Errorf("do() = %v, want an error that names sh", err)
	}
}
