package org.longsummer.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Learned;

/** What was learned across units, closed at the end of each UTC day; append-only. */
public final class LearnedLevels {
    private final Jdbi reader;

    LearnedLevels(Jdbi reader) {
        this.reader = reader;
    }

    /** All closings so far. */
    public Closings all() {
        return reader.withHandle(LearnedLevels::all);
    }

    static Closings all(Handle handle) {
        Map<LocalDate, List<Learned>> byDay = new TreeMap<>();
        handle.createQuery("select day, learned_key, numbers from closing order by day, learned_key")
                .map((row, context) -> Map.entry(LocalDate.parse(row.getString("day")),
                        new Learned(row.getString("learned_key"), numbers(row.getString("numbers")))))
                .forEach(entry -> byDay.computeIfAbsent(entry.getKey(), day -> new ArrayList<>()).add(entry.getValue()));
        Closings closings = new Closings();
        byDay.forEach(closings::add);
        return closings;
    }

    /** Appends what one day's closing changed. */
    static void append(Handle handle, LocalDate day, List<Learned> changes) {
        if (changes.isEmpty()) {
            return;
        }
        PreparedBatch batch = handle.prepareBatch("insert into closing (day, learned_key, numbers) values (:day, :key, :numbers)");
        changes.forEach(learned -> batch.bind("day", day.toString()).bind("key", learned.key())
                .bind("numbers", learned.numbers().stream().map(Object::toString).collect(Collectors.joining(" "))).add());
        batch.execute();
    }

    private static List<Double> numbers(String text) {
        return text.isEmpty() ? List.of() : Arrays.stream(text.split(" ")).map(Double::valueOf).toList();
    }
}
