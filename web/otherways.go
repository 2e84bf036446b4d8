package web

import (
	"net/url"
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// otherWays are the ways to scale that are wanted now and then.
var otherWays = []views.Field{
	{Name: "each", Label: "A piece weighs", Placeholder: "80 g", Hint: "Before cooking, for as many pieces as the recipe makes."},
	{Name: "from", Label: "From a tin of", Placeholder: "20 cm round"},
	{Name: "to", Label: "to a tin of", Placeholder: "23 cm round", Hint: "Round, square, rectangular, loaf, ring or cone, in cm or inches; with both depths it goes by volume."},
	{Name: "have", Label: "To use up", Placeholder: "3 eggs"},
}

// otherWay finds the factor by one of otherWays; asked is false where none is
// filled in. The error is fault.Invalid on the field.
func otherWay(asked url.Values, r recipe.Recipe, w recipe.Writer) (by measure.Number, isAsked bool, err error) {
	text := func(name string) string { return strings.TrimSpace(asked.Get(name)) }
	switch each, from, to, have := text("each"), text("from"), text("to"), text("have"); {
	case each != "":
		by, err = eachFactor(r, each, w)
		return by, true, about("each", err)
	case from != "" && to != "":
		tins, err := recipe.FactorForTins(from, to)
		return tins.Factor, true, about("to", err)
	case from != "" || to != "":
		return by, true, fault.Invalidf("to", "Name both tins: the one the recipe is for and the one you have.")
	case have != "":
		by, err = recipe.FactorForHave(r, have, w)
		return by, true, about("have", err)
	}
	return by, false, nil
}

func eachFactor(r recipe.Recipe, each string, w recipe.Writer) (measure.Number, error) {
	weight, rest, ok := measure.ReadAmount(each)
	if !ok || strings.TrimSpace(rest) != "" || weight.Amount.Unit.Kind() != measure.Mass {
		return measure.Number{}, fault.Invalidf("each", "“%s” is not a weight such as 80 g or 3 oz.", each)
	}
	return recipe.FactorForPieceWeight(r, "", measure.Number{}, weight.Amount, w)
}

// about puts a fault at the field it is about; nil stays nil.
func about(field string, err error) error {
	if err == nil {
		return nil
	}
	return &fault.Error{Kind: fault.KindOf(err), Field: field, Say: fault.Say(err), Err: err}
}

func otherWaysForm(path string, asked url.Values, err error) views.Form {
	return views.Form{
		ID: "other-ways", Title: "By the weight of a piece, the tin, or what is in hand", Get: true, Action: path,
		Fields: filled(otherWays, asked.Get, err), Submit: "Try",
	}
}
