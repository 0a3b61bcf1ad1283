package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.chain.Method;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.due.CheckPlanner;
import org.longsummer.chain.due.NextCheck;

/** A unit's standing as a row; {@code s} is the standing, {@code u} the unit. */
final class StandingRow {
    static final String COLUMNS = """
            s.unit_id, s.label, s.depot, u.vehicle, u.roof_position, u.duty, s.state, s.condition, s.likeliest_fault, \
            s.p_likeliest_fault, s.p_steady, s.p_impact, s.since, s.judged_visit_id, s.judged_at_ms, s.last_visit_id, \
            s.last_visit_at_ms, s.last_to_retake, s.visit_count, s.next_due_on, s.next_due_reason, s.season_due_on, s.filter_due_on, \
            s.warranty_until, s.planned_for,""" + " " + AdviceColumns.COLUMNS;
    static final int NEVER_JUDGED = 1;
    private static final String JUDGED = """
            update standing set state = :state, state_rank = :rank, condition = :condition, likeliest_fault = :likeliest,
            p_likeliest_fault = :p_likeliest, p_steady = :p_steady, p_impact = :p_impact, since = :since,
            judged_visit_id = :judged_id, judged_at_ms = :judged_at, last_visit_id = :last_id, last_visit_at_ms = :last_at,
            last_to_retake = :retake, visit_count = :count, next_due_on = :due_on, next_due_reason = :due_reason, judged_by = :method,
            pressing = :pressing, last_seen_ms = :last_seen, season_due_on = :season_due, filter_due_on = :filter_due""";
    private static final String THIS_UNIT = " where unit_id = :unit";
    static final String UPDATE_JUDGED = JUDGED + ", dearest = :pressing_too / 1000.0 - coalesce(advice_waiting_minor, 0)" + THIS_UNIT;
    /** With the advice, in one statement, since every one that orders the yard anew rewrites its indexes. */
    static final String UPDATE_JUDGED_AND_ADVISED = JUDGED + ", " + AdviceColumns.SET + ", dearest = :pressing_too / 1000.0 - :waiting_too" + THIS_UNIT;

    private StandingRow() {}

    static int rank(State state) {
        return switch (state) {
            case ACT -> 3;
            case DRIFTING -> 2;
            case STEADY -> 0;
            case RETAKE -> NEVER_JUDGED;
        };
    }

    /** The plain order: by state, then by the probability of impact; least first. */
    private static double pressing(Optional<Verdict> judged) {
        return -(2.0 * judged.map(verdict -> rank(verdict.state())).orElse(NEVER_JUDGED) + judged.map(Verdict::probabilityOfImpact).orElse(0.0));
    }

    static Rows bindJudged(Rows row, String unitId, List<Verdict> verdicts) {
        Optional<Verdict> judged = last(verdicts.stream().filter(verdict -> verdict.state() != State.RETAKE).toList());
        Optional<Verdict> newest = last(verdicts);
        Optional<Condition> likeliest = judged.map(verdict -> verdict.probabilities().likeliestFault());
        Optional<NextCheck> next = CheckPlanner.after(verdicts);
        return row.bind("unit", unitId).bind("method", Method.NUMBER).bind("count", verdicts.size())
                .bind("due_on", next.map(check -> check.on().toString()))
                .bind("pressing", pressing(judged)).bind("pressing_too", pressing(judged))
                .bind("last_seen", newest.map(verdict -> verdict.visit().at().toEpochMilli()).orElse(0L))
                .bind("season_due", CheckPlanner.seasonAfter(verdicts).map(Object::toString))
                .bind("filter_due", CheckPlanner.filterAfter(verdicts).map(Object::toString))
                .bind("due_reason", next.map(check -> Column.word(check.reason(), null)))
                .bind("state", judged.map(verdict -> verdict.state().word()))
                .bind("rank", judged.map(verdict -> rank(verdict.state())).orElse(NEVER_JUDGED))
                .bind("condition", judged.map(verdict -> verdict.condition().word()))
                .bind("likeliest", likeliest.map(Condition::word))
                .bind("p_likeliest", judged.map(verdict -> verdict.probabilities().of(likeliest.orElseThrow())))
                .bind("p_steady", judged.map(verdict -> verdict.probabilities().of(Condition.NONE)))
                .bind("p_impact", judged.map(Verdict::probabilityOfImpact).orElse(0.0))
                .bind("since", judged.flatMap(Verdict::since).map(Object::toString))
                .bind("judged_id", judged.map(verdict -> verdict.visit().id()))
                .bind("judged_at", judged.map(verdict -> verdict.visit().at().toEpochMilli()))
                .bind("last_id", newest.map(verdict -> verdict.visit().id()))
                .bind("last_at", newest.map(verdict -> verdict.visit().at().toEpochMilli()))
                .bind("retake", newest.filter(verdict -> verdict.state() == State.RETAKE).isPresent() ? 1 : 0);
    }

    private static Optional<Verdict> last(List<Verdict> verdicts) {
        return verdicts.isEmpty() ? Optional.empty() : Optional.of(verdicts.get(verdicts.size() - 1));
    }

    static Standing read(ResultSet row, StatementContext context) throws SQLException {
        String depot = row.getString("depot");
        return new Standing(row.getString("unit_id"), row.getString("label"), depot == null ? "" : depot, row.getString("vehicle"),
                row.getString("roof_position"), Column.choice(row, "duty", FleetUnit.Duty.class, null), judged(row), Column.text(row, "last_visit_id"),
                Column.moment(row, "last_visit_at_ms"), row.getInt("last_to_retake") == 1, row.getInt("visit_count"),
                next(row), new Standing.Days(Column.day(row, "season_due_on"), Column.day(row, "filter_due_on"),
                        Column.day(row, "warranty_until"), Column.day(row, "planned_for")), AdviceColumns.read(row));
    }

    private static Optional<NextCheck> next(ResultSet row) throws SQLException {
        NextCheck.Reason reason = Column.choice(row, "next_due_reason", NextCheck.Reason.class, null);
        return Column.day(row, "next_due_on").filter(day -> reason != null).map(day -> new NextCheck(day, reason));
    }

    private static Optional<Standing.Judged> judged(ResultSet row) throws SQLException {
        String visitId = row.getString("judged_visit_id");
        if (visitId == null) {
            return Optional.empty();
        }
        return Optional.of(new Standing.Judged(visitId, Instant.ofEpochMilli(row.getLong("judged_at_ms")),
                Column.choice(row, "state", State.class, null), Column.choice(row, "condition", Condition.class, null),
                Column.choice(row, "likeliest_fault", Condition.class, null), row.getDouble("p_likeliest_fault"),
                row.getDouble("p_steady"), row.getDouble("p_impact"), Column.day(row, "since")));
    }
}
