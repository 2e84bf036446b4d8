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
	Mark    Mark   // of what is in stock: past its date
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
	Source    string
	Packs     *FoodEntries // what it is bought in; nil for what is not bought itself
	Stock     *FoodEntries // what the larder has; nil as well
	BoughtAs  Link         // the food that is bought for it: eggs for yolks; zero if it is bought itself
	UsedIn    []Link       // recipes that use it
	AliasForm Form         // teaches it another name; zero draws none
}

// WeightRow is what one measure of the food weighs.
type WeightRow struct {
	Grams  string // "125 g"
	Of     string // "1 cup (US, 236.6 mL), sifted"
	Source string
}

// FoodEntries is what the show notes of a food, with the form that adds to it or
// changes an entry.
type FoodEntries struct {
	Rows  []FoodEntry
	Form  Form
	Empty string // what it is good for; "" if there are entries
}

// FoodEntry is a pack or some stock.
type FoodEntry struct {
	Measure      string // "500 g"
	Text         string // "$2.10", "use by 9 Mar"
	Small        string // "$4.20 a kg"
	Mark         Mark
	Of           string // names it for those who hear its actions: "the pack of 500 g"
	EditPath     string
	DeleteAction string
}
