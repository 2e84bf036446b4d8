package store

import (
	"context"
	"math"

	"benchproof/kitchen/episode"
)

// SeasonRow is an episode as the season shows it.
type SeasonRow struct {
	Episode       episode.Episode
	RecipeName    string // "" if it has no recipe yet
	VersionNumber int    // 0 if it has no recipe yet

	// Facts are what the rows of the database tell. What takes computing with
	// the recipe is left at zero: ToBuy, DescriptionOver. A title is over at 100
	// characters, as release.TitleLimit says.
	Facts episode.Facts
}

// selectSeason takes the episodes with ids from ?1 to ?2. Left alone, SQLite
// would read every line of every recipe and every narration to count them;
// the indexes named here hold all that is counted, and no more.
//
// PlannedSeconds adds up as script.Length does: as planned, else the words at
// the show's pace, rounded up for each segment.
const selectSeason = `
SELECT e.episode_id, e.number, e.title, e.stage, e.release_on, e.dish, e.inspired_by, e.inspired_url, e.look, e.hook,
       e.target_minutes, e.notes, COALESCE(v.recipe_id, 0), COALESCE(e.version_id, 0), e.scale, e.revision,
       COALESCE(r.name, ''),
       COALESCE(v.number, 0),
       (SELECT count(*) FROM line AS l INDEXED BY line_unread WHERE l.version_id = e.version_id AND l.is_read = 0)
         + (SELECT count(*) FROM unread_line AS u WHERE u.version_id = e.version_id),
       (SELECT count(*) FROM line AS l INDEXED BY line_questioned WHERE l.version_id = e.version_id AND l.is_read = 1 AND (l.reason <> '' OR l.choices <> ''))
         + (SELECT count(*) FROM step AS p INDEXED BY step_questioned WHERE p.version_id = e.version_id AND p.reason <> ''),
       COALESCE(t.proved, 0), COALESCE(t.nearly, 0), COALESCE(t.not_yet, 0), COALESCE(t.other, 0), COALESCE(t.at_scale, 0),
       COALESCE(b.batches, 0), COALESCE(b.shoot, 0),
       COALESCE(g.segments, 0), COALESCE(g.silent, 0), COALESCE(g.seconds, 0),
       COALESCE(h.shots, 0), COALESCE(h.missing, 0), COALESCE(h.to_retake, 0),
       c.cut_id IS NOT NULL,
       COALESCE(octet_length(c.captions), 0) > 0,
       a.title <> '', a.opening <> '', a.video_url <> '', max(length(a.title) - 100, 0),
       (SELECT count(DISTINCT l.food) FROM line AS l WHERE l.version_id = e.version_id AND l.is_read = 1 AND l.food_id = '' AND l.food <> ''),
       (SELECT count(*) FROM finding AS n LEFT JOIN settlement AS o ON o.episode_id = n.episode_id AND o.key = n.key
        WHERE n.episode_id = e.episode_id AND o.key IS NULL),
       EXISTS (SELECT 1 FROM share_link AS k WHERE k.episode_id = e.episode_id AND k.revoked_at IS NULL)
FROM episode AS e
JOIN release AS a ON a.episode_id = e.episode_id
LEFT JOIN version AS v ON v.version_id = e.version_id
LEFT JOIN recipe AS r ON r.recipe_id = v.recipe_id
LEFT JOIN (
    SELECT x.episode_id,
           count(*) FILTER (WHERE x.version_id = y.version_id AND x.verdict = 'proved') AS proved,
           count(*) FILTER (WHERE x.version_id = y.version_id AND x.verdict = 'nearly') AS nearly,
           count(*) FILTER (WHERE x.version_id = y.version_id AND x.verdict = 'not yet') AS not_yet,
           count(*) FILTER (WHERE x.version_id IS NOT y.version_id) AS other,
           max(x.version_id = y.version_id AND x.scale = y.scale) AS at_scale
    FROM trial AS x
    JOIN episode AS y ON y.episode_id = x.episode_id
    WHERE x.episode_id BETWEEN ?1 AND ?2
      AND x.deleted_at IS NULL
    GROUP BY x.episode_id
) AS t ON t.episode_id = e.episode_id
LEFT JOIN (
    SELECT x.episode_id, count(*) AS batches, count(*) FILTER (WHERE x.kind = 'shoot') AS shoot
    FROM batch AS x
    WHERE x.episode_id BETWEEN ?1 AND ?2
      AND x.deleted_at IS NULL
    GROUP BY x.episode_id
) AS b ON b.episode_id = e.episode_id
LEFT JOIN (
    SELECT x.episode_id,
           count(*) AS segments,
           count(*) FILTER (WHERE x.words = 0 AND x.planned_seconds = 0) AS silent,
           sum(CASE WHEN x.planned_seconds > 0 THEN x.planned_seconds
                    ELSE (x.words * 60 + y.words_per_minute - 1) / y.words_per_minute END) AS seconds
    FROM segment AS x INDEXED BY segment_by_episode
    CROSS JOIN show AS y
    WHERE x.episode_id BETWEEN ?1 AND ?2
      AND x.deleted_at IS NULL
    GROUP BY x.episode_id
) AS g ON g.episode_id = e.episode_id
LEFT JOIN (
    SELECT x.episode_id,
           count(*) AS shots,
           count(*) FILTER (WHERE x.status = 'missing') AS missing,
           count(*) FILTER (WHERE x.status = 'retake') AS to_retake
    FROM shot AS x
    WHERE x.episode_id BETWEEN ?1 AND ?2
      AND x.deleted_at IS NULL
    GROUP BY x.episode_id
) AS h ON h.episode_id = e.episode_id
LEFT JOIN cut AS c ON c.cut_id = (
    SELECT x.cut_id
    FROM cut AS x
    WHERE x.episode_id = e.episode_id
      AND x.deleted_at IS NULL
    ORDER BY x.turn DESC
    LIMIT 1
)
WHERE e.episode_id BETWEEN ?1 AND ?2
  AND e.deleted_at IS NULL
ORDER BY e.release_on DESC NULLS FIRST, e.number DESC, e.episode_id DESC
LIMIT ?3`

