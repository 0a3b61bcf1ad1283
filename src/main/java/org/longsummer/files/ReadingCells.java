package org.longsummer.files;

import java.util.LinkedHashMap;
import java.util.Map;
import org.longsummer.chain.visit.Reading;
import org.longsummer.chain.visit.Readings;
import org.longsummer.quantity.Quantity;

/** Readings of which the typed text is not known, as cells that read back as exactly the same quantities. */
final class ReadingCells {
    private ReadingCells() {}

    static Map<String, String> of(Readings readings) {
        Map<String, String> cells = new LinkedHashMap<>();
        Reading.ALL.forEach(reading -> put(cells, reading, readings));
        return cells;
    }

    private static <Q extends Quantity> void put(Map<String, String> cells, Reading<Q> reading, Readings readings) {
        reading.in(readings).ifPresent(quantity -> cells.put(reading.names().get(0),
                Shortest.text(reading.measure().written().applyAsDouble(quantity), quantity, reading.measure().ofWritten())));
    }
}
