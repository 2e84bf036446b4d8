package script

import (
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// keyed are words with these keys, one a caption.
func keyed(keys ...string) (words []spokenWord, spots []spot) {
	for i, key := range keys {
		words = append(words, spokenWord{key: key, text: key, cue: i})
		spots = append(spots, spot{word: i})
	}
	return words, spots
}

// What is said turns most where one list of words ends and another begins.
func TestTurns(t *testing.T) {
	words, spots := keyed("dough", "flour", "dough", "flour", "dough", "plums", "sugar", "plums", "sugar", "plums")
	apart := turns(words, spots)
	for i, a := range apart {
		if i > 0 && i != 5 && a >= apart[5] {
			t.Errorf("at word %d it turns by %v, not less than the %v at word 5", i, a, apart[5])
		}
	}
	for name, keys := range map[string][]string{"nothing said": {"", "", ""}, "the same throughout": {"dough", "dough", "dough"}, "one word": {"dough"}} {
		for i, a := range turns(keyed(keys...)) {
			if math.IsNaN(a) || math.Abs(a) > 10 {
				t.Errorf("%s: at word %d it turns by %v", name, i, a)
			}
		}
	}
}

// Blocks that are moved on word by word are those counted afresh at each place.
func TestBlocksAreCounted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words, _ := keyed(rapid.SliceOfN(rapid.SampledFrom([]string{"", "dough", "plums", "oven", "syrup"}), 1, 3*turnReach).Draw(t, "keys")...)
		b := newBlocks(words)
		for {
			if got, want := b.alike(), b.countedAfresh(); math.Abs(got-want) > 1e-9 {
				t.Fatalf("before key %d the blocks are alike by %v, counted afresh %v", b.here, got, want)
			}
			if b.here == len(b.keys) {
				return
			}
			b.shift()
		}
	})
}

func (b *blocks) countedAfresh() float64 {
	before, behind := make([]float64, len(b.square)), make([]float64, len(b.square))
	for _, number := range b.keys[max(0, b.here-turnReach):b.here] {
		before[number]++
	}
	for _, number := range b.keys[b.here:min(b.here+turnReach, len(b.keys))] {
		behind[number]++
	}
	both, long, far := 0.0, 0.0, 0.0
	for number, square := range b.square {
		both += before[number] * behind[number] * square
		long += before[number] * before[number] * square
		far += behind[number] * behind[number] * square
	}
	return both / math.Sqrt(max(long*far, 1e-9))
}

// A silence is rare by how many others are as long, whatever its length.
func TestRarity(t *testing.T) {
	tests := []struct {
		name    string
		pauses  []time.Duration
		against int
		want    []float64
	}{
		{"each its rank", []time.Duration{1, 3, 2}, 6, []float64{math.Log(2), math.Log(6), math.Log(3)}},
		{"the same, a thousand times as long", []time.Duration{1000, 3000, 2000}, 6, []float64{math.Log(2), math.Log(6), math.Log(3)}},
		{"none that is longer than others", []time.Duration{2, 2, 2}, 3, []float64{0, 0, 0}},
		{"more than are looked for", []time.Duration{1, 2, 3, 4}, 2, []float64{0, 0, 0, math.Log(2)}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			var words []spokenWord
			var spots []spot
			for i, pause := range test.pauses {
				words, spots = append(words, spokenWord{pause: pause}), append(spots, spot{word: i})
			}
			for i, got := range rarity(words, spots, test.against) {
				if math.Abs(got-test.want[i]) > 1e-9 {
					t.Errorf("pause %d is rare by %v, want %v", i, got, test.want[i])
				}
			}
		})
	}
}
