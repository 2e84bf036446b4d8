package web

import (
	"net"
	"net/http"
	"time"

	"github.com/go-chi/chi/v5"
	"github.com/go-chi/chi/v5/middleware"
	"github.com/go-chi/httprate"

	"benchproof/kitchen/fault"
	"benchproof/static"
)

// routes is the table of contents: who may come, and what answers.
func (s *Server) routes() http.Handler {
	r := chi.NewRouter()
	r.Use(middleware.GetHead) // caches and uptime checks ask with HEAD
	r.NotFound(s.do(noSuchPage))
	r.MethodNotAllowed(s.do(noSuchPage))
	r.Get("/assets/{hash}/*", s.do(s.sendAsset))
	r.Get("/favicon.ico", s.do(s.sendFavicon))
	r.Get(static.WorkerPath, s.do(s.sendWorker))
	r.Group(s.viewerRoutes)
	r.Group(func(r chi.Router) {
		r.Use(s.withSession, notStored)
		r.Group(s.doorRoutes)
		r.Group(func(r chi.Router) {
			r.Use(s.signedIn)
			s.showRoutes(r)
			r.Route("/episodes/{episode}", s.episodeRoutes)
			r.Route("/recipes", s.recipeRoutes)
		})
	})
	return r
}

func noSuchPage(http.ResponseWriter, *http.Request) error {
	return fault.NotFoundf("There is no page at this address. It may have been deleted: look under Recently deleted.")
}

// viewerRoutes need no login, set no cookie and may be cached.
func (s *Server) viewerRoutes(r chi.Router) {
	r.Get("/s/{token}", s.do(s.showShared))
	r.Get("/s/{token}/card", s.do(s.showSharedCard))
	r.Get("/s/{token}/card.pdf", s.do(s.sendSharedPDF))
}

// doorRoutes let people in; each address may try ten times a minute.
func (s *Server) doorRoutes(r chi.Router) {
	r.Get("/setup", s.do(s.showSetup))
	r.Get("/sign-in", s.do(s.showSignIn))
	r.Post("/sign-out", s.do(s.signOut))
	r.Group(func(r chi.Router) {
		r.Use(clientAddress, httprate.LimitBy(10, time.Minute, clientKey, httprate.WithLimitHandler(s.do(tooMany))))
		r.Post("/setup", s.do(s.setUp))
		r.Post("/sign-in", s.do(s.signIn))
	})
}

// clientAddress finds who is at the door: the peer, or whom a proxy on this
// machine names.
var clientAddress = middleware.ClientIPFromXFF("127.0.0.0/8", "::1/128")

// clientKey is the address that tries are counted by.
func clientKey(r *http.Request) (string, error) {
	if ip := middleware.GetClientIP(r.Context()); ip != "" {
		return httprate.CanonicalizeIP(ip), nil
	}
	host, _, err := net.SplitHostPort(r.RemoteAddr)
	return host, err
}

func tooMany(http.ResponseWriter, *http.Request) error {
	return &fault.Error{Kind: fault.TooMany, Say: "Too many tries. Wait a minute, then try again."}
}

// showRoutes are the pages of the whole show.
func (s *Server) showRoutes(r chi.Router) {
	r.Get("/", s.do(s.showSeason))
	r.Post("/episodes", s.do(s.startEpisode))
	r.Get("/show", s.do(s.showShow))
	r.Post("/show", s.do(s.saveShow))
	r.Post("/show/pace", s.do(s.usePace))
	r.Get("/pitches", s.do(s.showPitches))
	r.Post("/pitches", s.do(s.addPitch))
	r.Post("/pitches/{pitch}", s.do(s.savePitch))
	r.Post("/pitches/{pitch}/delete", s.do(s.deletePitch))
	r.Post("/pitches/{pitch}/episode", s.do(s.makeEpisode))
	r.Get("/larder", s.do(s.showLarder))
	r.Get("/larder/{food}", s.do(s.showFood))
	r.Post("/larder/{food}/names", s.do(s.learnName))
	entriesAt(r, "/larder/{food}/packs", s, s.packs())
	entriesAt(r, "/larder/{food}/stock", s, s.stock())
	r.Get("/shopping", s.do(s.showShopping))
	r.Post("/shopping/ticks", s.do(s.tickShopping))
	r.Get("/deleted", s.do(s.showDeleted))
	r.Post("/deleted/{kind}/{id}/restore", s.do(s.restore))
}

