package web

import (
	"encoding/json"
	"errors"
	"math"
	"net/http"
	"strconv"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/store"
)

// longestBy bounds the name a phone gives itself.
const longestBy = 40

// tickShot notes how far a shot has come, now: the state wanted is sent, so that
// sending it twice does no harm.
func (s *Server) tickShot(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	shot, tick, err := s.readShotTick(r, form)
	if err != nil {
		return err
	}
	if _, err := s.store.TickShot(r.Context(), shot.ID, store.ShotTick{Status: tick.Status}); err != nil {
		return err
	}
	return seeOther(w, r, episodePath(shot.EpisodeID)+"/shots#"+anchor("shot", shot.ID))
}

// tickShotLate notes how far a shot had come when a phone kept it, and answers
// with what holds: {"holds":"retake"}.
func (s *Server) tickShotLate(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	shot, tick, err := s.readShotTick(r, form)
	if err != nil {
		return err
	}
	holds, err := s.store.TickShot(r.Context(), shot.ID, tick)
	if err != nil {
		return err
	}
	w.Header().Set("Content-Type", "application/json")
	_ = json.NewEncoder(w).Encode(map[string]episode.ShotStatus{"holds": holds}) // fails for a phone that has left: it asks again
	return nil
}

// readShotTick reads a tick and finds the shot of this episode that it is for.
func (s *Server) readShotTick(r *http.Request, form *typed) (episode.Shot, store.ShotTick, error) {
	episodeID, err := pathID(r, "episode")
	if err != nil {
		return episode.Shot{}, store.ShotTick{}, err
	}
	id := form.whole("shot")
	tick := shotTick(form)
	if err := form.err(); err != nil {
		return episode.Shot{}, store.ShotTick{}, err
	}
	shot, err := s.store.Shot(r.Context(), int64(id))
	if err == nil && shot.EpisodeID != episodeID {
		err = noSuchPart("shot")
	}
	return shot, tick, err
}

// shotTick reads the status wanted, and of a kept one its age in milliseconds,
// the phone's name for itself and how many ticks it has given.
func shotTick(form *typed) store.ShotTick {
	tick := store.ShotTick{
		Status: episode.ShotStatus(form.oneOf("status", asWords(episode.ShotStatuses))),
		Age:    tickAge(form), By: form.text("by"), Nth: int64(form.whole("nth")),
	}
	if len(tick.By) > longestBy {
		form.fail("by", "A phone's name has at most %d characters.", longestBy)
	}
	return tick
}

// tickAge is a tick's age. A silly one is bounded, not refused: the tick is a
// fact all the same.
func tickAge(form *typed) time.Duration {
	text := form.text("age")
	if text == "" {
		return 0
	}
	age, err := strconv.ParseInt(text, 10, 64)
	if err != nil && !errors.Is(err, strconv.ErrRange) {
		form.fail("age", "“%s” is not an age in milliseconds.", text)
	}
	const most = math.MaxInt64 / int64(time.Millisecond)
	return time.Duration(min(max(age, 0), most)) * time.Millisecond
}
