package measure

import "strings"

// entry is what the room knows about one unit: its kind, how it is shown, the
// finest step a hand counts it in, and the words cooks write for it.
type entry struct {
	unit    Unit
	kind    Kind
	one     string // shown with up to one: "½ cup"
	many    string // shown with more than one: "2 cups"; the same for symbols
	step    Number // finest step of a counted unit; zero for those a system measures
	short   string // abbreviations, lower case, comma between; a full stop after one belongs to it
	written string // every other spelling, lower case, comma between
}

var (
	eighth  = Ratio(1, 8)
	quarter = Ratio(1, 4)
	half    = Ratio(1, 2)
	whole   = Whole(1)
)

// vocabulary lists every unit in the order a form would offer them. Spellings
// are common practice, no source.
var vocabulary = []entry{
	{unit: Each, kind: Count, step: quarter, short: "ea", written: "each"},

	{unit: Milligram, kind: Mass, one: "mg", many: "mg", short: "mgs", written: "milligram,milligrams,milligramme,milligrammes"},
	{unit: Gram, kind: Mass, one: "g", many: "g", short: "gm,gms,gr,grs", written: "gram,grams,gramme,grammes"},
	{unit: Kilogram, kind: Mass, one: "kg", many: "kg", short: "kgs", written: "kilo,kilos,kilogram,kilograms,kilogramme,kilogrammes"},
	{unit: Ounce, kind: Mass, one: "oz", many: "oz", short: "ozs", written: "ounce,ounces"},
	{unit: Pound, kind: Mass, one: "lb", many: "lb", short: "lbs", written: "pound,pounds,#"},

	{unit: Millilitre, kind: Volume, one: "mL", many: "mL", short: "mls,mil,mils,cc,ccs", written: "millilitre,millilitres,milliliter,milliliters,mililitre,mililitres,mililiter,mililiters"},
	{unit: Centilitre, kind: Volume, one: "cL", many: "cL", short: "cls", written: "centilitre,centilitres,centiliter,centiliters"},
	{unit: Decilitre, kind: Volume, one: "dL", many: "dL", short: "dls", written: "decilitre,decilitres,deciliter,deciliters"},
	{unit: Litre, kind: Volume, one: "L", many: "L", short: "lt,ltr,ltrs", written: "litre,litres,liter,liters"},

	{unit: Drop, kind: Volume, one: "drop", many: "drops", step: whole},
	{unit: Smidgen, kind: Volume, one: "smidgen", many: "smidgens", step: half, written: "smidgin,smidgeon,smidge"},
	{unit: Pinch, kind: Volume, one: "pinch", many: "pinches", step: half},
	{unit: Dash, kind: Volume, one: "dash", many: "dashes", step: half},
	{unit: Teaspoon, kind: Volume, one: "tsp", many: "tsp", short: "tsps,ts,tspn,tspns,teasp", written: "teaspoon,teaspoons,tea spoon,tea spoons,teaspoonful,teaspoonfuls,teaspoonsful"},
	{unit: Dessertspn, kind: Volume, one: "dessertspoon", many: "dessertspoons", step: half, short: "dsp,dsps,dstsp,dstspn", written: "dessert spoon,dessert spoons,dessertspoonful,dessertspoonfuls"},
	{unit: Tablespoon, kind: Volume, one: "tbsp", many: "tbsp", short: "tbsps,tb,tbs,tbl,tbls,tblsp,tblsps,tbspn,tbspns,tbsn,tabsp", written: "tablespoon,tablespoons,table spoon,table spoons,tablespoonful,tablespoonfuls,tablespoonsful"},
	{unit: FluidOunce, kind: Volume, one: "fl oz", many: "fl oz", short: "floz", written: "fl ozs,fl ounce,fl ounces,fluid oz,fluid ozs,fluid ounce,fluid ounces"},
	{unit: Gill, kind: Volume, one: "gill", many: "gills", step: half},
	{unit: Cup, kind: Volume, one: "cup", many: "cups", short: "c,cp", written: "cupful,cupfuls,cupsful"},
	{unit: Go, kind: Volume, one: "gō", many: "gō", step: quarter, written: "go,gou,合,rice cooker cup,rice cooker cups"},
	{unit: Pint, kind: Volume, one: "pint", many: "pints", short: "pt,pts"},
	{unit: Quart, kind: Volume, one: "quart", many: "quarts", short: "qt,qts,qrt"},
	{unit: Gallon, kind: Volume, one: "gallon", many: "gallons", short: "gal,gals"},

	{unit: Stick, kind: Count, one: "stick", many: "sticks", step: eighth, short: "stk,stks"},
	{unit: Tin, kind: Count, one: "tin", many: "tins", step: quarter, written: "can,cans"},
	{unit: Jar, kind: Count, one: "jar", many: "jars", step: quarter},
	{unit: Packet, kind: Count, one: "packet", many: "packets", step: quarter, short: "pkt,pkts,pk,pks,pkg,pkgs,env", written: "pack,packs,package,packages,sachet,sachets,envelope,envelopes"},
	{unit: Bottle, kind: Count, one: "bottle", many: "bottles", step: quarter, short: "btl,btls"},
	{unit: Leaf, kind: Count, one: "leaf", many: "leaves", step: half, written: "leafs"},
	{unit: Sheet, kind: Count, one: "sheet", many: "sheets", step: half},
	{unit: Clove, kind: Count, one: "clove", many: "cloves", step: half},
	{unit: Sprig, kind: Count, one: "sprig", many: "sprigs", step: whole},
	{unit: Bunch, kind: Count, one: "bunch", many: "bunches", step: quarter, short: "bn,bch"},
	{unit: Head, kind: Count, one: "head", many: "heads", step: quarter},
	{unit: Stalk, kind: Count, one: "stalk", many: "stalks", step: half, written: "stem,stems,rib,ribs"},
	{unit: Slice, kind: Count, one: "slice", many: "slices", step: half},
	{unit: Piece, kind: Count, one: "piece", many: "pieces", step: half, short: "pc,pcs,pce,pces"},
	{unit: Cube, kind: Count, one: "cube", many: "cubes", step: half},
	{unit: Knob, kind: Count, one: "knob", many: "knobs", step: half},
	{unit: Handful, kind: Count, one: "handful", many: "handfuls", step: half, written: "handsful"},
	{unit: Bag, kind: Count, one: "bag", many: "bags", step: quarter},
	{unit: Box, kind: Count, one: "box", many: "boxes", step: quarter},
	{unit: Carton, kind: Count, one: "carton", many: "cartons", step: quarter, short: "ctn,ctns"},
	{unit: Tub, kind: Count, one: "tub", many: "tubs", step: quarter},
	{unit: Block, kind: Count, one: "block", many: "blocks", step: quarter},
	{unit: Bar, kind: Count, one: "bar", many: "bars", step: quarter},
	{unit: Ball, kind: Count, one: "ball", many: "balls", step: quarter},
	{unit: Ear, kind: Count, one: "ear", many: "ears", step: half},
	{unit: Rasher, kind: Count, one: "rasher", many: "rashers", step: half},
	{unit: Strip, kind: Count, one: "strip", many: "strips", step: half},
	{unit: Wedge, kind: Count, one: "wedge", many: "wedges", step: whole},
	{unit: Scoop, kind: Count, one: "scoop", many: "scoops", step: half},
	{unit: Splash, kind: Count, one: "splash", many: "splashes", step: whole},
	{unit: Squeeze, kind: Count, one: "squeeze", many: "squeezes", step: whole},
	{unit: Drizzle, kind: Count, one: "drizzle", many: "drizzles", step: whole},
	{unit: Dollop, kind: Count, one: "dollop", many: "dollops", step: whole},
	{unit: Glug, kind: Count, one: "glug", many: "glugs", step: whole},

	{unit: Millimetre, kind: Length, one: "mm", many: "mm", step: whole, short: "mms", written: "millimetre,millimetres,millimeter,millimeters"},
	{unit: Centimetre, kind: Length, one: "cm", many: "cm", step: half, short: "cms", written: "centimetre,centimetres,centimeter,centimeters"},
	{unit: Inch, kind: Length, one: "in", many: "in", step: quarter, short: "ins", written: "inch,inches,\",″,”"},

	{unit: Second, kind: Time, one: "s", many: "s", step: whole, short: "sec,secs", written: "second,seconds"},
	{unit: Minute, kind: Time, one: "min", many: "min", step: half, short: "mins", written: "minute,minutes"},
	{unit: Hour, kind: Time, one: "h", many: "h", step: quarter, short: "hr,hrs", written: "hour,hours"},
	{unit: Day, kind: Time, one: "day", many: "days", step: half},

	{unit: Celsius, kind: Temperature, one: "°C", many: "°C", step: whole, written: "℃,celsius,centigrade,degrees c,degrees celsius,degrees centigrade,deg c"},
	{unit: Fahrenheit, kind: Temperature, one: "°F", many: "°F", step: whole, written: "℉,fahrenheit,degrees f,degrees fahrenheit,deg f"},
}

// unitWord is one spelling's meaning.
type unitWord struct {
	unit  Unit
	short bool // an abbreviation
}

var (
	entries   = indexUnits()
	unitWords = indexWords()
)

func indexUnits() map[Unit]*entry {
	m := make(map[Unit]*entry, len(vocabulary))
	for i := range vocabulary {
		m[vocabulary[i].unit] = &vocabulary[i]
	}
	return m
}

func indexWords() map[string]unitWord {
	m := map[string]unitWord{}
	for _, e := range vocabulary {
		add := func(words string, short bool) {
			for w := range strings.SplitSeq(strings.ToLower(words), ",") {
				if w != "" {
					m[w] = unitWord{e.unit, short}
				}
			}
		}
		add(string(e.unit), e.one == e.many && e.unit != Go)
		add(e.one, e.one == e.many && e.unit != Go)
		add(e.many, e.one == e.many && e.unit != Go)
		add(e.short, true)
		add(e.written, false)
	}
	return m
}
