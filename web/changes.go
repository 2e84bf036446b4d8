package web

import (
	"fmt"
	"net/http"
	"strconv"
	"strings"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/recipe/align"
	"benchproof/views"
)

// showChanges compares two versions of a recipe line by line.
func (s *Server) showChanges(w http.ResponseWriter, r *http.Request) error {
	id, err := pathID(r, "recipe")
	if err != nil {
		return err
	}
	from, to := r.URL.Query().Get("from"), r.URL.Query().Get("to")
	newer, err := s.versionOf(r, to)
	if err != nil {
		return err
	}
	if from == "" {
		from = strconv.Itoa(max(1, newer.Number-1))
	}
	older, err := s.versionOf(r, from)
	if err != nil {
		return err
	}
	page, err := s.page(r, newer.Name+": what changed", views.SectionRecipes)
	if err != nil {
		return err
	}
	versions, err := s.store.Versions(r.Context(), id)
	if err != nil {
		return err
	}
	view := newCompare(recipe.Changes(older.Reading, newer.Reading))
	view.Page, view.Name, view.Note = page, newer.Name, newer.Note
	view.Path, view.Action = recipePath(id), recipePath(id)+"/changes"
	view.From, view.To = strconv.Itoa(older.Number), strconv.Itoa(newer.Number)
	for _, v := range versions {
		view.Versions = append(view.Versions, views.Option{Value: strconv.Itoa(v.Number), Label: fmt.Sprintf("version %d", v.Number)})
	}
	return s.draw(w, r, http.StatusOK, views.Compare(view))
}

// newCompare words the changes between two versions, grouped as they stand in
// the recipe.
func newCompare(changes []recipe.Change) views.ComparePage {
	var view views.ComparePage
	counts := map[recipe.ChangeKind]int{}
	at := map[string]int{}
	for _, c := range changes {
		counts[c.Kind]++
		title := groupTitle(c)
		group, known := at[title]
		if !known {
			group = len(view.Groups)
			at[title] = group
			view.Groups = append(view.Groups, views.ChangeGroup{Title: title})
		}
		view.Groups[group].Rows = append(view.Groups[group].Rows, changeRow(c))
	}
	view.Summary = changeSummary(counts)
	return view
}

func groupTitle(c recipe.Change) string {
	component := c.Component
	switch c.In {
	case recipe.InLine:
		if component == "" {
			return "Ingredients"
		}
		return component
	case recipe.InStep:
		return joined(": ", "Method", component)
	case recipe.InYield:
		return "Makes"
	case recipe.InComponent:
		return "Parts"
	}
	return strings.ToUpper(string(c.In[:1])) + string(c.In[1:])
}

// changeRow words one change; the words that stand on one side only are marked.
func changeRow(c recipe.Change) views.ChangeRow {
	before, after := differing(c.Old, c.New)
	row := views.ChangeRow{Before: views.ChangeText{Words: before}, After: views.ChangeText{Words: after}}
	switch c.Kind {
	case recipe.Added:
		row.Change = views.Added
	case recipe.Removed:
		row.Change = views.TakenOut
	case recipe.Moved:
		row.Change = views.Changed
		row.After.Words = append(row.After.Words, views.Run{Text: movedText(c), New: true})
	default:
		row.Change = views.Changed
	}
	return row
}

func movedText(c recipe.Change) string {
	if c.From == "" {
		return " (moved)"
	}
	return " (moved here from " + c.From + ")"
}

// differing gives both texts as runs; those words that the other text lacks, in
// order, are New.
func differing(before, after string) (was, is []views.Run) {
	old, now := strings.Fields(before), strings.Fields(after)
	if len(old) == 0 || len(now) == 0 {
		return plainRuns(old), plainRuns(now)
	}
	pairs := align.Pairs(len(old), len(now), 1, func(i, j int) float64 {
		if old[i] == now[j] {
			return 1
		}
		return 0
	})
	keptOld, keptNow := map[int]bool{}, map[int]bool{}
	for _, p := range pairs {
		keptOld[p.Old], keptNow[p.New] = true, true
	}
	return markedRuns(old, keptOld), markedRuns(now, keptNow)
}

func plainRuns(words []string) []views.Run {
	if len(words) == 0 {
		return nil
	}
	return views.Words(strings.Join(words, " "))
}

// markedRuns joins words into runs; those not kept are New.
func markedRuns(words []string, kept map[int]bool) []views.Run {
	var runs []views.Run
	for i, word := range words {
		if i > 0 {
			word = " " + word
		}
		if last := len(runs) - 1; last >= 0 && runs[last].New == !kept[i] {
			runs[last].Text += word
			continue
		}
		runs = append(runs, views.Run{Text: word, New: !kept[i]})
	}
	return runs
}

func changeSummary(counts map[recipe.ChangeKind]int) string {
	var parts []string
	for _, kind := range []struct {
		kind recipe.ChangeKind
		word string
	}{{recipe.Changed, "changed"}, {recipe.Added, "added"}, {recipe.Removed, "taken out"}, {recipe.Moved, "moved"}} {
		if n := counts[kind.kind]; n > 0 {
			parts = append(parts, strconv.Itoa(n)+" "+kind.word)
		}
	}
	if parts == nil {
		return "nothing changed"
	}
	return strings.Join(parts, ", ")
}
