package web_test

import (
	"strings"
	"testing"
)

// A dough with milk and egg that proves for two hours is flagged by the rules of
// FSANZ Standard 3.2.2 (2 hours) and USDA FSIS (over 2 hours); one of flour and
// water is not.
func TestWhatStandsTooLongIsFlagged(t *testing.T) {
	const dough = "Buns\n\n500 g bread flour\n%\n\nKnead everything for 10 minutes.\nLeave the dough to prove for 2 hours.\nBake at 220 °C for 40 minutes.\n"
	tests := []struct {
		name, with string
		want       []string
	}{
		{"milk and egg", "250 ml milk\n1 egg", []string{"Cold and hot 09:00 to 11:10", "Stands 2 h 10 min between cold and hot, until “Bake at 220 °C for 40 minutes.”",
			"USDA FSIS, Refrigeration: The Basics", "FSANZ Standard 3.2.2", "the advice of your local food authority goes first"}},
		{"flour and water", "350 ml water", nil},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := newSite(t)
			path := s.start("Buns", strings.Replace(dough, "%", tt.with, 1))
			s.setMakes(1)
			page := words(s.shows(path+"/shoot-day", tt.want...))
			if tt.want == nil && strings.Contains(page, "Cold and hot") {
				t.Errorf("something is flagged:\n%s", page)
			}
		})
	}
}
