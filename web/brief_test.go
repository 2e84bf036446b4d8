package web_test

import (
	"net/url"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/web"
)

// again is the form that a browser would send back of what a form shows.
func again(shown web.Values) *web.Typed {
	values := url.Values{}
	for name, text := range shown {
		values.Set(name, text)
	}
	return web.NewTyped(values)
}

// What a form shows of a thing must be read back as the same thing: a person
// who opens it and saves it unchanged changes nothing.
func TestAFormSavedUnchangedChangesNothing(t *testing.T) {
	day := time.Date(2027, 3, 14, 0, 0, 0, 0, time.UTC)
	same := func(t *testing.T, form *web.Typed, want, got any) {
		t.Helper()
		if err := form.Err(); err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(want, got, cmp.Comparer(func(a, b measure.Number) bool { return a.Equal(b) })); diff != "" {
			t.Errorf("(-was +is):\n%s", diff)
		}
	}
	t.Run("brief", func(t *testing.T) {
		was := episode.Episode{ID: 7, Number: 31, Title: "Scones", Stage: episode.InTheEdit, ReleaseOn: day, Dish: "Scones", InspiredBy: "An aunt",
			InspiredURL: "https://aunt.example/x?y=1", Look: "Tall", Hook: "Steam.", TargetMinutes: 9, Notes: "- cold\n- butter", Scale: measure.Whole(2), VersionID: 3}
		is, form := was, again(web.BriefValues(was))
		web.ReadBrief(form, &is)
		same(t, form, was, is)
	})
	t.Run("an empty brief", func(t *testing.T) {
		was := episode.Episode{Title: "Scones", Stage: episode.Pitched}
		is, form := was, again(web.BriefValues(was))
		web.ReadBrief(form, &is)
		same(t, form, was, is)
	})
	t.Run("segment", func(t *testing.T) {
		was := episode.Segment{ID: 1, Position: 3, Title: "The rub", Narration: "One.\n\nTwo.", PlannedSeconds: 3729}
		is, form := was, again(web.SegmentValues(nil, was))
		web.ReadSegment(form, &is)
		same(t, form, was, is)
	})
	t.Run("shot", func(t *testing.T) {
		was := episode.Shot{ID: 1, Title: "Pour", Kind: "hero", Setup: "overhead, window", Component: "3 Herbs, dried", Step: 2, Status: episode.Retake, Note: "Slower."}
		is, form := was, again(web.ShotValues(nil, was))
		web.ReadShot(form, &is)
		same(t, form, was, is)
	})
	t.Run("batch", func(t *testing.T) {
		was := episode.Batch{ID: 1, Kind: episode.SwapOut, Makes: measure.Ratio(1, 3), Note: "for the cut"}
		is, form := was, again(web.BatchValues(nil, was))
		web.ReadBatch(form, &is)
		same(t, form, was, is)
	})
	t.Run("trial", func(t *testing.T) {
		was := episode.Trial{ID: 1, VersionID: 3, MadeOn: day, Scale: measure.Ratio(3, 2), DoughGrams: measure.Ratio(9095, 10), BakedGrams: measure.Whole(800),
			Pieces: measure.Whole(16), Minutes: measure.Ratio(21, 2), Setting: "190 °C fan", Verdict: "nearly", Note: "Hot spot."}
		is, form := was, again(web.TrialValues(nil, was))
		web.ReadTrial(form, &is)
		same(t, form, was, is)
	})
	t.Run("cut", func(t *testing.T) {
		was := episode.Cut{ID: 1, Name: "second cut", Seconds: 515, Captions: saidCaptions}
		is, form := was, again(web.CutValues(was))
		web.ReadCut(form, &is)
		same(t, form, was, is)
	})
	t.Run("correction", func(t *testing.T) {
		was := episode.Correction{ID: 1, At: 252, Said: "160", Right: "170"}
		is, form := was, again(web.AirValues(nil, was))
		web.ReadAir(form, &is)
		same(t, form, was, is)
	})
	t.Run("release", func(t *testing.T) {
		was := episode.Release{Title: "Scones", Opening: "Eight.", Equipment: "a bowl\na tray", Credits: "An aunt", Disclosure: "None.", VideoURL: "https://v.example/1", PageURL: "https://p.example/1"}
		is, form := was, again(web.ReleaseValues(was))
		web.ReadRelease(form, &is)
		same(t, form, was, is)
	})
	t.Run("pitch", func(t *testing.T) {
		was := episode.Pitch{ID: 1, Dish: "Flan", Who: "Odalys", Place: "a letter", Times: 3, Note: "Honey.", EpisodeID: 4}
		is, form := was, again(web.PitchValues(was))
		web.ReadPitch(form, &is)
		same(t, form, was, is)
	})
	t.Run("show", func(t *testing.T) {
		was := newShow()
		was.Oven, was.TimeZone, was.Currency, was.MixerGrams, was.TrayPieces, was.OvenTrays = "fan", "UTC", "NZD", 1200, 12, 2
		is, form := was, again(web.ShowValues(was))
		web.ReadShow(form, &is)
		same(t, form, was, is)
	})
}

