package main

import (
	"context"
	"log/slog"
	"time"

	"benchproof/store"
	"benchproof/web"
)

// keepHouse throws away, now and once a day, what nobody can ask for any more:
// deleted things past their time and sessions that have ended.
func keepHouse(ctx context.Context, st *store.Store) {
	day := time.NewTicker(24 * time.Hour)
	defer day.Stop()
	for {
		if err := st.PurgeDeleted(ctx, time.Now().AddDate(0, 0, -web.KeepDeletedDays)); err != nil {
			slog.WarnContext(ctx, "deleted things are kept longer", "err", err)
		}
		if _, err := st.DeleteExpiredSessions(ctx); err != nil {
			slog.WarnContext(ctx, "ended sessions are kept longer", "err", err)
		}
		select {
		case <-ctx.Done():
			return
		case <-day.C:
		}
	}
}
