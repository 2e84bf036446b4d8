package web

import (
	"net/http"

	"benchproof/kitchen/fault"
)

// outcome is what can follow a save.
type outcome struct {
	to     string                // where to go when it is saved
	say    string                // what to say there; "" says nothing
	redraw func(err error) error // draws the form again with what is wrong
	late   conflict              // what to show when somebody saved in between
}

// settle answers a save that ended with err.
func (s *Server) settle(w http.ResponseWriter, r *http.Request, err error, o outcome) error {
	switch kind := fault.KindOf(err); {
	case err == nil:
		if o.say != "" {
			s.flash(r, o.say, "")
		}
		return seeOther(w, r, o.to)
	case kind == fault.Invalid:
		return o.redraw(err)
	case kind == fault.Conflict:
		return s.drawConflict(w, r, o.late)
	}
	return err
}
