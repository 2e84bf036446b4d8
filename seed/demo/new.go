package demo

import (
	"embed"
	"errors"
	"fmt"
	"strings"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
)

//go:embed recipes narration notes captions
var files embed.FS

// New makes the show as it stands on the day of today; seed.Demo says more.
func New(today time.Time) (Show, error) {
	m := maker{today: time.Date(today.Year(), today.Month(), today.Day(), 0, 0, 0, 0, time.UTC)}
	show := Show{
		Show:    channel(),
		Recipes: m.recipes(),
		Pitches: pitches(),
		Packs:   packs(),
		Stock:   m.stock(),
		Episodes: []Episode{
			m.knots(), m.pickles(), m.tart(), m.custards(),
			m.stew(), m.fish(), m.soup(), m.beans(),
		},
	}
	for i, e := range show.Episodes {
		show.Episodes[i].Setups = setupsOf(e.Shots)
	}
	return show, errors.Join(m.faults...)
}

func channel() episode.Show {
	return episode.Show{
		Name:             "Ferry Stop Kitchen",
		Host:             "Ottoline Brack",
		System:           measure.Metric,
		Oven:             "fan",
		MixerGrams:       1500,
		TrayPieces:       8,
		OvenTrays:        2,
		TimeZone:         "Pacific/Auckland",
		Currency:         "NZD",
		WordsPerMinute:   150,
		DescriptionLimit: 5000,
		Disclosure:       "Nobody paid for this video. Ferry Stop Kitchen buys its own ingredients and tools, and earns nothing from links.",
		Links: "Recipe pages and cards to print: https://ferrystop.example\n" +
			"Ask for a stop: letters@ferrystop.example\n" +
			"The Marrowick line, its boat and all its stops are made up. The food is real.",
	}
}

// maker puts the show together and gathers what goes wrong on the way.
type maker struct {
	today  time.Time // midnight UTC
	faults []error
}

func (m *maker) text(name string) string {
	b, err := files.ReadFile(name)
	if err != nil {
		m.faults = append(m.faults, fmt.Errorf("demo text: %w", err))
	}
	return string(b)
}

// saturday is the release day that many weeks from the coming one, which is 1
// to 7 days from today: −1 is the last release, today or within six days past.
func (m *maker) saturday(weeks int) time.Time {
	ahead := (int(time.Saturday-m.today.Weekday())+6)%7 + 1
	return m.today.AddDate(0, 0, ahead+7*weeks)
}

// segments reads narration: blocks parted by blank lines, each a title and then
// the words. planned gives each segment's seconds, 0 for as long as its words.
func (m *maker) segments(name string, planned ...int) []episode.Segment {
	blocks := strings.Split(strings.TrimSpace(m.text(name)), "\n\n")
	if len(blocks) != len(planned) {
		m.faults = append(m.faults, fmt.Errorf("%s: %d segments, %d planned lengths", name, len(blocks), len(planned)))
		return nil
	}
	segments := make([]episode.Segment, len(blocks))
	for i, block := range blocks {
		title, narration, _ := strings.Cut(block, "\n")
		segments[i] = episode.Segment{
			Position: i + 1, Title: title, Narration: narration, PlannedSeconds: planned[i],
		}
	}
	return segments
}

// inOrder numbers shots from 1 as they stand.
func inOrder(shots []episode.Shot) []episode.Shot {
	for i := range shots {
		shots[i].Position = i + 1
	}
	return shots
}

func whole(n int64) measure.Number { return measure.Whole(n) }
