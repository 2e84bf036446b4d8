package store_test

import (
	"fmt"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/store"
)

// longReading is a recipe of four components with lines and steps as they come
// from a 60-line text.
func longReading() recipe.Recipe {
	var r recipe.Recipe
	r.Title = "Harbour buns"
	number := 0
	place := func(text string, in recipe.Part, component int) int {
		number++
		r.Placed = append(r.Placed, recipe.Place{Number: number, Text: text, In: in, Component: component, Of: number})
		return number
	}
	for c := range 4 {
		component := recipe.Component{Name: fmt.Sprintf("Part %d", c+1)}
		for i := range 9 {
			text := fmt.Sprintf("%d g / %d oz strong white flour, sifted (part %d)", 100+i, 3+i, c)
			component.Lines = append(component.Lines, recipe.Line{
				Number: place(text, recipe.InLine, c), Text: text, Read: true, HasAmount: true,
				Amount: measure.Of(measure.Whole(int64(100+i)), measure.Gram), Equals: []measure.Amount{measure.Of(measure.Whole(int64(3+i)), measure.Ounce)},
				Food: "strong white flour", FoodID: "bread-flour", Preparation: "sifted", Note: fmt.Sprintf("part %d", c)})
		}
		for i := range 5 {
			text := fmt.Sprintf("Bake at 200 °C (180 °C fan) for %d to %d minutes until it springs back slowly when pressed.", 10+i, 15+i)
			component.Steps = append(component.Steps, recipe.Step{
				Number: place(text, recipe.InStep, c), Text: text, HasMinutes: true,
				Minutes: measure.Between(measure.Whole(int64(10+i)), measure.Whole(int64(15+i))), Station: "oven", Cue: "until it springs back slowly",
				Temperatures: []measure.Heat{{Degrees: measure.One(measure.Whole(200)), Scale: "C", Text: "200 °C"}, {Degrees: measure.One(measure.Whole(180)), Scale: "C", Oven: "fan", Text: "180 °C fan"}}})
		}
		r.Components = append(r.Components, component)
	}
	return r
}

// years fills a store with the given number of episodes, each with its own
// recipe of 60 lines, 8 segments of narration, 30 shots, 3 batches, 4 trials, a
// cut with captions and a share link.
func years(t testing.TB, st *store.Store, episodes int) (versionID int64) {
	t.Helper()
	ctx := t.Context()
	reading := longReading()
	exec := func(text string, args ...any) {
		t.Helper()
		if _, err := st.Raw().ExecContext(ctx, text, args...); err != nil {
			t.Fatal(err)
		}
	}
	for i := range episodes {
		e := episode.Episode{Number: i + 1, Title: fmt.Sprintf("Episode %d", i+1), Stage: episode.InTheEdit, Dish: "buns", Notes: "Some *notes*."}
		must(st.StartEpisode(ctx, store.Start{Episode: e, RecipeName: e.Title, Version: store.Version{Text: "text", Reading: reading}}))(t)
	}
	count := func(n int) string {
		return fmt.Sprintf("WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < %d) ", n)
	}
	exec(`UPDATE episode SET release_on = date('2022-01-01', (episode_id * 7) || ' days')`)
	exec(count(8) + `INSERT INTO segment (episode_id, position, title, narration, words, planned_seconds)
SELECT episode_id, i, 'Segment', replace(hex(zeroblob(400)), '00', 'word '), 400, (i % 2) * 60 FROM episode, n`)
	exec(count(30) + `INSERT INTO shot (episode_id, position, title, kind, setup, component, step, status, note)
SELECT episode_id, i, 'Shot', 'overhead', 'window left', 'Part 1', 1, CASE i % 3 WHEN 0 THEN 'missing' ELSE 'got' END, '' FROM episode, n`)
	exec(count(2) + `INSERT INTO batch (episode_id, kind, makes, note) SELECT episode_id, 'trial', '1', '' FROM episode, n`)
	exec(count(4) + `INSERT INTO trial (episode_id, version_id, made_on, scale, dough_grams, baked_grams, pieces, minutes, setting, verdict, note)
SELECT episode_id, version_id, '2026-01-01', '1', '0', '0', '0', '0', '', CASE i WHEN 1 THEN 'proved' ELSE 'nearly' END, '' FROM episode, n`)
	exec(`INSERT INTO cut (episode_id, turn, name, seconds, captions) SELECT episode_id, 1, 'Cut', 700, replace(hex(zeroblob(3000)), '00', 'caption ') FROM episode`)
	exec(`INSERT INTO share_link (episode_id, token_hash, created_at) SELECT episode_id, hex(randomblob(32)), '2026-01-01T00:00:00.000Z' FROM episode`)
	rows := must(st.Episodes(ctx))(t)
	return rows[0].VersionID
}

// BenchmarkSeason bounds what the first page asks of the database after four
// years of weekly episodes.
func BenchmarkSeason(b *testing.B) {
	for _, n := range []int{20, 200} {
		b.Run(fmt.Sprintf("episodes=%d", n), func(b *testing.B) {
			st := open(b)
			years(b, st, n)
			b.ReportAllocs()
			for b.Loop() {
				rows, err := st.Season(b.Context())
				if err != nil || len(rows) != n {
					b.Fatalf("%d rows, %v", len(rows), err)
				}
			}
		})
	}
}

// BenchmarkSeasonRow bounds what the foot of each sheet asks.
func BenchmarkSeasonRow(b *testing.B) {
	st := open(b)
	years(b, st, 200)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := st.SeasonRow(b.Context(), 100); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkVersion bounds loading a whole 60-line recipe, as the viewers' page
// does.
func BenchmarkVersion(b *testing.B) {
	st := open(b)
	id := years(b, st, 20)
	b.ReportAllocs()
	for b.Loop() {
		v, err := st.Version(b.Context(), id)
		if err != nil || len(v.Reading.Components) != 4 {
			b.Fatalf("%d components, %v", len(v.Reading.Components), err)
		}
	}
}

// BenchmarkShow reads one row by its key: what to measure the others against.
func BenchmarkShow(b *testing.B) {
	st := open(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := st.Show(b.Context()); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkShareLink bounds the first step of every viewer's page.
func BenchmarkShareLink(b *testing.B) {
	st := open(b)
	years(b, st, 20)
	must(st.AddShareLink(b.Context(), 1, "token"))(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := st.ShareLink(b.Context(), "token"); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkSave bounds a save with its sync to disk: as the brief, and a whole
// recipe of 60 lines.
func BenchmarkSave(b *testing.B) {
	b.Run("brief", func(b *testing.B) {
		st := open(b)
		e := must(st.Episode(b.Context(), addEpisode(b, st, "one")))(b)
		b.ReportAllocs()
		for b.Loop() {
			if err := st.SaveBrief(b.Context(), e); err != nil {
				b.Fatal(err)
			}
			e.Revision++
		}
	})
	b.Run("version", func(b *testing.B) {
		st := open(b)
		_, id := addRecipe(b, st, "Buns")
		v := must(st.Version(b.Context(), id))(b)
		v.Reading = longReading()
		b.ReportAllocs()
		for b.Loop() {
			if err := st.SaveVersion(b.Context(), v); err != nil {
				b.Fatal(err)
			}
			v.Revision++
		}
	})
}
