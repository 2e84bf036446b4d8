package method_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/method"
)

// TestRead reads steps as cooks write them. What counts as unattended and where
// a verb happens is common practice, no source.
func TestRead(t *testing.T) {
	for _, tt := range []struct {
		text    string
		minutes string // "" for none
		station string
		hands   bool
		cue     string
	}{
		// Hands.
		{"Knead for 10 minutes.", "10", "bench", true, ""},
		{"Knead for 9–11 minutes until the dough clears the bowl.", "9–11", "bench", true, "until the dough clears the bowl"},
		{"Mix and knead in a stand mixer for 8 minutes.", "8", "mixer", true, ""},
		{"Cream butter and sugar with an electric mixer until light and fluffy.", "", "mixer", true, "until light and fluffy"},
		{"Whisk the yolks and sugar until pale.", "", "bench", true, "until pale"},
		{"Shape into a round, cut a deep cross.", "", "bench", true, ""},
		{"Beat with a little of the milk for ten minutes until it blisters", "10", "bench", true, "until it blisters"},
		{"Dust with icing sugar.", "", "bench", true, ""},
		// Waits.
		{"Cover and leave to prove for 75 minutes until it springs back slowly.", "75", "waits", false, "until it springs back slowly"},
		{"Cover and rest for half an hour.", "30", "waits", false, ""},
		{"Leave to cool.", "", "waits", false, ""},
		{"Let the dough rest for 1 hour in the fridge.", "60", "fridge", false, ""},
		{"Leave in a warm place for a good quarter of an hour", "15", "waits", false, ""},
		{"Let rest 10 minutes before cutting.", "10", "waits", false, ""},
		{"Prove overnight in the fridge.", "480–720", "fridge", false, ""},
		{"Set aside for 15 minutes", "15", "waits", false, ""},
		{"Bulk ferment for 4 hours, folding every 30 minutes for the first two hours.", "240", "waits", false, ""},
		{"Soak the fruit in the tea overnight.", "480–720", "waits", false, ""},
		{"Drain in a cloth for 2 hours.", "120", "waits", false, ""},
		{"Chill for 1–2 hours, until set.", "60–120", "fridge", false, "until set"},
		{"Freeze for 4 hours.", "240", "freezer", false, ""},
		{"Put in the freezer for 20 minutes", "20", "freezer", false, ""},
		// Oven.
		{"Bake for 35 to 40 minutes until golden.", "35–40", "oven", false, "until golden"},
		{"bake 40-45 mins till it sounds hollow", "40–45", "oven", false, "till it sounds hollow"},
		{"Preheat the oven to 180 °C.", "", "oven", false, ""},
		{"Heat oven to 220C/200C fan/gas 7", "", "oven", false, ""},
		{"Roast at 200 °C for 1 hr 30", "90", "oven", false, ""},
		{"Cook in the oven for 2 hours, covered.", "120", "oven", false, ""},
		{"Gas 4, about 1 hr 10, till a skewer's clean", "70", "oven", false, "till a skewer's clean"},
		{"Return to the oven for 5 minutes.", "5", "oven", false, ""},
		{"Bake in lidded pots for 20 minutes, then uncover and bake for a further 20–25 minutes until chestnut brown.", "40–45", "oven", false, "until chestnut brown"},
		// Hob.
		{"Simmer gently for an hour.", "60", "hob", false, ""},
		{"Bring to the boil, then simmer, uncovered, for 20 minutes until thickened.", "20", "hob", false, "until thickened"},
		{"Cook over a medium heat, stirring constantly, for 4–5 minutes until it thickens and bubbles.", "4–5", "hob", true, "until it thickens and bubbles"},
		{"Simmer, stirring occasionally, for 30 minutes.", "30", "hob", false, ""},
		{"Fry the onion for 5 minutes.", "5", "hob", true, ""},
		{"Fry for 2 minutes on each side until brown.", "4", "hob", true, "until brown"},
		{"Cover and cook for 5 minutes, until the mussels have opened (throw away any that stay shut).", "5", "hob", false, "until the mussels have opened"},
		{"Melt the butter over a low heat.", "", "hob", true, ""},
		{"Stir over a low heat for 3 minutes.", "3", "hob", true, ""},
		{"Let it simmer for 20 minutes.", "20", "hob", false, ""},
		{"Steam for 12 minutes.", "12", "hob", false, ""},
		{"Deep-fry in batches for 3 minutes until crisp.", "3", "fryer", true, "until crisp"},
		{"Grill for 4 minutes.", "4", "grill", true, ""},
		{"Brown under a hot grill for 2 minutes.", "2", "grill", true, ""},
		// Times that are none.
		{"Take the butter out of the fridge 2 hours before you start.", "", "bench", true, ""},
		{"Baste every 20 minutes.", "", "bench", true, ""},
		{"Uncover for the last 10 minutes.", "", "bench", true, ""},
		{"Keeps for up to 3 days in the fridge.", "", "fridge", false, ""},
		{"Serve within 20 minutes.", "", "bench", true, ""},
		// Several times.
		{"Chill for at least 1 hour or overnight.", "60–720", "fridge", false, ""},
		{"Bake for 20 minutes, turn, then bake another 10 minutes.", "30", "oven", false, ""},
		{"Bake for 20 min, then lower the heat for 40-45 more until bubbling.", "60–65", "oven", false, "until bubbling"},
		{"Cook on low for 6 to 8 hours or high 3-4 hours, covered.", "180–480", "hob", false, ""},
		{"Refrigerate overnight (8-16 hours).", "480–960", "fridge", false, ""},
		{"Chill 24 hours before eating. Good for 3 weeks.", "1440", "fridge", false, ""},
		{"Heat oil to 175 °C and fry 4 at a time for 12-15 min.", "12–15", "fryer", true, ""},
		// Cues.
		{"Bake until golden and risen, about 25 minutes.", "25", "oven", false, "until golden and risen"},
		{"Cook until soft but not coloured.", "", "hob", true, "until soft but not coloured"},
		{"Whisk until smooth and pour into the tin.", "", "bench", true, "until smooth"},
		{"Cover until needed.", "", "bench", true, ""},
		{"Cook until the middle reaches 63.5 °C. Rest.", "", "hob", true, "until the middle reaches 63.5 °C"},
		{"It is done when a skewer comes out clean.", "", "bench", true, "when a skewer comes out clean"},
		{"Fry until golden, stirring.", "", "hob", true, "until golden"},
		{"Leave until doubled, 1 to 1½ hours.", "60–90", "waits", false, "until doubled"},
	} {
		t.Run(tt.text, func(t *testing.T) {
			got := method.Read(tt.text)
			minutes := ""
			if got.HasMinutes {
				minutes = got.Minutes.From.String()
				if !got.Minutes.IsSingle() {
					minutes += "–" + got.Minutes.To.String()
				}
			}
			if minutes != tt.minutes || got.Station != tt.station || got.HandsOn != tt.hands || got.Cue != tt.cue {
				t.Errorf("Read = %q min, %s, hands %t, cue %q\n    want %q min, %s, hands %t, cue %q", minutes, got.Station, got.HandsOn, got.Cue,
					tt.minutes, tt.station, tt.hands, tt.cue)
			}
		})
	}
}

