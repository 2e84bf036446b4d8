package release

import (
	"fmt"
	"unicode/utf8"
)

// advice says what to cut to get inside the limit: the least missed first, only
// as far as needed, each with what it saves. What viewers need to know or the
// law asks for is never offered: disclosures, allergens, cautions, corrections,
// and the way to the recipe.
func (in Input) advice(d Description, texts map[Block]string) []string {
	var advice []string
	left := d.Over()
	offer := func(what string, saves int) {
		if left > 0 && saves > 0 {
			left -= saves
			advice = append(advice, fmt.Sprintf("%s: saves %s.", what, characters(saves)))
		}
	}
	size := func(block Block) int {
		if texts[block] == "" {
			return 0
		}
		return utf8.RuneCountInString(texts[block]) + len("\n\n")
	}
	offer("Leave out the equipment", size(Equipment))
	offer("Leave out the standing links", size(Links))
	single := safeText(in.ingredients(newAmounts(in).one))
	second := utf8.RuneCountInString(texts[Ingredients]) - utf8.RuneCountInString(single)
	offer("Give the amounts in one measure only", second)
	if in.PageURL != "" {
		offer("Leave the ingredients to the recipe page", size(Ingredients)-max(second, 0))
	}
	offer("Leave out the chapters", size(Chapters))
	offer("Leave out the credits but those you owe", size(Credits))
	if left > 0 {
		advice = append(advice, fmt.Sprintf("Shorten what remains by %s more.", characters(left)))
	}
	if in.PageURL == "" && texts[Ingredients] != "" {
		advice = append(advice, "Or make a share link: then the ingredients can stand on the recipe page alone.")
	}
	return advice
}

func characters(n int) string {
	if n == 1 {
		return "1 character"
	}
	return fmt.Sprintf("%d characters", n)
}
