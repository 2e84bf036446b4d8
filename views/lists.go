package views

// RecipesPage lists every recipe.
type RecipesPage struct {
	Page
	NewPath string
	Search  Form // one field; zero draws none
	Rows    []RecipeRow
	Empty   string // what to do, or that nothing was found; "" if there are rows
}

// RecipeRow is one recipe.
type RecipeRow struct {
	Version string // "v4"
	Name    string
	Path    string
	Small   string // "makes 16 knots · changed 2 Mar"
	Marks   []Mark
	UsedIn  []Link // the episodes that use it
}

// PitchesPage is what viewers ask for.
type PitchesPage struct {
	Page
	Rows  []PitchRow
	Form  Form // add a pitch, or change one
	Empty string
}

// PitchRow is one pitch.
type PitchRow struct {
	Times        string // "7 ×"
	Dish         string
	From         string // "Mirel, in a letter"
	Note         string
	Episode      Link   // "became Ep 32"; zero if it became nothing yet
	MakeAction   string // makes it an episode; "" if it is one
	EditPath     string
	DeleteAction string
}

// ShowPage is the show's settings.
type ShowPage struct {
	Page
	Form      Form
	Measured  string // the host's pace as earlier cuts tell it; "" before there are any
	UseAction string // makes it the pace that scripts are timed by
}

// DeletedPage is what was deleted and can be had back.
type DeletedPage struct {
	Page
	Rows []DeletedRow
	Keep string // how long things are kept: "Deleted things are kept for 30 days."
}

// DeletedRow is one deleted thing.
type DeletedRow struct {
	When          string // "2 Mar"
	What          string // "episode", "shot"
	Name          string
	RestoreAction string
}
