package script

import (
	"strings"
	"unicode/utf16"
)

// captionText gives the text of a caption file's bytes: UTF-8, or UTF-16 of
// either order, told by its byte-order mark or by the zero bytes that every
// Latin letter brings. The mark itself is taken off.
func captionText(raw string) string {
	switch {
	case strings.HasPrefix(raw, "\xff\xfe"):
		return fromUTF16(raw[2:], 1)
	case strings.HasPrefix(raw, "\xfe\xff"):
		return fromUTF16(raw[2:], 0)
	}
	switch n := min(len(raw)&^1, 64); {
	case n >= 8 && zeros(raw[:n], 1) == n/2 && zeros(raw[:n], 0) == 0:
		return fromUTF16(raw, 1)
	case n >= 8 && zeros(raw[:n], 0) == n/2 && zeros(raw[:n], 1) == 0:
		return fromUTF16(raw, 0)
	}
	return strings.TrimPrefix(raw, "\ufeff")
}

// zeros counts the zero bytes at even (0) or odd (1) places.
func zeros(raw string, odd int) int {
	n := 0
	for i := odd; i < len(raw); i += 2 {
		if raw[i] == 0 {
			n++
		}
	}
	return n
}

// fromUTF16 decodes units whose high byte stands at the odd (1) or even (0)
// place. A byte left over at the end is dropped.
func fromUTF16(raw string, high int) string {
	units := make([]uint16, len(raw)/2)
	for i := range units {
		units[i] = uint16(raw[2*i+high])<<8 | uint16(raw[2*i+1-high])
	}
	return string(utf16.Decode(units))
}
