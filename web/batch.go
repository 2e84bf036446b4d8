package web

import (
	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/views"
)

// batches is the part of planned makes.
func (s *Server) batches() part[episode.Batch] {
	return part[episode.Batch]{
		word: "batch", many: "batches", sheet: views.SheetShop,
		fields: batchFields, values: batchValues, read: readBatch,
		get: s.store.Batch, add: s.store.AddBatch, save: s.store.SaveBatch, remove: s.store.DeleteBatch,
		blank: func(episodeID int64) episode.Batch {
			return episode.Batch{EpisodeID: episodeID, Kind: episode.ShootBatch, Makes: measure.Whole(1)}
		},
		key:   func(b episode.Batch) partKey { return partKey{b.ID, b.EpisodeID, b.Revision} },
		stamp: func(b *episode.Batch, revision int) { b.Revision = revision },
	}
}

func batchFields(*desk) []views.Field {
	return []views.Field{
		{Name: "kind", Label: "For", Kind: views.FieldSelect, Options: options(episode.BatchKinds)},
		{Name: "makes", Label: "Makes", Kind: views.FieldDecimal, Required: true, Hint: "How many times the recipe at the episode's scale; ½ is half of it."},
		{Name: "note", Label: "Note"},
	}
}

func batchValues(_ *desk, b episode.Batch) values {
	return values{"kind": string(b.Kind), "makes": numberText(b.Makes), "note": b.Note}
}

func readBatch(f *typed, b *episode.Batch) {
	b.Kind = episode.BatchKind(f.oneOf("kind", asWords(episode.BatchKinds)))
	b.Makes = f.positive("makes", "Say how many times it is made: 1, 2 or ½.")
	if b.Kind != episode.SwapOut {
		b.Component, b.Step, b.Overnight = "", 0, false
	}
	b.Note = f.text("note")
}

func batchRow(p part[episode.Batch], b episode.Batch) views.BatchRow {
	return views.BatchRow{
		Makes: measure.FormatNumber(b.Makes) + " ×", Kind: batchKindWords(b), Note: b.Note,
		EditPath: p.changePath(b.EpisodeID, b.ID), DeleteAction: p.path(b.EpisodeID, b.ID) + "/delete",
	}
}

// batchKindWords say what a batch is for, and how far a swap-out is made.
func batchKindWords(b episode.Batch) string {
	if b.Step == 0 {
		return string(b.Kind)
	}
	words := string(b.Kind) + " up to " + readOn(stepName(b.Component, b.Step))
	if b.Overnight {
		words += ", the day before"
	}
	return words
}
