package about

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// ovenOf is whose setting a heat is: where a fan's setting follows right behind
// it, "180, or 160 fan", the first is that of an oven without.
func (r *Reading) ovenOf(i int) string {
	s := r.Said[i]
	if s.Kind != speech.Heat || s.Oven != "" || i+1 == len(r.Said) {
		return s.Oven
	}
	if next := r.Said[i+1]; next.Kind == speech.Heat && next.Oven == "fan" && next.From-s.To <= 4 && next.Scale == s.Scale {
		return "conventional"
	}
	return ""
}

// isBesideHeat tells whether the heat right before number i is about fact n: then
// both are one oven's.
func (r *Reading) isBesideHeat(i, n int) bool {
	return i > 0 && r.Said[i].Kind == speech.Heat && r.Said[i-1].Kind == speech.Heat && r.Said[i].From-r.Said[i-1].To <= 12 && r.Ties[i-1].Fact == n && r.Ties[i-1].Agrees
}

// isHeatPossible tells whether a heat can be meant for the one that is written: it
// is right, or not half or twice as much on one of the scales.
func isHeatPossible(s speech.Said, f written.Fact) bool {
	if EqualFact(s, f) {
		return true
	}
	for _, h := range f.Heats {
		if s.Below || h.Below {
			return s.Below && h.Below
		}
		if (s.Scale == "gas") != (h.Scale == "gas") {
			continue
		}
		if SoundsLike(s.Amount, h.Amount) || s.Amount.To.Mul(measure.Whole(2)).Cmp(h.Amount.From) >= 0 && s.Amount.From.Cmp(h.Amount.To.Mul(measure.Whole(2))) <= 0 || isTenfold(s, h) {
			return true
		}
	}
	return s.Scale == "gas" || s.Scale == "F" // against what is written on another scale
}

// isScaleSlip tells the right number on the wrong scale.
func isScaleSlip(s speech.Said, f written.Fact) bool {
	for _, h := range f.Heats {
		if s.Scale != "" && h.Scale != "" && s.Scale != h.Scale && same.Ranges(s.Amount.Range, h.Amount.Range) {
			return true
		}
	}
	return false
}

// SoundsLike tells fifteen said for fifty and the like.
func SoundsLike(a, b measure.Amount) bool {
	for tens := int64(3); tens <= 9; tens++ {
		teen, ty := measure.Whole(10+tens), measure.Whole(10*tens)
		if a.From.Equal(teen) && b.From.Equal(ty) || a.From.Equal(ty) && b.From.Equal(teen) {
			return true
		}
	}
	return false
}

func isTenfold(s, h speech.Said) bool {
	ten := measure.Whole(10)
	return same.Ranges(s.Amount.Range, h.Amount.Range.Scale(ten)) || same.Ranges(s.Amount.Range.Scale(ten), h.Amount.Range)
}

// IsTarget tells a heat that something is brought to: "until it hits ninety".
func (r *Reading) IsTarget(s speech.Said) bool {
	if r.leadOf(s) == "to" {
		return true
	}
	for k := s.From - 1; k >= 0 && k >= s.From-4 && !r.Text.Parts(k); k-- {
		switch w := r.Text.Words[k].Text; w {
		case "for":
			if w := r.Text.At(k - 1); w == "waiting" || w == "looking" || w == "aiming" || w == "after" {
				return true
			}
		case "be":
			if w := r.Text.At(k - 1); w == "should" || w == "must" || w == "to" || w == "gotta" {
				return true
			}
		case "say", "says", "show", "shows", "until", "till", "reach", "reaches", "hits", "hit", "reads", "read", "see", "gets", "get", "comes", "come", "want", "wants", "need", "needs":
			return true
		}
	}
	return false
}

// IsWeather tells a heat of the day: "in february it gets 43 degrees".
func (r *Reading) IsWeather(s speech.Said) bool {
	for k := max(0, s.From-weatherReach); k < min(len(r.Text.Words), s.To+4); k++ {
		if w := r.Text.Words[k].Text; weather[w] || months[w] && r.Text.At(k-1) == "in" {
			return true
		}
	}
	return false
}

