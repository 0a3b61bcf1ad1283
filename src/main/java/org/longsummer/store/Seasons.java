package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.access.Reach;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.quantity.Money;
import org.longsummer.store.FleetUnit.Duty;

/** The fleet as a whole: how ready each depot is for the season, and what became of the acts so far. */
public final class Seasons {
    private final Jdbi reader;

    Seasons(Jdbi reader) {
        this.reader = reader;
    }

    /** Every depot with units, by name; units without a depot first. */
    public List<Readiness> readiness(Reach reach, YardDays days, Instant now) {
        return reader.inTransaction(handle -> {
            Map<String, Readiness.Planned> planned = planned(handle, reach);
            Map<String, Integer> laidUp = laidUp(handle, reach);
            Map<String, Readiness> byDepot = new TreeMap<>();
            laidUp.forEach((depot, units) -> byDepot.put(depot, new Readiness(depot, 0, 0, 0, 0, 0, 0, 0, units, Readiness.Planned.NOTHING)));
            inService(handle, reach, days, now, planned, laidUp).forEach(depot -> byDepot.put(depot.depot(), depot));
            return List.copyOf(byDepot.values());
        });
    }

    private static List<Readiness> inService(Handle handle, Reach reach, YardDays days, Instant now, Map<String, Readiness.Planned> planned,
            Map<String, Integer> laidUp) {
        YardNarrowing narrowing = new YardNarrowing(YardFilter.ALL.within(reach));
        String notChecked = YardNarrowing.notChecked(":last_opening");
        return days.bind(handle.createQuery(YardDays.COUNTS + ", coalesce(s.depot, '') as depot_name, sum(s.last_seen_ms >= :recent and not "
                + notChecked + ") as lately from standing s indexed by standing_by_dearest" + narrowing.where() + " group by depot_name")
                .bindMap(narrowing.values())).bind("recent", now.minusSeconds(Readiness.PACE_DAYS * 86_400L).toEpochMilli())
                .map((row, context) -> {
                    String depot = row.getString("depot_name");
                    YardCounts counts = YardDays.counts(row, laidUp.getOrDefault(depot, 0), 0);
                    return new Readiness(depot, counts.units(), counts.notChecked(), row.getInt("lately"), counts.act(), counts.overdue(),
                            counts.filterOverdue(), counts.warrantyEnding(), counts.outOfService(),
                            planned.getOrDefault(depot, Readiness.Planned.NOTHING));
                }).list();
    }

    private static Map<String, Integer> laidUp(Handle handle, Reach reach) {
        YardNarrowing narrowing = new YardNarrowing(YardFilter.ALL.within(reach).of(Duty.OUT_OF_SERVICE));
        return handle.createQuery("select coalesce(s.depot, '') as depot_name, count(*) as units from standing s indexed by standing_by_dearest"
                + narrowing.where() + " group by depot_name").bindMap(narrowing.values()).reduceRows(new HashMap<>(), (all, row) -> {
                    all.put(row.getColumn("depot_name", String.class), row.getColumn("units", Integer.class));
                    return all;
                });
    }

    private static Map<String, Readiness.Planned> planned(Handle handle, Reach reach) {
        ReachCondition seen = new ReachCondition(reach);
        return handle.createQuery("""
                select coalesce(s.depot, '') as depot_name, p.currency, count(*) as works, coalesce(sum(p.price_minor), 0) as price
                from planned_work p join standing s on s.unit_id = p.unit_id where p.ended_as is null and s.in_service = 1 and\s"""
                + seen.on("s.depot") + " group by depot_name, p.currency").bindMap(seen.values()).reduceRows(new HashMap<>(), (all, row) -> {
                    String currency = row.getColumn("currency", String.class);
                    int works = row.getColumn("works", Integer.class);
                    Readiness.Planned before = all.getOrDefault(row.getColumn("depot_name", String.class), Readiness.Planned.NOTHING);
                    List<Money> prices = new ArrayList<>(before.prices());
                    if (currency != null) {
                        prices.add(new Money(row.getColumn("price", Long.class), currency));
                    }
                    all.put(row.getColumn("depot_name", String.class), new Readiness.Planned(before.works() + works,
                            before.withoutPrice() + (currency == null ? works : 0), List.copyOf(prices)));
                    return all;
                });
    }

    /** What became of the acts, by depot; goes through the units that were ever act, one at a time. */
    public Map<String, ActHistory> acts(Reach reach) {
        ReachCondition seen = new ReachCondition(reach);
        Map<String, ActHistory> byDepot = new TreeMap<>();
        UnitByUnit unitByUnit = new UnitByUnit(byDepot);
        reader.useHandle(handle -> {
            try (Stream<Row> rows = handle.createQuery("""
                    select v.unit_id, v.state, v.condition, i.work_done, coalesce(s.depot, '') as depot_name from verdict v
                    join visit i on i.id = v.visit_id join standing s on s.unit_id = v.unit_id
                    where v.unit_id in (select unit_id from verdict where state = 'act') and v.state <> 'retake' and\s"""
                    + seen.on("s.depot") + " order by v.unit_id, v.visited_at_ms, v.visit_id").bindMap(seen.values())
                    .map((row, context) -> row(row)).stream()) {
                rows.forEach(unitByUnit::take);
            }
        });
        unitByUnit.close();
        return byDepot;
    }

    private static Row row(ResultSet row) throws SQLException {
        return new Row(row.getString("unit_id"), row.getString("depot_name"), new ActHistory.Seen(Column.choice(row, "state", State.class, null),
                Column.choice(row, "condition", Condition.class, null) == Condition.NOT_COOLING, !row.getString("work_done").isBlank()));
    }

    private record Row(String unitId, String depot, ActHistory.Seen seen) {}

    /** Keeps the visits of one unit until the next one begins. */
    private static final class UnitByUnit {
        private final Map<String, ActHistory> byDepot;
        private final List<ActHistory.Seen> visits = new ArrayList<>();
        private String unitId = "";
        private String depot = "";

        UnitByUnit(Map<String, ActHistory> byDepot) {
            this.byDepot = byDepot;
        }

        void take(Row row) {
            if (!row.unitId().equals(unitId)) {
                close();
                unitId = row.unitId();
                depot = row.depot();
            }
            visits.add(row.seen());
        }

        void close() {
            if (!visits.isEmpty()) {
                byDepot.merge(depot, ActHistory.of(visits), ActHistory::plus);
                visits.clear();
            }
        }
    }
}
