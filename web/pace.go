package web

import (
	"context"
	"fmt"
	"net/http"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/script"
)

// paceCuts is how many of the newest cuts tell the host's pace.
const paceCuts = 5

// measuredPace is how fast the host spoke in the newest cuts, and how many cuts
// told it; 0 if none did.
func (s *Server) measuredPace(ctx context.Context) (wordsPerMinute, cuts int, err error) {
	episodes, err := s.store.Episodes(ctx)
	if err != nil {
		return 0, 0, err
	}
	var stretches []script.Stretch
	for _, e := range episodes {
		if e.Stage != episode.Released && e.Stage != episode.InTheEdit || cuts == paceCuts {
			continue
		}
		aligned, err := s.alignmentIn(ctx, e.ID)
		if err != nil {
			return 0, 0, err
		}
		if aligned.End == 0 {
			continue
		}
		stretches = append(stretches, aligned.Stretches...)
		cuts++
	}
	pace, ok := script.PaceOf(stretches)
	if !ok {
		return 0, 0, nil
	}
	return pace, cuts, nil
}

// alignmentIn is alignmentOf for an episode whose desk is not open.
func (s *Server) alignmentIn(ctx context.Context, episodeID int64) (script.Alignment, error) {
	d, err := s.deskOf(ctx, episodeID)
	if err != nil {
		return script.Alignment{}, err
	}
	segments, err := s.store.Segments(ctx, episodeID)
	if err != nil {
		return script.Alignment{}, err
	}
	return s.alignmentOf(ctx, d, segments)
}

// paceText says what was measured; "" if nothing was.
func paceText(wordsPerMinute, cuts int) string {
	if cuts == 0 {
		return ""
	}
	return fmt.Sprintf("Measured from %s: %d words a minute, silences left out.", count(cuts, "cut", "cuts"), wordsPerMinute)
}

// usePace makes the measured pace the one that scripts are timed by.
func (s *Server) usePace(w http.ResponseWriter, r *http.Request) error {
	pace, cuts, err := s.measuredPace(r.Context())
	if err != nil {
		return err
	}
	if cuts == 0 {
		return fault.Invalidf("", "No cut has captions yet, so there is no pace to measure.")
	}
	show, err := s.store.Show(r.Context())
	if err != nil {
		return err
	}
	show.WordsPerMinute = pace
	if err := s.store.SaveShow(r.Context(), show); err != nil {
		return err
	}
	s.flash(r, fmt.Sprintf("Scripts are now timed at %d words a minute.", pace), "")
	return seeOther(w, r, "/show")
}
