package shop

import (
	"cmp"
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Sheet is a shopping list.
type Sheet struct {
	Aisles    []Aisle // those with something to buy, in walking order
	Held      []Item  // what is needed and in the larder already, by name; Measure is the need
	Questions []Question
}

// Aisle is one section of the shop and what to buy there, by name.
type Aisle struct {
	Name  string // one of food.Aisles
	Items []Item
}

// Item is one thing to buy.
type Item struct {
	Key       string           // names the item for its tick, whatever its amount
	FoodID    string           // the larder's food; "" if it knows none
	Name      string           // "plain flour"; as written if the larder does not know it
	AsWritten []string         // what the recipes call it where that is another name: "waxy potatoes"
	Measure   string           // what to buy: "960 g", "6", "2 sprigs + 5 g"; "" for "to taste"
	Small     string           // more about the measure: "4 yolks, 2 whites", "2 lb 2 oz"; may be ""
	Exact     []measure.Amount // the exact sums, stock not taken off: grams, millilitres, then counts
	Uses      []Use            // what it is for, in the order of the needs
	ToTaste   bool             // some line says "to taste", or no amount
	Optional  bool             // every line says "optional"
	Estimate  bool             // a weight in Measure or Small is an estimate
	Question  string           // what to look at: "How much is a knob?"; may be ""
	Buy       Purchase         // packs, cost and stock, as far as they are known
}

// Use is what one batch of one recipe takes of an item.
type Use struct {
	Batch   string
	Recipe  string
	Measure string // as Item.Measure; "" without an amount
}

// Question is a line that could not be put on the list.
type Question struct {
	Text    string   // the line as written
	Reason  string   // why, in the person's words
	Recipe  string   // whose line it is
	Batches []string // the batches that need it
}

// List adds up what the needs take, without a shelf: no packs, prices or stock.
// The larder may be nil: then every food stands as written.
func List(needs []Need, larder *food.Larder) Sheet { return Shelf{}.List(needs, larder) }

// List adds up what the needs take, less what is on the shelf, in packs. The
// larder may be nil: then every food stands as written, and the shelf does not
// count.
func (s Shelf) List(needs []Need, larder *food.Larder) Sheet {
	var c collector
	for _, need := range needs {
		if need.Makes.Sign() > 0 {
			c.take(need, larder)
		}
	}
	sheet := Sheet{Questions: c.questions}
	byAisle := map[string][]Item{}
	for _, g := range c.groups {
		item := g.item(houseOf(needs))
		if s.settle(g, &item, houseOf(needs)) {
			sheet.Held = append(sheet.Held, item)
			continue
		}
		byAisle[g.aisle()] = append(byAisle[g.aisle()], item)
	}
	slices.SortFunc(sheet.Held, byName)
	for _, name := range food.Aisles {
		if items := byAisle[name]; len(items) > 0 {
			slices.SortFunc(items, byName)
			sheet.Aisles = append(sheet.Aisles, Aisle{Name: name, Items: items})
		}
	}
	return sheet
}

func byName(a, b Item) int {
	return cmp.Or(strings.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name)), strings.Compare(a.Key, b.Key))
}

// Items counts the items to buy.
func (s Sheet) Items() int {
	n := 0
	for _, aisle := range s.Aisles {
		n += len(aisle.Items)
	}
	return n
}

// otherAisle holds what the larder does not know.
const otherAisle = "Other"

// group is all that is taken of one food.
type group struct {
	key      string
	food     *food.Food // nil if the larder does not know it
	name     string     // as first written, for such a food
	portions []portion
}

// aisle is where the food stands in the shop.
func (g *group) aisle() string {
	if g.food != nil && slices.Contains(food.Aisles, g.food.Aisle) {
		return g.food.Aisle
	}
	return otherAisle
}

// collector gathers groups and questions in the order they come.
type collector struct {
	groups    []*group
	byKey     map[string]*group
	questions []Question
}

func (c *collector) take(need Need, larder *food.Larder) {
	for _, component := range need.Recipe.Components {
		for _, line := range component.Lines {
			if !line.Read {
				c.ask(Question{Text: line.Text, Reason: line.Reason, Recipe: need.Recipe.Title}, need.Batch)
				continue
			}
			c.add(need, line, larder)
		}
	}
	for _, unread := range need.Recipe.Unread {
		c.ask(Question{Text: unread.Text, Reason: unread.Reason, Recipe: need.Recipe.Title}, need.Batch)
	}
}

func (c *collector) add(need Need, line recipe.Line, larder *food.Larder) {
	key, f := keyOf(line, larder)
	if key == waterID {
		return
	}
	g := c.byKey[key]
	if g == nil {
		g = &group{key: key, food: f, name: nameOf(line)}
		if c.byKey == nil {
			c.byKey = map[string]*group{}
		}
		c.byKey[key] = g
		c.groups = append(c.groups, g)
	}
	var own *food.Food
	if f != nil {
		own, _ = larder.Food(line.FoodID)
	}
	parts := portions(need, line, own)
	if len(line.Choices) > 1 && parts[0].question == "" {
		parts[0].question = whichOf(line.Choices, larder)
	}
	g.portions = append(g.portions, parts...)
}

func whichOf(choices []string, larder *food.Larder) string {
	names := make([]string, 0, len(choices))
	for _, id := range choices {
		name := id
		if larder != nil {
			if f, ok := larder.Food(id); ok {
				name = f.Name
			}
		}
		names = append(names, name)
	}
	last := len(names) - 1
	return "Which is meant: " + strings.Join(names[:last], ", ") + " or " + names[last] + "?"
}

// ask adds the question, or its batch to the same question of another batch.
func (c *collector) ask(q Question, batch string) {
	for i := range c.questions {
		if known := &c.questions[i]; known.Text == q.Text && known.Recipe == q.Recipe {
			if !slices.Contains(known.Batches, batch) {
				known.Batches = append(known.Batches, batch)
			}
			return
		}
	}
	q.Batches = []string{batch}
	c.questions = append(c.questions, q)
}