func TestReadTrialAsksForWhatATrialNeeds(t *testing.T) {
	good := map[string]string{"version": "3", "made": "2027-02-20", "scale": "1", "verdict": "nearly"}
	for _, c := range []struct{ name, field, typed, wrong string }{
		{"good", "note", "Fine.", ""},
		{"no version", "version", "", ""},
		{"no day", "made", "", "made"},
		{"no scale", "scale", "", "scale"},
		{"a scale of none", "scale", "0", "scale"},
		{"a verdict that is none", "verdict", "fine", "verdict"},
		{"a weight in words", "dough", "heavy", "dough"},
		{"a weight below nothing", "baked", "-800", "baked"},
	} {
		t.Run(c.name, func(t *testing.T) {
			values := web.Values{}
			for name, text := range good {
				values[name] = text
			}
			values[c.field] = c.typed
			form := again(values)
			var trial episode.Trial
			web.ReadTrial(form, &trial)
			err := form.Err()
			if (err != nil) != (c.wrong != "" || c.field == "version") || faultField(err) != c.wrong {
				t.Errorf("fault %v, want one on %q", err, c.wrong)
			}
		})
	}
}

func TestReadCutTakesItsLengthFromTheCaptions(t *testing.T) {
	for _, c := range []struct {
		name, length, captions string
		seconds                int
		kept                   string
		wrong                  string
	}{
		{"from the last caption", "", saidCaptions, 14, saidCaptions, ""},
		{"as said", "8:35", saidCaptions, 515, saidCaptions, ""},
		{"nothing", "", "", 0, "", ""},
		{"blanks are no captions", "", " \r\n\n", 0, "", ""},
		{"not captions", "", "WEBVTT\n\n00:01 -> 00:02\nx\n", 0, "WEBVTT\n\n00:01 -> 00:02\nx\n", "captions"},
		{"a length that is none", "long", saidCaptions, 14, saidCaptions, "length"},
	} {
		t.Run(c.name, func(t *testing.T) {
			form := again(web.Values{"length": c.length, "captions": c.captions})
			var cut episode.Cut
			web.ReadCut(form, &cut)
			if cut.Seconds != c.seconds || cut.Captions != c.kept || faultField(form.Err()) != c.wrong {
				t.Errorf("%d s, %d bytes of captions, fault %v, want %d s and a fault on %q", cut.Seconds, len(cut.Captions), form.Err(), c.seconds, c.wrong)
			}
		})
	}
}

func TestEveryFaultSaysWhatToChange(t *testing.T) {
	form := again(web.Values{"title": "", "stage": "baked", "release": "soon", "target": "many", "link": "nowhere", "number": "½"})
	var e episode.Episode
	web.ReadBrief(form, &e)
	faults := fault.All(form.Err())
	if len(faults) != 6 {
		t.Errorf("%d faults, want 6: %v", len(faults), form.Err())
	}
	for _, f := range faults {
		if !strings.HasSuffix(f.Say, ".") || f.Field == "" {
			t.Errorf("fault %+v is not a sentence on a field", f)
		}
	}
}
