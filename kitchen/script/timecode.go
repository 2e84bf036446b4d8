package script

import "benchproof/kitchen/episode"

// Timecode writes a time in a video as episode.Timecode does: "12:05".
func Timecode(seconds int) string { return episode.Timecode(seconds) }
