package web

import (
	"net/http"

	"benchproof/kitchen/fault"
)

// statusOf is the one table from a fault's kind to the HTTP status.
func statusOf(k fault.Kind) int {
	switch k {
	case fault.Invalid:
		return http.StatusUnprocessableEntity
	case fault.Malformed:
		return http.StatusBadRequest
	case fault.NotFound:
		return http.StatusNotFound
	case fault.Conflict:
		return http.StatusConflict
	case fault.Forbidden:
		return http.StatusForbidden
	case fault.TooLarge:
		return http.StatusRequestEntityTooLarge
	case fault.TooMany:
		return http.StatusTooManyRequests
	case fault.Busy:
		return http.StatusServiceUnavailable
	}
	return http.StatusInternalServerError
}
