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
    private final Jdbi reader;
    private final Jdbi writer;
    private volatile Closings known;

    LearnedLevels(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
        this.known = read();
    }

    /** All closings so far; not to be changed. */
    public Closings all() {
        return known;
    }

    /** The last day that was closed. */
    public Optional<LocalDate> closedThrough() {
        return reader.withHandle(LearnedLevels::closedThrough);
    }

    static Optional<LocalDate> closedThrough(Handle handle) {
        return Settings.read(handle, Settings.CLOSED_THROUGH).map(LocalDate::parse);
    }

    /**
     * Closes a day for good: a visit of that day that comes later is learned from at a later closing.
     *
     * @param changes what the day's closing changed; may be empty
     * @throws IllegalArgumentException when the day or a later one is closed already
     */
    public void close(LocalDate day, List<Learned> changes) {
        writer.useTransaction(handle -> close(handle, day, changes));
        reload();
    }

    static void close(Handle handle, LocalDate day, List<Learned> changes) {
        closedThrough(handle).filter(last -> !last.isBefore(day)).ifPresent(last -> {
            throw new IllegalArgumentException("cannot close " + day + ": closed through " + last + " already");
        });
        if (!changes.isEmpty()) {
            PreparedBatch batch = handle.prepareBatch("insert into closing (day, learned_key, numbers) values (:day, :key, :numbers)");
            changes.forEach(learned -> batch.bind("day", day.toString()).bind("key", learned.key())
                    .bind("numbers", learned.numbers().stream().map(Object::toString).collect(Collectors.joining(" "))).add());
            batch.execute();
        }
        Settings.write(handle, Settings.CLOSED_THROUGH, day.toString());
    }

    /** After something other than {@link #close(LocalDate, List)} changed the rows. */
    void reload() {
        known = read();
    }

    private Closings read() {
        Map<LocalDate, List<Learned>> byDay = new TreeMap<>();
        reader.useHandle(handle -> handle.createQuery("select day, learned_key, numbers from closing order by day, learned_key")
                .map((row, context) -> Map.entry(LocalDate.parse(row.getString("day")),
                        new Learned(row.getString("learned_key"), numbers(row.getString("numbers")))))
                .useStream(rows -> rows.forEach(row ->
                        byDay.computeIfAbsent(row.getKey(), day -> new ArrayList<>()).add(row.getValue()))));
        Closings closings = new Closings();
        byDay.forEach(closings::add);
        return closings;
    }

    private static List<Double> numbers(String text) {
        return text.isEmpty() ? List.of() : Arrays.stream(text.split(" ")).map(Double::valueOf).toList();
    }
}
