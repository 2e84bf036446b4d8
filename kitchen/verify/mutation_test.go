package verify_test

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify"
)

var firstNumber = regexp.MustCompile(`^\D*?(\d+(?:\.\d+)?)`)

// saidTwice tells a line that states its amount in two ways: "3/4 cup (180 ml) milk".
var saidTwice = regexp.MustCompile(`\(\d[^)]*\)`)

// rewritten changes the number in the recipe's text that a is said for; ok is
// false where it is not plain which one that is.
func rewritten(text string, a verify.Amount) (changed string, ok bool) {
	lines := strings.Split(text, "\n")
	if a.Number < 1 || a.Number > len(lines) {
		return "", false
	}
	line := lines[a.Number-1]
	said := inFigures([]verify.Cue{{Text: a.Said}})[0].Text
	m := firstNumber.FindStringSubmatch(said)
	if m == nil || strings.ContainsAny(said, "½¼¾/") || strings.Contains(said, "half") || strings.Contains(said, "quarter") {
		return "", false
	}
	number := regexp.MustCompile(`(^|[^\d.½¼¾/])` + regexp.QuoteMeta(m[1]) + `($|[^\d.,½¼¾/])`)
	if saidTwice.MatchString(line) || len(number.FindAllString(line, -1)) != 1 || len(number.FindAllString(text, -1)) != 1 {
		return "", false // a step may say it again, and the recipe would contradict itself
	}
	value, err := strconv.ParseFloat(m[1], 64)
	if err != nil {
		return "", false
	}
	other := value * 1.5
	if value < 10 {
		other = value + 2
	}
	if value >= 100 && value < 260 && (strings.Contains(line, "°") || strings.Contains(line, "oven")) {
		other = value + 20
	}
	line = number.ReplaceAllString(line, "${1}"+strconv.FormatFloat(other, 'f', -1, 64)+"${2}")
	if upper := regexp.MustCompile(strconv.FormatFloat(other, 'f', -1, 64) + `( ?(?:–|to) ?)(\d+)`).FindStringSubmatch(line); upper != nil {
		to, _ := strconv.ParseFloat(upper[2], 64)
		line = strings.Replace(line, upper[1]+upper[2], upper[1]+strconv.FormatFloat(to+other-value, 'f', -1, 64), 1)
	}
	lines[a.Number-1] = line
	return strings.Join(lines, "\n"), true
}

// everyThird gives every third of the tuned-on cuts: each makes dozens of others.
func everyThird(t *testing.T) []cut {
	var some []cut
	for i, c := range slices.DeleteFunc(readCuts(t), cut.heldOut) {
		if i%3 == 0 {
			some = append(some, c)
		}
	}
	return some
}

// What is no longer said must be found unsaid: each amount of an ingredient that
// agrees is cut out of the captions in its turn. Of a line that has one of something it is
// often not: who chops the onion has said it.
func TestAmountsLeftOut(t *testing.T) {
	tried, missed := 0, 0
	for _, c := range everyThird(t) {
		before := checker.Check(c.recipe, c.cues)
		lines := map[int]int{}
		for _, a := range before.Amounts {
			lines[a.Number]++
		}
		for _, a := range before.Amounts {
			cue := c.cues[a.Cue]
			if a.Finding >= 0 || lines[a.Number] > 1 || cue.Text[a.From:a.To] != a.Said || !isIngredient(c.recipe, a.Number) {
				continue
			}
			tried++
			cues := slices.Clone(c.cues)
			cues[a.Cue].Text = cue.Text[:a.From] + "some" + cue.Text[a.To:]
			after := checker.Check(c.recipe, cues)
			if !slices.ContainsFunc(after.Findings, func(f verify.Finding) bool { return f.Kind == verify.NotSaid && f.Number == a.Number }) {
				missed++
				t.Logf("%s: %v “%s” of “%s” is not missed", c.name, verify.Clock(cue.Start), a.Said, a.Line)
			}
		}
	}
	t.Logf("%d of %d left out not missed", missed, tried)
	if missed*4 > tried || tried < 100 {
		t.Errorf("%d of %d left out not missed, want at most one in four of at least 100", missed, tried)
	}
}

func isIngredient(r recipe.Recipe, number int) bool {
	return slices.ContainsFunc(r.Components, func(c recipe.Component) bool {
		return slices.ContainsFunc(c.Lines, func(l recipe.Line) bool { return l.Number == number })
	})
}

// What agrees with the recipe must be found once the recipe says otherwise: every
// number of the tuned-on cuts that agrees makes another cut with one slip more.
func TestRecipesWrittenOtherwise(t *testing.T) {
	tried, missed := 0, 0
	for _, c := range everyThird(t) {
		before := checker.Check(c.recipe, c.cues)
		text := readFile(t, "testdata/cuts/"+c.name+".recipe.txt")
		for _, a := range before.Amounts {
			if a.Finding >= 0 || !slices.ContainsFunc(c.marks, func(m mark) bool {
				return m.kind == "agrees" && m.is(verify.Finding{Said: a.Said, At: c.cues[a.Cue].Start})
			}) {
				continue
			}
			changed, ok := rewritten(text, a)
			if !ok {
				continue
			}
			tried++
			after := checker.Check(recipe.Reader{Larder: checker.Larder}.Read(changed), c.cues)
			if !slices.ContainsFunc(after.Findings, func(f verify.Finding) bool { return f.Cue == a.Cue && f.Said == a.Said && f.Kind == verify.Differs }) {
				missed++
				t.Logf("%s: %v “%s” is not found where “%s” is changed", c.name, verify.Clock(c.cues[a.Cue].Start), a.Said, a.Line)
			}
		}
	}
	t.Logf("%d of %d slips missed", missed, tried)
	if missed*16 > tried || tried < 200 {
		t.Errorf("%d of %d slips missed, want at most one in sixteen of at least 200", missed, tried)
	}
}
