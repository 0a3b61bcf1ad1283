package org.longsummer.chain.screening;

import java.util.List;
import org.longsummer.chain.screening.Field;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/**
 * A visit with what its raw readings give away before anything is expected of them.
 *
 * @param unit the unit
 * @param visit the visit as recorded
 * @param findings what is odd, worst first
 * @param compressorOff the fan runs and the compressor does not: an act, whatever else
 */
public record Screening(Unit unit, Visit visit, List<Finding> findings, boolean compressorOff) {
    public Screening {
        findings = List.copyOf(findings);
    }

    /** The readings cannot be judged. */
    public boolean isRetake() {
        for (Finding finding : findings) {
            if (finding.retake()) {
                return true;
            }
        }
        return false;
    }

    /** A box whose value is a mistake: nothing may be made of it. */
    public boolean isMistaken(Field field) {
        for (Finding finding : findings) {
            if ((finding.retake() || finding.mistake().spoilsTheReading()) && (finding.field() == field
                    || finding.mistake() == Mistake.SWAPPED && field == Field.RETURN_DRY_BULB)) {
                return true;
            }
        }
        return false;
    }

    /** The readings without those that are mistaken. */
    public Readings usable() {
        Readings all = visit.readings();
        if (findings.isEmpty()) {
            return all;
        }
        ReadingsBuilder usable = new ReadingsBuilder().supplyAt(all.supplyAt()).ambientAt(all.ambientAt());
        for (Field field : Field.values()) {
            if (!isMistaken(field)) {
                field.readings().forEach(reading -> reading.copy(all, usable));
            }
        }
        return usable.build();
    }
}
