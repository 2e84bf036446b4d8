package speech_test

import "testing"

// Stretches of time, and what only sounds like one.
func TestTimes(t *testing.T) {
	runPhrases(t, []phrase{
	})
}
