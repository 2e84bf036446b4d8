package measure

import "strings"

// System decides what cup, spoons, pint and fluid ounce hold. The empty system
// means: not said; the next one up (recipe, then show) decides.
type System string

// The measuring systems. Sources: NIST Handbook 44 App. C (US); Weights and
// Measures Act 1985 Sch. 1 (imperial); Standards Association of Australia;
// 21 CFR 101.9(b)(5)(viii) (label).
const (
	US         System = "us"
	Imperial   System = "imperial"
	Metric     System = "metric"     // 5, 10, 15, 250 mL
	Australian System = "australian" // tablespoon 20 mL, cup 250 mL
	Japanese   System = "japanese"   // cup 200 mL
	USLabel    System = "us-label"   // 5, 15, 30, 240 mL
)

// systemNames are shown to people; the order is that of Systems.
var systemNames = []struct {
	system System
	name   string
	words  string // every word for it in lower case, comma between
}{
	{US, "US customary", "us,usa,u s,u s a,american,us customary,customary"},
	{Imperial, "imperial", "imperial,uk,u k,british,english"},
	{Metric, "metric", "metric,nz,new zealand,kiwi,canadian,european,eu"},
	{Australian, "Australian", "australian,au,aus,aussie,australia"},
	{Japanese, "Japanese", "japanese,japan,jp,jpn"},
	{USLabel, "US nutrition label", "us label,label,us nutrition label,nutrition label"},
}

var systemWords = func() map[string]System {
	m := map[string]System{}
	for _, s := range systemNames {
		for w := range strings.SplitSeq(s.words, ",") {
			m[w] = s.system
		}
	}
	return m
}()

// holds gives what a system itself defines, in millilitres. Small spoons are
// kept as fractions of the system's teaspoon, gills and up of its pint.
var holds = map[System]map[Unit]Number{
	US: {
		Teaspoon: MustNumber("4.92892159375"), Tablespoon: MustNumber("14.78676478125"),
		FluidOunce: MustNumber("29.5735295625"), Gill: MustNumber("118.29411825"),
		Cup: MustNumber("236.5882365"), Pint: MustNumber("473.176473"),
		Quart: MustNumber("946.352946"), Gallon: MustNumber("3785.411784"),
	},
	Imperial: {
		FluidOunce: MustNumber("28.4130625"), Gill: MustNumber("142.0653125"),
		Cup: MustNumber("284.130625"), Pint: MustNumber("568.26125"),
		Quart: MustNumber("1136.5225"), Gallon: MustNumber("4546.09"),
	},
	Metric:     {Teaspoon: Whole(5), Dessertspn: Whole(10), Tablespoon: Whole(15), Cup: Whole(250)},
	Australian: {Tablespoon: Whole(20)},
	Japanese:   {Cup: Whole(200)},
	USLabel:    {Teaspoon: Whole(5), Tablespoon: Whole(15), FluidOunce: Whole(30), Cup: Whole(240)},
}

// next says where each system looks for a unit it does not define itself.
var next = map[System]System{
	US: Metric, Imperial: Metric, Metric: Imperial, Australian: Metric, Japanese: Metric, USLabel: US,
}

// fixed are the volumes that are the same everywhere, in millilitres. The drop
// is a twentieth of a millilitre: pharmacy practice, from memory.
var fixed = map[Unit]Number{
	Millilitre: Whole(1), Centilitre: Whole(10), Decilitre: Whole(100), Litre: Whole(1000),
	Drop: Ratio(1, 20), Go: Ratio(2401000, 13310),
}

// ofTeaspoon are small spoons as parts of a teaspoon: a convention, no
// standard.
var ofTeaspoon = map[Unit]Number{Dash: Ratio(1, 8), Pinch: Ratio(1, 16), Smidgen: Ratio(1, 32)}

// Systems lists the systems in the order a form would offer them.
func Systems() []System {
	all := make([]System, len(systemNames))
	for i, s := range systemNames {
		all[i] = s.system
	}
	return all
}

