package release

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"benchproof/kitchen/episode"
)

// DefaultLimit is the description's limit in characters where the show sets
// none. Source: platform help pages; a convention that changes.
const DefaultLimit = 5000

// TitleLimit is the video title's limit in characters; the same sources.
const TitleLimit = 100

// Description is the text that goes under the video.
type Description struct {
	Text       string
	Characters int      // Unicode code points, as most platforms count
	Bytes      int      // of UTF-8, as one platform counts
	Limit      int      // in characters
	Advice     []string // what to cut, the least missed first; empty inside the limit
}

// Over is how many characters the description has over its limit; 0 inside it.
func (d Description) Over() int { return max(0, d.Characters-d.Limit) }

// Block is one part of the description.
type Block string

// The blocks of a description.
const (
	Opening     Block = "opening line"
	Page        Block = "recipe page"
	Ingredients Block = "ingredients"
	Chapters    Block = "chapters"
	Equipment   Block = "equipment"
	Credits     Block = "credits"
	Disclosures Block = "disclosures"
	Allergens   Block = "allergens"
	Cautions    Block = "cautions"
	Corrections Block = "corrections"
	Links       Block = "standing links"
)

// Blocks lists the blocks in the order in which they stand.
var Blocks = []Block{Opening, Page, Ingredients, Chapters, Equipment, Credits, Disclosures, Allergens, Cautions, Corrections, Links}

// Describe writes the description. Angle brackets, which platforms refuse,
// become ‹ and ›.
func Describe(in Input) Description {
	line := newAmounts(in).both
	texts := map[Block]string{}
	var parts []string
	for _, block := range Blocks {
		if text := safeText(in.block(block, line)); text != "" {
			texts[block] = text
			parts = append(parts, text)
		}
	}
	d := Description{Text: strings.Join(parts, "\n\n"), Limit: in.Show.DescriptionLimit}
	if d.Limit <= 0 {
		d.Limit = DefaultLimit
	}
	d.Characters, d.Bytes = utf8.RuneCountInString(d.Text), len(d.Text)
	if d.Over() > 0 {
		d.Advice = in.advice(d, texts)
	}
	return d
}

func (in Input) block(block Block, line lineWriter) string {
	switch block {
	case Opening:
		return strings.Join(linesOf(in.Release.Opening), "\n")
	case Page:
		return in.page()
	case Ingredients:
		return in.ingredients(line)
	case Chapters:
		return section("CHAPTERS", in.chapters())
	case Equipment:
		return section("EQUIPMENT", in.Equipment())
	case Credits:
		return section("CREDITS", in.Credits())
	case Disclosures:
		return section("DISCLOSURE", in.Disclosures())
	case Allergens:
		return section("ALLERGENS", in.allergens())
	case Cautions:
		return section("TAKE CARE", distinct(in.Cautions))
	case Corrections:
		return section("CORRECTIONS", in.corrections())
	case Links:
		return strings.Join(linesOf(in.Show.Links), "\n")
	}
	return ""
}

func (in Input) page() string {
	if in.PageURL == "" {
		return ""
	}
	return "The recipe, to scale and to print: " + in.PageURL
}

func (in Input) ingredients(line lineWriter) string {
	var blocks []string
	for _, component := range in.Recipe.Components {
		var lines []string
		for _, each := range component.Lines {
			lines = append(lines, line(each))
		}
		if lines = nonEmpty(lines); len(lines) == 0 {
			continue
		}
		if name := strings.TrimSpace(component.Name); name != "" {
			lines = append([]string{name + ":"}, lines...)
		}
		blocks = append(blocks, strings.Join(lines, "\n"))
	}
	if len(blocks) == 0 {
		return ""
	}
	heading := "INGREDIENTS"
	if in.Makes != "" {
		heading += " (" + in.Makes + ")"
	}
	return heading + "\n" + strings.Join(blocks, "\n\n")
}

// nonEmpty drops empty lines; the same line twice stays two lines.
func nonEmpty(lines []string) []string {
	kept := lines[:0]
	for _, line := range lines {
		if line != "" {
			kept = append(kept, line)
		}
	}
	return kept
}

func (in Input) chapters() []string {
	var lines []string
	for _, c := range in.Chapters {
		lines = append(lines, episode.Timecode(c.At)+" "+strings.Join(strings.Fields(c.Title), " "))
	}
	return lines
}

func (in Input) allergens() []string {
	var lines []string
	if len(in.Allergens) > 0 {
		lines = append(lines, "Contains "+listed(in.Allergens)+".")
	}
	if len(in.MayHold) > 0 {
		lines = append(lines, "Some makers’ versions hold "+listed(in.MayHold)+": read the packs.")
	}
	if len(in.Unsure) > 0 {
		lines = append(lines, "Not checked, so read the packs: "+strings.Join(in.Unsure, ", ")+".")
	}
	return lines
}

func (in Input) corrections() []string {
	var lines []string
	for _, c := range in.Corrections {
		lines = append(lines, fmt.Sprintf("%s I say “%s”. Right is: %s", episode.Timecode(c.At), strings.TrimSpace(c.Said), strings.TrimSpace(c.Right)))
	}
	return lines
}

// section is a heading and its lines; nothing without lines.
func section(heading string, lines []string) string {
	if len(lines) == 0 {
		return ""
	}
	return heading + "\n" + strings.Join(lines, "\n")
}

// safeText replaces what platforms refuse or would not show.
func safeText(text string) string {
	return strings.TrimSpace(strings.NewReplacer("<", "‹", ">", "›", "\r", "", "\x00", "").Replace(text))
}

// listed writes "milk, egg and wheat".
func listed(list []string) string {
	last := len(list) - 1
	if last < 1 {
		return strings.Join(list, "")
	}
	return strings.Join(list[:last], ", ") + " and " + list[last]
}
