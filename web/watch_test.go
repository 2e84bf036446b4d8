package web_test

import (
	"encoding/binary"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"

	"benchproof/cmd/check/browser"
)

// silence writes a sound file of so many seconds: the browser plays it as it
// would a cut.
func silence(t *testing.T, seconds int) (path string) {
	t.Helper()
	const rate = 8000
	n := uint32(rate * seconds)
	wav := append([]byte("RIFF"), binary.LittleEndian.AppendUint32(nil, 36+n)...)
	wav = append(wav, "WAVEfmt "...)
	for _, field := range []any{uint32(16), uint16(1), uint16(1), uint32(rate), uint32(rate), uint16(1), uint16(8)} {
		var err error
		if wav, err = binary.Append(wav, binary.LittleEndian, field); err != nil {
			t.Fatal(err)
		}
	}
	wav = binary.LittleEndian.AppendUint32(append(wav, "data"...), n)
	for range n {
		wav = append(wav, 128)
	}
	path = filepath.Join(t.TempDir(), "cut.wav")
	if err := os.WriteFile(path, wav, 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// A file of the creator's plays beside the captions, and a press on a timecode
// goes there: of a caption, of a finding, of a chapter.
func TestAPressOnATimecodeGoesThere(t *testing.T) {
	tab := browser.Start(t, browser.Desk)
	s := newSite(t)
	at := threeSegments(s)
	s.saveCaptions(at, longerCut)
	tab.Open(s.url + at + "/cut#chapters")
	if browser.Get(tab, chromedp.Evaluate[bool](`document.querySelector("video").hidden === false`)) {
		t.Error("the player is there before there is a file")
	}
	tab.Do(chromedp.SetUploadFiles(chromedp.CSS("#watch-file"), []string{silence(t, 60)}))
	for row, want := range map[string]float64{"#cue-3": 15, "#cue-4": 34, "#chapters li:nth-child(2)": 15} {
		press := `(() => { const row = document.querySelector("` + row + `"); row.closest("details").open = true; row.querySelector(".g button").click(); return document.querySelector("video").currentTime })()`
		if got := browser.Get(tab, chromedp.Evaluate[float64](press)); got != want {
			t.Errorf("a press on the timecode of %s goes to %v s, want %v", row, got, want)
		}
	}
}

// A link to a caption opens what it is folded in.
func TestALinkToACaptionUnfoldsIt(t *testing.T) {
	tab := browser.Start(t, browser.Phone)
	s := newSite(t)
	at := threeSegments(s)
	s.saveCaptions(at, longerCut)
	tab.Open(s.url + at + "/cut")
	tab.Do(chromedp.Click(chromedp.CSS("details:has(.cues) > summary")))
	folded := `document.querySelector("details:has(.cues)").open`
	if browser.Get(tab, chromedp.Evaluate[bool](folded)) {
		t.Fatal("the captions do not fold")
	}
	browser.Get(tab, chromedp.Evaluate[string](`location.hash = "#cue-4"`))
	tab.Do(chromedp.WaitVisible(chromedp.CSS("#cue-4"))) // waits as long as it stays folded
}
