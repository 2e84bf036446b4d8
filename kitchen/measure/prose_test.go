package measure_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// brief gives a heat as the table here writes it: "180 C fan", "350..375 F".
func brief(h measure.Heat) string {
	return strings.TrimSpace(strings.ReplaceAll(tables.Range(h.Degrees)+" "+h.Scale+" "+h.Oven, "  ", " "))
}

// Steps as home cooks write them, with the times and heats that stand in them.
// Written by us.
var steps = []struct{ text, minutes, heats string }{
	{"Preheat the oven to 180°C (160°C fan/gas 4) and grease a 20 cm tin.", "", "180 C, 160 C fan, 4 gas"},
	{"Heat the oven to 220C/200C fan/gas 7. Roast the squash for 35-40 mins until tender.", "35..40", "220 C, 200 C fan, 7 gas"},
	{"Preheat oven to 350°F. Line two 9x5 inch loaf pans.", "", "350 F"},
	{"Bake at 425 for 15 minutes, then lower to 350 and bake 20 to 25 minutes more.", "15, 20..25", "425 F, 350 F"},
	{"Knead by hand for a good quarter of an hour, or 8 minutes in the mixer.", "15, 8", ""},
	{"Prove somewhere warm (about 26 °C) for 1–1½ hours, until doubled.", "60..90", "26 C"},
	{"Cover and refrigerate overnight, or for at least 8 hours and up to 3 days.", "480..720, 480, 4320", ""},
	{"Simmer gently for an hour and a half, stirring now and then.", "90", ""},
	{"Microwave on high in 30-second bursts.", "1/2", ""},
	{"Whisk over a bain-marie to 82 °C, about five minutes; do not let it pass 85 °C.", "5", "82 C, 85 C"},
	{"Boil the syrup to 118°C (245°F) and pour it in at once.", "", "118 C, 245 F"},
	{"Fry at 175–180 °C for two to three minutes a side.", "2..3", "175..180 C"},
	{"Cook until a thermometer in the thickest part reads 74 °C / 165 °F, then rest 10 min.", "10", "74 C, 165 F"},
	{"Cool to room temperature, about 1 hour, then chill at 4°C for 2 hrs 30.", "60, 150", "4 C"},
	{"Warm the milk to 35-40 °C, add the yeast and leave for 10 minutes or so.", "10", "35..40 C"},
	{"Set the fan oven to 170 °C.", "", "170 C fan"},
	{"Bake in a hot oven, gas mark 7, for half an hour.", "30", "7 gas"},
	{"Turn the oven down by 20 °C if the top colours too fast.", "", ""},
	{"Rotate the tray 180 degrees halfway.", "", ""},
	{"Set oven to three hundred and seventy-five degrees and bake for three quarters of an hour.", "45", "375 F"},
	{"Freeze at −18 °C for up to 3 weeks.", "30240", "-18 C"},
	{"Leave to stand 5 min. Meanwhile, whisk 3 eggs with 200 g sugar.", "5", ""},
	{"Soak for 12 hours or overnight, changing the water twice.", "720, 480..720", ""},
	{"Beat 1 minute, rest 30 secs, beat 1 minute again.", "1, 1/2, 1", ""},
	{"Steam 45 minutes to an hour.", "45..60", ""},
	{"Add 2 cups stock a second time and cook another 20 minutes.", "20", ""},
	{"Use day-old bread, cut in 1 cm cubes, and toast for a minute or two.", "1..2", ""},
	{"Serve at once, 1 slice each.", "", ""},
	{"Bake 200 °C 12 min, turn, 5 min more.", "12, 5", "200 C"},
	{"Pressure cook for 1h 15m.", "75", ""},
	{"Sous-vide at 63.5 °C for 2 hours 15 minutes.", "135", "127/2 C"},
	{"Brown the butter over medium heat, 4–5 minutes.", "4..5", ""},
	{"Reduce to 300 ml, about 20 min.", "20", ""},
	{"Weigh 350 g flour and 180 g water at 20 °C.", "", "20 C"},
	{"Divide in 12 at 60 g each and rest 15 minutes.", "15", ""},
	{"Bake (190 °C conventional, 170 °C fan) one hour and ten minutes.", "70", "190 C conventional, 170 C fan"},
	{"Blanch 90 seconds, then plunge in ice water for the same time.", "3/2", ""},
	{"Ferment for 3 to 5 days at 18–22°C, burping the jar once a day.", "4320..7200", "18..22 C"},
	{"Poach for 6½ minutes exactly.", "13/2", ""},
	{"Rest for twenty minutes to half an hour.", "20..30", ""},
	{"Bake at 180 for 25 mins (160 fan).", "25", "180 C, 160 C fan"},
	{"Roast at 160 degrees Celsius for between 2 and 2½ hours.", "120..150", "160 C"},
	{"Chill the dough for a couple of hours.", "120", ""},
	{"Set the timer: 1 hour 5.", "65", ""},
	{"Melt 100 g chocolate at 45 C, cool to 27 C, rewarm to 31–32 C.", "", "45 C, 27 C, 31..32 C"},
	{"Proof in the fridge 24–48 hours.", "1440..2880", ""},
	{"Bake 10 minutes at 250 °C with steam, then 30–35 minutes at 220 °C without.", "10, 30..35", "250 C, 220 C"},
}

func TestStepsOfHomeCooks(t *testing.T) {
	for _, step := range steps {
		t.Run(step.text, func(t *testing.T) {
			var times, heats []string
			for _, d := range measure.Durations(step.text) {
				times = append(times, tables.Range(d.Minutes))
			}
			for _, h := range measure.Heats(step.text) {
				heats = append(heats, brief(h))
			}
			if diff := cmp.Diff(step.minutes, strings.Join(times, ", ")); diff != "" {
				t.Errorf("minutes (-want +got):\n%s", diff)
			}
			if diff := cmp.Diff(step.heats, strings.Join(heats, ", ")); diff != "" {
				t.Errorf("heats (-want +got):\n%s", diff)
			}
		})
	}
}

// Joined to one method, each step's times and heats are found where they were.
func TestStepsJoinedFindTheSame(t *testing.T) {
	var text strings.Builder
	var minutes, heats []string
	for _, step := range steps {
		text.WriteString(step.text + "\n")
		if step.minutes != "" {
			minutes = append(minutes, strings.Split(step.minutes, ", ")...)
		}
		if step.heats != "" {
			heats = append(heats, strings.Split(step.heats, ", ")...)
		}
	}
	var times, found []string
	for _, d := range measure.Durations(text.String()) {
		times = append(times, tables.Range(d.Minutes))
	}
	for _, h := range measure.Heats(text.String()) {
		found = append(found, brief(h))
	}
	if diff := cmp.Diff(minutes, times); diff != "" {
		t.Errorf("minutes (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff(heats, found); diff != "" {
		t.Errorf("heats (-want +got):\n%s", diff)
	}
}

// The heats of sound steps are not questioned.
func TestSoundStepsAreNotQuestioned(t *testing.T) {
	for _, step := range steps {
		for _, q := range measure.CheckOvens(measure.Heats(step.text)) {
			t.Errorf("%q is questioned: %s", step.text, q.Text)
		}
	}
}
