package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.longsummer.chain.visit.Visit;
import org.longsummer.store.Entry;

/** A {@code visits.csv}. */
public final class VisitsFile {
    private VisitsFile() {}

    /**
     * Hands over all visits that can be read, in the order of the file, with what was typed.
     *
     * @param isKnown whether there is a unit of an id
     * @param savedBy whose file it is; empty when nobody is signed in
     * @param findings receives what could not be read
     * @throws IOException when the file cannot be read
     */
    public static void readEntries(Path file, Predicate<String> isKnown, String savedBy, Findings findings, Consumer<Entry> entries)
            throws IOException {
        Ids ids = new Ids();
        Sheet.read(file, VisitColumns.LAYOUT, findings, row ->
                ids.read(row, isKnown, visit -> entries.accept(Entry.of(visit, VisitColumns.typed(row), savedBy))));
    }

    /** Hands over all visits that can be read, in the order of the file, for judging alone. */
    public static void read(Path file, Predicate<String> isKnown, Findings findings, Consumer<Visit> visits) throws IOException {
        Ids ids = new Ids();
        Sheet.read(file, VisitColumns.LAYOUT, findings, row -> ids.read(row, isKnown, visits));
    }

    /** Sees that each visit has an id of its own; a file without ids gets ids that are the same each time it is read. */
    private static final class Ids {
        private final Map<String, Long> rows = new HashMap<>();

        void read(Row row, Predicate<String> isKnown, Consumer<Visit> visits) {
            String unitId = row.words("unit_id");
            if (!unitId.isEmpty() && !isKnown.test(unitId)) {
                row.problem("unit_id", unitId, "no unit has this id; add it to the units or correct it here");
            }
            VisitColumns.read(row, id(row, unitId)).ifPresent(visits);
        }

        private String id(Row row, String unitId) {
            String given = row.words("visit_id");
            if (given.isEmpty()) {
                return made(unitId + "@" + row.text("visited_at"), row.number());
            }
            Long earlier = rows.putIfAbsent(given, row.number());
            if (earlier != null) {
                row.problem("visit_id", given, "row " + earlier + " has the same id; give each visit its own");
            }
            return given;
        }

        private String made(String base, long row) {
            String id = base;
            for (int copy = 2; rows.putIfAbsent(id, row) != null; copy++) {
                id = base + "#" + copy;
            }
            return id;
        }
    }
}
