package larder

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"

	"benchproof/kitchen/food"
)

// Fill writes the database's figures into the tables seedDir/larder/*.txt. A
// food is written by hand with its names, source, allergens, packs and what
// the database does not know; Fill adds what 100 g hold and the weights, and
// sets right those it can read itself. Weights keep their place, for the first
// of a unit is its default; new ones go behind.
func Fill(seedDir, referenceDir string) error {
	ref, err := Load(referenceDir)
	if err != nil {
		return err
	}
	tables, err := filepath.Glob(filepath.Join(seedDir, "larder", "*.txt"))
	if err != nil {
		return err
	}
	for _, table := range tables {
		if err := fillTable(table, ref); err != nil {
			return err
		}
	}
	return nil
}

func fillTable(path string, ref *Reference) error {
	text, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	foods, err := food.ReadTable(bytes.NewReader(text))
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	for i := range foods {
		ref.fill(&foods[i])
	}
	var out bytes.Buffer
	for _, line := range bytes.SplitAfter(text, []byte("\n")) {
		if !bytes.HasPrefix(line, []byte("#")) {
			break // only the comment on top is kept
		}
		out.Write(line)
	}
	if err := food.WriteTable(&out, foods); err != nil {
		return err
	}
	return os.WriteFile(path, out.Bytes(), 0o644)
}

// fill sets one food's figures.
func (r *Reference) fill(f *food.Food) {
	row, ok := r.Row(ndbOf(f.Source))
	if !ok {
		return
	}
	for _, n := range food.AllNutrients() {
		f.Per100 = f.Per100.Set(n, row.Get(n))
	}
	if food.IsEstimate(f.Source) {
		return // another food's measures are chosen by hand
	}
	for _, w := range r.Weights(row.NDB) {
		w.Source = f.Source
		addWeight(f, w)
	}
}

// addWeight sets the weight of a unit and form right, or puts it last. One
// that a person gave from elsewhere stays.
func addWeight(f *food.Food, w food.Weight) {
	for i, own := range f.Weights {
		if own.Unit == w.Unit && own.Form == w.Form && own.System == w.System {
			if own.Source == f.Source {
				f.Weights[i] = w
			}
			return
		}
	}
	f.Weights = append(f.Weights, w)
}
