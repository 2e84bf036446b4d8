package web_test

import (
	"strings"
	"testing"
)

// Bread with egg in it may stand once it is baked, cream may not; and a dough is
// named with what is common practice of it.
func TestHoldingKnowsDoughs(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string
		isFlagged  bool
	}{
		{"a cake that cools all day", "Lemon cake\n\n200 g flour\n3 eggs\n\nHeat the oven to 180 °C.\nBeat everything for 10 minutes.\nBake at 180 °C for 40 minutes.\nLeave to cool for 5 hours.\nSlice the cake for 5 minutes.\n", nil, false},
		{"a custard that cools all day", "Custard\n\n500 ml milk\n4 egg yolks\n\nStir everything on the hob for 10 minutes.\nLeave to cool for 5 hours.\n",
			[]string{"section 3-501.14(A)", "section 3-501.19", "after 4 hours", "above 8\u00a0°C once only"}, true},
		{"an enriched dough", "Buns\n\n500 g bread flour\n1 egg\n\nKnead everything for 10 minutes.\nLeave the dough to prove for 3 hours.\nBake at 220 °C for 40 minutes.\n",
			[]string{"commonly proved so long, yet by these rules"}, true},
		{"minced meat is no dough", "Koftas\n\n500 g minced lamb\n\nMix everything for 10 minutes.\nLeave to rest for 3 hours.\nGrill for 10 minutes.\n", nil, true},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := newSite(t)
			path := s.start("Dish", tt.text)
			s.setMakes(1)
			page := words(s.shows(path + "/shoot-day"))
			if strings.Contains(page, "Cold and hot") != tt.isFlagged {
				t.Errorf("flagged: %v\n%s", !tt.isFlagged, page)
			}
			for _, want := range tt.want {
				if !strings.Contains(strings.ToLower(page), strings.ToLower(words(want))) {
					t.Errorf("it does not say %q:\n%s", want, page)
				}
			}
			if strings.Contains(tt.name, "meat") && strings.Contains(page, "proved so long") {
				t.Errorf("it takes meat for dough:\n%s", page)
			}
		})
	}
}

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
