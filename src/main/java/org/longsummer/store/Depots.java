package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.access.Reach;
import org.longsummer.quantity.Altitude;

/** The places where vehicles stand. */
public final class Depots {
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
        ReachCondition seen = new ReachCondition(reach);
        return reader.withHandle(handle -> handle
                .createQuery("select name, altitude_m, time_zone from depot where " + seen.on("name") + " order by name")
                .bindMap(seen.values()).map((row, context) -> depot(row)).list());
    }

    public Optional<Depot> named(String name) {
        return reader.withHandle(handle -> handle.createQuery("select name, altitude_m, time_zone from depot where name = :name")
                .bind("name", name).map((row, context) -> depot(row)).findOne());
    }

    /** Adds a depot, or changes the one of that name. */
    public void save(Depot depot) {
        writer.useTransaction(handle -> save(handle, depot));
    }

    static void save(Handle handle, Depot depot) {
        handle.createUpdate("""
                insert into depot (name, altitude_m, time_zone) values (:name, :altitude, :zone)
                on conflict (name) do update set altitude_m = excluded.altitude_m, time_zone = excluded.time_zone""")
                .bind("name", depot.name())
                .bind("altitude", depot.altitude().map(Altitude::metres))
                .bind("zone", depot.timeZone().map(ZoneId::getId))
                .execute();
    }

    /** Makes sure that a depot of that name is there, without changing it when it is. */
    static void addIfMissing(Handle handle, String name, Altitude altitude) {
        handle.createUpdate("insert into depot (name, altitude_m) values (:name, :altitude) on conflict (name) do nothing")
                .bind("name", name).bind("altitude", altitude.metres()).execute();
    }

    private static Depot depot(ResultSet row) throws SQLException {
        return new Depot(row.getString("name"), Column.quantity(row, "altitude_m", Altitude::new),
                Column.text(row, "time_zone").map(ZoneId::of));
    }
}
