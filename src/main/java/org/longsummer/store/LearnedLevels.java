package org.longsummer.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Learned;

/**
 * What was learned across units, closed at the end of each UTC day; append-only. Kept in memory once read, since every judgement needs
 * it and only a closing changes it.
 */
public final class LearnedLevels {
    private static final Learned NOTHING = new Learned("", List.of());

    private final Jdbi reader;
    private volatile Closed known;

    LearnedLevels(Jdbi reader) {
        this.reader = reader;
        reload();
    }

    /**
     * What was closed.
     *
     * @param generation number of the learning from the first day on, from 1
     * @param through the last UTC day that was closed
     * @param closings what each day changed
     */
    record Closed(int generation, Optional<LocalDate> through, Closings closings) {

        /** Whether a day and all before it were closed. */
        boolean isThrough(LocalDate day) {
            return through.isPresent() && !through.get().isBefore(day);
        }

        /** Whether days after this one were closed, too: the clock was ahead then. */
        boolean isAheadOf(LocalDate day) {
            return through.isPresent() && through.get().isAfter(day);
        }
    }

    /** All closings so far; not to be changed. */
    public Closings all() {
        return known.closings();
    }

    /** The last day that was closed. */
    public Optional<LocalDate> closedThrough() {
        return known.through();
    }

    /** What was closed when it was last looked at. */
    Closed known() {
        return known;
    }

    /** What was closed, as this transaction sees it; another program may have closed days meanwhile. */
    Closed known(Handle handle) {
        return known(handle, generation(handle), through(handle));
    }

    /** What was closed in a generation through a day, which this transaction sees as the last ones. */
    Closed known(Handle handle, int generation, Optional<LocalDate> through) {
        Closed remembered = known;
        if (remembered.generation() == generation && remembered.through().equals(through)) {
            return remembered;
        }
        Closed read = read(handle);
        known = read;
        return read;
    }

    private static int generation(Handle handle) {
        return generation(Settings.read(handle, Settings.GENERATION));
    }

    /** The number that the record's setting says. */
    static int generation(Optional<String> setting) {
        return setting.map(Integer::parseInt).orElse(1);
    }

    private static Optional<LocalDate> through(Handle handle) {
        return Settings.read(handle, Settings.CLOSED_THROUGH).map(LocalDate::parse);
    }

    /** Takes over what a transaction closed, once it is on disk. */
    void publishAfterCommit(Handle handle, Closed closed) {
        handle.afterCommit(() -> known = closed);
    }

    /** After the rows were removed. */
    void reload() {
        known = reader.withHandle(LearnedLevels::read);
    }

    /** What was closed, as objects of their own that may go on. */
    static Closed read(Handle handle) {
        int generation = generation(handle);
        Map<LocalDate, List<Learned>> byDay = new TreeMap<>();
        handle.createQuery("select day, learned_key, numbers from closing where generation = :generation order by day, learned_key")
                .bind("generation", generation)
                .map((row, context) -> Map.entry(LocalDate.parse(row.getString("day")),
                        new Learned(row.getString("learned_key"), numbers(row.getString("numbers")))))
                .useStream(rows -> rows.forEach(row -> {
                    List<Learned> changes = byDay.computeIfAbsent(row.getKey(), day -> new ArrayList<>());
                    if (!row.getValue().equals(NOTHING)) {
                        changes.add(row.getValue());
                    }
                }));
        Closings closings = new Closings();
        byDay.forEach(closings::add);
        return new Closed(generation, through(handle), closings);
    }

    /** Forgets nothing, but learns from the first day on again, from every visit on its own day. */
    static Closed beginGeneration(Handle handle, int generation) {
        Settings.write(handle, Settings.GENERATION, Integer.toString(generation));
        Settings.remove(handle, Settings.CLOSED_THROUGH);
        return new Closed(generation, Optional.empty(), new Closings());
    }

    /**
     * Opens the days again that nothing was learned from and that are not over: a clock that ran ahead closed them. Days from which
     * something was learned stay closed, since a clock may as well be behind.
     */
    static Closed reopenAfter(Handle handle, LocalDate today, Closed closed) {
        LocalDate yesterday = today.minusDays(1);
        LocalDate learned = handle.createQuery("select max(day) from closing where generation = :generation")
                .bind("generation", closed.generation()).mapTo(String.class).findOne().map(LocalDate::parse).orElse(yesterday);
        LocalDate through = learned.isAfter(yesterday) ? learned : yesterday;
        Settings.write(handle, Settings.CLOSED_THROUGH, through.toString());
        return new Closed(closed.generation(), Optional.of(through), closed.closings());
    }

    /** Appends what one day's closing changed; a day that changed nothing is noted too, since verdicts name their closing. */
    static void append(Handle handle, int generation, LocalDate day, List<Learned> changes) {
        PreparedBatch batch = handle.prepareBatch(
                "insert into closing (generation, day, learned_key, numbers) values (:generation, :day, :key, :numbers)");
        List<Learned> rows = changes.isEmpty() ? List.of(NOTHING) : changes;
        rows.forEach(learned -> batch.bind("generation", generation).bind("day", day.toString()).bind("key", learned.key())
                .bind("numbers", learned.numbers().stream().map(Object::toString).collect(Collectors.joining(" "))).add());
        batch.execute();
    }

    /** Appends what was learned from the first day on. */
    static Closed closeAll(Handle handle, int generation, Closings closings, LocalDate through) {
        closings.forEach((day, changes) -> append(handle, generation, day, changes));
        Settings.write(handle, Settings.CLOSED_THROUGH, through.toString());
        return new Closed(generation, Optional.of(through), closings);
    }

    private static List<Double> numbers(String text) {
        return text.isEmpty() ? List.of() : Arrays.stream(text.split(" ")).map(Double::valueOf).toList();
    }
}
