package script

import (
	"strings"
	"time"
)

// asciiBlanks are what the standard skips around times: its whitespace, without
// the line ends that no line holds.
const asciiBlanks = " \t\f"

// vttTimes reads a line of times "start --> end", with or without blanks about
// the arrow; behind the end anything may stand. W3C WebVTT, section 6.3, "collect
// WebVTT cue timings and settings". That the end comes after the start is asked
// of who writes a file, not of who reads it.
func vttTimes(line string, index int) (start, end time.Duration, err error) {
	left, right, _ := strings.Cut(line, "-->")
	start, rest, ok := vttTime(strings.TrimLeft(left, asciiBlanks))
	if !ok || strings.Trim(rest, asciiBlanks) != "" {
		return 0, 0, cueFault(index, "“%s” is no start time; write it as 00:01.000.", excerpt(left))
	}
	end, _, ok = vttTime(strings.TrimLeft(right, asciiBlanks))
	if !ok {
		right, _, _ = strings.Cut(strings.TrimSpace(right), " ")
		return 0, 0, cueFault(index, "“%s” is no end time; write it as 00:01.000.", excerpt(right))
	}
	return start, end, nil
}

// vttTime reads the time with which s begins, and gives what stands behind it:
// [h…h:]mm:ss.ttt, where the hours have any number of digits, and the others as
// many as shown. W3C WebVTT, section 6.1, "collect a WebVTT timestamp".
func vttTime(s string) (t time.Duration, rest string, ok bool) {
	first, s := digits(s)
	second, s, ok := digitsBehind(s, ':')
	if !ok {
		return 0, "", false
	}
	hours, minutes, seconds := "", first, second
	if len(first) != 2 || first > "59" || strings.HasPrefix(s, ":") {
		hours, minutes = first, second
		if seconds, s, ok = digitsBehind(s, ':'); !ok {
			return 0, "", false
		}
	}
	thousandths, s, ok := digitsBehind(s, '.')
	if !ok || first == "" {
		return 0, "", false
	}
	t, ok = clockTime(hours, minutes, seconds, thousandths)
	return t, s, ok
}

// digits parts s behind the digits with which it begins.
func digits(s string) (run, rest string) {
	n := 0
	for n < len(s) && s[n] >= '0' && s[n] <= '9' {
		n++
	}
	return s[:n], s[n:]
}

// digitsBehind parts s behind a mark and the digits after it; ok is false
// without the mark.
func digitsBehind(s string, mark byte) (run, rest string, ok bool) {
	if s == "" || s[0] != mark {
		return "", s, false
	}
	run, rest = digits(s[1:])
	return run, rest, true
}
