package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.stream.Collectors;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.Reading;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.SupplyAt;

/** A visit's readings as columns. */
final class ReadingsRow {
    static final String COLUMNS = Reading.ALL.stream().map(Reading::recordName).collect(Collectors.joining(", ")) + ", supply_at, ambient_at";

    private ReadingsRow() {}

    static PreparedBatch bind(PreparedBatch row, Readings readings) {
        Reading.ALL.forEach(reading -> row.bind(reading.recordName(), reading.recordedIn(readings)));
        return row.bind("supply_at", Column.word(readings.supplyAt(), SupplyAt.UNKNOWN))
                .bind("ambient_at", Column.word(readings.ambientAt(), AmbientAt.UNKNOWN));
    }

    static Readings read(ResultSet row) throws SQLException {
        ReadingsBuilder readings = new ReadingsBuilder().supplyAt(Column.choice(row, "supply_at", SupplyAt.class, SupplyAt.UNKNOWN))
                .ambientAt(Column.choice(row, "ambient_at", AmbientAt.class, AmbientAt.UNKNOWN));
        for (Reading<?> reading : Reading.ALL) {
            double number = row.getDouble(reading.recordName());
            if (!row.wasNull()) {
                reading.takeRecorded(readings, number);
            }
        }
        return readings.build();
    }
}
