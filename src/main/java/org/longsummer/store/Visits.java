package org.longsummer.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.ObjIntConsumer;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.access.Reach;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Visit;

/** The record of visits. It only grows: see {@link Judging} for saving, correcting and withdrawing. */
public final class Visits {
    private static final String COUNTS = """
             not exists (select 1 from visit c where c.corrects_id = v.id) \
            and not exists (select 1 from withdrawal w where w.visit_id = v.id)""";
    private static final String RECORD = "select " + VisitRow.RECORD_COLUMNS + """
            , c.id as corrected_by, w.withdrawn_by, w.withdrawn_at_ms, w.reason as withdrawal_reason
            from visit v left join visit c on c.corrects_id = v.id left join withdrawal w on w.visit_id = v.id\s""";

    private static final int ROWS_AT_ONCE = 500;

    private final Jdbi reader;

    Visits(Jdbi reader) {
        this.reader = reader;
    }

    public int count() {
        return reader.withHandle(handle -> handle.createQuery("select count(*) from visit").mapTo(Integer.class).one());
    }

    public Optional<RecordedVisit> find(String id) {
        return reader.withHandle(handle -> find(handle, id));
    }

    static Optional<RecordedVisit> find(Handle handle, String id) {
        return handle.createQuery(RECORD + "where v.id = :id").bind("id", id).map(new VisitRow(handle)::readRecord).findOne();
    }

    static boolean isThere(Handle handle, String id) {
        return handle.createQuery("select exists (select 1 from visit where id = :id)").bind("id", id).mapTo(Boolean.class).one();
    }

    /** The visits of a unit that count, in order of time; what the chain judges. */
    public List<Visit> current(String unitId) {
        return reader.withHandle(handle -> current(handle, unitId));
    }

    static List<Visit> current(Handle handle, String unitId) {
        return currentByUnit(handle, List.of(unitId)).getOrDefault(unitId, List.of());
    }

    /** The visits that count of some units, by unit, in order of time; a unit without any is absent. */
    static Map<String, List<Visit>> currentByUnit(Handle handle, Collection<String> unitIds) {
        Map<String, List<Visit>> visits = new HashMap<>();
        handle.createQuery("select " + VisitRow.JUDGED_COLUMNS
                + " from visit v where v.unit_id in (<units>) and" + COUNTS
                + " order by v.unit_id, v.visited_at_ms, v.id").bindList("units", List.copyOf(unitIds)).map(new VisitRow(handle)::read)
                .forEach(visit -> visits.computeIfAbsent(visit.unitId(), id -> new ArrayList<>()).add(visit));
        return visits;
    }

    /** Hands over all rows in order of time, one by one, each with its marking. */
    public void forEach(Consumer<RecordedVisit> consumer) {
        forEach(Reach.EVERYWHERE, consumer);
    }

    /** The same, of the units that somebody may see. */
    public void forEach(Reach reach, Consumer<RecordedVisit> consumer) {
        ReachCondition seen = new ReachCondition(reach);
        reader.useHandle(handle -> handle.createQuery(RECORD + "join unit u on u.id = v.unit_id where " + seen.on("u.depot")
                        + " order by v.visited_at_ms, v.received_at_ms, v.id").bindMap(seen.values())
                .map(new VisitRow(handle)::readRecord).useStream(rows -> rows.forEach(consumer)));
    }

    /** All rows of a unit in order of time, the corrected and the withdrawn too, each with its marking. */
    public List<RecordedVisit> record(String unitId) {
        return reader.withHandle(handle -> handle
                .createQuery(RECORD + "where v.unit_id = :unit order by v.visited_at_ms, v.received_at_ms, v.id")
                .bind("unit", unitId).map(new VisitRow(handle)::readRecord).list());
    }

    /** Which of these ids are taken. */
    static List<RecordedVisit> among(Handle handle, Collection<String> ids) {
        return ids.isEmpty() ? List.of() : handle.createQuery(RECORD + "where v.id in (<ids>)").bindList("ids", List.copyOf(ids))
                .map(new VisitRow(handle)::readRecord).list();
    }

    /** The visits that count and are learned from at a day's closing, by unit and time. */
    static List<Visit> closingOn(Handle handle, LocalDate day, int generation) {
        return handle.createQuery("select " + VisitRow.JUDGED_COLUMNS + """
                 from visit v
                where (v.generation < :generation and v.day = :day or v.generation = :generation and v.closes_on = :day) and"""
                + COUNTS + " order by v.unit_id, v.visited_at_ms, v.id")
                .bind("day", day.toString()).bind("generation", generation).map(new VisitRow(handle)::read).list();
    }

