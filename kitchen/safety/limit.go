package safety

import "benchproof/kitchen/measure"

// Limit is one published limit. Parts it does not have are zero.
type Limit struct {
	What       string // what it is about
	Celsius    int    // the temperature as the source prints it
	Fahrenheit int    // the same in °F as the source prints it
	Seconds    int    // how long the food must hold it, or how long it may stand
	Source     string // the document and its section
}

const (
	foodCode = "FDA Food Code 2022, section "
	usdaHome = "USDA FSIS, safe minimum cooking temperatures"
	usdaCold = "USDA FSIS, Refrigeration: The Basics"
	fsanz    = "FSANZ Standard 3.2.2"
	hour     = 3600
	day      = 24 * hour
)

// Cooking in a food business. The seconds are how long the middle holds the
// temperature.
var (
	CookWhole   = Limit{"fish, whole-muscle meat, pork, eggs to order", 63, 145, 15, foodCode + "3-401.11(A)(1)"}
	CookMinced  = Limit{"minced meat or fish, injected or tenderised meat, pooled eggs", 68, 155, 17, foodCode + "3-401.11(A)(2)"}
	CookPoultry = Limit{"poultry, stuffed food, stuffing with meat", 74, 165, 0, foodCode + "3-401.11(A)(3)"}
)

// Cooling, holding and keeping in a food business. The seconds are the longest
// time until the temperature is reached, or the longest time to keep.
var (
	CoolFirst   = Limit{"cooked food, from 57 °C (135 °F) to here", 21, 70, 2 * hour, foodCode + "3-501.14(A)"}
	CoolWhole   = Limit{"cooked food, from 57 °C (135 °F) to here", 5, 41, 6 * hour, foodCode + "3-501.14(A)"}
	CoolAmbient = Limit{"food made from ingredients at room temperature", 5, 41, 4 * hour, foodCode + "3-501.14(B)"}
	HoldHot     = Limit{"hot holding, at least", 57, 135, 0, foodCode + "3-501.16"}
	HoldCold    = Limit{"cold holding, at most", 5, 41, 0, foodCode + "3-501.16"}
	Keep        = Limit{"ready-to-eat food kept cold, the day of making counted", 5, 41, 7 * day, foodCode + "3-501.17"}
	TimeAlone   = Limit{"time instead of temperature, from leaving hot or cold holding", 0, 0, 4 * hour, foodCode + "3-501.19"}
)

// Cooking at home. The seconds are how long to let it rest.
var (
	HomeMeat      = Limit{"beef, pork, veal and lamb: steaks, chops, roasts", 63, 145, 180, usdaHome}
	HomeMinced    = Limit{"minced meat", 71, 160, 0, usdaHome}
	HomePoultry   = Limit{"poultry, minced poultry too", 74, 165, 0, usdaHome}
	HomeFish      = Limit{"fish", 63, 145, 0, usdaHome}
	HomeEggDishes = Limit{"egg dishes", 71, 160, 0, usdaHome}
	HomeLeftovers = Limit{"leftovers and casseroles", 74, 165, 0, usdaHome}
	Custard       = Limit{"stirred custard and ice-cream base, stirring", 71, 160, 0, "FDA, Homemade Ice Cream: Make it Safely"}
	OutOfFridge   = Limit{"out of the refrigerator, below 32 °C (90 °F)", 0, 0, 2 * hour, usdaCold}
	OutInHeat     = Limit{"out of the refrigerator, above this room temperature", 32, 90, 1 * hour, usdaCold}
	Leftovers     = Limit{"leftovers in the refrigerator, 3 to 4 days", 4, 40, 4 * day, usdaCold}
)

// What other countries ask of holding.
var (
	UKCold     = Limit{"chilled food, at most; England, Wales, Northern Ireland", 8, 0, 0, "Food Safety and Hygiene (England) Regulations 2013"}
	UKHot      = Limit{"hot food, at least", 63, 0, 0, "Food Safety and Hygiene (England) Regulations 2013"}
	UKColdOnce = Limit{"chilled food above this, once only", 8, 0, 4 * hour, "Food Safety and Hygiene (England) Regulations 2013"}
	UKHotOnce  = Limit{"hot food below this, once only", 63, 0, 2 * hour, "Food Safety and Hygiene (England) Regulations 2013"}
	ANZCold    = Limit{"cold food, at most", 5, 0, 0, fsanz}
	ANZHot     = Limit{"hot food, at least", 60, 0, 0, fsanz}
	ANZUse     = Limit{"between the two, added up: after this use it at once", 0, 0, 2 * hour, fsanz}
	ANZDiscard = Limit{"between the two, added up: after this throw it away", 0, 0, 4 * hour, fsanz}
)

// Limits lists every limit of this room.
func Limits() []Limit {
	return []Limit{
		CookWhole, CookMinced, CookPoultry,
		CoolFirst, CoolWhole, CoolAmbient, HoldHot, HoldCold, Keep, TimeAlone,
		HomeMeat, HomeMinced, HomePoultry, HomeFish, HomeEggDishes, HomeLeftovers, Custard, OutOfFridge, OutInHeat, Leftovers,
		UKCold, UKHot, UKColdOnce, UKHotOnce, ANZCold, ANZHot, ANZUse, ANZDiscard,
	}
}

// Temperature writes the limit's temperature: "71 °C (160 °F)", "8 °C" where
// the source has no °F, "" where it has none at all.
func (l Limit) Temperature() string {
	if l.Celsius == 0 {
		return ""
	}
	text := measure.Of(measure.Whole(int64(l.Celsius)), measure.Celsius).String()
	if l.Fahrenheit != 0 {
		text += " (" + measure.Of(measure.Whole(int64(l.Fahrenheit)), measure.Fahrenheit).String() + ")"
	}
	return text
}