// weatherReach is how many words before a heat the weather is spoken of.
const weatherReach = 8

var weather = speech.SetOf("outside weather shade today forecast sun summer winter heatwave")

var months = speech.SetOf("january february march april may june july august september october november december")

// scoreHeat weighs what tells one heat from another.
func (c claim) scoreHeat() float64 {
	score := 0.0
	if c.equal {
		score++ // where an oven has two settings, the one that is said is meant
	}
	if c.equal && c.s.Oven == "" && c.f.Heats[0].Oven != "fan" && same.Ranges(c.s.Amount.Range, c.f.Heats[0].Amount.Range) {
		score += 0.4 // rather than the setting of another step's fan
	}
	if isScaleSlip(c.s, c.f) {
		score += scoreSlip
	}
	if c.r.isBesideHeat(c.i, c.n) {
		score++
	}
	switch oven := c.r.isOfOven(c.s); {
	case oven && c.f.IsOven:
		score += scoreOven
	case c.f.IsOven && c.s.Scale != "" && c.r.IsTarget(c.s):
		score -= 3 // "you want it at 180 Celsius" is said of what is cooked
	case oven != c.f.IsOven:
		score -= 1.5
	}
	return score
}

// isHeatEarned tells whether enough speaks for a heat being a fact's.
func (c claim) isHeatEarned() bool {
	set := c.s.Oven != "" || c.s.Scale == "gas"
	switch {
	case isScaleSlip(c.s, c.f):
		return true
	case !set && c.f.IsOven && c.r.isProbed(c.s):
		return false
	case c.equal && !c.s.Bare && c.distance <= 1:
		return true
	case c.f.IsOven && c.r.isOfOven(c.s):
		return true
	}
	shared := c.shared
	if !c.f.IsOven && c.r.Text.Near(c.s.From, c.s.To, 12, "thermometer", "probe", "internal") {
		shared += scoreHandled
	}
	if !c.f.IsOven && c.r.IsTarget(c.s) {
		shared += scoreHandled
	}
	return shared >= c.least()
}

// isProbed tells the heat of food from an oven's.
func (r *Reading) isProbed(s speech.Said) bool {
	return r.Text.Near(s.From, s.To, 8, "thermometer", "probe", "core", "middle", "inside", "reads", "read", "internal", "centre", "center", "thigh") && !r.Text.Near(s.From, s.To, 8, "oven")
}

// ovenBack is how many words back an oven can be named whose heat is said.
const ovenBack = 28

// isOfOven tells whether the talk is of an oven.
func (r *Reading) isOfOven(s speech.Said) bool {
	for k := max(0, s.From-ovenBack); k < min(len(r.Text.Words), s.To+6); k++ {
		switch r.Text.Words[k].Text {
		case "oven", "preheat", "preheated", "bake", "fan":
			return true
		}
	}
	return isSetting(s) || r.isBesideSetting(s) || r.isTurned(s)
}

// isTurned tells "then we drop it to one eighty", "turn it down to 160": what is turned
// without being named is the oven, where no oil is spoken of.
func (r *Reading) isTurned(s speech.Said) bool {
	if r.Text.At(s.From-1) != "to" || r.Text.Near(s.From, s.To, 8, "oil", "fat", "fryer", "syrup", "sugar", "pan", "chocolate", "custard") {
		return false
	}
	for k := s.From - 2; k >= 0 && k >= s.From-5 && !r.Text.Parts(k); k-- {
		if turned[r.Text.At(k)] {
			return true
		}
	}
	return false
}

var turned = speech.SetOf("turn turned drop dropped knock lower crank down")

func isSetting(s speech.Said) bool { return s.Oven != "" || s.Scale == "gas" }

// isBesideSetting tells whether an oven's setting stands right behind a heat: "two
// hundred degrees, gas mark six".
func (r *Reading) isBesideSetting(s speech.Said) bool {
	return slices.ContainsFunc(r.Said, func(next speech.Said) bool {
		return next.From >= s.To && next.From-s.To <= 3 && next.Kind == speech.Heat && isSetting(next)
	})
}
