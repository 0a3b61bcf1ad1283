package org.longsummer.chain.learning;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What one judged visit teaches across units; residuals are ln(measured / expected) of a sound unit with everything known taken out
 * that the lesson is not about.
 *
 * @param visitId the visit
 * @param enteredOn the UTC day whose closing it enters: that of the visit, or of its arrival when it came late
 * @param weight how surely the unit was sound, 0 to 1
 * @param classKey the unit's class, on the first visit of a unit only
 * @param split residual of the split against the learned unit, absent when not read
 * @param amps residual of the amps against the learned unit, absent when not read
 * @param firstSplit residual of the split against the bare class default
 * @param firstAmps residual of the amps against the bare class default
 * @param technicianKey the instruments, absent when nobody signed
 * @param splitKelvins expected split, K, to turn ln into kelvins
 * @param features of {@link FleetSlopes}
 * @param moistureKey the site's month, absent when humidity was not read
 * @param lnVapourPressure as read, ln Pa
 */
public record Lesson(String visitId, LocalDate enteredOn, double weight, Optional<String> classKey, Optional<Residual> split, Optional<Residual> amps,
        Optional<Residual> firstSplit, Optional<Residual> firstAmps, Optional<String> technicianKey, double splitKelvins,
        double[] features, Optional<String> moistureKey, double lnVapourPressure) {

    /**
     * A residual with the variance it would have if the thing to be learned were known.
     *
     * @param value ln
     * @param variance ln²
     */
    public record Residual(double value, double variance) {}
}
