package script_test

import (
	"runtime"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
)

// longCut is cuts one behind the other until there are so many words, with all
// their segments and steps.
func longCut(b *testing.B, words int) (text string, segments []episode.Segment, steps []string) {
	var captions script.Captions
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
		steps = append(steps, c.steps...)
		at += c.captions.End()
	}
	return script.WriteVTT(captions), segments, steps
}

var cutSizes = []struct {
	name  string
	words int
}{{"60min", 9_000}, {"4h", 36_000}, {"100000 words", 100_000}}

// readAndAlign is the import of a cut: reading its captions and finding its
// segments.
func readAndAlign(b *testing.B, text string, segments []episode.Segment, steps []string) (script.Captions, []script.Start) {
	captions, err := script.ReadCaptions(text)
	if err != nil {
		b.Fatal(err)
	}
	return captions, script.Align(segments, steps, captions)
}

// Bounds the time of an import: with narration, and by titles and steps alone.
func BenchmarkReadAndAlign(b *testing.B) {
	for _, size := range cutSizes {
		text, segments, steps := longCut(b, size.words)
		titles := make([]episode.Segment, len(segments))
		for i, s := range segments {
			titles[i] = episode.Segment{Title: s.Title}
		}
		for name, segments := range map[string][]episode.Segment{"narration": segments, "titles": titles} {
			b.Run(size.name+"/"+name, func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					readAndAlign(b, text, segments, steps)
				}
			})
		}
	}
}

// BenchmarkMemory bounds the memory of an import: what is alive of the heap when
// all is read and aligned, and what was at the most, looked at every
// millisecond, garbage included.
func BenchmarkMemory(b *testing.B) {
	for _, size := range cutSizes {
		b.Run(size.name, func(b *testing.B) {
			text, segments, steps := longCut(b, size.words)
			before := heap(true)
			var live, peak uint64
			for b.Loop() {
				stop, most := make(chan bool), make(chan uint64)
				go watchHeap(stop, most)
				captions, starts := readAndAlign(b, text, segments, steps)
				stop <- true
				peak = max(peak, <-most)
				live = heap(true)
				runtime.KeepAlive(captions)
				runtime.KeepAlive(starts)
			}
			b.ReportMetric(mebibytes(live, before), "live-MiB")
			b.ReportMetric(mebibytes(peak, before), "peak-MiB")
		})
	}
}

// watchHeap sends the most that was on the heap until it is stopped.
func watchHeap(stop <-chan bool, most chan<- uint64) {
	tick := time.NewTicker(time.Millisecond)
	defer tick.Stop()
	top := uint64(0)
	for {
		select {
		case <-tick.C:
			top = max(top, heap(false))
		case <-stop:
			most <- max(top, heap(false))
			return
		}
	}
}

func heap(collect bool) uint64 {
	if collect {
		runtime.GC()
	}
	var stats runtime.MemStats
	runtime.ReadMemStats(&stats)
	return stats.HeapAlloc
}

func mebibytes(now, before uint64) float64 { return float64(max(now, before)-before) / (1 << 20) }