// A fan oven is set about 20 °C below a conventional one: NSW Health conversion
// chart; UK guides.
func TestReadQuestionsOvenPairs(t *testing.T) {
	right := method.Read("Bake at 180 °C (160 °C fan) for 20 minutes.")
	if right.Reason != "" || len(right.Heats) != 2 {
		t.Errorf("a right pair is questioned: %q, %d heats", right.Reason, len(right.Heats))
	}
	wrong := method.Read("Bake at 210 °C (200 °C fan) for 20 minutes.")
	if reason := strings.ReplaceAll(wrong.Reason, "\u00a0", " "); !strings.Contains(reason, "190 °C fan") || !strings.Contains(reason, "220 °C") {
		t.Errorf("the question does not name what was likely meant: %q", wrong.Reason)
	}
}

func TestDivide(t *testing.T) {
	for _, tt := range []struct {
		name, line string
		prose      bool
		want       []string
	}{
		{"one step", "Knead for 10 minutes.", false, []string{"Knead for 10 minutes."}},
		{"hands, then a wait", "Knead for 10 minutes. Cover and prove for 1 hour.", false,
			[]string{"Knead for 10 minutes.", "Cover and prove for 1 hour."}},
		{"two waits in two places", "Chill for 20 minutes, then blind-bake for 15 minutes.", false,
			[]string{"Chill for 20 minutes,", "then blind-bake for 15 minutes."}},
		{"what orders nothing stays", "Bake at 180 °C for 20 min, then 5-10 min without beans.", false,
			[]string{"Bake at 180 °C for 20 min, then 5-10 min without beans."}},
		{"two bakes stay one", "Bake for 20 minutes, then uncover and bake for 20 more minutes.", false,
			[]string{"Bake for 20 minutes, then uncover and bake for 20 more minutes."}},
		{"numbered prose stays one", "Mix the dough. Shape it. Put it in a tin.", false, []string{"Mix the dough. Shape it. Put it in a tin."}},
		{"prose is cut by sentence", "Mix the dough. Shape it. Put it in a tin.", true, []string{"Mix the dough.", "Shape it.", "Put it in a tin."}},
		{"a remark stays with its step", "Mix the dough. It will be sticky. Shape it.", true, []string{"Mix the dough. It will be sticky.", "Shape it."}},
		{"abbreviations end nothing", "Bake approx. 20 min. at 180 °C. Cool.", true, []string{"Bake approx. 20 min. at 180 °C.", "Cool."}},
		{"decimals end nothing", "Roll 2.5 cm thick. Cut.", true, []string{"Roll 2.5 cm thick.", "Cut."}},
		{"nothing", "", false, nil},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := method.Divide(tt.line, tt.prose)
			if strings.Join(got, "|") != strings.Join(tt.want, "|") {
				t.Errorf("Divide = %q, want %q", got, tt.want)
			}
		})
	}
}

