package views

import (
	"strings"

	"github.com/a-h/templ"
)

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

// structured is a block of data for machines. It is no script: nothing in it
// runs, and no character in it can end it.
func structured(json string) templ.Component {
	return templ.Raw(`<script type="application/ld+json">` + insideScript.Replace(json) + `</script>`)
}

// insideScript writes JSON so that it can stand in a script element: the
// characters that HTML would see occur in JSON only within strings, where the
// escape means the same.
var insideScript = strings.NewReplacer(
	"<", `\u003c`, ">", `\u003e`, "&", `\u0026`, "\u2028", `\u2028`, "\u2029", `\u2029`,
)
