package main

import (
	"fmt"
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// scaleCommand scales a recipe one of five ways.
type scaleCommand struct {
	File        string `arg:"" help:"The recipe as you would paste it; - reads standard input."`
	By          string `help:"Factor: 2, 3/2, 1.5." xor:"how"`
	Pieces      string `help:"Number of pieces or servings to make." xor:"how"`
	PieceWeight string `help:"Weight of each piece, such as 80g, for the pieces the recipe makes." xor:"how"`
	Tin         string `help:"From one tin to another: “20 cm round,23 cm round”." xor:"how"`
	Have        string `help:"What is in hand: “3 eggs”." xor:"how"`
	System      string `help:"The measuring system of cups and spoons, where the recipe says none." default:"metric"`
	JSON        bool   `help:"Print JSON."`
}

// Run prints the scaled recipe.
func (c *scaleCommand) Run(std streams) error {
	system, err := systemFlag(c.System)
	if err != nil {
		return err
	}
	reading, reader, err := readRecipe(c.File, std)
	if err != nil {
		return err
	}
	writer := recipe.Writer{Larder: reader.Larder, House: system, Source: reading.System}
	by, err := c.factor(reading, writer)
	if err != nil {
		return err
	}
	scaled := recipe.Scale(reading, by, writer)
	if c.JSON {
		return printJSON(std.out, scaled.Document())
	}
	fmt.Fprint(std.out, scaledText(scaled))
	return nil
}

// factor finds the factor asked for.
func (c *scaleCommand) factor(r recipe.Recipe, w recipe.Writer) (measure.Number, error) {
	switch {
	case c.By != "":
		by, err := recipe.ReadFactor(c.By)
		return by, flagError("--by", err)
	case c.Pieces != "":
		pieces, err := positiveFlag("--pieces", c.Pieces)
		if err != nil {
			return pieces, err
		}
		return recipe.FactorForPieces(r, pieces)
	case c.PieceWeight != "":
		weight, rest, ok := measure.ReadAmount(c.PieceWeight)
		if !ok || strings.TrimSpace(rest) != "" || weight.Amount.Unit.Kind() != measure.Mass {
			return measure.Number{}, usageError{fmt.Errorf("--piece-weight: %q is not a weight such as 80g", c.PieceWeight)}
		}
		return recipe.FactorForPieceWeight(r, "", measure.Number{}, weight.Amount, w)
	case c.Tin != "":
		from, to, ok := strings.Cut(c.Tin, ",")
		if !ok {
			return measure.Number{}, usageError{fmt.Errorf("--tin: %q is not FROM,TO such as “20 cm round,23 cm round”", c.Tin)}
		}
		tins, err := recipe.FactorForTins(from, to)
		return tins.Factor, flagError("--tin", err)
	case c.Have != "":
		return recipe.FactorForHave(r, c.Have, w)
	}
	return measure.Number{}, usageError{fmt.Errorf("say how to scale: --by, --pieces, --piece-weight, --tin or --have")}
}

// positiveFlag reads a number above 0 as cooks and programs write it.
func positiveFlag(flag, value string) (measure.Number, error) {
	n, rest, ok := measure.ReadNumber(value)
	if !ok || strings.TrimSpace(rest) != "" || n.Sign() <= 0 {
		return measure.Number{}, usageError{fmt.Errorf("%s: %q is not a number above 0 such as 2, 3/2 or 1.5", flag, value)}
	}
	return n, nil
}

// flagError says which flag a refused value belongs to; nil stays nil.
func flagError(flag string, err error) error {
	if err == nil {
		return nil
	}
	return usageError{fmt.Errorf("%s: %s", flag, fault.Say(err))}
}
