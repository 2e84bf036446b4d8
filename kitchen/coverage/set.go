package coverage

import (
	"encoding/binary"
	"slices"
)

// set is a set of small numbers, a bit each.
type set []uint64

// newSet is an empty set for numbers below n.
func newSet(n int) set { return make(set, (n+63)/64) }

func (s set) add(i int)      { s[i/64] |= 1 << (i % 64) }
func (s set) has(i int) bool { return s[i/64]&(1<<(i%64)) != 0 }
func (s set) clone() set     { return slices.Clone(s) }

// join adds all of other, which is no longer than s.
func (s set) join(other set) {
	for i, bits := range other {
		s[i] |= bits
	}
}

// holds tells whether all of other, which may be longer, is in s.
func (s set) holds(other set) bool {
	for i, bits := range other {
		if i >= len(s) && bits != 0 || i < len(s) && bits&^s[i] != 0 {
			return false
		}
	}
	return true
}

// key is the set as a key of a map.
func (s set) key() string {
	text := make([]byte, 0, 8*len(s))
	for _, bits := range s {
		text = binary.LittleEndian.AppendUint64(text, bits)
	}
	return string(text)
}
