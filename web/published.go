package web

import (
	"benchproof/kitchen/release"
	"benchproof/kitchen/safety"
	"benchproof/views"
)

// published is what goes out with a recipe beside its lines and steps.
type published struct {
	report   safety.Report
	cautions []safety.Caution
	contains string   // "Contains wheat, milk."; "" if nothing is known to be in it
	credits  []string // who it came from, in the creator's order
}

// publishedFacts gathers what goes out with the episode's recipe.
func (s *Server) publishedFacts(d *desk) published {
	reading := d.version.Reading
	p := published{
		report:   safety.Allergens(reading, s.config.Larder),
		cautions: safety.Cautions(reading, s.config.Larder),
		credits:  release.Input{Episode: d.episode, Recipe: reading}.Credits(),
	}
	if list := p.report.EU; len(list) > 0 {
		p.contains = safety.Sentence(list)
	}
	return p
}

func (p published) cautionTexts() []string {
	var texts []string
	for _, c := range p.cautions {
		texts = append(texts, c.Text)
	}
	return texts
}

func (p published) cautionViews() []views.Caution {
	var list []views.Caution
	for _, c := range p.cautions {
		list = append(list, views.Caution{Text: c.Text, Source: c.Source})
	}
	return list
}

// allergenViews words the report by each law; what only some makers' versions
// hold is said beside it.
func (p published) allergenViews() views.Allergens {
	may := p.report.MayHold
	return views.Allergens{
		Lists: []views.AllergenList{
			{Law: "EU and UK, of 14", Names: namesOrNone(p.report.EU, may.EU)},
			{Law: "US, of 9", Names: namesOrNone(p.report.US, may.US)},
			{Law: "Australia and New Zealand", Names: namesOrNone(p.report.ANZ, may.ANZ)},
		},
		Unsure: p.report.Unsure,
	}
}

func namesOrNone(holds, may []string) string {
	text := joined(", ", holds...)
	if text == "" {
		text = "none found"
	}
	if len(may) > 0 {
		text += "; some makers' also " + joined(", ", may...) + ": read the packs"
	}
	return text
}
