package speech_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/verify/speech"
)

// phrase is something said and what is found in it, as shown writes it.
type phrase struct {
	said string
	want []string
}

func runPhrases(t *testing.T, all []phrase) {
	t.Helper()
	for _, p := range all {
		t.Run(p.said, func(t *testing.T) {
			if diff := cmp.Diff(p.want, shown(speech.Cut(cues(p.said)))); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}
