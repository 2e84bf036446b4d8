package main

import (
	"fmt"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/seed"
)

// convertCommand turns one ingredient line into another measure.
type convertCommand struct {
	Line   string `arg:"" help:"An ingredient line: “1 cup honey”."`
	To     string `required:"" help:"The unit wanted: g, ml, cup, tbsp, oz …"`
	System string `help:"The measuring system of cups and spoons: us, imperial, metric, australian, japanese, us-label." default:"us"`
	JSON   bool   `help:"Print JSON."`
}

// Run prints the converted amount.
func (c *convertCommand) Run(std streams) error {
	system, err := systemFlag(c.System)
	if err != nil {
		return err
	}
	unit, ok := measure.ParseUnit(c.To)
	if !ok {
		return usageError{fmt.Errorf("--to: %q is no unit we know; try g, ml, cup, tbsp, tsp, oz, lb or fl oz", c.To)}
	}
	larder, err := seed.Larder()
	if err != nil {
		return err
	}
	line := recipe.Reader{Larder: larder}.ReadLine(c.Line)
	if !line.Read || !line.HasAmount {
		return fault.Invalidf("line", "“%s” has no amount that can be read. Write it as an ingredient line, such as “1 cup honey”.", c.Line)
	}
	converted, err := recipe.Convert(line, unit, system, larder)
	if err != nil {
		return err
	}
	if c.JSON {
		return printJSON(std.out, converted)
	}
	fmt.Fprintln(std.out, converted.Sentence())
	return nil
}
