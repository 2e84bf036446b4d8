package arrows

// floors is the kitchen from the ground up. A room may import rooms on lower
// floors; rooms on one floor stand side by side and do not know each other. The
// episode and what a recipe holds have a floor of their own because the rooms
// above compute with them.
var floors = [][]string{
	{"fault", "logistic"},
	{"measure"},
	{"food"},
	{"recipe"},
	{"episode", "nutrition"},
	{"shop", "safety", "script", "release", "shoot", "coverage", "verify"},
}

// may lists, for each room outside the kitchen, the rooms it may import.
// "kitchen" stands for every room of the kitchen.
var may = map[string][]string{
	"cmd":        {"cmd", "web", "views", "store", "kitchen", "seed", "static", "migrations"},
	"web":        {"views", "store", "kitchen", "seed", "static"},
	"views":      {"kitchen", "static"},
	"store":      {"kitchen", "migrations"},
	"seed":       {"kitchen"},
	"static":     {},
	"migrations": {},
}

// testsMayToo lists what the tests of a room may import beyond the room itself.
var testsMayToo = map[string][]string{
	"kitchen": {"seed"},
	"web":     {"cmd/check/browser", "cmd/check/tools"},
	"views":   {"cmd/check/browser", "cmd/check/tools"},
	"store":   {"seed"},
	"seed":    {"store"},
}

// testsMayKnow lists the packages from outside that only a room's tests may
// know: those of views serve its specimens to a browser, those of the store
// sign in through the sessions' library.
var testsMayKnow = map[string][]string{
	"views": {"net/http"},
	"store": {"net/http", "github.com/alexedwards/scs/v2"},
}

// banned lists, for a room, the packages from outside that it must not know,
// each with all that lies below it.
var banned = map[string][]string{
	"kitchen": append([]string{"html/template", "text/template", "github.com/a-h/templ"}, append(sql, http...)...),
	"seed":    append([]string{"html/template", "text/template", "github.com/a-h/templ"}, append(sql, http...)...),
	"views":   append(sql, http...),
	"store":   append([]string{"html/template", "text/template", "github.com/a-h/templ"}, http...),
	"web":     sql,
}

var (
	sql  = []string{"database/sql", "modernc.org/sqlite", "github.com/pressly/goose/v3"}
	http = []string{"net/http", "github.com/go-chi/chi/v5", "github.com/alexedwards/scs/v2"}
)
