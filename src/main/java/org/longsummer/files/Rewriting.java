package org.longsummer.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Puts a file into our own form, row for row: our names, cells as our reader takes them, semicolons between, UTF-8. */
final class Rewriting {
    private final List<String> columns;
    private final List<Integer> kept;
    private final CellForm form;
    private final Optional<ZoneId> zone;
    private final Function<String, Optional<ZoneId>> zones;
    private final int unitColumn;
    private final boolean numbersAsTyped;

    /**
     * @param columns what each column of the file is; empty for what is left out
     * @param zone for all clock times; absent when each is read in its unit's depot's
     * @param zones the time zone of a unit's depot
     */
    Rewriting(List<String> columns, CellForm form, Optional<ZoneId> zone, Function<String, Optional<ZoneId>> zones) {
        this.columns = columns;
        this.kept = IntStream.range(0, columns.size()).filter(i -> !columns.get(i).isEmpty()).boxed().toList();
        this.form = form;
        this.zone = zone;
        this.zones = zones;
        this.numbersAsTyped = columns.contains(RecordColumns.MARK);
        this.unitColumn = columns.indexOf("unit_id");
    }

    Out into(Path file) throws IOException {
        return new Out(file);
    }

    /** The file in our form. */
    final class Out implements Closeable {
        private final CsvWriter csv;

        private Out(Path file) throws IOException {
            csv = CsvWriter.builder().fieldSeparator(';').lineDelimiter(LineDelimiter.LF).bufferSize(1 << 16).build(file, StandardCharsets.UTF_8);
        }

        void header() {
            csv.writeRecord(kept.stream().map(columns::get).toList());
        }

        /** A row that is none, so that the others keep their numbers. */
        void nothing() {
            csv.writeRecord("");
        }

        void row(List<String> cells) {
            List<String> ours = new ArrayList<>(kept.size());
            for (int index : kept) {
                ours.add(cell(columns.get(index), cells.get(index), cells));
            }
            csv.writeRecord(ours);
        }

        private String cell(String column, String cell, List<String> cells) {
            return switch (FileKind.cells(column)) {
                case NUMBER -> numbersAsTyped ? cell : form.cell(column, cell, Optional.empty());
                case MOMENT -> form.cell(column, cell, zone(cells));
                default -> form.cell(column, cell, Optional.empty());
            };
        }

        private Optional<ZoneId> zone(List<String> cells) {
            return zone.or(() -> unitColumn < 0 ? Optional.empty() : zones.apply(cells.get(unitColumn).strip()));
        }

        @Override
        public void close() throws IOException {
            csv.close();
        }
    }
}
