package store_test

import (
	"database/sql"
	"fmt"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/pressly/goose/v3"

	"benchproof/kitchen/episode"
	"benchproof/migrations"
	"benchproof/store"
)

// blank opens an empty database with the migrations at hand.
func blank(t testing.TB) (path string, db *sql.DB, provider *goose.Provider) {
	t.Helper()
	path = filepath.Join(t.TempDir(), "show.db")
	db, err := sql.Open("sqlite", "file:"+path+"?_foreign_keys=1&_journal_mode=WAL&_dqs=0")
	ok(t, err)
	db.SetMaxOpenConns(1)
	t.Cleanup(func() { db.Close() })
	return path, db, must(store.NewProvider(db))(t)
}

// schema is the whole schema as text, goose's own table left out.
func schema(t testing.TB, db *sql.DB) string {
	t.Helper()
	return strings.Join(column(t, db, `
SELECT type || ' ' || name || ': ' || COALESCE(sql, '')
FROM sqlite_schema
WHERE tbl_name NOT LIKE 'goose%'
  AND name NOT LIKE 'sqlite_%'
ORDER BY type, name`), "\n")
}

func column(t testing.TB, db *sql.DB, text string, args ...any) (values []string) {
	t.Helper()
	rows, err := db.QueryContext(t.Context(), text, args...)
	ok(t, err)
	defer rows.Close()
	for rows.Next() {
		var value string
		ok(t, rows.Scan(&value))
		values = append(values, value)
	}
	ok(t, rows.Err())
	return values
}

func TestMigrationsGoUpDownUp(t *testing.T) {
	_, db, provider := blank(t)
	must(provider.Up(t.Context()))(t)
	up := schema(t, db)
	must(provider.DownTo(t.Context(), 0))(t)
	same(t, "schema after down", schema(t, db), "")
	must(provider.Up(t.Context()))(t)
	same(t, "schema after down and up", schema(t, db), up)
}

func TestEachMigrationGoesDownToWhereItCameFrom(t *testing.T) {
	_, db, provider := blank(t)
	for _, source := range provider.ListSources() {
		before := schema(t, db)
		must(provider.UpTo(t.Context(), source.Version))(t)
		after := schema(t, db)
		must(provider.Down(t.Context()))(t)
		same(t, source.Path+" down", schema(t, db), before)
		must(provider.UpTo(t.Context(), source.Version))(t)
		same(t, source.Path+" up again", schema(t, db), after)
	}
}

// Opening is upgrading: from every schema there ever was, to the same one.
func TestOpenUpgradesFromEverySchema(t *testing.T) {
	_, db, provider := blank(t)
	must(provider.Up(t.Context()))(t)
	want := schema(t, db)
	for _, from := range provider.ListSources() {
		t.Run(fmt.Sprint(from.Version), func(t *testing.T) {
			path, db, provider := blank(t)
			must(provider.UpTo(t.Context(), from.Version))(t)
			ok(t, db.Close())
			same(t, "schema", schema(t, openAt(t, path, nil).Raw()), want)
		})
	}
}

// An episode from before releases were kept gets an empty one.
func TestUpgradingGivesEveryEpisodeARelease(t *testing.T) {
	path, db, provider := blank(t)
	must(provider.UpTo(t.Context(), 12))(t)
	_, err := db.ExecContext(t.Context(), `
INSERT INTO episode (number, title, stage, dish, inspired_by, inspired_url, look, hook, target_minutes, notes)
VALUES (1, 'old', 'pitched', '', '', '', '', '', 0, '')`)
	ok(t, err)
	ok(t, db.Close())
	st := openAt(t, path, nil)
	same(t, "Release", must(st.Release(t.Context(), 1))(t), episode.Release{EpisodeID: 1, Revision: 1})
}

