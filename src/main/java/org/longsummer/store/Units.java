package org.longsummer.store;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.access.Reach;
import org.longsummer.chain.visit.Unit;

/** The fleet's units. */
public final class Units {
    private final Jdbi reader;
    private final Jdbi writer;

    Units(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
    }

    public int count() {
        return count(Reach.EVERYWHERE);
    }

    /** How many of them somebody may see. */
    public int count(Reach reach) {
        ReachCondition seen = new ReachCondition(reach);
        return reader.withHandle(handle -> handle.createQuery("select count(*) from unit where " + seen.on("depot"))
                .bindMap(seen.values()).mapTo(Integer.class).one());
    }

    public Optional<FleetUnit> find(String id) {
        return reader.withHandle(handle -> find(handle, id));
    }

    static Optional<FleetUnit> find(Handle handle, String id) {
        return handle.createQuery("select " + UnitRow.COLUMNS + " from unit where id = :id").bind("id", id)
                .map(UnitRow::read).findOne();
    }

    /** Units with any visit at all. */
    static List<String> idsOfVisited(Handle handle) {
        return handle.createQuery("select distinct unit_id from visit order by unit_id").mapTo(String.class).list();
    }

    static List<String> idsAt(Handle handle, String depot) {
        return handle.createQuery("select id from unit where depot = :depot order by id").bind("depot", depot).mapTo(String.class).list();
    }

    static List<FleetUnit> among(Handle handle, Collection<String> ids) {
        return ids.isEmpty() ? List.of() : handle.createQuery("select " + UnitRow.COLUMNS + " from unit where id in (<ids>)")
                .bindList("ids", List.copyOf(ids)).map(UnitRow::read).list();
    }

    /** All units, by id; for small fleets and for files. */
    public List<FleetUnit> all() {
        return all(Reach.EVERYWHERE);
    }

    /** All that somebody may see, by id. */
    public List<FleetUnit> all(Reach reach) {
        ReachCondition seen = new ReachCondition(reach);
        return reader.withHandle(handle -> handle
                .createQuery("select " + UnitRow.COLUMNS + " from unit where " + seen.on("depot") + " order by id")
                .bindMap(seen.values()).map(UnitRow::read).list());
    }

    /** The units of some depots, by id; the empty name stands for those without a depot. */
    public List<FleetUnit> ofDepots(Collection<String> depots) {
        return depots.isEmpty() ? List.of() : reader.withHandle(handle -> handle.createQuery("select " + UnitRow.COLUMNS
                + " from unit where coalesce(depot, '') in (<depots>) order by id").bindList("depots", List.copyOf(depots))
                .map(UnitRow::read).list());
    }

    /** How many units each depot has; the empty name stands for those without one. */
    public Map<String, Integer> countByDepot() {
        Map<String, Integer> counts = new TreeMap<>();
        reader.useHandle(handle -> handle.createQuery("select coalesce(depot, '') as depot_name, count(*) as units from unit group by 1")
                .map((row, context) -> Map.entry(row.getString("depot_name"), row.getInt("units")))
                .forEach(count -> counts.put(count.getKey(), count.getValue())));
        return counts;
    }

    /** Units whose serial looks like this one, forgiving O and 0, I and 1, S and 5. */
    public List<FleetUnit> withSerialLike(String serial) {
        return reader.withHandle(handle -> handle
                .createQuery("select " + UnitRow.COLUMNS + " from unit where serial_key = :key order by id")
                .bind("key", FleetUnit.serialKey(serial)).map(UnitRow::read).list());
    }

    /** Other units on the same vehicle first, then at the same depot: those it may be mixed up with; at most a hundred. */
    public List<FleetUnit> neighbours(FleetUnit unit) {
        return reader.withHandle(handle -> handle.createQuery("select " + UnitRow.COLUMNS + """
                 from unit where id <> :id and duty = 'in_service' and (vehicle = :vehicle and vehicle <> '' or depot = :depot)
                order by vehicle = :vehicle and vehicle <> '' desc, label, id limit 100""")
                .bind("id", unit.id()).bind("vehicle", unit.vehicle()).bind("depot", unit.unit().site())
                .map(UnitRow::read).list());
    }

    /**
     * Adds a unit, or changes the one of that id, unrecorded; its depot is added when it is new. A change of what the chain judges by
     * needs {@link Judging#judgeAgain} afterwards; what people change goes through {@link Fleet}.
     */
    public void save(FleetUnit unit) {
        writer.useTransaction(handle -> save(handle, List.of(unit)));
    }

    static void save(Handle handle, Collection<FleetUnit> units) {
        if (units.isEmpty()) {
            return;
        }
        units.stream().map(FleetUnit::unit).filter(unit -> !unit.site().isEmpty())
                .collect(Collectors.toMap(Unit::site, Unit::altitude, (first, second) -> first, TreeMap::new))
                .forEach((site, altitude) -> Depots.addIfMissing(handle, site, altitude));
        try (StatementRows rows = new StatementRows(handle, UnitRow.UPSERT)) {
            units.forEach(unit -> UnitRow.bind(rows, unit).add());
            rows.execute();
        }
        Standings.describe(handle, units);
    }
}
