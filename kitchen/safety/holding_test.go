package safety_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/safety"
	"benchproof/seed"
)

// The limits of USDA FSIS (2-hour rule), FDA Food Code 2022 §§ 3-501.14(A) and
// 3-501.19, FSANZ Standard 3.2.2 (2-hour / 4-hour rule), and the English
// regulations of 2013 (once above 8 °C for 4 hours, once below 63 °C for 2), to
// the minute.
func TestHolding(t *testing.T) {
	const usda, use, discard, alone, cool = "Refrigeration: The Basics", "use it at once", "throw it away", "section 3-501.19", "section 3-501.14(A)"
	const ukCold, ukHot = "above 8\u00a0°C once only, for up to 4 hours", "below 63\u00a0°C once only, for up to 2 hours"
	tests := []struct {
		name     string
		minutes  int
		isCooked bool
		want     []string // in order, each in the text or the source
	}{
		{"nothing", 0, false, nil},
		{"one minute short of 2 hours", 119, true, nil},
		{"2 hours: use at once, by FSANZ; the others allow 2 hours", 120, false, []string{use}},
		{"2 hours, cooked: cooling may take so long", 120, true, []string{use}},
		{"over 2 hours, raw", 121, false, []string{usda, use}},
		{"over 2 hours, cooked", 121, true, []string{usda, cool, ukHot, use}},
		{"one minute short of 4 hours", 239, false, []string{usda, use}},
		{"4 hours: thrown away by FSANZ, still allowed in England", 240, false, []string{discard, alone, usda}},
		{"over 4 hours", 241, false, []string{discard, alone, ukCold, usda}},
		{"a night on the bench", 600, true, []string{discard, alone, ukCold, usda, cool, ukHot}},
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

// What needs the cold, raw, cooked and baked: common practice and the Food Code's
// section 1-201.10 (from memory), line by line.
func TestWhatSpoils(t *testing.T) {
	larder, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	const no, always, cooked = "no", "raw, cooked, baked", "cooked, baked"
	tests := []struct {
		line, want string
	}{
		{"500 g strong white flour", no}, {"350 ml water", no}, {"10 g salt", no}, {"7 g yeast", no}, {"100 g butter", no},
		{"250 ml whole milk", always}, {"1 egg", always}, {"4 egg yolks", always}, {"300 ml double cream", always}, {"200 g natural yoghurt", always},
		{"250 g ricotta", always}, {"200 g cream cheese", always}, {"200 g firm tofu", always}, {"2 hard-boiled eggs", always},
		{"400 g cod fillet", always}, {"100 g smoked salmon", always}, {"1 chicken, jointed", always}, {"500 g beef mince", always}, {"4 rashers bacon", always},
		{"1 x 145 g tin tuna", no}, {"1 tsp cream of tartar", no}, {"100 g milk chocolate", no}, {"1 x 397 g tin condensed milk", no}, {"2 eggplants", no},
		{"2 carrots", no}, {"1 onion", no}, {"200 g sugar", no}, {"2 tbsp oil", no},
		{"200 g basmati rice", cooked}, {"400 g spaghetti", cooked}, {"1 l chicken stock", cooked}, {"600 g potatoes", cooked}, {"200 g red lentils", cooked},
		{"1 tbsp rice vinegar", no},
	}
	for _, tt := range tests {
		t.Run(tt.line, func(t *testing.T) {
			r := recipe.Reader{Larder: larder}.Read("Dish\n\n" + tt.line + "\n\nMix it all for 5 minutes.\n")
			var got []string
			for _, heat := range []safety.Heat{safety.Unheated, safety.Cooked, safety.Baked} {
				if safety.Spoils(r, 0, 0, heat, larder) {
					got = append(got, []string{"raw", "cooked", "baked"}[heat])
				}
			}
			if joined := strings.Join(got, ", "); joined != tt.want && (joined != "" || tt.want != no) {
				t.Errorf("it spoils %q, want %q", joined, tt.want)
			}
			for _, at := range [][2]int{{7, 0}, {-1, 0}, {0, 9}, {0, -1}} {
				if safety.Spoils(r, at[0], at[1], safety.Cooked, nil) {
					t.Errorf("a line that is not there spoils: %v", at)
				}
			}
		})
	}
}

// Egg and milk baked in a dough keep; in what stays soft they do not.
func TestWhatSpoilsOnceItIsBaked(t *testing.T) {
	tests := []struct {
		name, text string
		want       bool
		isDough    bool
	}{
		{"enriched buns", "Milk buns\n\n500 g flour\n1 egg\n\nKnead the dough. Bake for 20 minutes.\n", false, true},
		{"a sponge by its title", "Lemon cake\n\n200 g flour\n3 eggs\n\nBeat everything. Bake for 30 minutes.\n", false, true},
		{"with the method apart", "Sponge:\n200 g flour\n3 eggs\n\nMethod:\nBeat to a batter. Bake for 30 minutes.\n", false, true},
		{"choux", "Choux\n\n150 g flour\n4 eggs\n\nBeat and pipe. Bake for 30 minutes.\n", false, true},
		{"a quiche", "Leek quiche\n\n200 g flour\n3 eggs\n\nRoll out the pastry, fill. Bake for 30 minutes.\n", true, false},
		{"a baked custard", "Baked custard\n\n4 eggs\n\nBake for 30 minutes.\n", true, false},
		{"a cheesecake", "Cheesecake\n\n50 g flour\n3 eggs\n\nBake for 30 minutes.\n", true, false},
		{"a meat loaf", "Meat loaf\n\n2 tbsp flour\n500 g beef mince\n\nShape the loaf. Bake for 50 minutes.\n", true, true},
		{"a sauce with flour", "White sauce\n\n30 g flour\n500 ml milk\n\nStir for 10 minutes.\n", true, false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := recipe.Reader{}.Read(tt.text)
			last := len(r.Components[0].Lines) - 1
			if got := safety.Spoils(r, 0, last, safety.Baked, nil); got != tt.want {
				t.Errorf("%q spoils %v, want %v", r.Components[0].Lines[last].Text, got, tt.want)
			}
			if !safety.Spoils(r, 0, last, safety.Unheated, nil) {
				t.Errorf("raw, %q keeps", r.Components[0].Lines[last].Text)
			}
			if got := safety.IsDough(r, 0, nil); got != tt.isDough {
				t.Errorf("is a dough: %v, want %v", got, tt.isDough)
			}
		})
	}
	if safety.IsDough(recipe.Recipe{}, 0, nil) || safety.IsDough(recipe.Recipe{}, -1, nil) {
		t.Error("a component that is not there is a dough")
	}
}

// The caution about proving tells of the rules and promises nothing.
func TestProvingIsCautious(t *testing.T) {
	for _, want := range []string{"by these rules", "refrigerator", "bake it through"} {
		if !strings.Contains(safety.Proving.Text, want) {
			t.Errorf("it does not say %q: %s", want, safety.Proving.Text)
		}
	}
}
