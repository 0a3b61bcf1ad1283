package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.longsummer.access.Reach;
import org.longsummer.store.Store;
import org.longsummer.store.UnitChange;
import org.longsummer.store.UnitChange.Because;
import org.longsummer.store.UnitChange.Kind;

/** A {@code unit_changes.csv}: what became of units, in the order in which it was recorded. */
final class ChangesFile {
    static final String NAME = "unit_changes.csv";
    private static final List<String> COLUMNS = List.of("unit_id", "kind", "happened_on", "recorded_at", "recorded_by", "reason", "other_unit_id",
            "before", "after");

    private ChangesFile() {}

    static void write(Path file, Store store, Reach reach) throws IOException {
        try (RecordWriter writer = new RecordWriter(file, COLUMNS)) {
            store.changes().forEach(change -> {
                if (sees(store, reach, change.unitId())) {
                    writer.row(cells(change));
                }
            });
        }
    }

    private static boolean sees(Store store, Reach reach, String unitId) {
        return reach.everywhere() || store.units().find(unitId).filter(unit -> reach.includes(unit.unit().site())).isPresent();
    }

    private static List<String> cells(UnitChange change) {
        return List.of(Cell.escaped(change.unitId()), Row.word(change.kind()), change.because().on().toString(), change.recordedAt().toString(),
                Cell.escaped(change.because().by()), Cell.escaped(change.because().reason()), Cell.escaped(change.otherUnitId().orElse("")),
                Cell.escaped(lines(change.before())), Cell.escaped(lines(change.after())));
    }

    private static String lines(Map<String, String> fields) {
        return fields.entrySet().stream().map(field -> field.getKey() + " " + field.getValue()).collect(Collectors.joining("\n"));
    }

    private static Map<String, String> fields(String lines) {
        Map<String, String> fields = new LinkedHashMap<>();
        lines.lines().filter(line -> !line.isEmpty()).forEach(line -> {
            int space = line.indexOf(' ');
            fields.put(space < 0 ? line : line.substring(0, space), space < 0 ? "" : line.substring(space + 1));
        });
        return fields;
    }

    static void read(Path file, Predicate<String> isKnown, Findings findings, Consumer<UnitChange> changes) throws IOException {
        Sheet.read(file, new Layout(COLUMNS, List.of(List.of("unit_id"), List.of("kind"), List.of("recorded_at"))), findings, row -> {
            String unitId = row.required("unit_id", "name the unit");
            Optional<String> other = Optional.of(row.words("other_unit_id")).filter(id -> !id.isEmpty());
            refuseUnknown(row, "unit_id", Optional.of(unitId), isKnown);
            refuseUnknown(row, "other_unit_id", other, isKnown);
            Kind kind = row.word("kind", Kind.class, Kind.EDITED);
            Optional<LocalDate> on = row.day("happened_on");
            Optional<OffsetDateTime> at = row.moment("recorded_at");
            if (row.isSound()) {
                Because because = new Because(row.words("recorded_by"), on.orElseGet(() -> at.orElseThrow().toLocalDate()), row.words("reason"));
                changes.accept(new UnitChange(unitId, kind, because, at.orElseThrow().toInstant(), other, fields(row.words("before")),
                        fields(row.words("after"))));
            }
        });
    }

    private static void refuseUnknown(Row row, String column, Optional<String> id, Predicate<String> isKnown) {
        if (id.filter(given -> !given.isEmpty() && !isKnown.test(given)).isPresent()) {
            row.problem(column, id.orElseThrow(), "no unit has this id; add it to the units or correct it here");
        }
    }
}