// ParseSystem reads a word for a system: "US", "American", "imperial", "UK",
// "Aussie". New Zealand and Canada measure as Metric does. The empty word is
// no system.
func ParseSystem(word string) (System, bool) {
	s := System(word)
	if _, ok := holds[s]; ok {
		return s, true
	}
	s, ok := systemWords[plain(word)]
	return s, ok
}

// Name gives the system as a person reads it, "not said" for the empty one.
func (s System) Name() string {
	for _, n := range systemNames {
		if n.system == s {
			return n.name
		}
	}
	if s == "" {
		return "not said"
	}
	return string(s)
}

// Or gives s if it is said, else t: line.Or(recipe).Or(show).
func (s System) Or(t System) System {
	if s != "" {
		return s
	}
	return t
}

// Millilitres gives what one u holds, exact; ok is false if u is no volume, or
// if it depends on the system and s is not said.
//
// A system that does not define a unit borrows it: US and Japanese from
// Metric, then Imperial; Australian from Metric, then Imperial; Imperial its
// spoons from Metric (the Act knows none); Metric its pint, quart, gallon,
// gill and fluid ounce from Imperial; USLabel from US. Describe says so.
func (s System) Millilitres(u Unit) (Number, bool) {
	n, _, ok := s.volume(u)
	return n, ok
}

// volume is Millilitres with the system that the figure came from, "" if it is
// the same everywhere.
func (s System) volume(u Unit) (Number, System, bool) {
	if n, ok := fixed[u]; ok {
		return n, "", true
	}
	if part, ok := ofTeaspoon[u]; ok {
		n, from, ok := s.volume(Teaspoon)
		return n.Mul(part), from, ok
	}
	for range len(next) {
		if n, ok := holds[s][u]; ok {
			return n, s, true
		}
		s = next[s]
	}
	return Number{}, "", false
}

// Grams gives what one u weighs, exact; ok is false if u is no mass.
// The pound is 453.59237 g. Source: Weights and Measures Act 1985, Sch. 1
// Part V; NIST SP 811, app. B.
func Grams(u Unit) (Number, bool) {
	n, ok := masses[u]
	return n, ok
}

// Grams is the function Grams but for the label ounce: on a US nutrition label
// an ounce is 28 g. It is for writing labels only; Convert and Hand keep the
// exact ounce, of which 16 make a pound. Source: 21 CFR 101.9(b)(5)(viii).
func (s System) Grams(u Unit) (Number, bool) {
	if s == USLabel && u == Ounce {
		return Whole(28), true
	}
	return Grams(u)
}

var masses = map[Unit]Number{
	Milligram: Ratio(1, 1000), Gram: Whole(1), Kilogram: Whole(1000),
	Ounce: MustNumber("28.349523125"), Pound: MustNumber("453.59237"),
}

// Millimetres gives the length of one u, exact; ok is false if u is no length.
// The inch is 25.4 mm. Source: NIST SP 811, app. B.
func Millimetres(u Unit) (Number, bool) {
	n, ok := lengths[u]
	return n, ok
}

var lengths = map[Unit]Number{Millimetre: Whole(1), Centimetre: Whole(10), Inch: MustNumber("25.4")}

var minutes = map[Unit]Number{Second: Ratio(1, 60), Minute: Whole(1), Hour: Whole(60), Day: Whole(24 * 60)}

// Describe says what was assumed about u: "cup = 236.588 mL (US customary)".
// A borrowed size names the lender and the borrower. It is "" where nothing
// was assumed: for grams, millilitres, counts.
func (s System) Describe(u Unit) string {
	n, from, ok := s.volume(u)
	if !ok || from == "" && u != Drop && u != Go {
		return ""
	}
	text := u.Name(false) + " = " + FormatDecimal(n, 3) + " mL"
	switch from {
	case "":
		return text
	case s:
		return text + " (" + s.Name() + ")"
	}
	return text + " (" + from.Name() + "; " + s.Name() + " has none of its own)"
}
