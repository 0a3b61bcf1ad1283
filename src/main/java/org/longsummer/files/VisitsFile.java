package org.longsummer.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ObjLongConsumer;
import java.util.function.Predicate;
import org.longsummer.chain.visit.Visit;
import org.longsummer.store.Entry;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Withdrawal;

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
        readRows(file, isKnown, savedBy, findings, (entry, row) -> entries.accept(entry));
    }

    /** The same with the rows in which they stand. */
    static void readRows(Path file, Predicate<String> isKnown, String savedBy, Findings findings, ObjLongConsumer<Entry> entries)
            throws IOException {
        Ids ids = new Ids(isKnown);
        RowsSideBySide.read(file, VisitColumns.LAYOUT, findings, row -> read(row).map(visit ->
                new Entry(visit, VisitColumns.typed(row), savedBy, RecordColumns.correction(row))), (row, read) -> {
            String id = ids.of(row);
            read.filter(entry -> row.isSound()).ifPresent(entry -> entries.accept(entry.visit().id().equals(id) ? entry
                    : new Entry(entry.visit().on(entry.visit().unitId(), id), entry.typed(), entry.savedBy(), entry.correction()), row.number()));
        });
    }

    /** A visit by the id in its row. */
    private static Optional<Visit> read(Row row) {
        return VisitColumns.read(row, Cell.unescaped(row.text("visit_id")));
    }

    /** A row of somebody's whole record: when it was received and whether it was withdrawn, as the file says. */
    record RecordRow(Entry entry, Optional<Instant> receivedAt, Optional<Withdrawal> withdrawal) {}

    /**
     * Hands over all rows that can be read of a whole record, in the order of the file, with who saved and who withdrew them.
     *
     * @param isKnown whether there is a unit of an id
     * @throws IOException when the file cannot be read
     */
    static void readRecord(Path file, Predicate<String> isKnown, Findings findings, Consumer<RecordRow> rows) throws IOException {
        Ids ids = new Ids(isKnown);
        Sheet.read(file, VisitColumns.LAYOUT, findings, row -> VisitColumns.read(row, ids.of(row)).ifPresent(visit -> {
            Optional<Instant> receivedAt = RecordColumns.receivedAt(row);
            Optional<Withdrawal> withdrawal = RecordColumns.withdrawal(row);
            if (row.isSound()) {
                rows.accept(new RecordRow(new Entry(visit, VisitColumns.typed(row), RecordColumns.savedBy(row, ""), RecordColumns.correction(row)),
                        receivedAt, withdrawal));
            }
        }));
    }

    /** Hands over all visits that can be read, in the order of the file, for judging alone. */
    public static void read(Path file, Predicate<String> isKnown, Findings findings, Consumer<Visit> visits) throws IOException {
        Ids ids = new Ids(isKnown);
        RowsSideBySide.read(file, VisitColumns.LAYOUT, findings, VisitsFile::read, (row, read) -> {
            String id = ids.of(row);
            read.filter(visit -> row.isSound()).ifPresent(visit -> visits.accept(visit.id().equals(id) ? visit : visit.on(visit.unitId(), id)));
        });
    }

    /**
     * Opens a file to be written; it is replaced when it is there.
     *
     * @throws IOException when it cannot be written
     */
    public static Writer writer(Path file) throws IOException {
        return new Writer(file);
    }

    /** Writes visits row by row so that reading the file gives the same visits, as typed. */
    public static final class Writer implements Closeable {
        private final CsvWriter csv;

        private Writer(Path file) throws IOException {
            csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).bufferSize(1 << 16).build(file, StandardCharsets.UTF_8);
            csv.writeRecord(VisitColumns.LAYOUT.known());
        }

        public void add(Entry entry) {
            csv.writeRecord(VisitColumns.cells(entry));
        }

        /** A row of the record with its marking. */
        void add(RecordedVisit row) {
            csv.writeRecord(VisitColumns.cells(row));
        }

        @Override
        public void close() throws IOException {
            csv.close();
        }
    }

    /** Sees that each visit has an id of its own; a file without ids gets ids that are the same each time it is read. */
    private static final class Ids {
        private final IdsSeen rows = new IdsSeen();
        private final Predicate<String> isKnown;

        /** @param isKnown whether there is a unit of an id */
        Ids(Predicate<String> isKnown) {
            this.isKnown = isKnown;
        }

        /** The id of the next row's visit. */
        String of(Row row) {
            String unitId = row.words("unit_id");
            if (!unitId.isEmpty() && !isKnown.test(unitId)) {
                row.problem("unit_id", unitId, "no unit has this id; add it to the units or correct it here");
            }
            String given = row.words("visit_id");
            if (given.isEmpty()) {
                return made(unitId + "@" + row.text("visited_at"), row.number());
            }
            long earlier = rows.put(given, row.number());
            if (earlier > 0) {
                row.problem("visit_id", given, "row " + earlier + " has the same id; give each visit its own");
            }
            return given;
        }

        private String made(String base, long row) {
            String id = base;
            for (int copy = 2; rows.put(id, row) > 0; copy++) {
                id = base + "#" + copy;
            }
            return id;
        }
    }
}
