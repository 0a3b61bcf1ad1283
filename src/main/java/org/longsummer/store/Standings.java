package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.Method;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;

/** How the units stand: one row a unit, kept in step with its visits. */
public final class Standings {
    private static final String DESCRIBE = """
            insert into standing (unit_id, depot, label, search_text, in_service, state_rank, p_impact, last_to_retake, visit_count, judged_by)
            values (:unit, :depot, :label, :search, :in_service, :rank, 0, 0, 0, :method)
            on conflict (unit_id) do update set depot = excluded.depot, label = excluded.label,
            search_text = excluded.search_text, in_service = excluded.in_service""";
    private static final String FROM = " from standing s join unit u on u.id = s.unit_id";

    private final Jdbi reader;

    Standings(Jdbi reader) {
        this.reader = reader;
    }

    public Optional<Standing> ofUnit(String unitId) {
        return reader.withHandle(handle -> handle.createQuery("select " + StandingRow.COLUMNS + FROM + " where s.unit_id = :unit")
                .bind("unit", unitId).map(StandingRow::read).findOne());
    }

    /**
     * One page of the yard.
     *
     * @param offset rows to skip, 0 or more
     * @param limit rows to list at most
     */
    public List<Standing> page(YardFilter filter, YardOrder order, int offset, int limit) {
        Narrowing narrowing = new Narrowing(filter);
        return reader.withHandle(handle -> handle.createQuery("select " + StandingRow.COLUMNS + FROM + narrowing.where()
                        + " order by " + order.sql() + " limit :limit offset :offset")
                .bindMap(narrowing.values).bind("limit", limit).bind("offset", offset).map(StandingRow::read).list());
    }

    /** How many units a filter lets through. */
    public int count(YardFilter filter) {
        Narrowing narrowing = new Narrowing(filter);
        return reader.withHandle(handle -> handle.createQuery("select count(*) from standing s" + narrowing.where())
                .bindMap(narrowing.values).mapTo(Integer.class).one());
    }

    /**
     * The numbers for the sentences above the yard.
     *
     * @param filter narrows all of them
     * @param seasonStart units without a visit since then are counted as not visited
     * @param today units whose next check was due before this day are counted as overdue, as are those never visited
     */
    public YardCounts counts(YardFilter filter, Instant seasonStart, LocalDate today) {
        Narrowing narrowing = new Narrowing(filter);
        int outOfService = count(filter.outOfServiceInstead());
        return reader.withHandle(handle -> handle.createQuery("""
                select count(*) as units, coalesce(sum(case when s.state = 'act' then 1 else 0 end), 0) as act,
                coalesce(sum(case when s.state = 'drifting' then 1 else 0 end), 0) as drifting,
                coalesce(sum(case when s.state = 'steady' then 1 else 0 end), 0) as steady,
                coalesce(sum(case when s.state is null then 1 else 0 end), 0) as never_judged,
                coalesce(sum(s.last_to_retake), 0) as to_retake,
                coalesce(sum(case when coalesce(s.last_visit_at_ms, 0) < :season_start then 1 else 0 end), 0) as not_visited,
                coalesce(sum(case when s.next_due_on < :today or s.visit_count = 0 then 1 else 0 end), 0) as overdue
                from standing s""" + narrowing.where())
                .bindMap(narrowing.values).bind("season_start", seasonStart.toEpochMilli())
                .bind("today", today.toString())
                .map((row, context) -> new YardCounts(row.getInt("units"), row.getInt("act"), row.getInt("drifting"),
                        row.getInt("steady"), row.getInt("never_judged"), row.getInt("to_retake"), row.getInt("not_visited"),
                        row.getInt("overdue"), outOfService)).one());
    }

    /** Writes what a unit's own row says; keeps what its visits say. */
    static void describe(Handle handle, Collection<FleetUnit> units) {
        try (Rows rows = new Rows(handle, DESCRIBE)) {
            units.forEach(unit -> describe(rows, unit));
            rows.execute();
        }
    }

    private static void describe(Rows rows, FleetUnit unit) {
        rows.bind("unit", unit.id()).bind("depot", unit.unit().site().isEmpty() ? null : unit.unit().site())
                .bind("label", unit.unit().label()).bind("search", unit.searchText())
                .bind("in_service", unit.duty() == FleetUnit.Duty.IN_SERVICE ? 1 : 0)
                .bind("rank", StandingRow.NEVER_JUDGED).bind("method", Method.NUMBER).add();
    }

    /** Writes what the visits of some units say. */
    static void judge(Handle handle, Map<String, List<Verdict>> verdictsByUnit) {
        try (Rows rows = new Rows(handle, StandingRow.UPDATE_JUDGED)) {
            verdictsByUnit.forEach((unitId, verdicts) -> StandingRow.bindJudged(rows, unitId, verdicts).add());
            rows.execute();
        }
    }

    /** A filter as conditions and the values they name. */
    private static final class Narrowing {
        private final List<String> conditions = new ArrayList<>();
        private final Map<String, Object> values = new HashMap<>();

        Narrowing(YardFilter filter) {
            if (!filter.reach().everywhere()) {
                ReachCondition reach = new ReachCondition(filter.reach());
                conditions.add(reach.on("s.depot"));
                values.putAll(reach.values());
            }
            conditions.add(filter.outOfService() ? "s.in_service = 0" : "s.in_service = 1");
            filter.dueBefore().ifPresent(day -> add("(s.next_due_on < :due_before or s.visit_count = 0)", "due_before", day.toString()));
            filter.depot().ifPresent(depot -> add("s.depot = :depot", "depot", depot));
            filter.state().ifPresent(this::state);
            if (filter.neverJudged()) {
                conditions.add("s.state is null");
            }
            filter.condition().ifPresent(condition -> add("s.condition = :condition", "condition", condition.word()));
            filter.notVisitedSince().ifPresent(moment ->
                    add("coalesce(s.last_visit_at_ms, 0) < :not_since", "not_since", moment.toEpochMilli()));
            filter.text().filter(text -> !text.isBlank()).ifPresent(this::text);
        }

        private void add(String condition, String name, Object value) {
            conditions.add(condition);
            values.put(name, value);
        }

        private void state(State state) {
            if (state == State.RETAKE) {
                conditions.add("s.last_to_retake = 1");
            } else {
                add("s.state = :state", "state", state.word());
            }
        }

        private void text(String text) {
            add("(s.search_text like :text escape '!' or s.search_text like :look_alike escape '!')", "text",
                    "%" + escaped(text.strip().toLowerCase(Locale.ROOT)) + "%");
            values.put("look_alike", "%" + escaped(FleetUnit.serialKey(text).toLowerCase(Locale.ROOT)) + "%");
        }

        private static String escaped(String text) {
            return text.replace("!", "!!").replace("%", "!%").replace("_", "!_");
        }

        String where() {
            return conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions);
        }
    }
}
