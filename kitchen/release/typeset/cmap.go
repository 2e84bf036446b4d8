package typeset

import "encoding/binary"

// charactersOf reads a font file's Unicode table: which characters of the Basic
// Multilingual Plane it shows. The PDF writer takes no others. ok is false for a
// file without such a table. Source: OpenType specification, "cmap", formats 4
// and 12.
func charactersOf(file []byte) (shows map[rune]bool, ok bool) {
	cmap := table(file, "cmap")
	shows = map[rune]bool{}
	for i := range u16(cmap, 2) {
		platform, encoding := u16(cmap, 4+8*i), u16(cmap, 6+8*i)
		if platform != 0 && (platform != 3 || encoding != 1 && encoding != 10) {
			continue
		}
		at := u32(cmap, 8+8*i)
		if at >= len(cmap) {
			continue
		}
		switch sub := cmap[at:]; u16(sub, 0) {
		case 4:
			readFormat4(sub, shows)
			ok = true
		case 12:
			readFormat12(sub, shows)
			ok = true
		}
	}
	return shows, ok && len(shows) > 0
}

func readFormat4(sub []byte, shows map[rune]bool) {
	segments := u16(sub, 6) / 2
	ends, starts := 14, 16+2*segments
	deltas, offsets := starts+2*segments, starts+4*segments
	for i := range segments {
		start, end := u16(sub, starts+2*i), u16(sub, ends+2*i)
		delta, offset := u16(sub, deltas+2*i), u16(sub, offsets+2*i)
		for c := start; c <= end && c != 0xFFFF; c++ {
			glyph := c
			if offset != 0 {
				glyph = u16(sub, offsets+2*i+offset+2*(c-start))
			}
			if glyph != 0 || offset == 0 {
				glyph = (glyph + delta) & 0xFFFF
			}
			if glyph != 0 {
				shows[rune(c)] = true
			}
		}
	}
}

func readFormat12(sub []byte, shows map[rune]bool) {
	for i := range min(u32(sub, 12), len(sub)/12) {
		start, end, glyph := u32(sub, 16+12*i), u32(sub, 20+12*i), u32(sub, 24+12*i)
		for c := start; c <= min(end, 0xFFFE); c++ {
			if glyph+c-start != 0 {
				shows[rune(c)] = true
			}
		}
	}
}

// table finds a table of an OpenType file by its tag; nil if it has none.
func table(file []byte, tag string) []byte {
	for i := range u16(file, 4) {
		at := 12 + 16*i
		if at+16 > len(file) {
			return nil
		}
		if string(file[at:at+4]) != tag {
			continue
		}
		start := u32(file, at+8)
		end := start + u32(file, at+12)
		if end > len(file) || start > end {
			return nil
		}
		return file[start:end]
	}
	return nil
}

// u16 and u32 read big-endian numbers; 0 behind the end.
func u16(b []byte, at int) int {
	if at < 0 || at+2 > len(b) {
		return 0
	}
	return int(binary.BigEndian.Uint16(b[at:]))
}

func u32(b []byte, at int) int {
	if at < 0 || at+4 > len(b) {
		return 0
	}
	return int(binary.BigEndian.Uint32(b[at:]))
}
