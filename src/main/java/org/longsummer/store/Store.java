package org.longsummer.store;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;

/**
 * One fleet's record in one directory. Open it once and share it: it may be used by any number of threads at once.
 *
 * <p>One connection writes, so that writers wait for one another in turn instead of colliding; several read, each seeing the last
 * state that was written whole.
 */
public final class Store implements AutoCloseable {
    /** The database's file in the data directory. */
    public static final String FILE = "longsummer.sqlite";
    private static final int READERS = 8;
    /** Pages in memory, beside the heap: what a fleet's whole history writes to again and again is not to be read back from the log each time. */
    private static final int WRITER_PAGES_KILOBYTES = 64_000;
    private static final int READER_PAGES_KILOBYTES = 8_000;

    private final HikariDataSource readers;
    private final HikariDataSource watchers;
    private final HikariDataSource writers;
    private final Depots depots;
    private final Units units;
    private final Visits visits;
    private final Verdicts verdicts;
    private final KeptAnswers answers;
    private final Standings standings;
    private final LearnedLevels closings;
    private final LookingAhead ahead;
    private final GroupCommit commits;
    private final Judging judging;
    private final Demo demo;
    private final Fleet fleet;
    private final UnitChanges changes;
    private final Photos photos;
    private final Technicians technicians;
    private final TheBusiness business;
    private final Acting acting;
    private final Journal journal;
    private final People people;
    private final Sessions sessions;
    private final Programs programs;
    private final SheetLinks sheetLinks;
    private final Uses uses = new Uses();
    private final Prices prices;
    private final Quotes quotes;
    private final Plans plans;
    private final PlannedSavings plannedSavings;
    private final FileForms fileForms;
    private final Rounds rounds;
    private final Rejudging rejudging;
    private final Seasons seasons;
    private final Clock clock;
    private final Path file;

    private Store(Path file, Clock clock) throws IOException {
        RawFile.refuseForeign(file);
        this.clock = clock;
        this.file = file;
        writers = Pools.pool(Pools.source(file, SQLiteConfig.TransactionMode.IMMEDIATE, WRITER_PAGES_KILOBYTES), 1);
        Jdbi writer = Pools.jdbi(writers);
        prepare(file, writer);
        readers = Pools.pool(Pools.source(file, SQLiteConfig.TransactionMode.DEFERRED, READER_PAGES_KILOBYTES), READERS);
        Jdbi reader = Pools.jdbi(readers);
        depots = new Depots(reader, writer);
        units = new Units(reader, writer);
        visits = new Visits(reader);
        verdicts = new Verdicts(reader);
        watchers = Pools.pool(Pools.source(file, SQLiteConfig.TransactionMode.DEFERRED, READER_PAGES_KILOBYTES), 1);
        answers = new KeptAnswers(watchers);
        standings = new Standings(reader, answers);
        closings = new LearnedLevels(reader);
        ahead = new LookingAhead(reader, clock);
        acting = new Acting(clock);
        acting.stamp(writer);
        commits = new GroupCommit(writer, acting);
        judging = new Judging(reader, writer, commits, closings, ahead, clock);
        demo = new Demo(reader, writer, closings);
        fleet = new Fleet(writer, judging, clock);
        changes = new UnitChanges(reader);
        photos = new Photos(reader, writer, clock);
        technicians = new Technicians(reader, writer);
        business = new TheBusiness(reader, writer);
        journal = new Journal(reader, writer);
        people = new People(reader, writer, clock);
        sessions = new Sessions(reader, writer, clock, uses);
        programs = new Programs(reader, writer, clock, uses);
        sheetLinks = new SheetLinks(reader, writer, clock);
        prices = new Prices(reader, writer);
        quotes = new Quotes(reader, writer);
        plans = new Plans(reader, writer, clock);
        plannedSavings = new PlannedSavings(reader, closings, ahead, clock);
        fileForms = new FileForms(reader, writer);
        rounds = new Rounds(reader, writer);
        rejudging = new Rejudging(reader, writer, closings);
        seasons = new Seasons(reader);
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
        } catch (RuntimeException e) {
            throw Trouble.in(e).<RuntimeException>map(trouble -> new StoreRefused(dataDirectory.resolve(FILE) + ": " + trouble.limit() + " "
                    + trouble.remedy(), e)).orElse(e);
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

    /** Answers that hold for as long as nothing is written. */
    public KeptAnswers answers() {
        return answers;
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

    /** Stamps receipts and tells which days are over. */
    public Clock clock() {
        return clock;
    }

    /** Bytes that the disk of the record can still take. */
    public long freeBytes() {
        try {
            return Files.getFileStore(file.toAbsolutePath().getParent()).getUsableSpace();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Prices prices() {
        return prices;
    }

    public Quotes quotes() {
        return quotes;
    }

    public Seasons seasons() {
        return seasons;
    }

    public Rounds rounds() {
        return rounds;
    }

    public Plans plans() {
        return plans;
    }

    /** What planned works cost and are expected to save. */
    public PlannedSavings plannedSavings() {
        return plannedSavings;
    }

    /** How files with headers of the fleet's own are read. */
    public FileForms fileForms() {
        return fileForms;
    }

    /** What lies ahead of units, and what is worth doing. */
    public LookingAhead ahead() {
        return ahead;
    }

    /** What judges units again by a newer method, or from a changed depot; it begins when it is started. */
    public Rejudging rejudging() {
        return rejudging;
    }

    public Demo demo() {
        return demo;
    }

    /** Says who is changing something on this thread. */
    public Acting acting() {
        return acting;
    }

    public Journal journal() {
        return journal;
    }

    public People people() {
        return people;
    }

    public Sessions sessions() {
        return sessions;
    }

    public Programs programs() {
        return programs;
    }

    public SheetLinks sheetLinks() {
        return sheetLinks;
    }

    @Override
    public void close() {
        commits.close();
        uses.close();
        watchers.close();
        readers.close();
        writers.close();
    }

    /** Sees early that the file can be written, so that whatever stands in the way is met before anything is changed. */
    private void prepare(Path file, Jdbi writer) {
        try {
            writer.useTransaction(handle -> { });
            Schema.bringUpToDate(writers, file, clock.instant());
            guard();
        } catch (RuntimeException e) {
            writers.close();
            throw e;
        }
    }

    private void guard() {
        try (InputStream script = Store.class.getResourceAsStream("/db/sqlite-guards.sql")) {
            String text = new String(script.readAllBytes(), StandardCharsets.UTF_8);
            Pools.jdbi(writers).useHandle(handle -> {
                for (String trigger : text.split("(?<=end;)\\s*")) {
                    handle.execute(trigger);
                }
                handle.useTransaction(JournalTriggers::lay);
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
