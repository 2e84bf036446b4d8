package web_test

import (
	"fmt"
	"net/url"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
	"benchproof/views"
	"benchproof/web"
)

func TestAgainstTarget(t *testing.T) {
	for over, want := range map[int]views.Mark{
		0:    {Kind: views.MarkProved, Text: "to the second"},
		1:    {Kind: views.MarkLook, Text: "0:01 over"},
		95:   {Kind: views.MarkLook, Text: "1:35 over"},
		-25:  {Text: "0:25 under"},
		-600: {Text: "10:00 under"},
	} {
		if diff := cmp.Diff(want, web.AgainstTarget(over)); diff != "" {
			t.Errorf("AgainstTarget(%d) (-want +got):\n%s", over, diff)
		}
	}
}

func TestSegmentLength(t *testing.T) {
	for _, c := range []struct {
		mark script.Mark
		want string
	}{
		{script.Mark{}, "no length yet"},
		{script.Mark{Planned: 90}, "planned 1:30"},
		{script.Mark{Spoken: 52}, "spoken 0:52"},
		{script.Mark{Planned: 45, Spoken: 52}, "planned 0:45 · spoken 0:52"},
	} {
		if got := web.SegmentLength(c.mark); got != c.want {
			t.Errorf("SegmentLength(%+v) = %q, want %q", c.mark, got, c.want)
		}
	}
}

// At 150 words a minute 75 words take 30 seconds.
func TestTheScriptSheetPutsTheSegmentsOnTheClock(t *testing.T) {
	spoken := strings.TrimSpace(strings.Repeat("butter ", 75))
	segments := []episode.Segment{
		{ID: 4, EpisodeID: 7, Title: "Cold open", PlannedSeconds: 20, Narration: spoken},
		{ID: 5, EpisodeID: 7, Title: "The rub", Narration: spoken + "\n\nAnd on."},
		{ID: 6, EpisodeID: 7, Title: "The bake", PlannedSeconds: 60},
	}
	d := web.NewDesk(newShow(), episode.Episode{ID: 7, TargetMinutes: 2}, "", sconesRecipe(t))
	sheet := web.NewScriptSheet(d, segments)
	if sheet.Pace != "at 150 words a minute" || sheet.Target != "against 2 minutes" {
		t.Errorf("pace %q, target %q", sheet.Pace, sheet.Target)
	}
	var starts []string
	for _, row := range sheet.Segments {
		starts = append(starts, row.Start+" "+row.Title)
	}
	if got := strings.Join(starts, "\n") + "\n"; got != sheet.Outline {
		t.Errorf("the outline %q does not say what the rows do: %q", sheet.Outline, got)
	}
	first, last := sheet.Segments[0], sheet.Segments[2]
	if first.Mark.Text != "10 seconds longer than planned" || first.Mark.Kind != views.MarkLook {
		t.Errorf("the first is marked %+v", first.Mark)
	}
	if first.UpAction != "" || first.DownAction != "/episodes/7/segments/4/move?way=down" || last.DownAction != "" {
		t.Errorf("moves: %q %q … %q", first.UpAction, first.DownAction, last.DownAction)
	}
	if first.ID != "segment-4" || first.EditPath != "/episodes/7/script?change=segment-4#segment" || first.DeleteAction != "/episodes/7/segments/4/delete" {
		t.Errorf("addresses of the first: %q %q %q", first.ID, first.EditPath, first.DeleteAction)
	}
	if got := len(sheet.Segments[1].Narration); got != 2 {
		t.Errorf("the second has %d paragraphs, want 2", got)
	}
	if sheet.Segments[1].Start != "0:20" || sheet.Segments[1].Mark.Text != "" || last.Mark.Text != "" {
		t.Errorf("second: %+v, last mark %+v", sheet.Segments[1], last.Mark)
	}
}

func TestAScriptWithoutATargetIsMeasuredAgainstNothing(t *testing.T) {
	d := web.NewDesk(newShow(), episode.Episode{ID: 7}, "", sconesRecipe(t))
	sheet := web.NewScriptSheet(d, nil)
	if sheet.Target != "" || sheet.Over != (views.Mark{}) || sheet.Total != "0:00" || sheet.Outline != "" {
		t.Errorf("an empty script: %+v", sheet)
	}
	d = web.NewDesk(newShow(), episode.Episode{ID: 7, TargetMinutes: 1}, "", sconesRecipe(t))
	if sheet = web.NewScriptSheet(d, nil); sheet.Target != "against 1 minute" || sheet.Over.Text != "1:00 under" {
		t.Errorf("against one minute: %q, %+v", sheet.Target, sheet.Over)
	}
}

// Platforms drop a list of fewer than three chapters, or with one shorter than
// ten seconds (common practice of the platforms' help pages, from memory).
func TestAChapterListWithProblemsIsNotPublished(t *testing.T) {
	plan := func(seconds ...int) []episode.Segment {
		var list []episode.Segment
		for i, n := range seconds {
			list = append(list, episode.Segment{Title: fmt.Sprintf("Part %d", i+1), PlannedSeconds: n})
		}
		return list
	}
	for _, c := range []struct {
		name           string
		segments       []episode.Segment
		all, published int
	}{
		{"none", nil, 0, 0},
		{"two", plan(60, 60), 2, 0},
		{"three", plan(60, 60, 60), 3, 3},
		{"one too short", plan(60, 9, 60), 3, 0},
		{"ten seconds will do", plan(60, 10, 60), 3, 3},
	} {
		t.Run(c.name, func(t *testing.T) {
			published, all, sheet := web.PublishedChapters(150, c.segments)
			if published != c.published || len(all) != c.all {
				t.Errorf("%d of %d published, want %d of %d", published, len(all), c.published, c.all)
			}
			if len(sheet.Chapters) != c.all {
				t.Errorf("the sheet lists %d chapters, want %d", len(sheet.Chapters), c.all)
			}
			if problems := len(sheet.ChapterProblems) > 0; problems != (c.published < c.all) {
				t.Errorf("problems %q", sheet.ChapterProblems)
			}
			if strings.Contains(sheet.Description, "Part 1") != (c.published > 0) {
				t.Errorf("the description:\n%s", sheet.Description)
			}
			if !strings.Contains(sheet.Count, " of 5,000 characters") {
				t.Errorf("count %q", sheet.Count)
			}
		})
	}
}

func TestReadSegment(t *testing.T) {
	form := web.NewTyped(url.Values{"title": {" The rub "}, "narration": {"One.\r\nTwo.\r\n"}, "planned": {"1:30"}})
	g := episode.Segment{ID: 3, EpisodeID: 7}
	web.ReadSegment(form, &g)
	if err := form.Err(); err != nil {
		t.Fatal(err)
	}
	want := episode.Segment{ID: 3, EpisodeID: 7, Title: "The rub", Narration: "One.\nTwo.", PlannedSeconds: 90}
	if diff := cmp.Diff(want, g); diff != "" {
		t.Errorf("segment (-want +got):\n%s", diff)
	}
	back := web.SegmentValues(nil, g)
	if back["planned"] != "1:30" || back["title"] != "The rub" {
		t.Errorf("the form shows %v", back)
	}
}
