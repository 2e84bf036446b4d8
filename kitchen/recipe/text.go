package recipe

import (
	"fmt"
	"slices"
	"strings"

	"benchproof/kitchen/recipe/method"
	"benchproof/kitchen/recipe/page"
)

// Text writes a recipe as plain text that Read understands in the same way: the
// title, who it is from, what it makes, the ingredients by component, the
// numbered method, equipment and notes. Lines and steps keep their words.
func Text(r Recipe) string {
	t := teletype{}
	t.block("", nonEmpty(r.Title), "")
	t.block("", bylinesFirst(r.Credits), "")
	t.block("", nonEmpty(r.Yield.Text), "")
	t.block("", r.Intro, "")
	t.ingredients(r)
	t.method(r)
	t.block("Equipment", r.Equipment, "- ")
	t.block("Notes", r.Notes, "- ")
	var unread []string
	for _, u := range r.Unread {
		unread = append(unread, u.Text)
	}
	t.block("", unread, "")
	return strings.TrimRight(t.b.String(), "\n") + "\n"
}

// teletype writes blocks parted by blank lines.
type teletype struct{ b strings.Builder }

func (t *teletype) block(heading string, lines []string, bullet string) {
	if len(lines) == 0 {
		return
	}
	if heading != "" {
		t.b.WriteString(heading + "\n")
	}
	for _, l := range lines {
		t.b.WriteString(bullet + l + "\n")
	}
	t.b.WriteString("\n")
}

func (t *teletype) ingredients(r Recipe) {
	heading := "Ingredients\n"
	for _, c := range r.Components {
		if len(c.Lines) == 0 {
			continue
		}
		t.b.WriteString(heading)
		heading = ""
		if c.Name != "" {
			t.b.WriteString(c.Name + ":\n")
		}
		for _, l := range c.Lines {
			t.b.WriteString("- " + page.Words(l.Text) + "\n")
		}
		t.b.WriteString("\n")
	}
}

// method writes the steps of each component, those without a name first: under
// a name they would be taken for its own.
func (t *teletype) method(r Recipe) {
	components := slices.Clone(r.Components)
	slices.SortStableFunc(components, func(a, b Component) int {
		switch {
		case (a.Name == "") == (b.Name == ""):
			return 0
		case a.Name == "":
			return -1
		}
		return 1
	})
	heading := "Method\n"
	for _, c := range components {
		if len(c.Steps) == 0 {
			continue
		}
		t.b.WriteString(heading)
		heading = ""
		if c.Name != "" {
			t.b.WriteString(c.Name + ":\n")
		}
		for i, text := range stepTexts(c.Steps) {
			fmt.Fprintf(&t.b, "%d. %s\n", i+1, text)
		}
		t.b.WriteString("\n")
	}
}

// stepTexts joins steps that came from one line of the text, where reading the
// line gives them back as they are.
func stepTexts(steps []Step) []string {
	var texts []string
	for i := 0; i < len(steps); {
		end := i + 1
		for end < len(steps) && steps[end].Number == steps[i].Number && steps[i].Number > 0 {
			end++
		}
		var pieces []string
		for _, s := range steps[i:end] {
			pieces = append(pieces, s.Text)
		}
		if joined := strings.Join(pieces, " "); slices.Equal(method.Divide(joined, false), pieces) {
			pieces = []string{joined}
		}
		texts = append(texts, pieces...)
		i = end
	}
	return texts
}

// bylinesFirst puts "by …" first: a byline is known by standing under the title.
func bylinesFirst(credits []string) []string {
	sorted := slices.Clone(credits)
	slices.SortStableFunc(sorted, func(a, b string) int {
		x, y := strings.HasPrefix(strings.ToLower(a), "by "), strings.HasPrefix(strings.ToLower(b), "by ")
		switch {
		case x == y:
			return 0
		case x:
			return -1
		}
		return 1
	})
	return sorted
}

func nonEmpty(text string) []string {
	if text == "" {
		return nil
	}
	return []string{text}
}
