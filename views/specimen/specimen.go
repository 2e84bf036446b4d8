package specimen

import (
	"github.com/a-h/templ"

	"benchproof/views"
)

// Specimen is one page in one state.
type Specimen struct {
	Name      string // "recipe", "brief-refused": the golden file's name
	Component templ.Component
}

// Pages are all of them, in the order of the week.
func Pages() []Specimen {
	return []Specimen{
		{"parts", views.Parts(parts())},
		{"setup", views.Setup(setup())},
		{"sign-in", views.SignIn(signIn())},
		{"sign-in-refused", views.SignIn(signInRefused())},
		{"season", views.Season(season())},
		{"season-empty", views.Season(seasonEmpty())},
		{"season-refused", views.Season(seasonRefused())},
		{"brief", views.Brief(brief())},
		{"brief-refused", views.Brief(briefRefused())},
		{"recipe", views.Recipe(recipe())},
		{"recipe-trying", views.Recipe(recipeTrying())},
		{"recipe-none", views.Recipe(recipeNone())},
		{"recipe-edit", views.RecipeEdit(recipeEdit())},
		{"recipe-new", views.RecipeEdit(recipeNew())},
		{"version", views.Version(version())},
		{"compare", views.Compare(compare())},
		{"trials", views.Trials(trials())},
		{"trials-none", views.Trials(trialsNone())},
		{"shop", views.Shop(shop())},
		{"shop-none", views.Shop(shopNone())},
		{"shoot-day", views.ShootDay(shootDay())},
		{"shoot-day-late", views.ShootDay(shootLate())},
		{"shoot-day-refused", views.ShootDay(shootDayRefused())},
		{"script", views.Script(script())},
		{"script-none", views.Script(scriptNone())},
		{"shots", views.Shots(shots())},
		{"shots-none", views.Shots(shotsNone())},
		{"shots-covered", views.Shots(shotsCovered())},
		{"call-sheet", views.CallSheetPage(callSheet())},
		{"call-sheet-no-plan", views.CallSheetPage(callSheetNoPlan())},
		{"cut", views.Cut(cut())},
		{"release", views.Release(release())},
		{"release-over", views.Release(releaseOver())},
		{"recipes", views.Recipes(recipes())},
		{"larder", views.Larder(larder())},
		{"food", views.Food(food())},
		{"food-refused", views.Food(foodRefused())},
		{"food-bought-as", views.Food(yolk())},
		{"shopping", views.Shopping(shopping())},
		{"pitches", views.Pitches(pitches())},
		{"show", views.Show(show())},
		{"deleted", views.Deleted(deleted())},
		{"conflict", views.Conflict(conflict())},
		{"error", views.Error(failed())},
		{"not-found", views.NotFound(notFound())},
		{"share", views.Share(share())},
		{"share-gone", views.ShareGone(views.ShareGonePage{Show: showName})},
		{"card-a4", views.Card(card("a4", "A4"))},
		{"card-letter", views.Card(card("letter", "Letter"))},
		{"card-a5", views.Card(card("a5", "A5"))},
	}
}

const showName = "Ferry Stop Kitchen"

// page is the frame of a page of the signed-in host.
func page(title string, section views.Section) views.Page {
	return views.Page{Title: title, Show: showName, Person: "Odile", SignedIn: true, Section: section}
}

// knots is the frame of the episode that most specimens show.
func knots(sheet views.Sheet) views.EpisodeFrame {
	return views.EpisodeFrame{
		Number: "Ep 31", Title: "Rye knots with smoked butter", Path: "/episodes/31",
		Sheet: sheet, Stage: "in development", ReleaseOn: "out 14 Mar",
		Marks: map[views.Sheet]int{views.SheetRecipe: 2, views.SheetShots: 1, views.SheetCut: 1},
		Open: []views.OpenLink{
			{Text: "settle the oven pair", Path: "/episodes/31/recipe", Wrong: true},
			{Text: "say how much a knob is", Path: "/episodes/31/recipe"},
			{Text: "shoot the hero of the finished basket", Path: "/episodes/31/shots"},
			{Text: "paste the cut’s captions", Path: "/episodes/31/cut"},
		},
	}
}

// sheet is the frame of a page of that episode.
func sheet(s views.Sheet) views.Page {
	return page("Rye knots with smoked butter: "+s.Name(), views.SectionSeason)
}
