package speech_test

import "testing"

// Settings of ovens and heats of food.
func TestHeats(t *testing.T) {
	runPhrases(t, []phrase{
	})
}
