package safety_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/safety"
	"benchproof/seed"
)

// The limits of USDA FSIS (2-hour rule), FDA Food Code 2022 §§ 3-501.14(A) and
// 3-501.19, and FSANZ Standard 3.2.2 (2-hour / 4-hour rule), to the minute.
func TestHolding(t *testing.T) {
	const usda, use, discard, alone, cool = "Refrigeration: The Basics", "use it at once", "throw it away", "section 3-501.19", "section 3-501.14(A)"
	tests := []struct {
		name     string
		minutes  int
		isCooked bool
		want     []string // in order, each in the text or the source
	}{
		{"nothing", 0, false, nil},
		{"one minute short of 2 hours", 119, true, nil},
		{"2 hours: use at once, by FSANZ; USDA allows 2 hours", 120, false, []string{use}},
		{"over 2 hours, raw", 121, false, []string{usda, use}},
		{"over 2 hours, cooked", 121, true, []string{usda, cool, use}},
		{"one minute short of 4 hours", 239, false, []string{usda, use}},
		{"4 hours: thrown away", 240, false, []string{discard, alone, usda}},
		{"a night on the bench", 600, true, []string{discard, alone, usda, cool}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got := safety.Holding(tt.minutes, tt.isCooked)
			if len(got) != len(tt.want) {
				t.Fatalf("%d minutes: %v, want %v", tt.minutes, got, tt.want)
			}
			for i, c := range got {
				if !strings.Contains(c.Text+" "+c.Source, tt.want[i]) || c.Source == "" {
					t.Errorf("caution %d: %q (%s), want %q", i+1, c.Text, c.Source, tt.want[i])
				}
			}
		})
	}
}

// Longer never means less.
func TestHoldingNeverGetsLessStrict(t *testing.T) {
	for _, isCooked := range []bool{false, true} {
		worst := 0
		for minutes := range 700 {
			n := len(safety.Holding(minutes, isCooked))
			if minutes < safety.LeastStanding && n > 0 || minutes >= safety.LeastStanding && n == 0 {
				t.Errorf("%d minutes: %d cautions", minutes, n)
			}
			if n < worst && minutes != 240 {
				t.Errorf("%d minutes: %d cautions, %d before", minutes, n, worst)
			}
			worst = max(worst, n)
		}
	}
}

func TestWhatSpoils(t *testing.T) {
	larder, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	tests := []struct {
		name, text string
		want       bool
	}{
		{"a lean dough", "500 g strong white flour\n350 ml water\n10 g salt\n7 g yeast", false},
		{"a dough with milk and egg", "500 g strong white flour\n250 ml whole milk\n1 egg", true},
		{"shortcrust", "200 g plain flour\n100 g butter\n2 tbsp water", false},
		{"pastry cream", "500 ml milk\n4 egg yolks", true},
		{"whipped cream", "300 ml double cream", true},
		{"fish", "400 g cod fillet", true},
		{"a chicken", "1 chicken, jointed", true},
		{"chicken stock alone", "1 l chicken stock", false},
		{"minced beef", "500 g beef mince", true},
		{"tinned tuna", "1 x 145 g tin tuna", false},
		{"cream of tartar", "1 tsp cream of tartar", false},
		{"milk chocolate", "100 g milk chocolate", false},
		{"yoghurt", "200 g natural yoghurt", true},
		{"vegetables", "2 carrots\n1 onion", false},
		{"sugar syrup", "200 g sugar\n100 ml water", false},
		{"tofu", "200 g firm tofu", true},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := recipe.Reader{Larder: larder}.Read("Dish\n\n" + tt.text + "\n\nMix it all for 5 minutes.\n")
			if got := safety.Spoils(r, 0, larder); got != tt.want {
				t.Errorf("spoils %v, want %v", got, tt.want)
			}
			if safety.Spoils(r, 7, larder) || safety.Spoils(r, -1, nil) {
				t.Error("a component that is not there spoils")
			}
		})
	}
}

func TestCookedRiceSpoils(t *testing.T) {
	for text, want := range map[string]bool{
		"Boil the rice for 12 minutes and leave it to cool.": true,
		"Rinse the rice.": false,
	} {
		r := recipe.Reader{}.Read("Rice\n\n200 g basmati rice\n\n" + text + "\n")
		if got := safety.Spoils(r, 0, nil); got != want {
			t.Errorf("%q: spoils %v, want %v", text, got, want)
		}
	}
}
