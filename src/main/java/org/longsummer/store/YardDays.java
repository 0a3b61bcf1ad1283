package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.jdbi.v3.core.statement.Query;

/**
 * The days that the yard's sentences count from.
 *
 * @param today what was due before is overdue
 * @param notVisitedSince units without a visit since then are counted; where absent, those not checked for the season of their depot
 * @param warrantyThrough warranties that end from today to this day are counted
 */
public record YardDays(LocalDate today, Optional<Instant> notVisitedSince, LocalDate warrantyThrough) {
    /** Of the standing {@code s}, in the order of {@link YardCounts}. */
    private static final String NUMBERS = """
            count(*) as units, coalesce(sum(s.state = 'act'), 0) as act, coalesce(sum(s.state = 'drifting'), 0) as drifting,
            coalesce(sum(s.state = 'steady'), 0) as steady, coalesce(sum(s.state is null), 0) as never_judged,
            coalesce(sum(s.last_to_retake), 0) as to_retake,
            coalesce(sum(case when :seen_ms is null then %s else s.last_seen_ms < :seen_ms end), 0) as not_checked,
            coalesce(sum(%s), 0) as overdue, coalesce(sum(s.filter_due_on < :today), 0) as filters,
            coalesce(sum(s.warranty_until between :today and :warranty), 0) as warranties,
            coalesce(sum(s.planned_for is not null), 0) as planned"""
            .formatted(YardNarrowing.notChecked(":last_opening"), YardNarrowing.overdue(":today"));
    static final String COUNTS = "select " + NUMBERS;

    BlockCounts.Question question(YardNarrowing narrowing) {
        return new BlockCounts.Question(NUMBERS, 11, narrowing, this::bind);
    }

    static YardCounts counts(int[] numbers, int outOfService, int sold) {
        return new YardCounts(numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5], numbers[6], numbers[7], numbers[8], numbers[9],
                numbers[10], outOfService, sold);
    }

    Query bind(Query query) {
        return query.bind("today", today.toString()).bind("seen_ms", notVisitedSince.map(Instant::toEpochMilli).orElse(null))
                .bind("last_opening", new YardCriterion.NotCheckedForSeason(today).lastOpening().toString())
                .bind("warranty", warrantyThrough.toString());
    }

    static YardCounts counts(ResultSet row, int outOfService, int sold) throws SQLException {
        return new YardCounts(row.getInt("units"), row.getInt("act"), row.getInt("drifting"), row.getInt("steady"), row.getInt("never_judged"),
                row.getInt("to_retake"), row.getInt("not_checked"), row.getInt("overdue"), row.getInt("filters"), row.getInt("warranties"),
                row.getInt("planned"), outOfService, sold);
    }
}
