package safety

// LeastStanding is the shortest time in minutes, between cold and hot, of which
// Holding has anything to say: FSANZ Standard 3.2.2, 2 hours.
const LeastStanding = 2 * 60

// Proving goes with dough that holds egg, milk or cream and stands as long as
// Holding has something to say of: that is how such dough is made, and the rules
// know no exception for it. Common practice, no source.
var Proving = Caution{Text: "Dough with egg, milk or cream in it is commonly proved so long, yet by these rules it is food that needs the cold: " +
	"prove it where it is cool, or most of the time in the refrigerator, do not taste it raw, and bake it through."}

// Holding gives what published rules say of food that stands between cold
// (5 °C) and hot (60 °C) for so many minutes, added up; the strictest first,
// none below LeastStanding. Cooked food is one that has been heated before.
func Holding(minutes int, isCooked bool) []Caution {
	stands := func(l Limit) int { return minutes - l.Seconds/60 }
	var all []Caution
	if stands(ANZDiscard) >= 0 {
		all = append(all, Caution{"After 4 hours between 5 °C and 60 °C, added up, throw it away.", ANZDiscard.Source})
		all = append(all, Caution{"Without cold or hot holding, use it within 4 hours or throw it away.", TimeAlone.Source})
	}
	if stands(UKColdOnce) > 0 {
		all = append(all, Caution{"Chilled food may stand above " + UKColdOnce.Temperature() + " once only, for up to 4 hours.", UKColdOnce.Source})
	}
	if stands(OutOfFridge) > 0 {
		all = append(all, Caution{"Put it into the refrigerator within 2 hours, 1 hour where it is above " + OutInHeat.Temperature() + ".", OutOfFridge.Source})
	}
	if isCooked && stands(CoolFirst) > 0 {
		all = append(all, Caution{"Cool cooked food to " + CoolFirst.Temperature() + " within 2 hours, and to " + CoolWhole.Temperature() + " within 6 in all: in shallow dishes, or over ice.", CoolFirst.Source})
		all = append(all, Caution{"Hot food may stand below " + UKHotOnce.Temperature() + " once only, for up to 2 hours.", UKHotOnce.Source})
	}
	if stands(ANZUse) >= 0 && stands(ANZDiscard) < 0 {
		all = append(all, Caution{"Between 2 and 4 hours from 5 °C to 60 °C, added up: use it at once, do not keep it.", ANZUse.Source})
	}
	return all
}
