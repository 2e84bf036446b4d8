package verify_test

import "testing"

// first sight: with weights learnt without a–d
func TestZFirst(t *testing.T) {
	for _, c := range readCuts(t) {
		if c.name >= "e" && c.name < "i" {
			c.judged(t.Logf)
		}
	}
}