func scanSeasonRow(row scanner) (r SeasonRow, err error) {
	f := &r.Facts
	err = row.Scan(append(episodeColumns(&r.Episode),
		&r.RecipeName, &r.VersionNumber, &f.UnreadLines, &f.Questions,
		&f.Proved, &f.Nearly, &f.NotYet, &f.OtherTrials, &f.TriedAtScale,
		&f.Batches, &f.ShootBatches, &f.Segments, &f.WithoutNarration, &f.PlannedSeconds,
		&f.Shots, &f.Missing, &f.ToRetake, &f.HasCut, &f.HasCaptions,
		&f.HasTitle, &f.HasOpening, &f.HasVideoURL, &f.TitleOver, &f.UnsureAllergens, &f.Findings, &f.ShareLinkLive)...)
	f.Stage = r.Episode.Stage
	f.HasDish = r.Episode.Dish != ""
	f.HasReleaseDate = !r.Episode.ReleaseOn.IsZero()
	f.TargetMinutes = r.Episode.TargetMinutes
	f.HasRecipe = r.Episode.VersionID != 0
	return r, err
}

// Season lists the episodes in the order of Episodes, each with what its rows
// tell about how far it has come, in one query.
func (s *Store) Season(ctx context.Context) ([]SeasonRow, error) {
	all, err := list(ctx, s.reader, scanSeasonRow, selectSeason, 1, math.MaxInt64, mostEpisodes)
	return all, operation{verb: "read season"}.wrap(err)
}

// SeasonRow gives one episode's row of the season.
func (s *Store) SeasonRow(ctx context.Context, episodeID int64) (SeasonRow, error) {
	r, err := one(ctx, s.reader, "episode", scanSeasonRow, selectSeason, episodeID, episodeID, mostEpisodes)
	return r, operation{"read season's row of episode", episodeID}.wrap(err)
}