    /** The days before one at whose closing there is something to learn, in order. */
    static List<LocalDate> daysToClose(Handle handle, Optional<LocalDate> closedThrough, LocalDate before, int generation) {
        return handle.createQuery("""
                select distinct case when generation < :generation then day else closes_on end as learned_on
                from visit where closes_on > :closed and day < :before order by learned_on""")
                .bind("generation", generation).bind("closed", closedThrough.map(LocalDate::toString).orElse(""))
                .bind("before", before.toString()).map((row, context) -> LocalDate.parse(row.getString("learned_on"))).stream()
                .filter(day -> day.isBefore(before)).toList();
    }

    /** Appends rows as they are; the caller has looked for ids that are taken. */
    static void append(Handle handle, Collection<Entry> entries, Receipt receipt) {
        if (entries.isEmpty()) {
            return;
        }
        Map<Instruments, Long> known = new HashMap<>();
        try (StatementRows rows = new StatementRows(handle, VisitRow.INSERT)) {
            for (Entry entry : entries) {
                long instrumentsId = known.computeIfAbsent(entry.visit().instruments(), instruments -> idOf(handle, instruments));
                VisitRow.bind(rows, entry, instrumentsId, receipt).add();
            }
            rows.execute();
        }
    }

    /** Appends rows in the order given; they are made ready by other threads. */
    static void append(Handle handle, PackedVisits visits, int[] order, Receipt receipt, ObjIntConsumer<String> done) {
        Map<Instruments, Long> known = new HashMap<>();
        try (Workers workers = new Workers(); StatementRows rows = new StatementRows(handle, VisitRow.INSERT)) {
            int place = rows.place(VisitRow.INSTRUMENTS);
            workers.inOrder(IntStream.iterate(0, from -> from < order.length, from -> from + ROWS_AT_ONCE).mapToObj(from -> (Callable<List<Object[]>>)
                    () -> VisitRow.bound(visits, Arrays.copyOfRange(order, from, Math.min(order.length, from + ROWS_AT_ONCE)), receipt)).iterator(),
                    ready -> {
                        for (Object[] row : ready) {
                            row[place] = known.computeIfAbsent((Instruments) row[place], instruments -> idOf(handle, instruments));
                            rows.take(row);
                        }
                        done.accept("visits stored", ready.size());
                    });
            rows.execute();
        }
    }

    static void withdraw(Handle handle, String visitId, Withdrawal withdrawal) {
        handle.createUpdate("insert into withdrawal (visit_id, withdrawn_by, withdrawn_at_ms, reason) values (:id, :by, :at, :reason)")
                .bind("id", visitId).bind("by", withdrawal.by()).bind("at", withdrawal.at().toEpochMilli())
                .bind("reason", withdrawal.reason()).execute();
    }

    /** The row of a set of instruments, added when it is new. */
    private static long idOf(Handle handle, Instruments instruments) {
        return handle.createQuery("""
                select id from instruments where probe_u_k = :probe and ambient_probe_u_k = :ambient and humidity_u = :humidity
                and clamp_relative_u = :relative and clamp_floor_u_a = :floor and voltage_u_v = :voltage and one_probe = :one""")
                .bindMap(columns(instruments)).mapTo(Long.class).findOne().orElseGet(() -> handle.createQuery("""
                insert into instruments (id, probe_u_k, ambient_probe_u_k, humidity_u, clamp_relative_u, clamp_floor_u_a, voltage_u_v,
                one_probe) values ((select coalesce(max(id), 0) + 1 from instruments), :probe, :ambient, :humidity, :relative, :floor,
                :voltage, :one) returning id""").bindMap(columns(instruments)).mapTo(Long.class).one());
    }

    private static Map<String, Object> columns(Instruments instruments) {
        return Map.of("probe", instruments.probe().kelvins(), "ambient", instruments.ambientProbe().kelvins(),
                "humidity", instruments.humidity().fraction(), "relative", instruments.clampRelative(),
                "floor", instruments.clampFloor().amperes(), "voltage", instruments.voltage().volts(),
                "one", instruments.oneProbe() ? 1 : 0);
    }
}
