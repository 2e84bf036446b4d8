package main

import (
	"fmt"

	"benchproof/kitchen/recipe"
	"benchproof/seed"
)

// readCommand shows what is understood of a recipe.
type readCommand struct {
	File string `arg:"" help:"The recipe as you would paste it; - reads standard input."`
	JSON bool   `help:"Print JSON."`
}

// Run prints the reading.
func (c *readCommand) Run(std streams) error {
	reading, _, err := readRecipe(c.File, std)
	if err != nil {
		return err
	}
	if c.JSON {
		return printJSON(std.out, reading.Document())
	}
	fmt.Fprint(std.out, understoodText(reading))
	return nil
}

// readRecipe reads a recipe's text with the built-in larder.
func readRecipe(name string, std streams) (recipe.Recipe, recipe.Reader, error) {
	text, err := readText(name, std.in)
	if err != nil {
		return recipe.Recipe{}, recipe.Reader{}, err
	}
	larder, err := seed.Larder()
	if err != nil {
		return recipe.Recipe{}, recipe.Reader{}, err
	}
	reader := recipe.Reader{Larder: larder}
	reading := reader.Read(text)
	reading.System = reading.MeasuredIn()
	return reading, reader, nil
}
