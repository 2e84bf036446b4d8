package store_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/store"
)

// Whatever stands in the short lists that share a column comes back as it was.
func TestListsInOneColumnComeBackAsTheyWere(t *testing.T) {
	st := open(t)
	recipeID, _ := addRecipe(t, st, "Eggs")
	words := rapid.StringOf(rapid.OneOf(rapid.SampledFrom([]rune("\\\t\n\r|,;nt½ a")), rapid.Rune()))
	number := rapid.Custom(func(rt *rapid.T) measure.Number {
		return measure.Ratio(rapid.Int64().Draw(rt, "over"), rapid.Int64Range(1, 1<<62).Draw(rt, "under"))
	})
	amount := rapid.Custom(func(rt *rapid.T) measure.Amount {
		return measure.Amount{Range: measure.Range{From: number.Draw(rt, "from"), To: number.Draw(rt, "to")}, Unit: measure.Unit(words.Draw(rt, "unit"))}
	})
	rapid.Check(t, func(rt *rapid.T) {
		texts := func(name string) []string { return none(rapid.SliceOfN(words, 0, 3).Draw(rt, name)) }
		amounts := func(name string) []measure.Amount { return none(rapid.SliceOfN(amount, 0, 3).Draw(rt, name)) }
		want := recipe.Recipe{
			Intro: texts("intro"), Notes: texts("notes"), Credits: texts("credits"), Equipment: texts("equipment"),
			Placed: []recipe.Place{{Number: rapid.Int().Draw(rt, "number"), Text: words.Draw(rt, "text"), In: recipe.Part(words.Draw(rt, "in")), Component: -1, Of: rapid.Int().Draw(rt, "of")}},
			Components: []recipe.Component{{
				Lines: []recipe.Line{{Text: words.Draw(rt, "line"), Plus: amounts("plus"), Equals: amounts("equals"), Choices: texts("choices")}},
				Steps: []recipe.Step{{
					Temperatures: []measure.Heat{{Degrees: amount.Draw(rt, "degrees").Range, Scale: words.Draw(rt, "scale"), Text: words.Draw(rt, "heat")}},
					Uses:         []recipe.Use{{Line: -1, Amount: amount.Draw(rt, "used"), HasAmount: rapid.Bool().Draw(rt, "has"), Words: words.Draw(rt, "words")}},
				}},
			}},
		}
		id := must(st.AddVersion(t.Context(), store.Version{RecipeID: recipeID, Reading: want}))(t)
		if diff := cmp.Diff(want, must(st.Version(t.Context(), id))(t).Reading); diff != "" {
			rt.Fatalf("reading (-want +got):\n%s", diff)
		}
		execRaw(t, st, "DELETE FROM version WHERE version_id = ?1", id)
	})
}

// none makes an empty slice nil, as the store gives it.
func none[T any](all []T) []T {
	if len(all) == 0 {
		return nil
	}
	return all
}

// Whatever number can be saved can be read again.
func TestLongNumbersComeBack(t *testing.T) {
	long := measure.Whole(1)
	for range 30 {
		long = long.Mul(measure.Ratio(999_999_999_999_999_989, 1_000_000_007))
	}
	tests := []struct {
		name  string
		value measure.Number
	}{
		{"the largest machine word", measure.Whole(1<<63 - 1)},
		{"one more than that", measure.Whole(1<<63 - 1).Add(measure.Whole(1))},
		{"the smallest machine word", measure.Ratio(-1<<63, 1)},
		{"a thousand with zeros at the joint", measure.Whole(1_000_000_000_000_000_000).Mul(measure.Whole(1_000))},
		{"hundreds of digits", long},
		{"hundreds of digits below zero", measure.Number{}.Sub(long)},
		{"one over hundreds of digits", measure.Whole(1).Quo(long)},
	}
	st := open(t)
	recipeID, _ := addRecipe(t, st, "Eggs")
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			amount := measure.Of(test.value, measure.Gram)
			want := recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Amount: amount, Plus: []measure.Amount{amount}}}}}}
			id := must(st.AddVersion(t.Context(), store.Version{RecipeID: recipeID, Reading: want}))(t)
			same(t, "reading", must(st.Version(t.Context(), id))(t).Reading, want)
		})
	}
}

// A list that was written before an item had its last field still reads.
func TestOldListsReadWithTheNewFieldsEmpty(t *testing.T) {
	st := open(t)
	_, id := addRecipe(t, st, "Eggs")
	execRaw(t, st, "UPDATE step SET temperatures = ?2 WHERE version_id = ?1", id, "200\t200\tC\n")
	got := must(st.Version(t.Context(), id))(t).Reading.Components[0].Steps[0].Temperatures
	same(t, "temperatures", got, []measure.Heat{{Degrees: measure.One(measure.Whole(200)), Scale: "C"}})
}

// What cannot be read is an error that names it, never a made-up amount.
func TestABrokenListIsAnError(t *testing.T) {
	tests := []struct{ name, text string }{
		{"temperatures", "hot\t200\tC\tfan\t200 °C\t0\n"},
		{"temperatures", "\\t200\tC\tfan\t200 °C\t0\n"},
		{"temperatures", "1.5\t200\tC\tfan\t200 °C\t0\n"},
		{"temperatures", "1/-2\t200\tC\tfan\t200 °C\t0\n"},
		{"temperatures", "123456789012345678901x\t200\tC\tfan\t200 °C\t0\n"},
		{"temperatures", "1/0\t200\tC\tfan\t200 °C\t0\n"},
		{"temperatures", "200\t200\tC\tfan\t200 °C\tsomewhere\n"},
		{"uses", "first\t0\t1\t1\tg\ttrue\tflour\n"},
	}
	for _, test := range tests {
		t.Run(test.name+" "+test.text, func(t *testing.T) {
			st := open(t)
			_, id := addRecipe(t, st, "Eggs")
			column := map[string]string{"temperatures": "UPDATE step SET temperatures = ?2 WHERE version_id = ?1", "uses": "UPDATE step SET uses = ?2 WHERE version_id = ?1"}[test.name]
			execRaw(t, st, column, id, test.text)
			if v, err := st.Version(t.Context(), id); err == nil {
				t.Errorf("read as %+v", v.Reading.Components[0].Steps[0])
			}
		})
	}
}
