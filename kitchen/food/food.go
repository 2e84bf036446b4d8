package food

import (
	"strings"

	"benchproof/kitchen/measure"
)

// Food is one food the larder knows.
type Food struct {
	ID      string    // a slug, never reused: "plain-flour"
	Name    string    // as shown: "plain flour"
	Names   []string  // every other name cooks use: "all-purpose flour", "AP flour"
	Plural  string    // if not regular: "loaves"; "" means Name serves
	Aisle   string    // one of Aisles
	Weights []Weight  // grams per measure, by form and size; the first of a unit is its default
	Per100  Nutrients // per 100 g as eaten
	// Allergens are codes of AllergenCodes: "wheat", "milk", "egg", "almond" …
	Allergens []string
	// MayHold are codes that some makers' versions hold and others do not: the
	// pack must be read.
	MayHold []string
	Packs   []Pack // usual packs to buy; may be empty
	Source  string // "USDA SR 20081", or "estimate"; of Per100
}

// Weight is what one US-customary measure, or one piece, of a food weighs.
type Weight struct {
	Unit   measure.Unit   // cup, tbsp, tsp, fl oz … (US sizes), or a count unit
	Form   string         // "sifted", "chopped", "large"; "" is the default form
	System measure.System // whose size classes Form speaks of ("large" eggs); "" for everybody's
	Grams  measure.Number // per one unit, > 0
	Source string         // "USDA SR 20081", or "estimate"
}

// Pack is one size a food is bought in.
type Pack struct {
	Amount measure.Amount // 500 g, 1 l, 12 each
	Name   string         // "bag", "tin", "tray"; may be ""
}

// Estimate is the Source of a figure that no table was found for. One taken
// from a table's nearest food says so behind it: "estimate, as USDA SR 20083".
const Estimate = "estimate"

// IsEstimate tells whether a source is an estimate of either kind.
func IsEstimate(source string) bool { return strings.HasPrefix(source, Estimate) }

// Aisles are the shop's sections in walking order.
var Aisles = []string{
	"Fruit and vegetables", "Fresh herbs", "Bakery", "Meat and poultry", "Fish and seafood",
	"Dairy and eggs", "Baking", "Flours and grains", "Sugars and syrups", "Nuts, seeds and dried fruit",
	"Oils and vinegars", "Spices and dried herbs", "Tins and jars", "Sauces and condiments",
	"Chocolate and sweets", "Drinks", "Frozen", "Other",
}
