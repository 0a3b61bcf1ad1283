package org.longsummer.chain.learning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

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
}
