package main

import (
	"encoding/json"
	"fmt"
	"io"
	"os"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// maxRecipe is more than any recipe or plan; it keeps a wrong file from filling
// memory.
const maxRecipe = 1 << 20

// maxCaptions is more than the captions of any cut of four hours.
const maxCaptions = 16 << 20

// readText reads a recipe's file, or standard input for "-".
func readText(name string, in io.Reader) (string, error) {
	return readTextUpTo(name, in, maxRecipe, "that is no recipe")
}

// readTextUpTo reads a file of at most limit bytes; no says what a larger one is.
func readTextUpTo(name string, in io.Reader, limit int64, no string) (string, error) {
	source := in
	if name != "-" {
		file, err := os.Open(name)
		if err != nil {
			return "", fault.Invalidf("file", "Cannot read %s: %v.", name, pathCause(err))
		}
		defer file.Close()
		source = file
	}
	text, err := io.ReadAll(io.LimitReader(source, limit+1))
	switch {
	case err != nil:
		return "", fault.Invalidf("file", "Cannot read %s: %v.", name, pathCause(err))
	case int64(len(text)) > limit:
		return "", fault.Invalidf("file", "%s is over %d MB: %s.", name, limit>>20, no)
	}
	return string(text), nil
}

// pathCause drops the operation and the path, which the sentence already has.
func pathCause(err error) error {
	if e, ok := err.(*os.PathError); ok {
		return e.Err
	}
	return err
}

// printJSON writes v as one readable JSON object.
func printJSON(out io.Writer, v any) error {
	encoder := json.NewEncoder(out)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	return encoder.Encode(v)
}

// systemFlag reads the value of --system; "" leaves the recipe's own or metric.
func systemFlag(value string) (measure.System, error) {
	if value == "" {
		return "", nil
	}
	system, ok := measure.ParseSystem(value)
	if !ok {
		return "", usageError{fmt.Errorf("--system: %q is no measuring system; take us, imperial, metric, australian, japanese or us-label", value)}
	}
	return system, nil
}
