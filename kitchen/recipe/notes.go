package recipe

import (
	"slices"
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/method"
)

// notes says what does not follow the factor. The rules are common practice, no
// source.
func notes(r Recipe, by measure.Number, w Writer) []string {
	if by.Equal(measure.Whole(1)) {
		return nil
	}
	n := noter{recipe: r, by: by, writer: w}
	n.baking()
	n.boiling()
	n.frying()
	n.leavening()
	n.wordsOfSteps()
	n.pieces()
	n.unmeasured()
	return n.said
}

type noter struct {
	recipe Recipe
	by     measure.Number
	writer Writer
	said   []string
}

func (n *noter) say(sentence string) {
	if !slices.Contains(n.said, sentence) {
		n.said = append(n.said, sentence)
	}
}

func (n *noter) steps(fits func(Step) bool) []Step {
	var some []Step
	for _, at := range n.recipe.stepsInOrder() {
		if s := n.recipe.Components[at.Component].Steps[at.Step]; fits(s) {
			some = append(some, s)
		}
	}
	return some
}

func (n *noter) baking() {
	bakes := n.steps(func(s Step) bool { return s.Station == "oven" && s.HasMinutes })
	if len(bakes) == 0 {
		return
	}
	note := "Baking minutes are not scaled. Pieces of the same size take as long as before; a deeper or larger one takes longer, a smaller one less."
	for _, s := range bakes {
		if s.Cue != "" {
			note += " Go by the sign: " + s.Cue + "."
			break
		}
	}
	n.say(note)
	if tins := n.steps(namesTin); len(tins) > 0 {
		n.say("The method names a tin. Filled as deep as before, it must cover " + measure.FormatDecimal(n.by, 2) +
			" times the area; in the same tin the mixture stands " + measure.FormatDecimal(n.by, 2) + " times as deep and bakes otherwise.")
	}
}

// namesTin tells a step that names a tin with a size.
func namesTin(s Step) bool {
	text := strings.ToLower(s.Text)
	return strings.ContainsAny(text, "0123456789") && (strings.Contains(text, " tin") || strings.Contains(text, " pan") || strings.Contains(text, "skillet")) &&
		(strings.Contains(text, "cm") || strings.Contains(text, "inch") || strings.Contains(text, "-in"))
}

func (n *noter) boiling() {
	reduces := n.steps(func(s Step) bool {
		text := strings.ToLower(s.Text)
		return s.Station == "hob" && s.HasMinutes && !s.HandsOn &&
			(strings.Contains(text, "simmer") || strings.Contains(text, "reduce") || strings.Contains(text, "boil") || strings.Contains(text, "thick"))
	})
	if len(reduces) > 0 {
		n.say("What boils away depends on the width of the pan and the minutes, not on the amount: keep back some of the liquid, or expect to boil longer.")
	}
}

func (n *noter) frying() {
	if n.by.Cmp(measure.Whole(1)) <= 0 {
		return
	}
	fries := n.steps(func(s Step) bool {
		return s.Station == "fryer" || s.Station == "hob" && s.HandsOn && (strings.Contains(strings.ToLower(s.Text), "fry") || strings.Contains(strings.ToLower(s.Text), "brown"))
	})
	if len(fries) > 0 {
		n.say("Frying minutes are for one panful. A fuller pan cools down and stews: fry in batches of the amount before.")
	}
}

// large is the factor from which leavening does not go in proportion.
var large = measure.Whole(3)

func (n *noter) leavening() {
	if n.by.Cmp(large) < 0 && measure.Whole(1).Quo(n.by).Cmp(large) < 0 {
		return
	}
	var found []string
	for _, c := range n.recipe.Components {
		for _, l := range c.Lines {
			name := strings.ToLower(l.Food)
			for _, lift := range []string{"yeast", "baking powder", "baking soda", "bicarbonate", "bicarb"} {
				if l.Read && strings.Contains(name, lift) && !slices.Contains(found, l.Food) {
					found = append(found, l.Food)
					break
				}
			}
		}
	}
	if len(found) > 0 {
		n.say("At this factor " + list(found) + " is scaled in proportion, which is only a start: a large dough keeps its warmth and rises faster, a small one cools and rises slower. Try it at the bench.")
	}
}

// wordsOfSteps gives the scaled figures for amounts that stand in the method's
// words, which are not rewritten.
func (n *noter) wordsOfSteps() {
	for _, at := range n.recipe.stepsInOrder() {
		for _, u := range n.recipe.Components[at.Component].Steps[at.Step].Uses {
			if !u.HasAmount || u.Line < 0 || startsInWords(u.Words) {
				continue
			}
			shown := n.writer.hand().Write(u.Amount.Scale(n.by))
			n.say("The method says “" + u.Words + "”: take " + spaced(shown.Text) + ".")
		}
	}
}

// startsInWords tells "half the butter", which scales with the butter.
func startsInWords(words string) bool {
	return words == "" || words[0] < '0' || words[0] > '9'
}

// pieces points at "divide into 16" where the recipe makes 16.
func (n *noter) pieces() {
	made := n.recipe.Yield.Amount
	if made.From.Sign() <= 0 || !made.IsSingle() || made.Unit != measure.Each {
		return
	}
	count := made.From.String()
	for _, s := range n.steps(func(s Step) bool {
		return strings.Contains(s.Text, "into "+count) || strings.Contains(s.Text, "in "+count)
	}) {
		for _, sentence := range method.Sentences(s.Text) {
			if !strings.Contains(sentence, "into "+count) && !strings.Contains(sentence, "in "+count) {
				continue
			}
			now := measure.Hand{}.Write(made.Scale(n.by))
			n.say("The method divides into " + count + ": for pieces of the same size, divide into " + now.Text + ".")
			return
		}
	}
}

// unmeasured names the lines that have no amount to scale.
func (n *noter) unmeasured() {
	var names []string
	for _, c := range n.recipe.Components {
		for _, l := range c.Lines {
			if l.Read && !l.HasAmount && len(names) < 6 {
				names = append(names, l.Food)
			}
		}
	}
	if len(names) > 0 {
		n.say("Without an amount, and so not scaled: " + list(names) + ".")
	}
}
