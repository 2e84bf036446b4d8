package main

import (
	"fmt"
	"io"
	"strings"

	"benchproof/kitchen/script"
	"benchproof/kitchen/verify"
	"benchproof/seed"
)

// verifyCommand compares what a cut says with what its recipe writes.
type verifyCommand struct {
	Recipe   string `required:"" placeholder:"FILE" help:"The recipe as you would paste it; - reads standard input."`
	Captions string `required:"" placeholder:"FILE" help:"The cut's captions, WebVTT or SRT, or a transcript with times; - reads standard input."`
	System   string `placeholder:"SYSTEM" help:"Whose cups and spoons, where the recipe does not say: us, imperial, metric, australian, japanese."`
	JSON     bool   `help:"Print JSON."`
}

// Run prints the findings.
func (c *verifyCommand) Run(std streams) error {
	system, err := systemFlag(c.System)
	if err != nil {
		return err
	}
	if c.Recipe == "-" && c.Captions == "-" {
		return usageError{fmt.Errorf("--recipe and --captions cannot both read standard input")}
	}
	reading, _, err := readRecipe(c.Recipe, std)
	if err != nil {
		return err
	}
	captions, err := readCaptions(c.Captions, std)
	if err != nil {
		return err
	}
	larder, err := seed.Larder()
	if err != nil {
		return err
	}
	report := verify.Checker{Larder: larder, System: system}.Check(reading, spokenCues(captions))
	if c.JSON {
		return printJSON(std.out, findingsDocument(report))
	}
	writeFindings(std.out, report)
	return nil
}

// readCaptions reads a cut's captions; a fault in them is an error, and what
// only looks wrong is told.
func readCaptions(name string, std streams) (script.Captions, error) {
	text, err := readTextUpTo(name, std.in, maxCaptions, "these are no captions")
	if err != nil {
		return script.Captions{}, err
	}
	captions, err := script.ReadCaptions(text)
	for _, notice := range captions.Notices {
		fmt.Fprintln(std.err, notice)
	}
	return captions, err
}

func spokenCues(captions script.Captions) []verify.Cue {
	cues := make([]verify.Cue, len(captions.Cues))
	for i, c := range captions.Cues {
		cues[i] = verify.Cue{Start: c.Start, End: c.End, Text: c.Text}
	}
	return cues
}

// jsonFinding is one finding as JSON shows it.
type jsonFinding struct {
	Kind    verify.Kind `json:"kind"`
	Slip    verify.Slip `json:"slip,omitempty"`
	At      string      `json:"at"`
	Said    string      `json:"said"`
	Written string      `json:"written"`
	Line    string      `json:"line"`
	Words   string      `json:"words"`
	Suggest string      `json:"suggest"`
	Key     string      `json:"key"`
}

func findingsDocument(report verify.Report) any {
	findings := make([]jsonFinding, 0, len(report.Findings))
	for _, f := range report.Findings {
		findings = append(findings, jsonFinding{Kind: f.Kind, Slip: f.Slip, At: verify.Clock(f.At), Said: f.Said, Written: f.Written,
			Line: f.Line, Words: f.Words, Suggest: f.Suggest, Key: f.Key})
	}
	return struct {
		Findings []jsonFinding `json:"findings"`
	}{findings}
}

// writeFindings prints the findings for people.
func writeFindings(out io.Writer, report verify.Report) {
	if len(report.Findings) == 0 {
		fmt.Fprintf(out, "%d amounts said, and all agree with the recipe.\n", len(report.Amounts))
		return
	}
	for _, f := range report.Findings {
		at := verify.Clock(f.At)
		if f.Cue < 0 {
			at = strings.Repeat(" ", len(at))
		}
		fmt.Fprintf(out, "%s  %-11s  %s\n", at, f.Kind, findingWords(f))
		if f.Line != "" {
			fmt.Fprintf(out, "%27s%s\n", "", f.Line)
		}
		fmt.Fprintf(out, "%27s%s\n", "", f.Suggest)
	}
}

func findingWords(f verify.Finding) string {
	switch {
	case f.Said == "":
		return "written " + f.Written
	case f.Written == "":
		return "said “" + f.Said + "”: … " + f.Words + " …"
	}
	return "said “" + f.Said + "”, written " + f.Written
}
