package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.longsummer.access.Reach;
import org.longsummer.store.WalkingOrder.Standpoint;

/** The rounds: whom to visit on a day, in which order, and which of them were visited. */
public final class Rounds {
    /** More than somebody visits in a day by far. */
    public static final int MOST_STOPS = 300;
    private static final String ROUND = "r.id, r.title, r.for_day, r.made_by, r.made_at_ms";

    private final Jdbi reader;
    private final Jdbi writer;

    Rounds(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
    }

    /** Adds a round of these units, in walking order. The same id twice is one round. */
    public void make(VisitRound round, List<Standing> units) {
        writer.useTransaction(handle -> {
            int made = handle.createUpdate("""
                    insert into visit_round (id, title, for_day, made_by, made_at_ms) values (:id, :title, :day, :by, :at)
                    on conflict (id) do nothing""")
                    .bind("id", round.id()).bind("title", round.title()).bind("day", round.forDay().toString()).bind("by", round.madeBy())
                    .bind("at", round.madeAt().toEpochMilli()).execute();
            if (made == 1) {
                addStops(handle, round.id(), inOrder(handle, units));
            }
        });
    }

    private static void addStops(Handle handle, String roundId, List<Standpoint> stops) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into visit_round_stop (round_id, unit_id, position, visit_id) values (:round, :unit, :position, :visit)""");
        int position = 0;
        for (Standpoint stop : stops) {
            position++;
            batch.bind("round", roundId).bind("unit", stop.unit().unitId()).bind("position", position)
                    .bind("visit", roundId + "-" + position).add();
        }
        batch.execute();
    }

    private static List<Standpoint> inOrder(Handle handle, List<Standing> units) {
        Map<String, String[]> stands = stands(handle, units.stream().map(Standing::unitId).toList());
        return units.stream().map(unit -> {
            String[] stand = stands.getOrDefault(unit.unitId(), new String[] {"", ""});
            return new Standpoint(unit, stand[0], stand[1]);
        }).sorted(WalkingOrder.OF_A_ROUND).toList();
    }

    private static Map<String, String[]> stands(Handle handle, Collection<String> unitIds) {
        Map<String, String[]> stands = new HashMap<>();
        if (!unitIds.isEmpty()) {
            handle.createQuery("select unit_id, stand_row, stand_place from stand where unit_id in (<units>)").bindList("units", List.copyOf(unitIds))
                    .map((row, context) -> new String[] {row.getString("unit_id"), row.getString("stand_row"), row.getString("stand_place")})
                    .forEach(stand -> stands.put(stand[0], new String[] {stand[1], stand[2]}));
        }
        return stands;
    }

    /**
     * Says where some units stand and lays the round anew in walking order; stops keep the ids of their visits.
     *
     * @param stands row and place by the unit's id
     */
    public void stand(String roundId, Map<String, Place> stands) {
        writer.useTransaction(handle -> {
            stand(handle, stands);
            orderAnew(handle, roundId);
        });
    }

    static void stand(Handle handle, Map<String, Place> stands) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into stand (unit_id, stand_row, stand_place) values (:unit, :row, :place)
                on conflict (unit_id) do update set stand_row = excluded.stand_row, stand_place = excluded.stand_place
                where stand_row <> excluded.stand_row or stand_place <> excluded.stand_place""");
        stands.forEach((unit, place) -> batch.bind("unit", unit).bind("row", place.row()).bind("place", place.place()).add());
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    /** Where units stand, by their ids, as far as somebody said so. */
    public Map<String, Place> places() {
        return reader.withHandle(handle -> handle.createQuery("select unit_id, stand_row, stand_place from stand order by unit_id")
                .reduceRows(new LinkedHashMap<>(), (places, row) -> {
                    places.put(row.getColumn("unit_id", String.class),
                            new Place(row.getColumn("stand_row", String.class), row.getColumn("stand_place", String.class)));
                    return places;
                }));
    }

    static Optional<Place> place(Handle handle, String unitId) {
        return Optional.ofNullable(stands(handle, List.of(unitId)).get(unitId)).map(stand -> new Place(stand[0], stand[1]));
    }

    /** All rounds with the stops that somebody sees, each in walking order. */
    public Map<VisitRound, List<Leg>> all(Reach reach) {
        List<VisitRound> rounds = reader.withHandle(handle -> handle.createQuery("select " + ROUND + " from visit_round r order by r.for_day, r.id")
                .map((row, context) -> round(row)).list());
        Map<VisitRound, List<Leg>> all = new LinkedHashMap<>();
        for (VisitRound round : rounds) {
            all.put(round, stops(round.id(), reach).stream().map(stop -> new Leg(stop.unitId(), stop.visitId())).toList());
        }
        return all;
    }

    /** Adds a round, or takes over what is given otherwise of one that is there; nothing is written when nothing differs. */
    static void put(Handle handle, VisitRound round, List<Leg> legs) {
        handle.createUpdate("""
                insert into visit_round (id, title, for_day, made_by, made_at_ms) values (:id, :title, :day, :by, :at)
                on conflict (id) do update set title = excluded.title, for_day = excluded.for_day, made_by = excluded.made_by,
                made_at_ms = excluded.made_at_ms where title <> excluded.title or for_day <> excluded.for_day or made_by <> excluded.made_by
                or made_at_ms <> excluded.made_at_ms""")
                .bind("id", round.id()).bind("title", round.title()).bind("day", round.forDay().toString()).bind("by", round.madeBy())
                .bind("at", round.madeAt().toEpochMilli()).execute();
        PreparedBatch batch = handle.prepareBatch("""
                insert into visit_round_stop (round_id, unit_id, position, visit_id) values (:round, :unit, :position, :visit)
                on conflict (round_id, unit_id) do update set position = excluded.position, visit_id = excluded.visit_id
                where position <> excluded.position or visit_id <> excluded.visit_id""");
        int position = 0;
        for (Leg leg : legs) {
            position++;
            batch.bind("round", round.id()).bind("unit", leg.unitId()).bind("position", position).bind("visit", leg.visitId()).add();
        }
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    /** Whether the id of a visit belongs to another stop than this one. */
    public boolean isTaken(String visitId, String roundId, String unitId) {
        return reader.withHandle(handle -> handle.createQuery("select count(*) from visit_round_stop where visit_id = :visit "
                + "and not (round_id = :round and unit_id = :unit)").bind("visit", visitId).bind("round", roundId).bind("unit", unitId)
                .mapTo(Integer.class).one()) > 0;
    }

    /** A stop of a round: the unit, and the id that its visit gets. */
    public record Leg(String unitId, String visitId) {}

    /** A row of a depot and a place in it. */
    public record Place(String row, String place) {}

    private static void orderAnew(Handle handle, String roundId) {
        List<Standing> units = handle.createQuery("select " + StandingRow.COLUMNS
                        + " from visit_round_stop p join standing s on s.unit_id = p.unit_id join unit u on u.id = p.unit_id where p.round_id = :round")
                .bind("round", roundId).map(StandingRow::read).list();
        PreparedBatch batch = handle.prepareBatch("""
                update visit_round_stop set position = :position where round_id = :round and unit_id = :unit and position <> :position""");
        int position = 0;
        for (Standpoint stop : inOrder(handle, units)) {
            position++;
            batch.bind("position", position).bind("round", roundId).bind("unit", stop.unit().unitId()).add();
        }
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    /** A round, when somebody who sees so far sees any of its units. */
    public Optional<VisitRound> find(String id, Reach reach) {
        ReachCondition seen = new ReachCondition(reach);
        return reader.withHandle(handle -> handle.createQuery("select " + ROUND + """
                 from visit_round r where r.id = :id and exists (select 1 from visit_round_stop p join standing s on s.unit_id = p.unit_id
                where p.round_id = r.id and\s""" + seen.on("s.depot") + ")").bind("id", id).bindMap(seen.values()).map((row, context) -> round(row)).findOne());
    }

    /** The stops that somebody sees, in walking order. */
    public List<VisitRound.Stop> stops(String id, Reach reach) {
        ReachCondition seen = new ReachCondition(reach);
        return reader.withHandle(handle -> handle.createQuery("""
                select p.unit_id, p.visit_id, coalesce(w.stand_row, '') as stand_row, coalesce(w.stand_place, '') as stand_place,
                exists (select 1 from visit v where v.id = p.visit_id) as visited
                from visit_round_stop p join standing s on s.unit_id = p.unit_id left join stand w on w.unit_id = p.unit_id
                where p.round_id = :id and\s""" + seen.on("s.depot") + " order by p.position").bind("id", id).bindMap(seen.values())
                .map((row, context) -> new VisitRound.Stop(row.getString("unit_id"), row.getString("visit_id"), row.getString("stand_row"),
                        row.getString("stand_place"), row.getInt("visited") == 1)).list());
    }

    /** The latest rounds with units that somebody sees; only those units count. */
    public List<VisitRound.Brief> latest(Reach reach, int limit) {
        ReachCondition seen = new ReachCondition(reach);
        return reader.withHandle(handle -> handle.createQuery("select " + ROUND + """
                , count(*) as stops, sum(exists (select 1 from visit v where v.id = p.visit_id)) as visited
                from visit_round r join visit_round_stop p on p.round_id = r.id join standing s on s.unit_id = p.unit_id where\s"""
                + seen.on("s.depot") + " group by r.id order by r.for_day desc, r.made_at_ms desc limit :limit")
                .bindMap(seen.values()).bind("limit", limit)
                .map((row, context) -> new VisitRound.Brief(round(row), row.getInt("stops"), row.getInt("visited"))).list());
    }

    private static VisitRound round(ResultSet row) throws SQLException {
        return new VisitRound(row.getString("id"), row.getString("title"), LocalDate.parse(row.getString("for_day")), row.getString("made_by"),
                Instant.ofEpochMilli(row.getLong("made_at_ms")));
    }
}
