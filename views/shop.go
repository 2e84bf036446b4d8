package views

import "strconv"

// ShopSheet is the batches of an episode and what to buy for them.
type ShopSheet struct {
	Page
	EpisodeFrame
	Batches []BatchRow
	Total   string // "3 makes, 48 knots"
	Form    Form   // add a batch, or change one
	List    ShopList
}

// BatchRow is one planned make, or several alike.
type BatchRow struct {
	Makes        string // "2 ×"
	Kind         string // "swap-out"
	Note         string
	EditPath     string
	DeleteAction string
}

// ShopList is what to buy by aisle. Each item's tick posts to TickAction:
// item (its Key) and ticked, "yes" or "no", the state wanted, so that sending
// it twice does no harm.
type ShopList struct {
	TickAction string
	Left       string // "12 of 20 still to get"
	Aisles     []AisleBlock
	Sum        string // what it comes to: "$31.40"; "" while no price is known
	SumOf      string // "for 6 of 9 items; 3 without a price"
	Held       []HeldItem
	Questions  []OpenLink // lines that could not be put on the list
	Empty      string     // what to do when there is nothing; "" if there is
}

// HeldItem is a food that is needed and in the larder already.
type HeldItem struct {
	Measure string // what is needed: "250 g"
	Food    string
	Path    string // the food's page
	Have    string // "there: 500 g, use by 9 Mar"
}

// AisleBlock is one aisle's items.
type AisleBlock struct {
	Name  string
	Items []ShopItem
}

// ShopItem is one food to buy.
type ShopItem struct {
	Key      string
	Measure  string // what is needed beyond what is in the larder: "960 g"
	Food     string
	Path     string // the food's page, with its packs and stock; "" if the larder does not know it
	Buy      string // the packs, their cost and what is over: "2 × 500 g, $4.20 · 40 g left over"
	Have     string // "200 g from the larder"
	Small    string // the other measure: "2 lb 2 oz"
	Detail   string // what it is for: "shoot 320 g · swap-out 640 g"
	Late     string // stock that is too old when it is needed
	Question string
	Ticked   bool
}

// ShoppingPage is the list across coming episodes.
type ShoppingPage struct {
	Page
	Covers []EpisodeRow // the episodes it is for
	List   ShopList
}

// wanted is the state a press asks for.
func (i ShopItem) wanted() string {
	if i.Ticked {
		return "no"
	}
	return "yes"
}

// shopGutter is an item's measure, amber where it asks something.
func shopGutter(i ShopItem) Gutter {
	if i.Question != "" || i.Late != "" {
		return Gutter{Text: i.Measure, Mark: MarkLook}
	}
	return Gutter{Text: i.Measure}
}

// pressed is the state of a button that stays down.
func pressed(yes bool) string { return strconv.FormatBool(yes) }
