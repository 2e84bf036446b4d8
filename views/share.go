package views

// SharePage is the recipe as viewers see it, without signing in.
type SharePage struct {
	Show        string
	Recipe      RecipeBody // without scaler, versions, marks and links
	Scales      []Choice   // "× ½", "× 1", "× 2"
	Opening     string     // a sentence on the dish; "" if none
	Allergens   Allergens
	Cautions    []Caution
	Corrections []AirRow // without paths
	Credits     []string
	VideoURL    string
	Canonical   string // this page's address without its query
	Structured  string // the schema.org Recipe as JSON
	CardPath    string // the card to print; "" if none
}

// ShareGonePage answers a link that was revoked or never was.
type ShareGonePage struct {
	Show string // "" if it is not to be said
}
