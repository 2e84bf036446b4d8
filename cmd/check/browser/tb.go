package browser

import "benchproof/cmd/check/tools"

// TB is what this package needs of a test. Every testing.TB fits; so does the
// look command, which takes pictures without a test.
type TB interface {
	Helper()
	Name() string
	Cleanup(func())
	TempDir() string
	Logf(format string, args ...any)
	Skipf(format string, args ...any)
	Fatalf(format string, args ...any)
}

// need gives the path of a tool. Without it the test is skipped, or fails when
// cmd/check runs it.
func need(tb TB, what string, where func() (string, error)) string {
	tb.Helper()
	path, err := where()
	if err == nil {
		return path
	}
	say := tb.Skipf
	if tools.Demanded() {
		say = tb.Fatalf
	}
	say("%s is missing (%v): go run ./cmd/check tools installs it, or says how", what, err)
	return ""
}