func TestMigrationFiles(t *testing.T) {
	names := must(fs.Glob(migrations.Files, "*.sql"))(t)
	form := regexp.MustCompile(`^\d{5}_[a-z]+(_[a-z]+)*\.sql$`)
	for i, name := range names {
		if !form.MatchString(name) || !strings.HasPrefix(name, fmt.Sprintf("%05d_", i+1)) {
			t.Errorf("%s is not named as migration %d should be", name, i+1)
		}
		text := string(must(fs.ReadFile(migrations.Files, name))(t))
		for _, part := range []string{"-- +goose Up\n", "-- +goose Down\n"} {
			if strings.Count(text, part) != 1 {
				t.Errorf("%s has not one %q", name, part)
			}
		}
	}
}

func TestEveryTableIsStrictAndExact(t *testing.T) {
	db := open(t).Raw()
	loose := column(t, db, "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'")
	same(t, "tables that are not STRICT", loose, []string{"goose_db_version"})
	floats := column(t, db, `
SELECT t.name || '.' || c.name
FROM pragma_table_list AS t
JOIN pragma_table_info(t.name) AS c
WHERE t.schema = 'main'
  AND t.strict = 1
  AND c.type NOT IN ('INTEGER', 'TEXT', 'BLOB')`)
	same(t, "columns of other types", floats, []string(nil))
}

// A reference without an index makes each deletion read the whole table.
func TestEveryReferenceIsIndexed(t *testing.T) {
	db := open(t).Raw()
	for _, table := range column(t, db, "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 1") {
		var indexes []string
		for _, index := range column(t, db, "SELECT name FROM pragma_index_list(?1) WHERE partial = 0", table) {
			indexes = append(indexes, strings.Join(column(t, db, "SELECT name FROM pragma_index_info(?1) ORDER BY seqno", index), ",")+",")
		}
		key := strings.Join(column(t, db, "SELECT name FROM pragma_table_info(?1) WHERE pk > 0 ORDER BY pk", table), ",") + ","
		indexes = append(indexes, key)
		for _, id := range column(t, db, "SELECT DISTINCT id FROM pragma_foreign_key_list(?1)", table) {
			from := strings.Join(column(t, db, `SELECT "from" FROM pragma_foreign_key_list(?1) WHERE id = CAST(?2 AS INTEGER) ORDER BY seq`, table, id), ",") + ","
			if !slices.ContainsFunc(indexes, func(index string) bool { return strings.HasPrefix(index, from) }) {
				t.Errorf("%s (%s) has no index; there are %v", table, from, indexes)
			}
		}
	}
}

// Whatever is asked of one thing is looked up, not searched for: a plan that
// reads a whole table would still be right, and slow after some years.
func TestQueriesByIDGoByIndex(t *testing.T) {
	st := open(t)
	addFull(t, st, "one").state(t, st)
	must(st.ShareLink(t.Context(), "one"))(t)
	must(st.AddUser(t.Context(), "Ina", ""))(t)
	must(st.UserByName(t.Context(), "Ina"))(t)
	byID := regexp.MustCompile(`(_id|token_hash|name) = \?1`)
	checked := 0
	for _, text := range st.Statements() {
		if !byID.MatchString(text) || strings.Contains(text, "INSERT") {
			continue
		}
		checked++
		for _, detail := range plan(t, st, text) {
			if strings.HasPrefix(detail, "SCAN ") && detail != "SCAN CONSTANT ROW" {
				t.Errorf("%s: in %s", detail, text)
			}
		}
	}
	if checked < 20 {
		t.Errorf("only %d statements checked", checked)
	}
}

// plan is how SQLite would run a statement.
func plan(t testing.TB, st *store.Store, text string) (details []string) {
	t.Helper()
	numbers := regexp.MustCompile(`\?(\d+)`).FindAllStringSubmatch(text, -1)
	args := make([]any, 0)
	for _, n := range numbers {
		for len(args) < must(strconv.Atoi(n[1]))(t) {
			args = append(args, nil)
		}
	}
	rows, err := st.Raw().QueryContext(t.Context(), "EXPLAIN QUERY PLAN "+text, args...)
	ok(t, err)
	defer rows.Close()
	for rows.Next() {
		var id, parent, unused int
		var detail string
		ok(t, rows.Scan(&id, &parent, &unused, &detail))
		details = append(details, detail)
	}
	ok(t, rows.Err())
	return details
}
