package org.longsummer.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ObjLongConsumer;
import org.longsummer.store.FleetUnit;

/** A {@code units.csv}. */
public final class UnitsFile {
    private UnitsFile() {}

    /**
     * Reads all units. What a cell leaves open is taken from the unit as it is known already.
     *
     * @param known the unit of an id, where it is known already
     * @return by id, in the order of the file; what could not be read is in the findings
     * @throws IOException when the file cannot be read
     */
    public static Map<String, FleetUnit> read(Path file, Function<String, Optional<FleetUnit>> known, Findings findings)
            throws IOException {
        Map<String, FleetUnit> units = new LinkedHashMap<>();
        readRows(file, known, findings, (unit, row) -> units.put(unit.id(), unit));
        return units;
    }

    /** Hands over all units that can be read, with the rows in which they stand. */
    static void readRows(Path file, Function<String, Optional<FleetUnit>> known, Findings findings, ObjLongConsumer<FleetUnit> units)
            throws IOException {
        Map<String, Long> rows = new HashMap<>();
        long[] withoutAltitude = {0};
        Sheet.read(file, UnitColumns.LAYOUT, findings, row -> {
            String id = row.required("unit_id", "give each unit an id of its own");
            Long earlier = id.isEmpty() ? null : rows.putIfAbsent(id, row.number());
            if (earlier != null) {
                row.problem("unit_id", id, "row " + earlier + " has the same id; give each unit its own");
            }
            Optional<FleetUnit> knownUnit = known.apply(id);
            FleetUnit unit = UnitColumns.read(row, knownUnit);
            withoutAltitude[0] += knownUnit.isEmpty() && UnitColumns.lacksAltitude(row) ? 1 : 0;
            if (row.isSound()) {
                units.accept(unit, row.number());
            }
        });
        if (withoutAltitude[0] > 0) {
            findings.remark(file.getFileName() + ": " + withoutAltitude[0]
                    + " units without altitude_ft are taken to stand at sea level; 1,000 ft change the split by some 3 %");
        }
    }

    /**
     * Opens a file to be written; it is replaced when it is there.
     *
     * @throws IOException when it cannot be written
     */
    public static Writer writer(Path file) throws IOException {
        return new Writer(file);
    }

    /** Writes units row by row so that reading the file gives exactly the same units. */
    public static final class Writer implements Closeable {
        private final CsvWriter csv;

        private Writer(Path file) throws IOException {
            csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).bufferSize(1 << 16).build(file, StandardCharsets.UTF_8);
            csv.writeRecord(UnitColumns.WRITTEN);
        }

        public void add(FleetUnit unit) {
            csv.writeRecord(UnitColumns.cells(unit));
        }

        @Override
        public void close() throws IOException {
            csv.close();
        }
    }
}
