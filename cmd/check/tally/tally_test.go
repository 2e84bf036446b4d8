package tally_test

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/cmd/check/tally"
)

// TestReadMixed reads what Go 1.26 printed for four packages: one with passing,
// failing, skipped and panicking tests, one that does not compile, one without
// tests, one in order.
func TestReadMixed(t *testing.T) {
	events, err := os.Open("testdata/mixed.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	defer events.Close()
	var out bytes.Buffer
	got, err := tally.Read(events, &out)
	if err != nil {
		t.Fatal(err)
	}
	want := tally.Tally{Passed: 2, Failed: 3, Skipped: 1, Skips: []string{"gt/a TestOK/y: no tool"}}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("Read() (-want +got):\n%s", diff)
	}
	for _, want := range []string{
		"b/b_test.go:3:29: undefined: undefined", "a_test.go:4: wrong", "--- FAIL: TestPanic",
		"panic: boom", "FAIL\tgt/a\t", "FAIL\tgt/b [build failed]", "ok  \tgt/d\t",
	} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("the output lacks %q:\n%s", want, out.String())
		}
	}
	for _, unwanted := range []string{"=== RUN", "d_test.go:3: fine", "no test files", "PASS\n"} {
		if strings.Contains(out.String(), unwanted) {
			t.Errorf("the output has %q:\n%s", unwanted, out.String())
		}
	}
}

func TestRead(t *testing.T) {
	tests := []struct {
		name, events string
		want, says   string
	}{
		{
			"nothing at all", "", "0 passed, 0 failed", "",
		},
		{
			"a note of the go command",
			"go: downloading a module\n",
			"0 passed, 0 failed", "go: downloading a module\n",
		},
		{
			"a package that ends early with every test passed",
			`{"Action":"run","Package":"p","Test":"A"}` + "\n" + `{"Action":"pass","Package":"p","Test":"A"}` + "\n" +
				`{"Action":"output","Package":"p","Output":"exit status 1\n"}` + "\n" + `{"Action":"fail","Package":"p"}`,
			"1 passed, 1 failed", "exit status 1\n",
		},
		{
			"a test that never ended",
			`{"Action":"run","Package":"p","Test":"A"}` + "\n" +
				`{"Action":"output","Package":"p","Test":"A","Output":"panic: test timed out\n"}` + "\n" + `{"Action":"fail","Package":"p"}`,
			"0 passed, 1 failed", "panic: test timed out\n",
		},
		{
			"two packages whose events are mixed",
			`{"Action":"run","Package":"p","Test":"A"}` + "\n" + `{"Action":"output","Package":"p","Test":"A","Output":"wrong\n"}` + "\n" +
				`{"Action":"fail","Package":"p","Test":"A"}` + "\n" +
				`{"Action":"run","Package":"q","Test":"B"}` + "\n" + `{"Action":"pass","Package":"q","Test":"B"}` + "\n" +
				`{"Action":"output","Package":"q","Output":"ok q\n"}` + "\n" + `{"Action":"pass","Package":"q"}` + "\n" +
				`{"Action":"output","Package":"p","Output":"FAIL p\n"}` + "\n" + `{"Action":"fail","Package":"p"}`,
			"1 passed, 1 failed", "ok q\nwrong\nFAIL p\n",
		},
		{
			"stopped on the way",
			`{"Action":"run","Package":"p","Test":"A"}` + "\n" + `{"Action":"output","Package":"p","Test":"A","Output":"wrong\n"}` + "\n" +
				`{"Action":"fail","Package":"p","Test":"A"}`,
			"0 passed, 1 failed", "wrong\np did not end\n",
		},
		{
			"a parent that fails by itself",
			`{"Action":"run","Package":"p","Test":"A"}` + "\n" + `{"Action":"run","Package":"p","Test":"A/x"}` + "\n" +
				`{"Action":"pass","Package":"p","Test":"A/x"}` + "\n" + `{"Action":"fail","Package":"p","Test":"A"}` + "\n" +
				`{"Action":"fail","Package":"p"}`,
			"1 passed, 1 failed", "",
		},
		{
			"a grandchild that fails counts once",
			`{"Action":"run","Package":"p","Test":"A"}` + "\n" + `{"Action":"run","Package":"p","Test":"A/x"}` + "\n" +
				`{"Action":"run","Package":"p","Test":"A/x/y"}` + "\n" + `{"Action":"fail","Package":"p","Test":"A/x/y"}` + "\n" +
				`{"Action":"fail","Package":"p","Test":"A/x"}` + "\n" + `{"Action":"fail","Package":"p","Test":"A"}` + "\n" +
				`{"Action":"fail","Package":"p"}`,
			"0 passed, 1 failed", "",
		},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var out bytes.Buffer
			got, err := tally.Read(strings.NewReader(tt.events), &out)
			if err != nil {
				t.Fatal(err)
			}
			if got.Line() != tt.want || out.String() != tt.says {
				t.Errorf("Read() = %q, saying %q; want %q, saying %q", got.Line(), out.String(), tt.want, tt.says)
			}
		})
	}
}
