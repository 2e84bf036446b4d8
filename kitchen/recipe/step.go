package recipe

import (
	"strings"

	"benchproof/kitchen/recipe/method"
)

// readSteps reads one line of the method, which may hold several steps. All
// carry the line's number.
func readSteps(number int, words string, prose bool) []Step {
	var steps []Step
	for _, text := range method.Divide(words, prose) {
		got := method.Read(text)
		steps = append(steps, Step{
			Number: number, Text: text, Minutes: got.Minutes, HasMinutes: got.HasMinutes, HandsOn: got.HandsOn,
			Station: got.Station, Temperatures: got.Heats, Cue: got.Cue, Reason: got.Reason,
		})
	}
	return steps
}

// followHob moves a timed stir at the bench to the hob where the step before was
// there and nothing was moved: "Fry the onion. Add the garlic, stir for a
// minute."
func followHob(steps []Step) {
	for i := 1; i < len(steps); i++ {
		s := &steps[i]
		if s.Station != "bench" || !s.HasMinutes || steps[i-1].Station != "hob" || steps[i-1].Number < s.Number-1 {
			continue
		}
		word, _, _ := strings.Cut(strings.ToLower(s.Text), " ")
		switch word {
		case "add", "stir", "tip", "pour", "return", "throw", "season", "scatter":
			s.Station = "hob"
		}
	}
}
