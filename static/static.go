package static

import (
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"io/fs"
	"mime"
	"path"
	"regexp"
	"strings"
	"sync"
)

//go:embed css js fonts icons
var files embed.FS

// Prefix starts the address of every asset.
const Prefix = "/assets/"

// WorkerPath is where worker.js is served, beside its address as an asset: a
// worker has one address for good, and reaches no page outside its folder.
const WorkerPath = "/worker.js"

// bundles are the stylesheets as served, each from its parts in css/ in order.
var bundles = map[string][]string{
	"app.css":         {"tokens", "sheet", "head", "forms", "recipe", "pages", "print"},
	"share.css":       {"tokens", "sheet", "recipe", "share", "print"},
	"card-a4.css":     {"tokens", "card", "card-a4"},
	"card-letter.css": {"tokens", "card", "card-letter"},
	"card-a5.css":     {"tokens", "card", "card-a5"},
}

// Asset is one file as served.
type Asset struct {
	Name string // "app.css", "fonts/inter-regular.woff2"
	Type string // the Content-Type
	Hash string // 16 hexadecimal digits of the content's SHA-256
	Body []byte // shared: not to be written to
}

// Path is the asset's address: "/assets/3f2a…/app.css".
func (a Asset) Path() string { return Prefix + a.Hash + "/" + a.Name }

// URL gives the address of the named asset. It panics for a name that is not
// there, which is a mistake in a template.
func URL(name string) string {
	a, ok := assets()[name]
	if !ok {
		panic("static: no asset named " + name)
	}
	return a.Path()
}

// Open gives the asset at an address that URL made. It tells false for
// anything else, an outdated hash included.
func Open(address string) (Asset, bool) {
	rest, ok := strings.CutPrefix(address, Prefix)
	if !ok {
		return Asset{}, false
	}
	hash, name, ok := strings.Cut(rest, "/")
	if !ok {
		return Asset{}, false
	}
	a, ok := assets()[name]
	if !ok || a.Hash != hash {
		return Asset{}, false
	}
	return a, true
}

// Names lists every asset, in no order.
func Names() []string {
	var names []string
	for name := range assets() {
		names = append(names, name)
	}
	return names
}

// Font gives a TrueType font for embedding in a PDF: "inter-regular",
// "inter-semibold", "source-serif-regular", "source-serif-italic",
// "source-serif-semibold". It panics for any other name.
func Font(name string) []byte { return mustRead("fonts/" + name + ".ttf") }

// assets is everything served, by name, made once.
var assets = sync.OnceValue(func() map[string]Asset {
	all := map[string]Asset{}
	for _, folder := range []string{"fonts", "icons", "js"} {
		addFolder(all, folder)
	}
	for name, parts := range bundles {
		var b strings.Builder
		for _, part := range parts {
			b.Write(mustRead("css/" + part + ".css"))
		}
		add(all, name, []byte(pointAtAssets(b.String(), all)))
	}
	return all
})

// addFolder adds a folder's web files; scripts are named without the folder.
func addFolder(all map[string]Asset, folder string) {
	entries, err := fs.ReadDir(files, folder)
	if err != nil {
		panic(err)
	}
	for _, entry := range entries {
		name := folder + "/" + entry.Name()
		switch path.Ext(name) {
		case ".woff2", ".svg", ".png":
			add(all, name, mustRead(name))
		case ".js":
			add(all, entry.Name(), mustRead(name))
		}
	}
}

func add(all map[string]Asset, name string, body []byte) {
	sum := sha256.Sum256(body)
	all[name] = Asset{Name: name, Type: contentType(name), Hash: hex.EncodeToString(sum[:8]), Body: body}
}

var link = regexp.MustCompile(`url\("?(fonts|icons)/([^)"]+)"?\)`)

// pointAtAssets writes a stylesheet's links as the assets' own addresses.
func pointAtAssets(css string, all map[string]Asset) string {
	return link.ReplaceAllStringFunc(css, func(found string) string {
		parts := link.FindStringSubmatch(found)
		a, ok := all[parts[1]+"/"+parts[2]]
		if !ok {
			panic("static: a stylesheet links to " + parts[1] + "/" + parts[2])
		}
		return `url("` + a.Path() + `")`
	})
}

// contentType does not ask the system's tables for what we serve, so that it
// is the same everywhere.
func contentType(name string) string {
	switch path.Ext(name) {
	case ".css":
		return "text/css; charset=utf-8"
	case ".js":
		return "text/javascript; charset=utf-8"
	case ".woff2":
		return "font/woff2"
	case ".svg":
		return "image/svg+xml"
	}
	return mime.TypeByExtension(path.Ext(name))
}

func mustRead(name string) []byte {
	body, err := files.ReadFile(name)
	if err != nil {
		panic(err)
	}
	return body
}
