package script

// DefaultPace is the words a minute taken when the show gives no pace: plain
// conversation. Source: published rates, 120–180 words a minute in
// conversation, about 150; audiobooks 150–160.
const DefaultPace = 150

// Seconds is how long the narration takes to say at the given words a minute,
// rounded up to whole seconds; 0 for narration without words. A pace of 0 or
// less means DefaultPace. Pauses are not counted: plan them.
func Seconds(narration string, wordsPerMinute int) int {
	if wordsPerMinute <= 0 {
		wordsPerMinute = DefaultPace
	}
	return (Words(narration)*60 + wordsPerMinute - 1) / wordsPerMinute
}