func TestBegins(t *testing.T) {
	for text, want := range map[string]bool{
		"Preheat the oven":                     true,
		"Mix everything":                       true,
		"In a bowl, whisk the eggs":            true,
		"Meanwhile, make the sauce":            true,
		"Gently fold in the whites":            true,
		"Butter the tin":                       true,
		"Cream the butter and sugar":           true,
		"boil lentils in water, simmer 20 min": true,
		"oven to 200c":                         true,
		"Butter, for the tin":                  false,
		"Cream cheese":                         false,
		"Double cream":                         false,
		"Salt and pepper":                      false,
		"Flour":                                false,
		"Juice of 1 lemon":                     false,
		"Toasted sesame seeds":                 false,
		"200 g flour":                          false,
		"Dry sherry":                           false,
		"":                                     false,
	} {
		if got := method.Begins(text); got != want {
			t.Errorf("Begins(%q) = %t, want %t", text, got, want)
		}
	}
}

// The pieces of a line are the line: nothing is lost or made up.
func FuzzDivide(f *testing.F) {
	f.Add("Knead for 10 minutes. Prove for 1 hour, then bake for 20 min.", true)
	f.Add("Cook until , then until", true) // a cue of nothing
	f.Add("a.B?C! (d.) 2.5 then then 1 min then fry 2 min", false)
	f.Fuzz(func(t *testing.T, line string, prose bool) {
		line = strings.Join(strings.Fields(line), " ")
		if len(line) > 2000 {
			return
		}
		if got := strings.Join(method.Divide(line, prose), " "); got != line {
			t.Errorf("pieces are %q, the line was %q", got, line)
		}
		r := method.Read(line)
		if !strings.Contains(line, r.Cue) || r.Station == "" || r.Minutes.From.Cmp(r.Minutes.To) > 0 || r.HasMinutes && r.Minutes.To.Cmp(measure.Number{}) < 0 {
			t.Errorf("Read(%q) = %+v", line, r)
		}
	})
}
