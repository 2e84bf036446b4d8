package tin

import (
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// Shape is the shape of a tin.
type Shape string

// The shapes.
const (
	Round       Shape = "round"
	Square      Shape = "square"
	Rectangular Shape = "rectangular"
	Loaf        Shape = "loaf"
	Ring        Shape = "ring"
	Cone        Shape = "cone"
)

// Tin is a tin, or several alike. Lengths are in centimetres.
type Tin struct {
	Shape  Shape
	Count  measure.Number // how many of them, 1 if not said
	Across measure.Number // diameter at the top, side, or length
	Wide   measure.Number // width of a rectangle; the hole of a ring; else the diameter at the bottom of a sloping round
	Deep   measure.Number // 0 if not said
	Text   string         // as written
}

// pi to fifteen figures; between two round tins it cancels out.
var pi = measure.MustNumber("3.14159265358979")

var (
	one    = measure.Whole(1)
	three  = measure.Whole(3)
	four   = measure.Whole(4)
	twelve = measure.Whole(12)
)

// Area gives what the tin covers, in cm²: of a sloping one at the top, of a cone
// its opening, of a ring without its hole; times the count.
func (t Tin) Area() measure.Number {
	square := t.Across.Mul(t.Across)
	switch t.Shape {
	case Square:
		return square.Mul(t.Count)
	case Rectangular, Loaf:
		return t.Across.Mul(t.Wide).Mul(t.Count)
	case Ring:
		return square.Sub(t.Wide.Mul(t.Wide)).Mul(pi).Quo(four).Mul(t.Count)
	}
	return square.Mul(pi).Quo(four).Mul(t.Count)
}

// Volume gives what the tin holds to the brim, in mL; ok is false if its depth
// is not said. A round tin with two diameters is a frustum, πh/3 (R² + Rr + r²).
// Source: "Conical Frustum Formulas"; definitions of cylinder and prism.
func (t Tin) Volume() (volume measure.Number, ok bool) {
	if t.Deep.IsZero() {
		return measure.Number{}, false
	}
	switch {
	case t.Shape == Cone:
		return t.Area().Mul(t.Deep).Quo(three), true
	case t.Shape == Round && !t.Wide.IsZero():
		squares := t.Across.Mul(t.Across).Add(t.Across.Mul(t.Wide)).Add(t.Wide.Mul(t.Wide))
		return pi.Mul(t.Deep).Mul(squares).Quo(twelve).Mul(t.Count), true
	}
	return t.Area().Mul(t.Deep), true
}

// Ratio gives how much more to holds than from, by volume where both have a
// depth, else by area, which means filled to the same depth. by is "volume" or
// "area".
func Ratio(from, to Tin) (factor measure.Number, by string, err error) {
	a, deepA := from.Volume()
	b, deepB := to.Volume()
	if deepA && deepB {
		return b.Quo(a), "volume", nil
	}
	if from.Shape == Cone || to.Shape == Cone {
		return measure.Number{}, "", fault.Invalidf("tin", "A cone is compared by what it holds: give both depths, such as “5 x 12 cm cone” and “20 x 5 cm round”.")
	}
	return to.Area().Quo(from.Area()), "area", nil
}

// Parse reads a tin as cooks name it: "20 cm round", "8 in square", "9 x 13 in",
// "23 x 13 x 7 cm loaf", "20 x 5 cm round" (diameter × depth), "20/16 x 5 cm
// round" (sloping: top/bottom × depth), "25 x 7 x 8 cm ring" (outside × hole ×
// depth), "5 x 12 cm cone" (opening × depth), "two 20 cm round". Without a shape,
// one length is a round tin, two are a rectangle. Without a unit the lengths are
// centimetres from 14 up, inches below. The error is fault.Invalid on "tin".
func Parse(text string) (Tin, error) {
	p := parser{rest: strings.ToLower(strings.TrimSpace(text)), tin: Tin{Text: strings.TrimSpace(text), Count: one}}
	if len(p.rest) > 100 {
		return Tin{}, fault.Invalidf("tin", "“%.20s…” is too long for a tin. Write it as “20 cm round”.", text)
	}
	p.count()
	p.lengths()
	p.shape()
	if err := p.check(); err != nil {
		return Tin{}, err
	}
	return p.tin, nil
}

// parser reads one tin.
type parser struct {
	rest  string
	tin   Tin
	nums  []measure.Number
	slope measure.Number // the bottom of a sloping tin
	unit  measure.Unit
	bad   bool
}

// count takes "two", "2 x" before a length with its own unit, "3 tins of".
func (p *parser) count() {
	n, rest, ok := measure.ReadNumber(p.rest)
	if !ok || !n.IsWhole() || n.Sign() <= 0 || n.Cmp(measure.Whole(100)) > 0 {
		return
	}
	word, after, _ := strings.Cut(rest, " ")
	switch strings.TrimSuffix(strings.TrimSuffix(word, "s"), "e") {
	case "tin", "pan", "mould", "mold", "of", "con", "ring", "cornet", "roun":
		p.tin.Count, p.rest = n, strings.TrimPrefix(after, "of ")
		if word == "cone" || word == "cones" || word == "ring" || word == "rings" {
			p.rest += " " + word
		}
		return
	}
	if c := p.rest[0]; c < '0' || c > '9' { // "two 20 cm round": the number is a word
		if _, _, ok := measure.ReadNumber(rest); ok {
			p.tin.Count, p.rest = n, rest
		}
	}
}

// lengths takes numbers parted by x, ×, by; a slash parts top from bottom.
func (p *parser) lengths() {
	p.sloping()
	for len(p.nums) < 4 {
		n, rest, ok := measure.ReadNumber(p.rest)
		if !ok || n.Sign() <= 0 {
			return
		}
		p.nums = append(p.nums, n)
		p.rest = p.cutUnit(rest)
		if !p.times() {
			return
		}
	}
}

// times skips the sign between two lengths and tells whether there was one.
func (p *parser) times() bool {
	for _, sign := range []string{"x", "×", "by ", "*"} {
		if after, ok := strings.CutPrefix(p.rest, sign); ok {
			p.rest = strings.TrimSpace(after)
			return true
		}
	}
	return false
}

// sloping takes "20/16", top and bottom of a sloping tin: no fraction, for the
// top is wider than the bottom.
func (p *parser) sloping() {
	top, rest, ok := strings.Cut(p.rest, "/")
	a, err := measure.ParseNumber(top)
	if !ok || err != nil {
		return
	}
	b, rest, ok := measure.ReadNumber(rest)
	if !ok || b.Sign() <= 0 || a.Cmp(b) < 0 || a.Cmp(four) < 0 {
		return
	}
	p.nums, p.slope = append(p.nums, a), b
	p.rest = p.cutUnit(rest)
	p.times()
}

// cutUnit takes a unit of length off the start.
func (p *parser) cutUnit(rest string) string {
	rest = strings.TrimLeft(rest, " -\u00a0")
	for _, u := range []struct {
		word string
		unit measure.Unit
	}{{"centimetres", measure.Centimetre}, {"centimeters", measure.Centimetre}, {"cm", measure.Centimetre}, {"mm", measure.Millimetre},
		{"inches", measure.Inch}, {"inch", measure.Inch}, {"in", measure.Inch}, {"\"", measure.Inch}, {"″", measure.Inch}, {"”", measure.Inch}} {
		after, ok := strings.CutPrefix(rest, u.word)
		if !ok || after != "" && after[0] >= 'a' && after[0] <= 'z' && after[0] != 'x' {
			continue
		}
		if p.unit != "" && p.unit != u.unit {
			p.bad = true
		}
		p.unit = u.unit
		return strings.TrimSpace(after)
	}
	return rest
}

// shapes are the words that tell a tin's shape.
var shapes = map[string]Shape{
	"round": Round, "rounds": Round, "circle": Round, "circular": Round, "springform": Round, "sandwich": Round, "tart": Round,
	"pie": Round, "quiche": Round, "flan": Round, "cake": Round, "ø": Round, "square": Square, "rectangle": Rectangular, "rectangular": Rectangular,
	"oblong": Rectangular, "tray": Rectangular, "traybake": Rectangular, "roasting": Rectangular, "loaf": Loaf, "ring": Ring, "rings": Ring,
	"tube": Ring, "savarin": Ring, "cone": Cone, "cones": Cone, "cornet": Cone, "cornets": Cone, "skillet": Round, "dish": "",
}

// shape finds the shape among the words that are left.
func (p *parser) shape() {
	for _, w := range strings.Fields(p.rest) {
		if s, ok := shapes[strings.Trim(w, ".,()")]; ok && s != "" && (p.tin.Shape == "" || p.tin.Shape == Round && w != "cake") {
			p.tin.Shape = s
		}
	}
	if p.tin.Shape == "" {
		p.tin.Shape = Round
		if len(p.nums) >= 2 {
			p.tin.Shape = Rectangular
		}
	}
	if p.tin.Shape == Round && len(p.nums) == 3 {
		p.tin.Shape = Rectangular // "13 x 9 x 2 cake tin"
	}
}

// check gives the lengths their places and looks whether they make sense.
func (p *parser) check() error {
	t := &p.tin
	var need, most int
	switch t.Shape {
	case Round, Cone:
		need, most = 1, 2
	case Square:
		need, most = 1, 3
	default:
		need, most = 2, 3
	}
	if p.bad || len(p.nums) < need || len(p.nums) > most {
		return fault.Invalidf("tin", "“%s” is not a tin that can be measured. Write it as %s.", t.Text, example(t.Shape))
	}
	for i := range p.nums {
		p.nums[i] = p.centimetres(p.nums[i])
	}
	t.Across = p.nums[0]
	rest := p.nums[1:]
	if need == 2 {
		t.Wide, rest = p.nums[1], p.nums[2:]
	}
	if t.Shape == Square && len(rest) > 0 {
		if len(rest) == 2 && !rest[0].Equal(t.Across) || rest[0].Cmp(t.Across) > 0 {
			return fault.Invalidf("tin", "“%s” is called square, but its sides differ. Write it as “20 x 30 cm” or “20 cm square”.", t.Text)
		}
		if rest[0].Equal(t.Across) {
			rest = rest[1:] // "8 x 8 square"
		}
	}
	if len(rest) == 1 {
		t.Deep = rest[0]
	}
	if !p.slope.IsZero() && t.Shape == Round {
		t.Wide = p.centimetres(p.slope)
	}
	if t.Shape == Ring && t.Wide.Cmp(t.Across) >= 0 {
		return fault.Invalidf("tin", "The hole of “%s” is as wide as the ring. Write outside, hole and depth: “25 x 7 x 8 cm ring”.", t.Text)
	}
	return nil
}

// centimetres gives a length in cm. Without a unit, 14 and more are
// centimetres, since no kitchen has a 14 in tin: common practice, no source.
func (p *parser) centimetres(n measure.Number) measure.Number {
	unit := p.unit
	if unit == "" {
		unit = measure.Inch
		if p.nums[0].Cmp(measure.Whole(14)) >= 0 {
			unit = measure.Centimetre
		}
	}
	mm, _ := measure.Millimetres(unit)
	return n.Mul(mm).Quo(measure.Whole(10))
}

func example(s Shape) string {
	switch s {
	case Rectangular:
		return "“20 x 30 cm”"
	case Loaf:
		return "“23 x 13 x 7 cm loaf”"
	case Ring:
		return "“25 x 7 x 8 cm ring” (outside, hole, depth)"
	case Cone:
		return "“5 x 12 cm cone”"
	}
	return "“20 cm round” or “20 x 30 cm”"
}
