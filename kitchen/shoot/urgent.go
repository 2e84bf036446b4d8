package shoot

import (
	"regexp"

	"benchproof/kitchen/recipe"
)

// urgentMinutes is how long a step that is to be done at once may wait; common
// practice, no source.
const urgentMinutes = 5

var urgentWords = regexp.MustCompile(`(?i)\b(at once|immediately|straight ?away|right away|without delay|while (it is |it's |they are |they're |still |the \w+ is )?(still )?(hot|warm))\b`)

// laterWords are of what comes after a step, not of the step itself.
var laterWords = regexp.MustCompile(`(?i)\buse (it |them )?(at once|immediately|straight ?away|right away)`)

// WithinOf is how many minutes a step may wait after the one before it, going by
// its words: "pour at once", "toss while still hot". ok is false if they do not
// say.
func WithinOf(s recipe.Step) (minutes int, ok bool) {
	return urgentMinutes, urgentWords.MatchString(laterWords.ReplaceAllString(s.Text, ""))
}
