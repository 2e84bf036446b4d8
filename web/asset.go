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

func (s *Server) sendFavicon(w http.ResponseWriter, r *http.Request) error {
	http.Redirect(w, r, static.URL("icons/icon.svg"), http.StatusFound)
	return nil
}
