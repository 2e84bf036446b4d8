package main

import (
	"fmt"
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// gutter is the width of the measures' column, in characters.
const gutter = 16

// sheet writes lines as the pages do: measure to the left, words to the right.
type sheet struct{ strings.Builder }

func (s *sheet) row(left, words string) {
	fmt.Fprintf(s, "%*s │ %s\n", gutter, plain(left), plain(words))
}

func (s *sheet) heading(name string) {
	if name != "" {
		fmt.Fprintf(s, "%*s │\n%*s │ %s\n", gutter, "", gutter, "", strings.ToUpper(name))
	}
}

func plain(text string) string { return strings.ReplaceAll(text, "\u00a0", " ") }

// understoodText shows what was read of a recipe, and what was not.
func understoodText(r recipe.Recipe) string {
	var s sheet
	s.row("", r.Title)
	if r.Yield.Text != "" {
		s.row("makes", r.Yield.Text)
	}
	w := recipe.Writer{}.For(r)
	for _, c := range r.Components {
		s.heading(c.Name)
		for _, line := range c.Lines {
			s.line(line, w.Line(line))
		}
		for _, step := range c.Steps {
			s.step(step)
		}
	}
	for _, u := range r.Unread {
		s.row("? not read", u.Text+" — "+u.Reason)
	}
	return s.String()
}

func (s *sheet) line(l recipe.Line, w recipe.Written) {
	if !l.Read {
		s.row("? not read", l.Text+" — "+l.Reason)
		return
	}
	s.row(w.Measure, w.Words)
	if l.Reason != "" {
		s.row("?", l.Reason)
	}
}

func (s *sheet) step(step recipe.Step) {
	minutes := ""
	if step.HasMinutes {
		minutes = measure.FormatMinutes(step.Minutes)
	}
	s.row(minutes, step.Text)
}

// scaledText shows a scaled recipe.
func scaledText(scaled recipe.Scaled) string {
	var s sheet
	s.row("× "+measure.FormatNumber(scaled.By), scaled.Recipe.Title)
	if scaled.Yield != "" {
		s.row("", scaled.Yield)
	}
	component := -1
	for _, line := range scaled.Lines {
		if line.Component != component {
			component = line.Component
			s.heading(scaled.Recipe.Components[component].Name)
		}
		s.line(scaled.Recipe.Components[component].Lines[line.Line], line.Written)
	}
	for _, note := range scaled.Notes {
		s.row("note", note)
	}
	return s.String()
}
