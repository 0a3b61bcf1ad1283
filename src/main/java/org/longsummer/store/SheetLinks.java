package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.access.Secret;

/** The links to owners' sheets: unguessable, for one unit each, and withdrawn with a word. */
public final class SheetLinks {
    /** A season and the winter after it. */
    public static final Duration LIVES = Duration.ofDays(365);
    private static final String LINKS = "select id, unit_id, made_by, made_at_ms, ends_at_ms, withdrawn_at_ms from sheet_link ";

    private final Jdbi reader;
    private final Jdbi writer;
    private final Clock clock;

    SheetLinks(Jdbi reader, Jdbi writer, Clock clock) {
        this.reader = reader;
        this.writer = writer;
        this.clock = clock;
    }

    /** A new link's secret, to be handed to the owner; the unit must be there. */
    public Secret make(String unitId, String madeBy) {
        Secret secret = Secret.make();
        Instant now = clock.instant();
        writer.useTransaction(handle -> handle.createUpdate("""
                insert into sheet_link (id, secret_hash, unit_id, made_by, made_at_ms, ends_at_ms)
                values (:id, :hash, :unit, :by, :now, :ends)""")
                .bind("id", Secret.id("l")).bind("hash", secret.hash()).bind("unit", unitId).bind("by", madeBy)
                .bind("now", now.toEpochMilli()).bind("ends", now.plus(LIVES).toEpochMilli()).execute());
        return secret;
    }

    /** The unit whose sheet a living link opens. */
    public Optional<String> unitOf(Secret secret) {
        return reader.withHandle(handle -> handle.createQuery(LINKS + "where secret_hash = :hash").bind("hash", secret.hash())
                .map(SheetLinks::link).findOne()).filter(link -> link.isAlive(clock.instant())).map(SheetLink::unitId);
    }

    /** The links of a unit, latest first, those that no longer live too. */
    public List<SheetLink> ofUnit(String unitId) {
        return reader.withHandle(handle -> handle.createQuery(LINKS + "where unit_id = :unit order by made_at_ms desc, id")
                .bind("unit", unitId).map(SheetLinks::link).list());
    }

    /**
     * Withdraws a link; from this moment it opens nothing.
     *
     * @return whether there was one that was not withdrawn yet
     */
    public boolean withdraw(String unitId, String linkId) {
        return writer.inTransaction(handle -> handle.createUpdate("""
                update sheet_link set withdrawn_at_ms = :now where id = :id and unit_id = :unit and withdrawn_at_ms is null""")
                .bind("now", clock.instant().toEpochMilli()).bind("id", linkId).bind("unit", unitId).execute()) == 1;
    }

    private static SheetLink link(ResultSet row, StatementContext context) throws SQLException {
        return new SheetLink(row.getString("id"), row.getString("unit_id"), row.getString("made_by"),
                Instant.ofEpochMilli(row.getLong("made_at_ms")), Instant.ofEpochMilli(row.getLong("ends_at_ms")),
                Column.moment(row, "withdrawn_at_ms"));
    }
}
