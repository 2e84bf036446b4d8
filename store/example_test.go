package store_test

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/store"
)

// exampleStore opens a store in a temporary folder, with a way to remove it.
func exampleStore() (st *store.Store, remove func()) {
	folder, err := os.MkdirTemp("", "store-example-")
	if err != nil {
		panic(err)
	}
	st, err = store.Open(context.Background(), filepath.Join(folder, "show.db"), store.Options{})
	if err != nil {
		panic(err)
	}
	return st, func() {
		st.Close()
		os.RemoveAll(folder)
	}
}

// The short way in makes everything that an episode starts with.
func ExampleStore_StartEpisode() {
	st, remove := exampleStore()
	defer remove()
	ctx := context.Background()

	id, err := st.StartEpisode(ctx, store.Start{
		Episode:    episode.Episode{Title: "The six o'clock buns", Stage: episode.InDevelopment},
		RecipeName: "Harbour buns",
		Version:    store.Version{Text: "500 g strong white flour\n"},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	row, err := st.SeasonRow(ctx, id)
	fmt.Println(row.Episode.Title, "|", row.RecipeName, row.VersionNumber, "|", row.Facts.ShootBatches, "batch for the shoot", err)
	// Output: The six o'clock buns | Harbour buns 1 | 1 batch for the shoot <nil>
}

// The second of two stale saves is refused, and what it says can be shown.
func ExampleStore_SaveBrief() {
	st, remove := exampleStore()
	defer remove()
	ctx := context.Background()
	id, _ := st.AddEpisode(ctx, episode.Episode{Title: "Buns", Stage: episode.Pitched})

	mine, _ := st.Episode(ctx, id)
	theirs := mine
	theirs.Hook = "Steam at the ferry's door."
	fmt.Println(st.SaveBrief(ctx, theirs))
	mine.Hook = "A bun that floats."
	err := st.SaveBrief(ctx, mine)
	fmt.Println(fault.KindOf(err) == fault.Conflict, fault.Say(err))
	// Output:
	// <nil>
	// true This brief was saved somewhere else after you opened it. Nothing was overwritten: compare the two and save again.
}

// A version that was tried is not changed: what was typed becomes the next one.
func ExampleStore_SaveVersion() {
	st, remove := exampleStore()
	defer remove()
	ctx := context.Background()
	_, versionID, _ := st.AddRecipe(ctx, "Buns", store.Version{Text: "500 g flour"})
	episodeID, _ := st.AddEpisode(ctx, episode.Episode{Title: "Buns", Stage: episode.InDevelopment, VersionID: versionID})
	_, _ = st.AddTrial(ctx, episode.Trial{EpisodeID: episodeID, VersionID: versionID, Verdict: "nearly"})

	v, _ := st.Version(ctx, versionID)
	v.Text = "520 g flour"
	if err := st.SaveVersion(ctx, v); errors.Is(err, store.ErrTried) {
		v.Note = "20 g more flour: the dough was slack"
		id, _ := st.AddVersion(ctx, v)
		next, _ := st.Version(ctx, id)
		fmt.Println(next.Number, next.Text)
	}
	// Output: 2 520 g flour
}

// What was deleted can be brought back from the list of it.
func ExampleStore_Restore() {
	st, remove := exampleStore()
	defer remove()
	ctx := context.Background()
	id, _ := st.AddPitch(ctx, episode.Pitch{Dish: "sea-salt toffee", Times: 4})
	_ = st.DeletePitch(ctx, id)

	deleted, _ := st.Deleted(ctx)
	fmt.Println(deleted[0].Kind, deleted[0].Label)
	fmt.Println(st.Restore(ctx, deleted[0].Kind, deleted[0].ID))
	pitches, _ := st.Pitches(ctx)
	fmt.Println(len(pitches), "pitch")
	// Output:
	// pitch sea-salt toffee
	// <nil>
	// 1 pitch
}
