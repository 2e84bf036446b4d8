package web

import (
	"net/http"
	"strconv"

	"github.com/go-chi/chi/v5"

	"benchproof/kitchen/fault"
)

// pathID reads one number of the address; anything else is NotFound.
func pathID(r *http.Request, name string) (int64, error) {
	id, err := strconv.ParseInt(chi.URLParam(r, name), 10, 64)
	if err != nil || id < 1 {
		return 0, fault.NotFoundf("There is no page at this address.")
	}
	return id, nil
}
