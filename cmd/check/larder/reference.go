package larder

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// Reference is the part of the database that the larder uses.
type Reference struct {
	foods    map[string]Row // by NDB number
	measures map[string][]Measure
}

// Row is one food of the database: nutrients per 100 g.
type Row struct {
	NDB   string
	Name  string
	Group string // "0100"
	food.Nutrients
	Ash    *measure.Number
	Refuse measure.Number // inedible part as bought, %
}

// Measure is one household measure of one food, already divided by its amount.
type Measure struct {
	Text  string         // "cup, chopped"
	Grams measure.Number // per one
	Whole bool           // the amount was 1
}

// columns of ABBREV.txt, from 0, by nutrient.
var columns = map[food.Nutrient]int{
	food.Water: 2, food.EnergyKcal: 3, food.Protein: 4, food.Fat: 5, food.Saturated: 44, food.Carbohydrate: 7,
	food.Sugars: 9, food.Fibre: 8, food.SodiumMilligrams: 15, food.CholesterolMilligrams: 47, food.CalciumMilligrams: 10,
}

const ashColumn, refuseColumn = 6, 52

// Load reads the database from a folder with FOOD_DES.txt, WEIGHT.txt and
// ABBREV.txt. A missing folder or file is an error that os.IsNotExist knows.
func Load(dir string) (*Reference, error) {
	ref := &Reference{foods: map[string]Row{}, measures: map[string][]Measure{}}
	for _, file := range []struct {
		name   string
		fields int
		take   func([]string) error
	}{
		{"FOOD_DES.txt", 14, ref.describe}, {"ABBREV.txt", 53, ref.nourish}, {"WEIGHT.txt", 7, ref.weigh},
	} {
		if err := readFile(filepath.Join(dir, file.name), file.fields, file.take); err != nil {
			return nil, err
		}
	}
	return ref, nil
}

// readFile hands each record's fields, without their tildes, to take.
func readFile(path string, fields int, take func([]string) error) error {
	file, err := os.Open(path)
	if err != nil {
		return err
	}
	defer func() { _ = file.Close() }()
	lines := bufio.NewScanner(file)
	for n := 1; lines.Scan(); n++ {
		record := strings.Split(lines.Text(), "^")
		if len(record) != fields {
			return fmt.Errorf("%s:%d: %d fields, want %d", path, n, len(record), fields)
		}
		for i := range record {
			record[i] = strings.Trim(record[i], "~")
		}
		if err := take(record); err != nil {
			return fmt.Errorf("%s:%d: %w", path, n, err)
		}
	}
	return lines.Err()
}

func (r *Reference) describe(f []string) error {
	r.foods[f[0]] = Row{NDB: f[0], Group: f[1], Name: f[2]}
	return nil
}

func (r *Reference) nourish(f []string) error {
	row, ok := r.foods[f[0]]
	if !ok {
		return fmt.Errorf("NDB %s has no description", f[0])
	}
	for n, column := range columns {
		figure, err := optional(f[column])
		if err != nil {
			return err
		}
		row.Nutrients = row.Set(n, figure)
	}
	var err error
	if row.Ash, err = optional(f[ashColumn]); err != nil {
		return err
	}
	refuse, err := optional(f[refuseColumn])
	if err != nil {
		return err
	}
	if refuse != nil {
		row.Refuse = *refuse
	}
	row.Alcohol = row.alcohol()
	r.foods[f[0]] = row
	return nil
}

// alcohol is what is missing to 100 g in a drink or an extract: these tables
// have no column for it. Under 0.3 g it is rounding, and nil.
func (r Row) alcohol() *measure.Number {
	if r.Group != "1400" && r.NDB != "02050" && r.NDB != "43479" {
		return nil
	}
	rest := measure.Whole(100)
	for _, part := range []*measure.Number{r.Water, r.Protein, r.Fat, r.Carbohydrate, r.Ash} {
		if part == nil {
			return nil
		}
		rest = rest.Sub(*part)
	}
	if rest.Cmp(measure.MustNumber("0.3")) < 0 {
		return nil
	}
	return &rest
}

func (r *Reference) weigh(f []string) error {
	amount, err := measure.ParseNumber(f[2])
	if err != nil || amount.Sign() <= 0 {
		return fmt.Errorf("amount %q", f[2])
	}
	grams, err := measure.ParseNumber(f[4])
	if err != nil {
		return err
	}
	r.measures[f[0]] = append(r.measures[f[0]], Measure{Text: f[3], Grams: grams.Quo(amount), Whole: amount.Equal(measure.Whole(1))})
	return nil
}

// optional reads a figure; an empty field is not known.
func optional(field string) (*measure.Number, error) {
	if field == "" {
		return nil, nil
	}
	n, err := measure.ParseNumber(field)
	if err != nil {
		return nil, err
	}
	return &n, nil
}

// Row gives the food with this NDB number.
func (r *Reference) Row(ndb string) (Row, bool) {
	row, ok := r.foods[ndb]
	return row, ok
}

// Measures gives the household measures of a food, in the database's order.
func (r *Reference) Measures(ndb string) []Measure { return r.measures[ndb] }

// ndbOf gives the NDB number that a source names, "" if it names none.
func ndbOf(source string) string {
	_, ndb, ok := strings.Cut(source, "USDA SR ")
	if !ok || len(ndb) < 5 {
		return ""
	}
	if _, err := strconv.Atoi(ndb[:5]); err != nil {
		return ""
	}
	return ndb[:5]
}
