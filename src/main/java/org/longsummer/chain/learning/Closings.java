package org.longsummer.chain.learning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/**
 * Everything learned across units, by the UTC day at whose end it was closed. A key that did not change on a day is not repeated.
 *
 * <p>Added in order of days; reading does not change it, and may be done by many at once.
 */
public final class Closings {
    private final TreeMap<String, ByDay<Learned>> byKey = new TreeMap<>();
    /** The same, for looking up: asked for several times at every visit. */
    private final Map<String, ByDay<Learned>> lookedUp = new LinkedHashMap<>();
    private final ByDay<LocalDate> days = new ByDay<>();

    /** What came to hold on which day; asked for several times at every visit, so plain arrays in order of days. */
    private static final class ByDay<T> {
        private long[] days = new long[8];
        private final List<T> entries = new ArrayList<>();

        /** Nearly always behind all others; of two on one day the later holds. */
        void put(long day, T entry) {
            int at = countBefore(day);
            if (at < entries.size() && days[at] == day) {
                entries.set(at, entry);
                return;
            }
            if (entries.size() == days.length) {
                days = Arrays.copyOf(days, 2 * days.length);
            }
            System.arraycopy(days, at, days, at + 1, entries.size() - at);
            days[at] = day;
            entries.add(at, entry);
        }

        /** The last before a day; null when there is none. */
        T before(long day) {
            int count = countBefore(day);
            return count == 0 ? null : entries.get(count - 1);
        }

        /** All of a day and later. */
        List<T> from(long day) {
            return entries.subList(countBefore(day), entries.size());
        }

        void eachFrom(long day, BiConsumer<Long, T> entry) {
            for (int i = countBefore(day); i < entries.size(); i++) {
                entry.accept(days[i], entries.get(i));
            }
        }

        void eachLastBefore(long day, BiConsumer<Long, T> entry) {
            int count = countBefore(day);
            if (count > 0) {
                entry.accept(days[count - 1], entries.get(count - 1));
            }
        }

        private int countBefore(long day) {
            int low = 0;
            int high = entries.size();
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (days[middle] < day) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }

    /** Adds what one day's closing changed. */
    public void add(LocalDate day, List<Learned> changes) {
        days.put(day.toEpochDay(), day);
        for (Learned learned : changes) {
            ByDay<Learned> known = byKey.computeIfAbsent(learned.key(), key -> new ByDay<>());
            known.put(day.toEpochDay(), learned);
            lookedUp.put(learned.key(), known);
        }
    }

    /** The last closing before a day. */
    public Optional<LocalDate> lastBefore(LocalDate day) {
        return Optional.ofNullable(days.before(day.toEpochDay()));
    }

    /** What was known of a key before a day. */
    public Optional<Learned> before(LocalDate day, String key) {
        ByDay<Learned> known = lookedUp.get(key);
        return known == null ? Optional.empty() : Optional.ofNullable(known.before(day.toEpochDay()));
    }

    /** Everything known before a day of keys that begin alike, in order of keys. */
    List<Learned> allBefore(LocalDate day, String prefix) {
        List<Learned> all = new ArrayList<>();
        for (Map.Entry<String, ByDay<Learned>> entry : byKey.tailMap(prefix, true).entrySet()) {
            if (!entry.getKey().startsWith(prefix)) {
                break;
            }
            Learned last = entry.getValue().before(day.toEpochDay());
            if (last != null) {
                all.add(last);
            }
        }
        return all;
    }

    /** Hands over every closing in order of days, with what each changed. */
    public void forEach(BiConsumer<LocalDate, List<Learned>> closing) {
        TreeMap<LocalDate, List<Learned>> changes = new TreeMap<>();
        days.from(Long.MIN_VALUE).forEach(day -> changes.put(day, new ArrayList<>()));
        byKey.values().forEach(known -> known.eachFrom(Long.MIN_VALUE,
                (day, learned) -> changes.get(LocalDate.ofEpochDay(day)).add(learned)));
        changes.forEach(closing);
    }

    /**
     * What judging needs of all this: of some keys, what was known before each of some days, and all that became known from one day
     * on. A verdict of those days, or from the one day on, is the same by either.
     *
     * @param keys which are read; see {@link NeededKeys}
     * @param days of the visits to be judged
     */
    public Closings neededFor(Predicate<String> keys, Collection<LocalDate> days, LocalDate from) {
        TreeMap<LocalDate, List<Learned>> needed = new TreeMap<>();
        TreeSet<LocalDate> all = new TreeSet<>(days);
        all.add(from);
        all.forEach(day -> lastBefore(day).ifPresent(last -> needed.put(last, new ArrayList<>())));
        this.days.from(from.toEpochDay()).forEach(day -> needed.put(day, new ArrayList<>()));
        byKey.forEach((key, known) -> {
            if (keys.test(key)) {
                TreeMap<Long, Learned> kept = new TreeMap<>();
                known.eachFrom(from.toEpochDay(), kept::put);
                all.forEach(day -> known.eachLastBefore(day.toEpochDay(), kept::put));
                kept.forEach((day, learned) -> needed.computeIfAbsent(LocalDate.ofEpochDay(day), d -> new ArrayList<>())
                        .add(FleetSlopes.asJudged(learned)));
            }
        });
        Closings closings = new Closings();
        needed.forEach(closings::add);
        return closings;
    }
}
