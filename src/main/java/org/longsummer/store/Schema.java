package org.longsummer.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.zip.CRC32;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The version of a record's tables: brings an older one up to date, after a backup, and refuses a newer one. */
final class Schema {
    private static final Logger LOG = LoggerFactory.getLogger(Schema.class);
    private static final String MIGRATIONS = "db/migration";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    /**
     * What {@link #fingerprint} says of a record whose tables, indexes and triggers are as this version lays them. It spares a start the looking
     * at migrations and at triggers one by one, which took half of it; where it is wrong, everything is looked at.
     */
    static final long LAID = 861_099_834L;

    private Schema() {}

    /** A number made of the migrations that a record went through and of all that is laid in it. */
    static long fingerprint(Handle handle) {
        CRC32 sum = new CRC32();
        handle.createQuery("""
                select name || ' ' || sql as laid from sqlite_master where sql is not null and name not like 'flyway%' order by name""")
                .mapTo(String.class).forEach(text -> sum.update(text.getBytes(StandardCharsets.UTF_8)));
        if (handle.createQuery("select count(*) from sqlite_master where name = 'flyway_schema_history'").mapTo(Integer.class).one() > 0) {
            handle.createQuery("select coalesce(version, '') || ' ' || success from flyway_schema_history order by installed_rank")
                    .mapTo(String.class).forEach(text -> sum.update(text.getBytes(StandardCharsets.UTF_8)));
        }
        return sum.getValue();
    }

    /**
     * Brings a record up to date.
     *
     * @param source of connections to the file
     * @throws StoreRefused when it is of a newer version; it is left alone
     */
    static void bringUpToDate(DataSource source, Path file, Instant now) {
        bringUpToDate(source, file, now, MIGRATIONS);
    }

    /** @param places where the migrations are */
    static void bringUpToDate(DataSource source, Path file, Instant now, String... places) {
        Flyway flyway = Flyway.configure().dataSource(source).locations(places).load();
        refuseNewer(flyway, file);
        MigrationInfo current = flyway.info().current();
        int pending = flyway.info().pending().length;
        if (current != null && pending > 0) {
            Path copy = file.resolveSibling("before-upgrade-from-" + current.getVersion() + "-" + MOMENT.format(now) + ".sqlite");
            backUp(file, copy);
            LOG.atInfo().addKeyValue("from", current.getVersion()).addKeyValue("steps", pending)
                    .addKeyValue("backup", copy.getFileName()).log("upgrade");
        }
        flyway.migrate();
    }

    private static void backUp(Path file, Path copy) {
        try {
            Backup.copy(file, copy);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Looks at a copy before it is put in place.
     *
     * @param named the file that the words are about
     */
    static void refuseNewer(Path copy, Path named) {
        Flyway flyway = Flyway.configure().dataSource(RawFile.source(copy)).load();
        if (flyway.info().current() == null) {
            throw new StoreRefused(named + " is a database, but not a record of Longsummer; name a file that the command backup wrote.");
        }
        refuseNewer(flyway, named);
    }

    private static void refuseNewer(Flyway flyway, Path file) {
        for (MigrationInfo applied : flyway.info().applied()) {
            if (!applied.getState().isResolved()) {
                throw new StoreRefused(file + " was written by a newer version of Longsummer; use that version, or restore a backup made "
                        + "with this one.");
            }
        }
    }
}
