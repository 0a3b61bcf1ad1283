package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import org.longsummer.store.Rounds;

/** A {@code places.csv}: in which row of its depot a unit's vehicle stands, and at which place in it. */
final class PlacesFile {
    static final String NAME = "places.csv";
    private static final Layout LAYOUT = new Layout(List.of("unit_id", "row", "place"), List.of(List.of("unit_id")));

    private PlacesFile() {}

    static void write(Path file, List<Map.Entry<String, Rounds.Place>> places) throws IOException {
        try (RecordWriter writer = new RecordWriter(file, LAYOUT.known())) {
            places.forEach(place -> writer.row(List.of(Cell.escaped(place.getKey()), Cell.escaped(place.getValue().row()),
                    Cell.escaped(place.getValue().place()))));
        }
    }

    static void read(Path file, Predicate<String> isKnown, Findings findings, BiConsumer<String, Rounds.Place> places) throws IOException {
        Sheet.read(file, LAYOUT, findings, row -> {
            String unitId = row.required("unit_id", "name the unit");
            if (!unitId.isEmpty() && !isKnown.test(unitId)) {
                row.problem("unit_id", unitId, "no unit has this id; add it to the units or correct it here");
            }
            if (row.isSound()) {
                places.accept(unitId, new Rounds.Place(row.words("row"), row.words("place")));
            }
        });
    }
}
