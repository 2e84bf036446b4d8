package verify_test

import (
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify"
)

// Scenes are cuts of a minute or two, many in a file, with the truth about every
// number written into the talk: see testdata/scenes/README.md.

var inlineMark = regexp.MustCompile(`\{([aodnp])\|([^}]*)\}`)

// kinds are the kinds of mark by their letters.
var kinds = map[string]string{"a": "agrees", "o": "other", "d": "differs", "n": "not written", "p": "pair"}

// readScenes reads every scene of a file as a cut.
func readScenes(t testing.TB, name string) []cut {
	t.Helper()
	var all []cut
	for part := range strings.SplitSeq("\n"+readFile(t, name), "\n=== ") {
		title, text, found := strings.Cut(part, "\n@recipe\n")
		if !found {
			continue
		}
		written, talk, found := strings.Cut(text, "\n@speech\n")
		if !found {
			t.Fatalf("%s: %s has no talk", name, title)
		}
		c := cut{name: filepath.Base(name) + ": " + strings.TrimSpace(title)}
		c.recipe = recipe.Reader{Larder: checker.Larder}.Read(written)
		c.readTalk(talk)
		all = append(all, c)
	}
	return all
}

// A word takes about 0.4 s; a pause in talk is a second.
const (
	perWord = 400 * time.Millisecond
	rest    = time.Second
	breath  = 40 * time.Millisecond
)

// readTalk makes a caption of each line and takes the marks out of it.
func (c *cut) readTalk(talk string) {
	at := rest
	talk = inlineMark.ReplaceAllStringFunc(talk, func(m string) string { return strings.ReplaceAll(m, "\n", " ") })
	for line := range strings.Lines(talk) {
		line = strings.TrimSpace(line)
		if notSaid, ok := strings.CutPrefix(line, "@notsaid "); ok {
			c.marks = append(c.marks, mark{kind: "not said", words: notSaid})
			continue
		}
		if line == "" {
			at += rest
			continue
		}
		for _, m := range inlineMark.FindAllStringSubmatch(line, -1) {
			c.marks = append(c.marks, mark{kind: kinds[m[1]], at: at, words: m[2]})
		}
		text := inlineMark.ReplaceAllString(line, "$2")
		end := at + time.Duration(len(strings.Fields(text)))*perWord
		c.cues = append(c.cues, verify.Cue{Start: at, End: end, Text: text})
		at = end + breath
	}
}

// What is reached on the scenes, which are harder than any cut: 382 of 446 (85.7 %),
// and 30 of 413 findings false (7.3 %).
const (
	sceneFound = 84
	sceneFalse = 9
)

func TestScenes(t *testing.T) {
	var sum tally
	for _, file := range sceneFiles(t) {
		var one tally
		for _, c := range readScenes(t, file) {
			one.add(c.judged(t.Logf))
		}
		t.Logf("%s: %v", filepath.Base(file), one)
		sum.add(one)
	}
	t.Logf("scenes: %v", sum)
	if !sum.meets(sceneFound, sceneFalse) {
		t.Errorf("scenes: %v", sum)
	}
}
