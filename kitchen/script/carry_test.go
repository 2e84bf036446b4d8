package script_test

import (
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
)

// talk makes captions of one word a third of a second.
func talk(from time.Duration, text string) script.Captions {
	var c script.Captions
	for i, word := range strings.Fields(text) {
		at := from + time.Duration(i)*time.Second/3
		c.Cues = append(c.Cues, script.Cue{Start: at, End: at + 300*time.Millisecond, Text: word})
	}
	return c
}

const speech = `Sieve the flour into a basin with the salt. Rub the butter through until crumbs appear. Pour cold water around the
edges, gather the pastry together, wrap it, chill it. Meanwhile slice plums, scatter sugar across them, roast until soft.
Simmer the juices into syrup, brush the crust, arrange everything neatly, serve with clotted cream beside the window.`

func TestCarry(t *testing.T) {
	old := talk(0, speech)
	words := strings.Fields(speech)
	at := func(word string) time.Duration {
		for i, w := range words {
			if w == word {
				return time.Duration(i) * time.Second / 3
			}
		}
		t.Fatalf("no word %q", word)
		return 0
	}
	tests := []struct {
		name    string
		renewed script.Captions
		place   string
		want    time.Duration
		ok      bool
	}{
		{"the same cut", talk(0, speech), "Meanwhile", at("Meanwhile"), true},
		{"twenty seconds put before", talk(20*time.Second, speech), "Meanwhile", at("Meanwhile") + 20*time.Second, true},
		{"the beginning cut off", talk(0, strings.Join(words[10:], " ")), "Meanwhile", at("Meanwhile") - 10*time.Second/3, true},
		{"misheard here and there", talk(0, strings.ReplaceAll(strings.ReplaceAll(speech, "plums", "plumbs"), "butter", "batter")), "Simmer", at("Simmer"), true},
		{"another cut altogether", talk(0, strings.Repeat("nothing of that kind was ever spoken aloud ", 20)), "Meanwhile", at("Meanwhile"), false},
		{"no captions", script.Captions{}, "Meanwhile", at("Meanwhile"), false},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got, ok := script.Carry(at(test.place), old, test.renewed)
			if ok != test.ok || (got-test.want).Abs() > time.Second {
				t.Errorf("Carry(%v) = %v, %v, want %v, %v", at(test.place), got, ok, test.want, test.ok)
			}
		})
	}
}

// paced makes captions of so many words in so many seconds.
func paced(from time.Duration, words, seconds int) script.Captions {
	c := script.Captions{}
	for i := range words / 5 {
		each := time.Duration(seconds) * time.Second * 5 / time.Duration(words)
		start := from + time.Duration(i)*each
		c.Cues = append(c.Cues, script.Cue{Start: start, End: start + each, Text: "one more word and another"})
	}
	return c
}

func TestPaceOf(t *testing.T) {
	join := func(parts ...script.Captions) (c script.Captions) {
		for _, p := range parts {
			c.Cues = append(c.Cues, p.Cues...)
		}
		return c
	}
	starts := func(cues ...int) (all []script.Start) {
		for i, cue := range cues {
			all = append(all, script.Start{Segment: i, Found: true, Cue: cue, At: time.Duration(cue)})
		}
		return all
	}
	tests := []struct {
		name     string
		captions script.Captions
		starts   []script.Start
		want     int
		ok       bool
	}{
		{"two words a second", paced(0, 100, 50), nil, 120, true},
		{"a silence in the middle is not counted", join(paced(0, 100, 50), paced(5*time.Minute, 100, 50)), nil, 120, true},
		// The median of 120, 150 and 300 is 150.
		{"the median over segments", join(paced(0, 100, 50), paced(time.Minute, 100, 40), paced(2*time.Minute, 100, 20)), starts(0, 20, 40), 150, true},
		{"a few words say nothing", paced(0, 20, 2), nil, 0, false},
		{"no captions", script.Captions{}, nil, 0, false},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got, ok := script.PaceOf(script.Stretches(test.captions, test.starts))
			if got != test.want || ok != test.ok {
				t.Errorf("PaceOf = %d, %v, want %d, %v", got, ok, test.want, test.ok)
			}
		})
	}
}

func TestFit(t *testing.T) {
	segments := []episode.Segment{{Title: "a", PlannedSeconds: 90}, {Title: "b", PlannedSeconds: 60}}
	if over, ok := script.Fit(segments, 150, 120); over != 30 || !ok {
		t.Errorf("Fit = %d, %v, want 30 s too long", over, ok)
	}
	if _, ok := script.Fit(segments, 150, 0); ok {
		t.Error("there is no target, and it fits or does not")
	}
}

func TestReadScript(t *testing.T) {
	got := script.ReadScript("\ufeff\nOne\nHello there.\nAnd again.\n\n\nTwo\n\nThree\r\nBye.\n")
	if len(got) != 3 || got[0].Title != "One" || got[0].Narration != "Hello there.\nAnd again." || got[1].Narration != "" || got[2].Narration != "Bye." || got[2].Position != 3 {
		t.Errorf("ReadScript = %+v", got)
	}
	if got := script.ReadScript(" \n\n"); len(got) != 0 {
		t.Errorf("nothing gives %+v", got)
	}
}

// A script spoken word for word, with its segments in another order and one
// left out, is found where it is spoken.
func TestAlignReordered(t *testing.T) {
	parts := strings.SplitAfter(strings.ReplaceAll(speech, "\n", " "), ". ")
	segments := []episode.Segment{
		{Title: "Dough", Narration: parts[0] + parts[1]}, {Title: "Chilling", Narration: parts[2]},
		{Title: "Fruit", Narration: parts[3]}, {Title: "Serving", Narration: parts[4]},
	}
	spoken := parts[3] + parts[0] + parts[1] + parts[4]
	starts := script.Align(segments, nil, talk(0, spoken))
	at := func(n int) time.Duration { return time.Duration(n) * time.Second / 3 }
	fruit, dough := len(strings.Fields(parts[3])), len(strings.Fields(parts[0]+parts[1]))
	for i, want := range []struct {
		found bool
		at    time.Duration
	}{{true, at(fruit)}, {false, 0}, {true, 0}, {true, at(fruit + dough)}} {
		if starts[i].Found != want.found || (starts[i].At-want.at).Abs() > time.Second {
			t.Errorf("%s: %+v, want %+v", segments[i].Title, starts[i], want)
		}
	}
	chapters, problems := script.CutChapters(segments, starts, at(len(strings.Fields(spoken))))
	if len(chapters) != 3 || chapters[0].Title != "Fruit" || chapters[0].At != 0 {
		t.Errorf("chapters %+v", chapters)
	}
	if !strings.Contains(strings.Join(problems, "\n"), "“Chilling” was not found in the cut") {
		t.Errorf("problems %q do not tell of the segment left out", problems)
	}
	if starts := script.Align(segments, nil, script.Captions{}); starts[0].Found {
		t.Error("found in a cut without captions")
	}
	hinted := script.Align([]episode.Segment{{Title: "x"}}, []string{"slice plums, scatter sugar, roast"}, talk(0, spoken))
	if !hinted[0].Found || hinted[0].At > 2*time.Second {
		t.Errorf("by its hints: %+v", hinted[0])
	}
}
