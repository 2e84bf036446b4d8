package recipe_test

import (
	"fmt"
	"strings"
	"testing"

	"benchproof/kitchen/recipe"
)

// order writes a recipe's sequence as "step<what it waits for", steps lettered in
// the order of the text.
func order(r recipe.Recipe) string {
	letters := map[recipe.Position]string{}
	tasks := r.Sequence()
	for i, task := range tasks {
		letters[task.At] = string(rune('A' + i))
	}
	var out []string
	for _, task := range tasks {
		after := ""
		for _, p := range task.After {
			after += letters[p]
		}
		out = append(out, letters[task.At]+"<"+sortedLetters(after))
	}
	return strings.Join(out, " ")
}

func sortedLetters(s string) string {
	var b strings.Builder
	for c := 'A'; c <= 'Z'; c++ {
		if strings.ContainsRune(s, c) {
			b.WriteRune(c)
		}
	}
	return b.String()
}

func TestSequence(t *testing.T) {
	for _, tt := range []struct{ name, text, want string }{
		{"one after another", "Buns\n\n200 g flour\n100 g water\n\nMethod\nMix the flour and water.\nRest for 1 hour.\nShape the dough.\n", "A< B<A C<B"},
		{"one step", "Buns\n\n200 g flour\n\nMethod\nMix it.\n", "A<"},
		{"no steps", "Buns\n\n200 g flour\n", ""},
		{"the oven heats by itself", "Buns\n\n200 g flour\n\nMethod\nHeat the oven to 200 °C.\nMix the flour.\nBake for 20 minutes.\n", "A< B< C<AB"},
		{"each component by itself", "Tart\n\nPastry:\n200 g flour\nRub the flour.\nRest for 1 hour.\n\nCream:\n2 eggs\nBeat the eggs.\nFill the pastry with the cream.\n",
			"A< B<A C< D<BC"},
		{"two components, one method", "Pie\n\nCrust:\n200 g flour\n\nFilling:\n300 g apples\n\nMethod\nRub the flour with water.\nSlice the apples.\nPut the filling in the crust.\nBake for 40 minutes.\n",
			"A< B< C<AB D<C"},
		{"brushed before it is baked", "Buns\n\nDough:\n200 g flour\n\nWash:\n1 egg yolk\n\nMethod\nKnead the flour.\nProve for 1 hour.\nBeat the yolk and brush the buns.\nBake for 20 minutes.\nServe.\n", "A< B<A C<B D<C E<D"},
		{"what is only beaten is brushed by nobody", "Buns\n\nDough:\n200 g flour\n\nWash:\n1 egg yolk\n\nMethod\nKnead the flour.\nBeat the yolk.\nServe.\n", "A< B< C<AB"},
		{"back to the beans with the batter", "Pot\n\nBeans:\n400 g beans\n\nLid:\n200 g cornmeal\n\nMethod\nSimmer the beans.\nStir the cornmeal.\nSpoon it over the beans.\nBake for 30 minutes.\n", "A< B< C<AB D<C"},
		{"glazed with a component of its own steps", "Tart\n\nCream:\n2 eggs\nBeat the eggs.\n\nGlaze:\n100 g jam\nWarm the jam.\nSieve it.\n", "A< B< C<AB"},
		{"the last step joins what is open", "Plate\n\nFish:\n1 trout\n\nSalad:\n1 lettuce\n\nMethod\nFry the trout.\nWash the lettuce.\nServe at once.\n", "A< B< C<AB"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := order(read(t, tt.text)); got != tt.want {
				t.Errorf("sequence %q, want %q", got, tt.want)
			}
		})
	}
}

// No step waits for itself or for a later one, whatever the recipe.
func TestSequenceHasNoCircle(t *testing.T) {
	for _, c := range readCookFiles(t) {
		tasks := read(t, c).Sequence()
		done := map[recipe.Position]bool{}
		for _, task := range tasks {
			for _, p := range task.After {
				if !done[p] {
					t.Errorf("%v waits for %v, which comes later:\n%s", task.At, p, c)
				}
			}
			if done[task.At] {
				t.Errorf("%v stands twice", task.At)
			}
			done[task.At] = true
		}
		steps := 0
		for _, component := range read(t, c).Components {
			steps += len(component.Steps)
		}
		if len(tasks) != steps {
			t.Errorf("%d tasks of %d steps", len(tasks), steps)
		}
	}
}

// What a step uses, with what belongs to it.
func TestUses(t *testing.T) {
	r := read(t, `Tart

Pastry:
200 g plain flour
100 g butter

Cream:
300 ml double cream
2 eggs
100 g caster sugar
1 tbsp plain flour

Method
1. Rub the butter into the flour.
2. Beat the eggs with 80 g of the sugar and the flour.
3. Whip half the cream and fold it in.
4. Fill the pastry. Scatter with the remaining sugar.
`)
	want := []string{
		"butter of Pastry (the butter); plain flour of Pastry (the flour)",
		"eggs of Cream (the eggs); caster sugar of Cream (80 g of the sugar = 80 g); plain flour of Cream (the flour)",
		"double cream of Cream (half the cream = 150 ml)",
		"caster sugar of Cream (the remaining sugar); Pastry (the pastry)",
	}
	steps := r.Components[len(r.Components)-1].Steps
	if len(steps) != len(want) {
		t.Fatalf("%d steps", len(steps))
	}
	for i, s := range steps {
		if got := usesText(r, s); got != want[i] {
			t.Errorf("step %d uses %q,\nwant %q", i+1, got, want[i])
		}
	}
	if steps[0].Finishes != "Pastry" || steps[3].Finishes != "Cream" {
		t.Errorf("finishes %q and %q", steps[0].Finishes, steps[3].Finishes)
	}
}

func usesText(r recipe.Recipe, s recipe.Step) string {
	var out []string
	for _, u := range s.Uses {
		c := r.Components[u.Component]
		text := c.Name
		if u.Line >= 0 {
			text = c.Lines[u.Line].Food + " of " + c.Name
		}
		words := u.Words
		if u.HasAmount {
			words += " = " + exact(u.Amount)
		}
		out = append(out, fmt.Sprintf("%s (%s)", text, words))
	}
	return strings.Join(out, "; ")
}
