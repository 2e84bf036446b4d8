package web

import (
	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
	"benchproof/views"
)

// corrections is the part of what was wrong on air.
func (s *Server) corrections() part[episode.Correction] {
	return part[episode.Correction]{
		word: "correction", many: "corrections", sheet: views.SheetRelease,
		fields: correctionFields, values: correctionValues, read: readCorrection,
		get: s.store.Correction, add: s.store.AddCorrection, save: s.store.SaveCorrection, remove: s.store.DeleteCorrection,
		blank: func(episodeID int64) episode.Correction { return episode.Correction{EpisodeID: episodeID} },
		key:   func(c episode.Correction) partKey { return partKey{c.ID, c.EpisodeID, c.Revision} },
		stamp: func(c *episode.Correction, revision int) { c.Revision = revision },
	}
}

func correctionFields(*desk) []views.Field {
	return []views.Field{
		{Name: "at", Label: "At", Hint: "Where in the video: 4:12."},
		{Name: "said", Label: "Said", Required: true, Placeholder: "160 °C fan"},
		{Name: "right", Label: "Right is", Required: true, Placeholder: "170 °C fan"},
	}
}

func correctionValues(_ *desk, c episode.Correction) values {
	v := values{"said": c.Said, "right": c.Right}
	if c.At > 0 {
		v["at"] = script.Timecode(c.At)
	}
	return v
}

func readCorrection(f *typed, c *episode.Correction) {
	c.At = f.seconds("at")
	c.Said = f.needed("said", "Write what was said.")
	c.Right = f.needed("right", "Write what is right.")
}

func airRow(p part[episode.Correction], c episode.Correction) views.AirRow {
	return views.AirRow{
		At: script.Timecode(c.At), Said: c.Said, Right: c.Right,
		EditPath: p.changePath(c.EpisodeID, c.ID), DeleteAction: p.path(c.EpisodeID, c.ID) + "/delete",
	}
}
