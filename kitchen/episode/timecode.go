package episode

import "fmt"

// Timecode writes a time in a video as its platforms write chapters: "0:00",
// "12:05", "1:02:09". Times before the start come out as "−0:05".
func Timecode(seconds int) string {
	if seconds < 0 {
		return "−" + Timecode(-seconds)
	}
	hours, minutes, rest := seconds/3600, seconds/60%60, seconds%60
	if hours == 0 {
		return fmt.Sprintf("%d:%02d", minutes, rest)
	}
	return fmt.Sprintf("%d:%02d:%02d", hours, minutes, rest)
}
