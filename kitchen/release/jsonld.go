package release

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strconv"
	"strings"
	"time"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// JSONLD writes the recipe as schema.org data in JSON-LD: one object of type
// Recipe. What is not known is left out. Characters that could end a script
// element come as \u escapes, so that the text can stand in one as it is.
func JSONLD(in Input) ([]byte, error) {
	times := TimesOf(in.Recipe)
	data := recipeData{
		Context: "https://schema.org", Type: "Recipe",
		Name:         in.Title(),
		Description:  strings.Join(linesOf(in.Release.Opening), " "),
		URL:          in.PageURL,
		InLanguage:   in.Language,
		Keywords:     strings.Join(distinct([]string{in.Episode.Dish, in.Show.Name}), ", "),
		Yield:        yieldOf(in.Makes),
		PrepTime:     knownDuration(times.Prepare),
		CookTime:     knownDuration(times.Cook),
		TotalTime:    knownDuration(times.Total),
		Ingredients:  in.ingredientLines(),
		Instructions: in.instructions(),
		Video:        in.video(),
	}
	if author := firstOf(in.Show.Host, in.Show.Name); author != "" {
		data.Author = &thing{Type: "Person", Name: author}
		if in.Show.Host == "" {
			data.Author.Type = "Organization"
		}
	}
	if in.Show.Name != "" && in.Show.Host != "" {
		data.Publisher = &thing{Type: "Organization", Name: in.Show.Name}
	}
	data.Published = date(in.Episode.ReleaseOn)
	data.BasedOn = in.basedOn()
	var out bytes.Buffer
	encoder := json.NewEncoder(&out)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(data); err != nil {
		return nil, fmt.Errorf("write recipe data: %w", err)
	}
	return bytes.TrimSpace(out.Bytes()), nil
}

// recipeData is a schema.org Recipe with the properties that we fill.
type recipeData struct {
	Context      string     `json:"@context"`
	Type         string     `json:"@type"`
	Name         string     `json:"name"`
	Description  string     `json:"description,omitempty"`
	URL          string     `json:"url,omitempty"`
	InLanguage   string     `json:"inLanguage,omitempty"`
	Author       *thing     `json:"author,omitempty"`
	Publisher    *thing     `json:"publisher,omitempty"`
	Published    string     `json:"datePublished,omitempty"`
	Keywords     string     `json:"keywords,omitempty"`
	BasedOn      any        `json:"isBasedOn,omitempty"`
	Yield        string     `json:"recipeYield,omitempty"`
	PrepTime     string     `json:"prepTime,omitempty"`
	CookTime     string     `json:"cookTime,omitempty"`
	TotalTime    string     `json:"totalTime,omitempty"`
	Ingredients  []string   `json:"recipeIngredient,omitempty"`
	Instructions []howTo    `json:"recipeInstructions,omitempty"`
	Video        *videoData `json:"video,omitempty"`
}

// thing is a Person, an Organization or a CreativeWork by its name.
type thing struct {
	Type string `json:"@type"`
	Name string `json:"name,omitempty"`
	URL  string `json:"url,omitempty"`
}

// howTo is a HowToStep, which has a text, or a HowToSection, which has a name
// and steps.
type howTo struct {
	Type  string  `json:"@type"`
	Name  string  `json:"name,omitempty"`
	Text  string  `json:"text,omitempty"`
	Steps []howTo `json:"itemListElement,omitempty"`
}

type videoData struct {
	Type        string `json:"@type"`
	Name        string `json:"name"`
	Description string `json:"description,omitempty"`
	URL         string `json:"url"`
	UploadDate  string `json:"uploadDate,omitempty"`
	Clips       []clip `json:"hasPart,omitempty"`
}

type clip struct {
	Type  string `json:"@type"`
	Name  string `json:"name"`
	Start int    `json:"startOffset"` // seconds
	End   int    `json:"endOffset,omitempty"`
}

func (in Input) ingredientLines() []string {
	line := newAmounts(in).one
	var lines []string
	for _, component := range in.Recipe.Components {
		for _, each := range component.Lines {
			lines = append(lines, line(each))
		}
	}
	return nonEmpty(lines)
}

// instructions gives the steps; in sections where more than one component has
// any and they have names.
func (in Input) instructions() []howTo {
	var sections []howTo
	for _, component := range in.Recipe.Components {
		section := howTo{Type: "HowToSection", Name: strings.TrimSpace(component.Name), Steps: stepsOf(component)}
		if len(section.Steps) > 0 {
			sections = append(sections, section)
		}
	}
	if len(sections) == 1 {
		return sections[0].Steps
	}
	for i := range sections {
		if sections[i].Name == "" {
			sections[i].Name = "Part " + strconv.Itoa(i+1)
		}
	}
	return sections
}

func stepsOf(component recipe.Component) []howTo {
	var steps []howTo
	for _, step := range component.Steps {
		if text := strings.TrimSpace(step.Text); text != "" {
			steps = append(steps, howTo{Type: "HowToStep", Text: text})
		}
	}
	return steps
}

func (in Input) video() *videoData {
	if in.Release.VideoURL == "" {
		return nil
	}
	video := &videoData{
		Type: "VideoObject", Name: in.Title(), URL: in.Release.VideoURL,
		Description: strings.Join(linesOf(in.Release.Opening), " "), UploadDate: date(in.Episode.ReleaseOn),
	}
	for i, chapter := range in.Chapters {
		part := clip{Type: "Clip", Name: chapter.Title, Start: chapter.At}
		if i+1 < len(in.Chapters) {
			part.End = in.Chapters[i+1].At
		}
		video.Clips = append(video.Clips, part)
	}
	return video
}

// yieldOf is what a recipe makes as data has it: "16 knots", "6–8 servings".
func yieldOf(makes string) string {
	word, rest, found := strings.Cut(strings.TrimSpace(makes), " ")
	switch {
	case found && strings.EqualFold(word, "makes"):
		return strings.TrimSpace(rest)
	case found && strings.EqualFold(word, "serves") && !strings.Contains(strings.TrimSpace(rest), " "):
		return strings.TrimSpace(rest) + " servings"
	}
	return strings.TrimSpace(makes)
}

// basedOn is what inspired the recipe: its address, or a work by its name.
func (in Input) basedOn() any {
	switch {
	case in.Episode.InspiredURL != "" && in.Episode.InspiredBy != "":
		return thing{Type: "CreativeWork", Name: in.Episode.InspiredBy, URL: in.Episode.InspiredURL}
	case in.Episode.InspiredURL != "":
		return in.Episode.InspiredURL
	case in.Episode.InspiredBy != "":
		return thing{Type: "CreativeWork", Name: in.Episode.InspiredBy}
	}
	return nil
}

func knownDuration(minutes measure.Number) string {
	if minutes.Sign() <= 0 {
		return ""
	}
	return ISODuration(minutes)
}

func date(day time.Time) string {
	if day.IsZero() {
		return ""
	}
	return day.Format(time.DateOnly)
}
