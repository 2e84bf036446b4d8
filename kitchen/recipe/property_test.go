package recipe_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Foods that the larder weighs in every unit drawn below.
var drawnFoods = []string{"plain flour", "caster sugar", "honey", "milk", "water", "salt", "butter", "cocoa powder"}

func drawAmount(t *rapid.T) string {
	from := rapid.SampledFrom([]string{"1", "2", "3", "10", "150", "½", "1½", "2¼", "⅔", "1.5", "0.25"}).Draw(t, "number")
	if rapid.Bool().Draw(t, "range") {
		from += rapid.SampledFrom([]string{"–400", " to 401", "-402"}).Draw(t, "to")
	}
	unit := rapid.SampledFrom([]string{" g", "g", " kg", " oz", " lb", " cups", " tbsp", " tsp", " ml", " l"}).Draw(t, "unit")
	return from + unit
}

func drawRecipe(t *rapid.T) recipe.Recipe {
	var b strings.Builder
	b.WriteString("Drawn dish\nMakes " + fmt.Sprint(rapid.IntRange(1, 40).Draw(t, "pieces")) + "\n\nIngredients\n")
	for i := range rapid.IntRange(1, 3).Draw(t, "components") {
		fmt.Fprintf(&b, "Part %c:\n", 'A'+i)
		for range rapid.IntRange(1, 5).Draw(t, "lines") {
			b.WriteString("- " + drawAmount(t) + " " + rapid.SampledFrom(drawnFoods).Draw(t, "food") +
				rapid.SampledFrom([]string{"", ", sifted", " (optional)", ", plus more for dusting"}).Draw(t, "tail") + "\n")
		}
	}
	b.WriteString("\nMethod\n")
	for i := range rapid.IntRange(0, 4).Draw(t, "steps") {
		fmt.Fprintf(&b, "%d. %s\n", i+1, rapid.SampledFrom([]string{"Mix the flour and sugar.", "Bake for 20–25 minutes until golden.",
			"Chill for 1 hour.", "Simmer the milk for 10 minutes, stirring.", "Serve."}).Draw(t, "step"))
	}
	return recipe.Reader{}.Read(b.String())
}

func drawFactor(t *rapid.T) measure.Number {
	return measure.Ratio(rapid.Int64Range(1, 300).Draw(t, "numerator"), rapid.Int64Range(1, 60).Draw(t, "denominator"))
}

// Scaling by a and then by 1/a gives the recipe back, exactly.
func TestScaleThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, by := drawRecipe(t), drawFactor(t)
		there := recipe.Scale(r, by, recipe.Writer{})
		back := recipe.Scale(there.Recipe, measure.Whole(1).Quo(by), recipe.Writer{})
		if diff := cmp.Diff(r, back.Recipe); diff != "" {
			t.Errorf("by %v and back:\n%s", by, diff)
		}
	})
}

// Ranges stay ranges in order, and what is shown is never nothing.
func TestScaleKeepsRanges(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, by := drawRecipe(t), drawFactor(t)
		s := recipe.Scale(r, by, recipe.Writer{House: measure.Metric})
		for _, l := range s.Lines {
			was := r.Components[l.Component].Lines[l.Line]
			is := s.Recipe.Components[l.Component].Lines[l.Line]
			if is.Amount.From.Cmp(is.Amount.To) > 0 || was.Amount.IsSingle() != is.Amount.IsSingle() {
				t.Errorf("%v × %v = %v", was.Amount, by, is.Amount)
			}
			if l.Measure == "" || l.ErrorPercent < 0 {
				t.Errorf("%v × %v is shown as %q, %v %% off", was.Amount, by, l.Measure, l.ErrorPercent)
			}
		}
	})
}

// The whole weighs by times as much when it is scaled by by.
func TestMassIsLinear(t *testing.T) {
	l := larder(t)
	rapid.Check(t, func(t *rapid.T) {
		r, by := drawRecipe(t), drawFactor(t)
		for i := range r.Components {
			for k := range r.Components[i].Lines {
				line := &r.Components[i].Lines[k]
				*line = recipe.Reader{Larder: l}.ReadLine(line.Text)
			}
		}
		w := recipe.Writer{Larder: l, House: measure.US}
		before, err := recipe.MassOf(r, "", w)
		if err != nil || len(before.Missing) > 0 {
			t.Fatalf("no mass: %v, missing %q", err, before.Missing)
		}
		after, _ := recipe.MassOf(recipe.Scale(r, by, w).Recipe, "", w)
		if want := before.Grams.Scale(by); !after.Grams.From.Equal(want.From) || !after.Grams.To.Equal(want.To) {
			t.Errorf("%v g × %v = %v g", before.Grams, by, after.Grams)
		}
	})
}

// A line written for hands reads back as what was written, and is written the
// same again.
func TestWriteReadWrite(t *testing.T) {
	l := larder(t)
	reader := recipe.Reader{Larder: l}
	rapid.Check(t, func(t *rapid.T) {
		line := reader.ReadLine(drawAmount(t) + " " + rapid.SampledFrom(drawnFoods).Draw(t, "food"))
		w := recipe.Writer{Larder: l, House: measure.US, Style: rapid.SampledFrom([]recipe.Style{recipe.AsWritten, recipe.MetricStyle, recipe.USStyle}).Draw(t, "style")}
		first := w.Line(line)
		again := reader.ReadLine(first.Measure + " " + first.Words)
		if !again.Read || again.FoodID != line.FoodID {
			t.Fatalf("%q was written %q and reads as %q, %s", line.Text, first.Measure+" "+first.Words, again.Food, again.Reason)
		}
		if second := w.Line(again); second.Measure != first.Measure || second.Words != first.Words {
			t.Errorf("%q is written %q, then %q", line.Text, first.Measure+" "+first.Words, second.Measure+" "+second.Words)
		}
	})
}

// A recipe written as text reads as it did.
func TestTextReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := recipe.Text(drawRecipe(t))
		if again := recipe.Text(recipe.Reader{}.Read(text)); again != text {
			t.Errorf("written again:\n%s", cmp.Diff(text, again))
		}
	})
}

// No change between a recipe and itself; as many lines added as removed the
// other way round.
func TestChangesBothWays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawRecipe(t), drawRecipe(t)
		if same := recipe.Changes(a, a); len(same) > 0 {
			t.Errorf("a recipe differs from itself: %+v", same)
		}
		added, removed := 0, 0
		for _, c := range recipe.Changes(a, b) {
			if c.Kind == recipe.Added && c.In == recipe.InLine {
				added++
			}
			if c.Kind == recipe.Removed && c.In == recipe.InLine {
				removed++
			}
		}
		if grown := countLines(b) - countLines(a); added-removed != grown {
			t.Errorf("%d added and %d removed, but %d more lines", added, removed, grown)
		}
	})
}

func countLines(r recipe.Recipe) int {
	n := 0
	for _, c := range r.Components {
		n += len(c.Lines)
	}
	return n
}
