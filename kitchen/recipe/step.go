package recipe

import "benchproof/kitchen/recipe/method"

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
