package speech_test

import "testing"

// Counts, shares, lengths, and numbers that are no amounts.
func TestOtherNumbers(t *testing.T) {
	runPhrases(t, []phrase{
	})
}
