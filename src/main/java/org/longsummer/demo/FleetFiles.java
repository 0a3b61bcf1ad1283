package org.longsummer.demo;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.longsummer.files.UnitsFile;
import org.longsummer.store.FleetUnit;

/** Writes an invented fleet's two files row by row. */
final class FleetFiles implements Closeable {
    private static final List<String> COLUMNS = List.of("visit_id", "unit_id", "visited_at", "technician", "return_db_f", "return_rh_pct",
            "supply_db_f", "supply_at", "ambient_db_f", "ambient_at", "ambient_rh_pct", "amps", "volts", "fan_speed", "run_minutes",
            "power_source", "filter_condition", "coil_condition", "work_done", "condenser_leaving_db_f", "room_db_f", "fan_only_amps",
            "start_amps", "capacitor_uf", "notes");
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx");

    private final UnitsFile.Writer units;
    private final CsvWriter visits;

    FleetFiles(Path directory) throws IOException {
        Files.createDirectories(directory);
        units = UnitsFile.writer(directory.resolve(DemoFleet.UNITS));
        visits = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).bufferSize(1 << 16)
                .build(directory.resolve(DemoFleet.VISITS), StandardCharsets.UTF_8);
        visits.writeRecord(COLUMNS);
    }

    void unit(FleetUnit unit) {
        units.add(unit);
    }

    void visit(String id, InventedVisit visit) {
        visits.writeRecord(COLUMNS.stream().map(column -> switch (column) {
            case "visit_id" -> id;
            case "visited_at" -> MOMENT.format(visit.at());
            default -> visit.cells().getOrDefault(column, "");
        }).toList());
    }

    @Override
    public void close() throws IOException {
        try (units) {
            visits.close();
        }
    }
}
