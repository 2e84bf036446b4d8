package script_test

import (
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
)

// longCaptions puts cuts one behind the other until there are so many words,
// with all their segments.
func longCaptions(b *testing.B, words int) (string, []episode.Segment) {
	var captions script.Captions
	var segments []episode.Segment
	cuts := readCuts(b)
	var at time.Duration
	for count, i := 0, 0; count < words; i++ {
		c := cuts[i%len(cuts)]
		for _, cue := range c.captions.Cues {
			count += len(cue.Words())
			cue.Start, cue.End = cue.Start+at, cue.End+at
			captions.Cues = append(captions.Cues, cue)
		}
		segments = append(segments, c.segments...)
		at += c.captions.End()
	}
	return script.WriteVTT(captions), segments
}

// Bounds the import of a cut: reading its captions and finding its segments.
func BenchmarkReadAndAlign(b *testing.B) {
	for _, size := range []struct {
		name  string
		words int
	}{{"60min", 9_000}, {"4h", 36_000}} {
		b.Run(size.name, func(b *testing.B) {
			text, segments := longCaptions(b, size.words)
			b.ReportAllocs()
			for b.Loop() {
				captions, err := script.ReadCaptions(text)
				if err != nil {
					b.Fatal(err)
				}
				if starts := script.Align(segments, nil, captions); len(starts) != len(segments) {
					b.Fatal("no starts")
				}
			}
		})
	}
}
