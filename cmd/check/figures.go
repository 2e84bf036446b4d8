package main

import (
	"context"
	"errors"
	"os"
	"path/filepath"

	"benchproof/cmd/check/larder"
)

// referenceVariable names the folder with the published database, in the files
// that its publisher gives out: FOOD_DES.txt, WEIGHT.txt and ABBREV.txt of the
// USDA National Nutrient Database for Standard Reference, Release 26.
const referenceVariable = "BENCHPROOF_USDA_SR"

// checkLarder compares the larder with the published database. The database is
// no part of the module: where it is not at hand the tables are only read, and
// that is said.
func checkLarder(_ context.Context, j *job) error {
	reference := os.Getenv(referenceVariable)
	if reference == "" {
		reference = filepath.Join(j.root, "..", "shared", "reference", "usda-sr")
	}
	compared, problems, err := larder.Check(filepath.Join(j.root, "seed"), reference)
	if err != nil {
		return err
	}
	if _, err := os.Stat(reference); errors.Is(err, os.ErrNotExist) && os.Getenv(referenceVariable) == "" {
		for _, p := range problems {
			j.say("%s", p)
		}
		j.say("name its folder in $%s to compare", referenceVariable)
		return nil
	}
	j.say("%d figures compared", compared)
	if compared == 0 && len(problems) == 0 {
		return errors.New("no figure was compared")
	}
	return j.list(problems)
}
