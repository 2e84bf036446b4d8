package seed

import (
	"embed"
	"fmt"
	"io/fs"
	"sync"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
)

//go:embed larder/*.txt
var larderTables embed.FS

// Larder gives the built-in larder: every table of larder/, read once. The
// larder is shared; it is never changed.
func Larder() (*food.Larder, error) { return readOnce() }

var readOnce = sync.OnceValues(func() (*food.Larder, error) {
	foods, err := ReadLarder(larderTables)
	if err != nil {
		return nil, err
	}
	return food.NewLarder(foods), nil
})

// ReadLarder reads the tables *.txt of a folder named larder, in the order of
// their names. An error names file and line; an id that stands in two files is
// one too.
func ReadLarder(from fs.FS) ([]food.Food, error) {
	names, err := fs.Glob(from, "larder/*.txt")
	if err != nil {
		return nil, fmt.Errorf("read larder: %w", err)
	}
	var foods []food.Food
	home := map[string]string{}
	for _, name := range names {
		some, err := readTable(from, name)
		if err != nil {
			return nil, err
		}
		for _, f := range some {
			if other, ok := home[f.ID]; ok {
				return nil, fault.Invalidf("", "%s: the id %s is taken in %s", name, f.ID, other)
			}
			home[f.ID] = name
		}
		foods = append(foods, some...)
	}
	return foods, nil
}

func readTable(from fs.FS, name string) ([]food.Food, error) {
	file, err := from.Open(name)
	if err != nil {
		return nil, fmt.Errorf("read larder: %w", err)
	}
	defer func() { _ = file.Close() }()
	foods, err := food.ReadTable(file)
	if say := fault.Say(err); say != "" {
		return nil, &fault.Error{Kind: fault.KindOf(err), Say: name + ", " + say, Err: err}
	}
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return foods, nil
}
