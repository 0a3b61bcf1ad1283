package org.longsummer.chain.screening;

import java.util.List;
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
        return findings.stream().anyMatch(Finding::retake);
    }

    /** A box whose value is a mistake: nothing may be made of it. */
    public boolean isMistaken(Field field) {
        for (Finding finding : findings) {
            if (finding.retake() && (finding.field() == field
                    || finding.mistake() == Mistake.SWAPPED && field == Field.RETURN_DRY_BULB)) {
                return true;
            }
        }
        return false;
    }
}
