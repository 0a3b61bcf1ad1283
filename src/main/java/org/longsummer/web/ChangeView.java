package org.longsummer.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.store.Store;
import org.longsummer.store.UnitChange;
import org.longsummer.wire.Boxes;

/**
 * Something that became of a unit, as its page shows it.
 *
 * @param kind the word of {@link UnitChange.Kind}
 * @param on the day on which it happened
 * @param at when it was recorded, in UTC
 * @param by who said so
 * @param reason why; empty when nobody said
 * @param other the other unit, where there is one
 * @param fields what changed
 */
record ChangeView(String kind, String on, String at, String by, String reason, Optional<OtherUnit> other, List<FieldChange> fields) {

    /** The other unit of a swap or a replacement. */
    record OtherUnit(String id, String label) {}

    /** A field by its name in CSV files. */
    record FieldChange(String field, String before, String after) {}

    static List<ChangeView> ofUnit(Store store, String unitId) {
        return store.changes().ofUnit(unitId).stream().map(change -> of(store, change)).toList();
    }

    private static ChangeView of(Store store, UnitChange change) {
        Map<String, String> before = change.before();
        return new ChangeView(Boxes.word(change.kind()), change.because().on().toString(), change.recordedAt().toString(),
                change.because().by(), change.because().reason(),
                change.otherUnitId().flatMap(store.units()::find).map(other -> new OtherUnit(other.id(), other.unit().label())),
                change.after().entrySet().stream()
                        .map(field -> new FieldChange(field.getKey(), before.getOrDefault(field.getKey(), ""), field.getValue())).toList());
    }
}
