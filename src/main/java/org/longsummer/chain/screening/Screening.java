package org.longsummer.chain.screening;

import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.Readings;
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
        return new Readings(unlessMistaken(Field.RETURN_DRY_BULB, all.returnDryBulb()),
                unlessMistaken(Field.RETURN_HUMIDITY, all.returnMoisture()), unlessMistaken(Field.SUPPLY_DRY_BULB, all.supplyDryBulb()),
                all.supplyAt(), unlessMistaken(Field.AMBIENT_DRY_BULB, all.ambientDryBulb()), all.ambientAt(),
                unlessMistaken(Field.AMBIENT_HUMIDITY, all.ambientHumidity()), unlessMistaken(Field.AMPS, all.amps()),
                unlessMistaken(Field.VOLTS, all.volts()), unlessMistaken(Field.RUN_TIME, all.runTime()),
                unlessMistaken(Field.CONDENSER_ENTERING, all.condenserEntering()),
                unlessMistaken(Field.CONDENSER_LEAVING, all.condenserLeaving()), unlessMistaken(Field.ROOM_DRY_BULB, all.roomDryBulb()),
                unlessMistaken(Field.FAN_ONLY_AMPS, all.fanOnlyAmps()), unlessMistaken(Field.START_PEAK, all.startPeak()),
                unlessMistaken(Field.CAPACITOR, all.capacitor()));
    }

    private <T> Optional<T> unlessMistaken(Field field, Optional<T> reading) {
        return isMistaken(field) ? Optional.empty() : reading;
    }
}
