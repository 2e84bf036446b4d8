package episode_test

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/episode"
)

func TestTimecode(t *testing.T) {
	for _, c := range []struct {
		name    string
		seconds int
		want    string
	}{
		{"the start", 0, "0:00"},
		{"a second", 1, "0:01"},
		{"59 seconds", 59, "0:59"},
		{"a minute", 60, "1:00"},
		{"12 × 60 + 5", 725, "12:05"},
		{"a second to the hour", 3599, "59:59"},
		{"an hour", 3600, "1:00:00"},
		{"3600 + 2 × 60 + 9", 3729, "1:02:09"},
		{"100 hours", 360_000, "100:00:00"},
		{"before the start", -5, "−0:05"},
		{"an hour before", -3600, "−1:00:00"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := episode.Timecode(c.seconds); got != c.want {
				t.Errorf("Timecode(%d) = %q, want %q", c.seconds, got, c.want)
			}
		})
	}
}

// Read as hours, minutes and seconds, a timecode is the seconds it was written
// from; minutes and seconds after a colon have two digits.
func TestTimecodeReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := rapid.IntRange(-20_000, 20_000).Draw(t, "seconds")
		text := episode.Timecode(want)
		sum := 0
		for k, part := range strings.Split(strings.TrimPrefix(text, "−"), ":") {
			n, err := strconv.Atoi(part)
			if err != nil || k > 0 && (len(part) != 2 || n > 59) {
				t.Fatalf("%q: the part %q", text, part)
			}
			sum = sum*60 + n
		}
		if strings.HasPrefix(text, "−") {
			sum = -sum
		}
		if sum != want {
			t.Fatalf("Timecode(%d) = %q, which is %d seconds", want, text, sum)
		}
	})
}

func TestClock(t *testing.T) {
	for _, c := range []struct {
		name    string
		minutes int
		want    string
	}{
		{"midnight", 0, "00:00"},
		{"9 × 60 + 40", 580, "09:40"},
		{"the last minute", 1439, "23:59"},
		{"midnight at the end", 1440, "24:00"},
		{"the next day's first minute", 1441, "00:01"},
		{"a day later", 1440 + 580, "09:40"},
		{"two days later, midnight", 2880, "00:00"},
		{"the evening before", -90, "22:30"},
		{"the day before, at midnight", -1440, "00:00"},
		{"two days before", -2880 + 61, "01:01"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := episode.Clock(c.minutes); got != c.want {
				t.Errorf("Clock(%d) = %q, want %q", c.minutes, got, c.want)
			}
		})
	}
}

// FuzzReadClock: what is read is a minute of the day, and one that is written
// and read again stays; a point, a colon and nothing between are the same.
func FuzzReadClock(f *testing.F) {
	for _, text := range []string{"9", "09:40", "9.40", "0940", "24:00", " 7:05 ", "24:01", "٩:٤٠", "1:2", "::", "9:40pm"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		minutes, ok := episode.ReadClock(text)
		if !ok {
			return
		}
		if minutes < 0 || minutes > episode.DayMinutes {
			t.Fatalf("%q is read as %d minutes", text, minutes)
		}
		written := episode.Clock(minutes)
		for _, again := range []string{written, strings.Replace(written, ":", ".", 1), strings.Replace(written, ":", "", 1), "\t" + written + " "} {
			if got, ok := episode.ReadClock(again); !ok || got != minutes {
				t.Fatalf("%q is read as %d, written %q, and %q is read as %d, %v", text, minutes, written, again, got, ok)
			}
		}
	})
}

// A step of which nothing is fixed or known is plain: each thing makes it less
// so, an end without a beginning and its name do not.
func TestAPlainStep(t *testing.T) {
	for _, c := range []struct {
		name string
		step episode.DayStep
		want bool
	}{
		{"nothing", episode.DayStep{}, true},
		{"a name alone", episode.DayStep{EpisodeID: 3, StepName: episode.StepName{Batch: "shoot", Component: "Dough", Step: 2}}, true},
		{"pinned", episode.DayStep{Pin: 600}, false},
		{"barred", episode.DayStep{Barred: []episode.Span{{From: 600, To: 630}}}, false},
		{"given to the helper", episode.DayStep{ByHelper: true}, false},
		{"begun", episode.DayStep{Began: 610}, false},
		{"begun and ended", episode.DayStep{Began: 610, Ended: 640}, false},
		{"no times to bar", episode.DayStep{Barred: []episode.Span{}}, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := c.step.IsPlain(); got != c.want {
				t.Errorf("IsPlain() = %v, want %v", got, c.want)
			}
		})
	}
}

// The day that nothing was said about: from nine, by one person, in a kitchen
// with one of each; its times are times of the day.
func TestANewShootDay(t *testing.T) {
	d := episode.NewShootDay(31)
	if d.EpisodeID != 31 || d.Revision != 0 || !d.On.IsZero() {
		t.Errorf("it is %+v", d)
	}
	if got := episode.Clock(d.Begin); got != "09:00" {
		t.Errorf("it begins at %s, want 09:00", got)
	}
	if d.DoneBy != 0 || d.HelperUntil != 0 || d.LightUntil != 0 || d.Now != 0 {
		t.Errorf("something is fixed that nobody fixed: %+v", d)
	}
	if k := d.Kitchen; d.Hands != 1 || k.Mixers < 1 || k.Rings < 1 || k.Ovens < 1 || k.OvenHolds < 1 {
		t.Errorf("nothing can be made with %d hands in %+v", d.Hands, k)
	}
}

func ExampleClock() {
	fmt.Println(episode.Clock(9*60+40), episode.Clock(24*60), episode.Clock(25*60))
	// Output: 09:40 24:00 01:00
}

func ExampleReadClock() {
	for _, text := range []string{"9", "9.40", "0940", "9:40:00"} {
		if minutes, ok := episode.ReadClock(text); ok {
			fmt.Println(text, "is minute", minutes)
		} else {
			fmt.Println(text, "is no time of day")
		}
	}
	// Output:
	// 9 is minute 540
	// 9.40 is minute 580
	// 0940 is minute 580
	// 9:40:00 is no time of day
}

func ExampleTimecode() {
	fmt.Println(episode.Timecode(725), episode.Timecode(3729))
	// Output: 12:05 1:02:09
}
