package org.longsummer.chain.screening;

import java.util.Optional;
import org.longsummer.chain.visit.Plate;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Voltage;

/**
 * What a clamp meter can show at a unit of one plate. Limits are shares of what such a unit usually draws: 12 A for 13,500 Btu/h at
 * 115 V, more for a larger one, half of it at 230 V. Common practice of the trade, no published source.
 *
 * @param usualLeast usual amps of the smallest unit that the plate allows for
 * @param usualMost usual amps of the largest
 * @param voltageShare 115 V over rated volts
 */
record RunningAmps(double usualLeast, double usualMost, double voltageShare) {
    static final double USUAL_VOLTS = 115;
    private static final double USUAL_AMPS = 12;
    private static final double USUAL_SIZE = 13_500;
    private static final double SMALLEST = 9_000;
    private static final double SMALL = 11_000;
    private static final double LARGE = 15_000;
    private static final double LARGEST = 18_000;
    /** A plate's ceiling for wiring lies up to this share above what the unit draws; a plate beyond it is of a larger machine. */
    private static final double BEYOND_CEILING = 1.35;
    private static final double LOWEST_MAINS = 90;
    private static final double HIGHEST_MAINS = 480;

    static RunningAmps of(Plate plate) {
        double voltageShare = USUAL_VOLTS / ratedVolts(plate);
        Optional<Double> size = plate.nominal().map(CoolingCapacity::btuPerHour).filter(s -> s >= SMALLEST && s <= LARGEST);
        double perSize = USUAL_AMPS / USUAL_SIZE * voltageShare;
        double most = size.orElse(LARGE) * perSize;
        double printed = plate.ratedAmps().map(Current::amperes).filter(a -> a > BEYOND_CEILING * most && a < 2 * most).orElse(most);
        return new RunningAmps(size.orElse(SMALL) * perSize, printed, voltageShare);
    }

    /** Rated volts, where they are those of any mains; 115 V otherwise. */
    static double ratedVolts(Plate plate) {
        return plate.ratedVolts().map(Voltage::volts).filter(v -> v >= LOWEST_MAINS && v <= HIGHEST_MAINS).orElse(USUAL_VOLTS);
    }

    /** Two conductors cancel to less than this; no fan runs on so little. */
    double nothing() {
        return 0.8 * voltageShare;
    }

    /** More than both fans draw. */
    double fansAlone() {
        return 4.5 * voltageShare;
    }

    double least() {
        return usualLeast / 3;
    }

    double most() {
        return 2 * usualMost;
    }

    /** What a reading that cannot be looks like; empty for one that can. */
    Optional<Mistake> mistake(double amperes, boolean variableSpeed) {
        if (amperes < nothing()) {
            return Optional.of(Mistake.CLAMP_AROUND_BOTH);
        }
        if (amperes < least()) {
            return variableSpeed ? Optional.empty() : Optional.of(isUsual(10 * amperes) ? Mistake.DECIMAL_SLIP : Mistake.IMPOSSIBLE);
        }
        if (amperes <= most()) {
            return Optional.empty();
        }
        if (amperes <= 2.5 * usualMost) {
            return Optional.of(Mistake.CLAMP_AROUND_CORD);
        }
        if (amperes <= 7 * usualMost) {
            return Optional.of(Mistake.HOLD_LEFT_ON);
        }
        return Optional.of(isUsual(amperes / 10) ? Mistake.TEN_TURNS : isUsual(amperes / 100) ? Mistake.DECIMAL_SLIP : Mistake.IMPOSSIBLE);
    }

    /** Where a reading falls once its mistake is put right. */
    private boolean isUsual(double amperes) {
        return amperes >= 0.5 * usualLeast && amperes <= 1.6 * usualMost;
    }
}
