package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.access.Reach;
import org.longsummer.quantity.Altitude;

/** The places where vehicles stand. */
public final class Depots {
    private static final String COLUMNS = "name, altitude_m, time_zone, climate";

    private final Jdbi reader;
    private final Jdbi writer;

    Depots(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
    }

    public List<Depot> all() {
        return all(Reach.EVERYWHERE);
    }

    /** Those that somebody may see. */
    public List<Depot> all(Reach reach) {
        return reader.withHandle(handle -> all(handle, reach));
    }

    static List<Depot> all(Handle handle, Reach reach) {
        ReachCondition seen = new ReachCondition(reach);
        return handle.createQuery("select " + COLUMNS + " from depot where " + seen.on("name") + " order by name")
                .bindMap(seen.values()).map((row, context) -> depot(row)).list();
    }

    public Optional<Depot> named(String name) {
        return reader.withHandle(handle -> named(handle, name));
    }

    static Optional<Depot> named(Handle handle, String name) {
        return handle.createQuery("select " + COLUMNS + " from depot where name = :name")
                .bind("name", name).map((row, context) -> depot(row)).findOne();
    }

    /** How many units stand at each depot that has any. */
    public Map<String, Integer> unitCounts() {
        return reader.withHandle(handle -> handle.createQuery("select depot, count(*) as units from unit where depot is not null group by depot")
                .reduceRows(new HashMap<>(), (counts, row) -> {
                    counts.put(row.getColumn("depot", String.class), row.getColumn("units", Integer.class));
                    return counts;
                }));
    }

    /**
     * Adds a depot, or changes the one of that name; its units do not change. Units at a depot with another altitude or climate are
     * {@link Fleet#settle judged anew}.
     */
    public void save(Depot depot) {
        writer.useTransaction(handle -> save(handle, depot));
    }

    static void save(Handle handle, Depot depot) {
        handle.createUpdate("""
                insert into depot (name, altitude_m, time_zone, climate) values (:name, :altitude, :zone, :climate)
                on conflict (name) do update set altitude_m = excluded.altitude_m, time_zone = excluded.time_zone,
                climate = excluded.climate""")
                .bind("name", depot.name())
                .bind("altitude", depot.altitude().map(Altitude::metres))
                .bind("zone", depot.timeZone().map(ZoneId::getId))
                .bind("climate", depot.climate().map(ClimateColumn::text))
                .execute();
    }

    /** Makes sure that a depot of that name is there, without changing it when it is. */
    static void addIfMissing(Handle handle, String name, Altitude altitude) {
        handle.createUpdate("insert into depot (name, altitude_m) values (:name, :altitude) on conflict (name) do nothing")
                .bind("name", name).bind("altitude", altitude.metres()).execute();
    }

    private static Depot depot(ResultSet row) throws SQLException {
        return new Depot(row.getString("name"), Column.quantity(row, "altitude_m", Altitude::new),
                Column.text(row, "time_zone").map(ZoneId::of), Column.text(row, "climate").map(ClimateColumn::climate));
    }
}
