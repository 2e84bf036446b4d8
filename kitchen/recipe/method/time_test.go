package method_test

import (
	"testing"

	"benchproof/kitchen/recipe/method"
)

// Which times an instruction takes, in minutes.
func TestMinutes(t *testing.T) {
	for _, tt := range []struct{ name, text, want string }{
		{"one", "Knead for 10 minutes.", "10–10"},
		{"a range", "Bake 20–25 min.", "20–25"},
		{"in words", "Rest for a good quarter of an hour.", "15–15"},
		{"half an hour", "Rest for half an hour.", "30–30"},
		{"hours and minutes", "Roast for 1 hr 30.", "90–90"},
		{"an hour and a half", "Simmer for an hour and a half.", "90–90"},
		{"seconds", "Blitz for 30 seconds.", "1/2–1/2"},
		{"days", "Cure for 2 days.", "2880–2880"},
		{"overnight", "Soak overnight.", "480–720"}, // 8 to 12 h: common practice, no source
		{"at least", "Chill for at least 2 hours.", "120–120"},
		{"one after another", "Fry for 5 minutes, then simmer for 20 minutes.", "25–25"},
		{"another", "Bake for another 10 minutes.", "10–10"},
		{"more, without a unit", "Bake for 20 min, then 5-10 more.", "25–30"},
		{"either, or", "Chill for 1 hour or overnight.", "60–720"},
		{"and up to", "Chill for 8 hours and up to 2 days.", "480–2880"},
		{"said again in brackets", "Chill overnight (10 hours).", "600–600"},
		{"on each side", "Fry for 3 minutes on each side.", "6–6"},
		{"per side", "Fry 2–3 minutes per side.", "4–6"},
		{"a side", "Fry 2 mins a side.", "4–4"},
		{"not every", "Turn every 10 minutes.", ""},
		{"not the last", "Uncover for the last 10 minutes.", ""},
		{"not the first", "Steam the oven for the first 15 minutes.", ""},
		{"not after", "After 20 minutes turn the tray.", ""},
		{"not within", "Eat within 30 minutes.", ""},
		{"not before serving", "Take it out 30 minutes before serving.", ""},
		{"but a rest before cutting", "Rest for 30 minutes before cutting.", "30–30"},
		{"not ahead", "This can be done 2 days ahead.", ""},
		{"not how long it keeps", "Keeps for 3 days in a tin.", ""},
		{"not how long it lasts", "It lasts 2 weeks in the fridge.", ""},
		{"not how long it is good", "Good for 3 weeks.", ""},
		{"not up to days", "Freeze for up to 60 days.", ""},
		{"not a rate", "Roast for 20 minutes per 500 g.", ""},
		{"the bake, not the turn", "Bake for 40 minutes, turning every 10 minutes.", "40–40"},
		{"none", "Serve.", ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got := ""
			if r := method.Read(tt.text); r.HasMinutes {
				got = r.Minutes.From.String() + "–" + r.Minutes.To.String()
			}
			if got != tt.want {
				t.Errorf("%q takes %q, want %q", tt.text, got, tt.want)
			}
		})
	}
}
