package browser_test

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"testing"
)

// site serves pages of our own making, each under a strict policy as the
// program's pages are.
func site(t *testing.T, pages map[string]string) string {
	t.Helper()
	mux := http.NewServeMux()
	for path, body := range pages {
		mux.HandleFunc("GET "+path+"{$}", func(w http.ResponseWriter, _ *http.Request) {
			w.Header().Set("Content-Type", "text/html; charset=utf-8")
			w.Header().Set("Content-Security-Policy", "default-src 'self'; script-src 'self'; style-src 'self'")
			fmt.Fprint(w, body)
		})
	}
	mux.HandleFunc("GET /sheet.css", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/css")
		fmt.Fprint(w, sheet)
	})
	mux.HandleFunc("GET /icon.svg", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "image/svg+xml")
		fmt.Fprint(w, `<svg xmlns="http://www.w3.org/2000/svg"/>`)
	})
	server := httptest.NewServer(mux)
	t.Cleanup(server.Close)
	return server.URL
}

const sheet = `
body { margin: 0; background: white; color: black; font-size: 16px }
a { color: inherit }
.wide { width: 700px; height: 10px }
.scrolls { overflow-x: auto }
.pale { color: #ddd }
@media (prefers-color-scheme: dark) { body { background: black; color: white } }
@media print { .screen { display: none } }
@page { size: A5 }
`

// page makes a whole document round a body.
func page(body string) string {
	return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Quay bun</title>` +
		`<link rel="icon" href="/icon.svg">` +
		`<meta name="viewport" content="width=device-width, initial-scale=1">` +
		`<link rel="stylesheet" href="/sheet.css"></head><body><main><h1>Quay bun</h1>` + body + `</main></body></html>`
}
