package org.longsummer.wire;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Learned;

/** What was learned across units, as JSON: one object by days, each an object of keys with their numbers. */
public final class ClosingsRecord {
    private ClosingsRecord() {}

    public static void write(JsonWriter json, Closings closings) {
        json.object(() -> closings.forEach((day, changes) -> json.object(day.toString(), () -> changes.forEach(learned ->
                json.array(learned.key(), learned.numbers(), json::value)))));
    }

    /** The days in any order. */
    public static Closings read(Fields json) {
        Closings closings = new Closings();
        json.members().keySet().stream().sorted().forEach(day -> {
            List<Learned> changes = new ArrayList<>();
            Fields byKey = json.object(day);
            byKey.members().keySet().forEach(key -> changes.add(new Learned(key, byKey.items(key).stream().map(Double.class::cast).toList())));
            closings.add(Boxes.dayOf(day), changes);
        });
        return closings;
    }
}
