package verify_test

import "testing"

// first sight: with weights learnt without a–d
func TestZFirst(t *testing.T) {
	for _, c := range readCuts(t) {
		if c.name >= "i" && c.name < "q" {
			c.judged(t.Logf)
		}
	}
}
