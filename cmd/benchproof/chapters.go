package main

import (
	"fmt"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/script"
)

// chaptersCommand finds where the segments of a script begin in a cut.
type chaptersCommand struct {
	Script   string `required:"" placeholder:"FILE" help:"The script: blocks parted by blank lines, each a title and its narration; - reads standard input."`
	Captions string `required:"" placeholder:"FILE" help:"The cut's captions, WebVTT or SRT, or a transcript with times; - reads standard input."`
	Recipe   string `placeholder:"FILE" help:"The recipe: its steps tell segments without narration."`
	JSON     bool   `help:"Print JSON."`
}

// Run prints the chapter list, and what is to be looked at.
func (c *chaptersCommand) Run(std streams) error {
	if err := c.check(); err != nil {
		return err
	}
	text, err := readTextUpTo(c.Script, std.in, maxCaptions, "that is no script")
	if err != nil {
		return err
	}
	segments := script.ReadScript(text)
	if len(segments) == 0 {
		return fault.Invalidf("script", "%s holds no segments: write a title on a line, its narration below, and a blank line between segments.", c.Script)
	}
	captions, err := readCaptions(c.Captions, std)
	if err != nil {
		return err
	}
	if len(captions.Cues) == 0 {
		return fault.Invalidf("captions", "%s holds no captions.", c.Captions)
	}
	steps, err := c.steps(std)
	if err != nil {
		return err
	}
	starts := script.Align(segments, steps, captions)
	chapters, problems := script.CutChapters(segments, starts, captions.End())
	if c.JSON {
		return printJSON(std.out, chapterDocument(starts, chapters, problems))
	}
	for _, chapter := range chapters {
		fmt.Fprintln(std.out, chapter.Line())
	}
	for _, problem := range problems {
		fmt.Fprintln(std.err, problem)
	}
	return nil
}

// check refuses more than one reader of standard input.
func (c *chaptersCommand) check() error {
	readers := 0
	for _, name := range []string{c.Script, c.Captions, c.Recipe} {
		if name == "-" {
			readers++
		}
	}
	if readers > 1 {
		return usageError{fmt.Errorf("only one of --script, --captions and --recipe can read standard input")}
	}
	return nil
}

// steps are those of the recipe; none without one.
func (c *chaptersCommand) steps(std streams) ([]string, error) {
	if c.Recipe == "" {
		return nil, nil
	}
	reading, _, err := readRecipe(c.Recipe, std)
	return script.Steps(reading), err
}

// jsonChapter is one chapter as JSON shows it.
type jsonChapter struct {
	At         string  `json:"at"`
	Title      string  `json:"title"`
	Confidence float64 `json:"confidence"`
}

func chapterDocument(starts []script.Start, chapters []script.Chapter, problems []string) any {
	list := make([]jsonChapter, 0, len(chapters))
	sure := script.InCutOrder(starts)
	for i, c := range chapters {
		list = append(list, jsonChapter{At: script.Timecode(c.At), Title: c.Title, Confidence: sure[i].Confidence})
	}
	if problems == nil {
		problems = []string{}
	}
	return struct {
		Chapters []jsonChapter `json:"chapters"`
		Problems []string      `json:"problems"`
	}{list, problems}
}
