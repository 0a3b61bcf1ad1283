package org.longsummer.fleet;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Map;
import java.util.TreeMap;
import org.longsummer.evidence.Project;

/**
 * What was really there at one visit of a simulated fleet.
 *
 * @param grossError the mistake in the readings; empty when there is none
 * @param condition the word of the condition; {@code healthy} when there is none
 * @param capacityRatio capacity over that of the same unit sound in the same conditions
 * @param ampsRatio amps over those of the same unit sound in the same conditions
 * @param soundSplitF split that the sound unit shows, °F
 * @param soundAmps amps that the sound unit draws
 * @param repeat the same visit saved a second time
 */
record Truth(String grossError, String condition, double capacityRatio, double ampsRatio, double soundSplitF, double soundAmps,
        boolean repeat) {

    static Map<String, Truth> read(java.nio.file.Path file) {
        Map<String, Truth> all = new TreeMap<>();
        for (NamedCsvRecord row : CsvReader.builder().ofNamedCsvRecord(Project.read(file))) {
            all.put(row.getField("visit_id"), new Truth(row.getField("gross_error"), row.getField("condition"), number(row, "capacity_ratio"),
                    number(row, "amps_ratio"), number(row, "healthy_split_f"), number(row, "healthy_amps"),
                    row.getField("repeat").equals("yes")));
        }
        return all;
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }

    boolean isGross() {
        return !grossError.isEmpty();
    }

    boolean isHealthy() {
        return condition.equals("healthy");
    }

    /** What an owner feels: capacity below 0.90 or amps above 1.10 of the sound unit. */
    boolean hasImpact() {
        return capacityRatio < 0.90 || ampsRatio > 1.10;
    }

    /** By how much capacity or amps are off, the larger of the two. */
    double magnitude() {
        return Math.max(1 - capacityRatio, ampsRatio - 1);
    }

    boolean isFaultFree() {
        return isHealthy() && !hasImpact() && !isGross();
    }
}
