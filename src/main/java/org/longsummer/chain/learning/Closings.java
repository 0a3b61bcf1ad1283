package org.longsummer.chain.learning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/**
 * Everything learned across units, by the UTC day at whose end it was closed. A key that did not change on a day is not repeated.
 *
 * <p>Add in order of days; reading does not change it.
 */
public final class Closings {
    private final TreeMap<String, NavigableMap<LocalDate, Learned>> byKey = new TreeMap<>();
    private final TreeMap<LocalDate, List<Learned>> byDay = new TreeMap<>();

    /** Adds what one day's closing changed. */
    public void add(LocalDate day, List<Learned> changes) {
        byDay.computeIfAbsent(day, d -> new ArrayList<>()).addAll(changes);
        for (Learned learned : changes) {
            byKey.computeIfAbsent(learned.key(), key -> new TreeMap<>()).put(day, learned);
        }
    }

    /** The last closing before a day. */
    public Optional<LocalDate> lastBefore(LocalDate day) {
        return Optional.ofNullable(byDay.lowerKey(day));
    }

    /** What was known of a key before a day. */
    public Optional<Learned> before(LocalDate day, String key) {
        NavigableMap<LocalDate, Learned> known = byKey.get(key);
        Map.Entry<LocalDate, Learned> entry = known == null ? null : known.lowerEntry(day);
        return entry == null ? Optional.empty() : Optional.of(entry.getValue());
    }

    /** Everything known before a day of keys that begin alike, in order of keys. */
    List<Learned> allBefore(LocalDate day, String prefix) {
        List<Learned> all = new ArrayList<>();
        for (Map.Entry<String, NavigableMap<LocalDate, Learned>> entry : byKey.tailMap(prefix, true).entrySet()) {
            if (!entry.getKey().startsWith(prefix)) {
                break;
            }
            Map.Entry<LocalDate, Learned> last = entry.getValue().lowerEntry(day);
            if (last != null) {
                all.add(last.getValue());
            }
        }
        return all;
    }

    /** Hands over every closing in order of days, with what each changed. */
    public void forEach(BiConsumer<LocalDate, List<Learned>> closing) {
        byDay.forEach((day, changes) -> closing.accept(day, Collections.unmodifiableList(changes)));
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
        byDay.tailMap(from, true).keySet().forEach(day -> needed.put(day, new ArrayList<>()));
        byKey.forEach((key, known) -> {
            if (keys.test(key)) {
                TreeMap<LocalDate, Learned> kept = new TreeMap<>(known.tailMap(from, true));
                all.forEach(day -> Optional.ofNullable(known.lowerEntry(day)).ifPresent(entry -> kept.put(entry.getKey(), entry.getValue())));
                kept.forEach((day, learned) -> needed.computeIfAbsent(day, d -> new ArrayList<>()).add(FleetSlopes.asJudged(learned)));
            }
        });
        Closings closings = new Closings();
        needed.forEach(closings::add);
        return closings;
    }
}
