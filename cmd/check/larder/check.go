package larder

import (
	"fmt"
	"os"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/seed"
)

// Check re-derives every figure of the larder's tables from the database. The
// tables are seedDir/larder/*.txt, the database's files stand in referenceDir.
// It gives the number of figures it could compare, and a line for each one
// that differs, naming the food. If the reference is not at hand, rows is 0
// and the one problem says so; err is set for tables that cannot be read.
func Check(seedDir, referenceDir string) (rows int, problems []string, err error) {
	foods, err := seed.ReadLarder(os.DirFS(seedDir))
	if err != nil {
		return 0, nil, err
	}
	ref, err := Load(referenceDir)
	if os.IsNotExist(err) {
		return 0, []string{fmt.Sprintf("%d foods not checked: the USDA SR 26 tables are not in %s", len(foods), referenceDir)}, nil
	}
	if err != nil {
		return 0, nil, err
	}
	for i := range foods {
		c := checker{ref: ref, food: &foods[i]}
		c.nutrients()
		c.weights()
		rows += c.rows
		problems = append(problems, c.problems...)
	}
	return rows, problems, nil
}

// checker compares one food.
type checker struct {
	ref      *Reference
	food     *food.Food
	rows     int
	problems []string
}

func (c *checker) say(format string, args ...any) {
	c.problems = append(c.problems, c.food.Name+": "+fmt.Sprintf(format, args...))
}

// nutrients compares what 100 g hold.
func (c *checker) nutrients() {
	ndb := ndbOf(c.food.Source)
	if ndb == "" {
		return
	}
	row, ok := c.ref.Row(ndb)
	if !ok {
		c.say("the database has no food %s", ndb)
		return
	}
	for _, n := range food.AllNutrients() {
		c.rows++
		switch own, theirs := c.food.Per100.Get(n), row.Get(n); {
		case own == nil && theirs == nil:
		case own == nil:
			c.say("%s is not given, SR %s has %s", n, ndb, measure.FormatDecimal(*theirs, 4))
		case theirs == nil:
			c.say("%s is given, SR %s does not know it", n, ndb)
		case !agree(*own, *theirs):
			c.say("%s %s, SR %s has %s", n, measure.FormatDecimal(*own, 4), ndb, measure.FormatDecimal(*theirs, 4))
		}
	}
}

// weights compares the measures.
func (c *checker) weights() {
	for _, w := range c.food.Weights {
		ndb := ndbOf(w.Source)
		if ndb == "" {
			continue
		}
		c.rows++
		if why := c.weight(w, ndb); why != "" {
			c.say("%s %s %s g: %s", w.Unit.Name(false), w.Form, measure.FormatDecimal(w.Grams, 4), why)
		}
	}
}

// weight finds a measure of the database that a weight agrees with: the one of
// its unit and form, or where the database words it otherwise, one of the same
// kind that is no other of the larder's measures.
func (c *checker) weight(w food.Weight, ndb string) string {
	row, ok := c.ref.Row(ndb)
	if !ok {
		return "the database has no food " + ndb
	}
	for _, own := range c.ref.Weights(ndb) {
		if own.Unit == w.Unit && own.Form == w.Form && own.System == w.System {
			if agree(own.Grams, w.Grams) {
				return ""
			}
			return "SR " + ndb + " has " + measure.FormatDecimal(own.Grams, 4)
		}
	}
	for _, m := range c.ref.Measures(ndb) {
		as, read := readMeasure(m.Text, row.Name)
		sameKind := !read || as.unit.Kind() == w.Unit.Kind()
		if sameKind && agree(m.Grams, w.Grams) {
			return ""
		}
	}
	return "no measure of SR " + ndb + " weighs that"
}