// recipeRoutes are recipes, wherever they are used.
func (s *Server) recipeRoutes(r chi.Router) {
	r.Get("/", s.do(s.showRecipes))
	r.Post("/", s.do(s.addRecipe))
	r.Get("/new", s.do(s.newRecipe))
	r.Post("/read", s.do(s.readAgain))
	r.Get("/{recipe}", s.do(s.showRecipe))
	r.Get("/{recipe}/edit", s.do(s.editRecipe))
	r.Post("/{recipe}/read", s.do(s.readAgain))
	r.Post("/{recipe}/delete", s.do(s.deleteRecipe))
	r.Post("/{recipe}/versions", s.do(s.addVersion))
	r.Get("/{recipe}/versions/{version}", s.do(s.showVersion))
	r.Post("/{recipe}/versions/{version}", s.do(s.saveVersion))
	r.Get("/{recipe}/changes", s.do(s.showChanges))
	r.Post("/{recipe}/corrections", s.do(s.correctLine))
	r.Post("/{recipe}/corrections/forget", s.do(s.forgetCorrection))
}

// episodeRoutes are an episode's sheets and what is done on them.
func (s *Server) episodeRoutes(r chi.Router) {
	r.Get("/", s.do(s.showRecipeSheet))
	r.Post("/delete", s.do(s.deleteEpisode))
	r.Get("/brief", s.do(s.showBrief))
	r.Post("/brief", s.do(s.saveBrief))
	r.Get("/recipe", s.do(s.showRecipeSheet))
	r.Post("/scale", s.do(s.keepScale))
	r.Post("/version", s.do(s.useVersion))
	r.Get("/trials", s.do(s.showTrials))
	r.Get("/shop", s.do(s.showShop))
	r.Post("/ticks", s.do(s.tick))
	r.Get("/shoot-day", s.do(s.showShootDay))
	r.Post("/shoot-day", s.do(s.saveShootDay))
	r.Post("/shoot-day/kitchen", s.do(s.saveKitchen))
	r.Post("/shoot-day/steps", s.do(s.saveStep))
	r.Post("/shoot-day/late", s.do(s.saveLate))
	r.Post("/shoot-day/anew", s.do(s.startAnew))
	r.Get("/shoot-day/search", s.do(s.showSearch))
	r.Post("/shoot-day/search", s.do(s.beginSearch))
	r.Post("/shoot-day/search/stop", s.do(s.stopSearch))
	r.Post("/shoot-day/swap-outs", s.do(s.pickSwapOuts))
	r.Get("/shoot-day.csv", s.do(s.sendShootCSV))
	r.Get("/shoot-day.ics", s.do(s.sendShootCalendar))
	r.Get("/script", s.do(s.showScript))
	r.Get("/shots", s.do(s.showShots))
	r.Post("/shots/ticks", s.do(s.tickShot))
	r.Post("/shots/ticks/kept", s.do(s.tickShotLate))
	r.Post("/shots/draft", s.do(s.draftShots))
	r.Post("/setups", s.do(s.saveSetup))
	r.Get("/cut", s.do(s.showCut))
	r.Post("/cut", s.do(s.saveCut))
	r.Get("/captions.{format:vtt|srt}", s.do(s.sendCaptions))
	r.Post("/findings", s.do(s.settleFinding))
	r.Post("/chapters", s.do(s.setChapter))
	r.Get("/release", s.do(s.showRelease))
	r.Post("/release", s.do(s.saveRelease))
	r.Post("/shares", s.do(s.addShare))
	r.Post("/shares/{share}/revoke", s.do(s.revokeShare))
	r.Get("/call-sheet", s.do(s.showCallSheet))
	r.Get("/card", s.do(s.showCard))
	r.Get("/card.pdf", s.do(s.sendCardPDF))

	partsAt(r, "/batches", s, s.batches())
	partsAt(r, "/trials", s, s.trials())
	partsAt(r, "/moments", s, s.moments())
	partsAt(r, "/segments", s, s.segments())
	partsAt(r, "/shots", s, s.shots())
	partsAt(r, "/corrections", s, s.corrections())
}

// partsAt lays the routes of one kind of part: add, save, delete, move.
func partsAt[T any](r chi.Router, at string, s *Server, p part[T]) {
	h := handlers(s, p)
	r.Post(at, s.do(h.add))
	r.Post(at+"/{part}", s.do(h.save))
	r.Post(at+"/{part}/delete", s.do(h.remove))
	if p.move != nil {
		r.Post(at+"/{part}/move", s.do(h.move))
	}
}

// entriesAt lays the routes of what is noted of a food: add, save, delete.
func entriesAt[T any](r chi.Router, at string, s *Server, e entry[T]) {
	h := entryHandlers(s, e)
	r.Post(at, s.do(h.add))
	r.Post(at+"/{entry}", s.do(h.save))
	r.Post(at+"/{entry}/delete", s.do(h.remove))
}
