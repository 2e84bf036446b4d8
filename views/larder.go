package views

// LarderPage is the foods by aisle, or those a search found.
type LarderPage struct {
	Page
	Search Form   // one field
	Found  string // "24 foods", "3 foods for “flour”"
	Aisles []Choice
	Groups []LarderGroup
	Empty  string // what to do when nothing was found
}

// LarderGroup is the foods of one aisle.
type LarderGroup struct {
	Aisle string
	Foods []FoodRow
}

// FoodRow is one food.
type FoodRow struct {
	Measure string // what its usual measure weighs: "125 g"
	Of      string // that measure: "a cup"
	Name    string
	Path    string
	Names   string // some other names: "all-purpose flour, AP flour"
}

// FoodPage is one food with all the larder knows of it.
type FoodPage struct {
	Page
	Name      string
	Aisle     string
	Path      string // back to the larder
	Names     []string
	Weights   []WeightRow
	Nutrients []Figure // per 100 g
	Allergens string   // "wheat (gluten)"; "none known" is said in words
	Packs     []string // "1.5 kg bag"
	Source    string
	UsedIn    []Link // recipes that use it
	AliasForm Form   // teaches it another name; zero draws none
}

// WeightRow is what one measure of the food weighs.
type WeightRow struct {
	Grams  string // "125 g"
	Of     string // "1 cup (US, 236.6 mL), sifted"
	Source string
}
