package org.longsummer.store;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/**
 * What a record held at a moment, as far as verdicts rest on it: since visits, withdrawals and closings are append-only, what came since can
 * be told.
 *
 * @param visits how many there were
 * @param lastVisit row of the last one
 * @param lastWithdrawal row of the last one
 * @param generation of the closings
 * @param closedThrough the last UTC day that was closed
 * @param today the UTC day of the moment
 */
record Basis(int visits, long lastVisit, long lastWithdrawal, int generation, Optional<LocalDate> closedThrough, LocalDate today) {

    static Basis of(Handle handle, LearnedLevels.Closed known, LocalDate today) {
        return handle.createQuery("""
                select (select count(*) from visit) as visits, (select coalesce(max(rowid), 0) from visit) as last_visit,
                (select coalesce(max(rowid), 0) from withdrawal) as last_withdrawal""")
                .map((row, context) -> new Basis(row.getInt("visits"), row.getLong("last_visit"), row.getLong("last_withdrawal"),
                        known.generation(), known.through(), today)).one();
    }

    /** What came since is only more of the same: nothing was learned, and no demo was removed. */
    boolean isContinuedBy(Basis now) {
        return generation == now.generation && closedThrough.equals(now.closedThrough) && today.equals(now.today) && lastVisit <= now.lastVisit
                && now.visits - visits == now.lastVisit - lastVisit;
    }

    /** Nothing came since of days that are over, and nothing that counted does no longer count: what they teach is the same. */
    boolean teachesTheSame(Handle handle) {
        return handle.createQuery("""
                select not exists (select 1 from visit where rowid > :visit and (day < :today or corrects_id is not null))
                and not exists (select 1 from withdrawal where rowid > :withdrawal)""")
                .bind("visit", lastVisit).bind("today", today.toString()).bind("withdrawal", lastWithdrawal).mapTo(Boolean.class).one();
    }

    Set<String> visitsSince(Handle handle) {
        return new HashSet<>(handle.createQuery("select id from visit where rowid > :visit").bind("visit", lastVisit).mapTo(String.class).list());
    }

    /** Units of which other visits count now. */
    Set<String> unitsSince(Handle handle) {
        return new HashSet<>(handle.createQuery("""
                select unit_id from visit where rowid > :visit
                union select v.unit_id from withdrawal w join visit v on v.id = w.visit_id where w.rowid > :withdrawal""")
                .bind("visit", lastVisit).bind("withdrawal", lastWithdrawal).mapTo(String.class).list());
    }
}
