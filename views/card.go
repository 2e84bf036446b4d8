package views

// CardPage is the printed card.
type CardPage struct {
	Show       string
	Title      string
	Paper      string // "a4", "letter", "a5"
	PaperName  string // "A4"
	Makes      string
	Components []ComponentBlock
	Notes      []string
	Allergens  string // "Contains wheat, milk."
	Cautions   []string
	Credits    []string
	Address    string   // where the recipe page is; "" if it is not shared
	Sizes      []Choice // the other sizes; on screen only
	PDFPath    string
	Back       Link
}
