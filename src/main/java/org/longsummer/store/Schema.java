package org.longsummer.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The version of a record's tables: brings an older one up to date, after a backup, and refuses a newer one. */
final class Schema {
    private static final Logger LOG = LoggerFactory.getLogger(Schema.class);
    private static final String MIGRATIONS = "db/migration";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private Schema() {}

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
