package web

import (
	"context"
	"fmt"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/release"
	"benchproof/kitchen/script"
	"benchproof/views"
)

// outgoing is what an episode is released with, and what is wrong with its
// chapters.
type outgoing struct {
	release.Input
	chapters        []script.Chapter
	chapterProblems []string
}

// releaseInput gathers what the episode's release is written from. pageURL is
// the viewers' address where it is known, else the one the release names.
func (s *Server) releaseInput(ctx context.Context, d *desk, pageURL string) (outgoing, error) {
	saved, err := s.store.Release(ctx, d.episode.ID)
	if err != nil {
		return outgoing{}, err
	}
	corrections, err := s.store.Corrections(ctx, d.episode.ID)
	if err != nil {
		return outgoing{}, err
	}
	segments, err := s.store.Segments(ctx, d.episode.ID)
	if err != nil {
		return outgoing{}, err
	}
	if pageURL == "" {
		pageURL = saved.PageURL
	}
	reading := d.version.Reading
	scaled := recipe.Scale(reading, d.episode.Scale, s.writer(d.show, reading, recipe.AsWritten))
	facts := s.publishedFacts(d)
	out := outgoing{Input: release.Input{
		Show: d.show, Episode: d.episode, Release: saved, Corrections: corrections,
		Recipe: scaled.Recipe, Makes: scaled.Yield, Larder: s.config.Larder,
		Allergens: facts.report.EU, MayHold: facts.report.MayHold.EU, Unsure: facts.report.Unsure,
		Cautions: facts.cautionTexts(), PageURL: pageURL, Language: "en",
	}}
	chapters, problems, isWhole, err := s.chaptersOf(ctx, d, segments)
	out.addChapters(chapters, problems, isWhole)
	return out, err
}

// addChapters takes the chapters in; a list that a platform would drop is not
// published.
func (o *outgoing) addChapters(chapters []script.Chapter, problems []string, isWhole bool) {
	o.chapters, o.chapterProblems = chapters, problems
	if !isWhole {
		return
	}
	for _, c := range chapters {
		o.Chapters = append(o.Chapters, release.Chapter{At: c.At, Title: c.Title})
	}
}

// newReleaseSheet words what goes out.
func newReleaseSheet(o outgoing) views.ReleaseSheet {
	d := release.Describe(o.Input)
	sheet := views.ReleaseSheet{
		Description: d.Text, Over: d.Over() > 0, CutFirst: d.Advice, ChapterProblems: o.chapterProblems,
		Count: fmt.Sprintf("%s of %s characters", thousands(d.Characters), thousands(d.Limit)),
	}
	for _, c := range o.chapters {
		sheet.Chapters = append(sheet.Chapters, views.Chapter{At: script.Timecode(c.At), Title: c.Title})
	}
	return sheet
}

// Description writes the description block of an episode, as its Release sheet
// shows it. An unknown id is fault.NotFound.
func (s *Server) Description(ctx context.Context, episodeID int64) (release.Description, error) {
	d, err := s.deskOf(ctx, episodeID)
	if err != nil {
		return release.Description{}, err
	}
	out, err := s.releaseInput(ctx, d, "")
	if err != nil {
		return release.Description{}, err
	}
	return release.Describe(out.Input), nil
}
