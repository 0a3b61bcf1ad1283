package org.longsummer.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * One fleet's record in one directory. Open it once and share it: it may be used by any number of threads at once.
 *
 * <p>One connection writes, so that writers wait for one another in turn instead of colliding; several read, each seeing the last
 * state that was written whole.
 */
public final class Store implements AutoCloseable {
    /** The database's file in the data directory. */
    public static final String FILE = "longsummer.sqlite";
    private static final String HEADER = "SQLite format 3";
    private static final int BUSY_MILLISECONDS = 20_000;
    private static final int READERS = 8;

    private final HikariDataSource readers;
    private final HikariDataSource writers;
    private final Depots depots;
    private final Units units;
    private final Visits visits;
    private final Verdicts verdicts;
    private final Standings standings;
    private final LearnedLevels closings;
    private final Judging judging;
    private final Demo demo;
    private final Fleet fleet;
    private final UnitChanges changes;
    private final Photos photos;
    private final Technicians technicians;
    private final TheBusiness business;
    private final Prices prices;
    private final Quotes quotes;
    private final Plans plans;
    private final Clock clock;

    private Store(Path file, Clock clock) throws IOException {
        refuseForeign(file);
        this.clock = clock;
        writers = pool(source(file, SQLiteConfig.TransactionMode.IMMEDIATE), 1);
        migrate(file);
        guard();
        readers = pool(source(file, SQLiteConfig.TransactionMode.DEFERRED), READERS);
        Jdbi writer = Jdbi.create(writers);
        Jdbi reader = Jdbi.create(readers);
        depots = new Depots(reader, writer);
        units = new Units(reader, writer);
        visits = new Visits(reader);
        verdicts = new Verdicts(reader);
        standings = new Standings(reader);
        closings = new LearnedLevels(reader);
        judging = new Judging(reader, writer, closings, clock);
        demo = new Demo(reader, writer, closings);
        fleet = new Fleet(writer, judging, clock);
        changes = new UnitChanges(reader);
        photos = new Photos(reader, writer, clock);
        technicians = new Technicians(reader, writer);
        business = new TheBusiness(reader, writer);
        prices = new Prices(reader, writer);
        quotes = new Quotes(reader, writer);
        plans = new Plans(reader, writer, clock);
    }

    /**
     * Opens the record in a directory; both are made when they are not there, and an older record is brought up to date.
     *
     * @throws UncheckedIOException when the directory cannot be made
     * @throws StoreRefused when the file in it is no record or that of a newer version
     */
    public static Store open(Path dataDirectory) {
        return open(dataDirectory, Clock.systemUTC());
    }

    /** Opens the record with a clock of one's own; it stamps receipts and withdrawals. */
    public static Store open(Path dataDirectory, Clock clock) {
        try {
            Files.createDirectories(dataDirectory);
            return new Store(dataDirectory.resolve(FILE), clock);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Depots depots() {
        return depots;
    }

    public Units units() {
        return units;
    }

    public Visits visits() {
        return visits;
    }

    public Verdicts verdicts() {
        return verdicts;
    }

    public Standings standings() {
        return standings;
    }

    public LearnedLevels closings() {
        return closings;
    }

    public Judging judging() {
        return judging;
    }

    /** Where units are changed. */
    public Fleet fleet() {
        return fleet;
    }

    public UnitChanges changes() {
        return changes;
    }

    public Photos photos() {
        return photos;
    }

    public Technicians technicians() {
        return technicians;
    }

    public TheBusiness business() {
        return business;
    }

    /** The clock that stamps receipts and tells which days are over. */
    public Clock clock() {
        return clock;
    }

    public Prices prices() {
        return prices;
    }

    public Quotes quotes() {
        return quotes;
    }

    public Plans plans() {
        return plans;
    }

    public Demo demo() {
        return demo;
    }

    @Override
    public void close() {
        readers.close();
        writers.close();
    }

    private static void refuseForeign(Path file) throws IOException {
        if (Files.exists(file) && Files.size(file) > 0) {
            try (InputStream bytes = Files.newInputStream(file)) {
                if (!new String(bytes.readNBytes(HEADER.length()), StandardCharsets.ISO_8859_1).equals(HEADER)) {
                    throw new StoreRefused(file + " is not a record of Longsummer, or it is damaged; restore a backup, or name another "
                            + "directory.");
                }
            }
        }
    }

    private void migrate(Path file) {
        Flyway flyway = Flyway.configure().dataSource(writers).load();
        for (MigrationInfo applied : flyway.info().applied()) {
            if (!applied.getState().isResolved()) {
                writers.close();
                throw new StoreRefused(file + " was written by a newer version of Longsummer; use that version, or restore a backup made "
                        + "with this one.");
            }
        }
        flyway.migrate();
    }

    private void guard() {
        try (InputStream script = Store.class.getResourceAsStream("/db/sqlite-guards.sql")) {
            String text = new String(script.readAllBytes(), StandardCharsets.UTF_8);
            Jdbi.create(writers).useHandle(handle -> {
                for (String trigger : text.split("(?<=end;)\\s*")) {
                    handle.execute(trigger);
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** FULL: a transaction that was acknowledged survives a loss of power; WAL: readers do not wait for the writer. */
    private static SQLiteDataSource source(Path file, SQLiteConfig.TransactionMode mode) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setTransactionMode(mode);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    private static HikariDataSource pool(SQLiteDataSource source, int size) {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source);
        config.setMaximumPoolSize(size);
        config.setConnectionTimeout(BUSY_MILLISECONDS * 3L);
        config.setMaxLifetime(0);
        return new HikariDataSource(config);
    }
}
