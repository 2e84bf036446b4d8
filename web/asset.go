package web

import (
	"net/http"

	"benchproof/kitchen/fault"
	"benchproof/static"
)

// sendAsset sends a stylesheet, script, font or picture. Its address carries
// its content's hash, so a browser may keep it for good.
func (s *Server) sendAsset(w http.ResponseWriter, r *http.Request) error {
	asset, ok := static.Open(r.URL.Path)
	if !ok {
		return fault.NotFoundf("There is no such file.")
	}
	h := w.Header()
	h.Set("Content-Type", asset.Type)
	h.Set("Cache-Control", "public, max-age=31536000, immutable")
	h.Set("ETag", `"`+asset.Hash+`"`)
	return sendBytes(w, r, asset.Body)
}

// sendWorker sends the script that keeps sheets for when there is no signal. A
// browser looks for a newer one at the same address, so none may be kept.
func (s *Server) sendWorker(w http.ResponseWriter, r *http.Request) error {
	asset, _ := static.Open(static.URL("worker.js"))
	h := w.Header()
	h.Set("Content-Type", asset.Type)
	h.Set("Cache-Control", "no-cache")
	h.Set("ETag", `"`+asset.Hash+`"`)
	return sendBytes(w, r, asset.Body)
}

func (s *Server) sendFavicon(w http.ResponseWriter, r *http.Request) error {
	http.Redirect(w, r, static.URL("icons/icon.svg"), http.StatusFound)
	return nil
}
