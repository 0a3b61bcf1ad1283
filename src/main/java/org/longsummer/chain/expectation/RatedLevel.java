package org.longsummer.chain.expectation;

import org.longsummer.chain.visit.Plate;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * Amps of the sound unit at the rating point, before anything is learned: the default of its nominal size and the plate as one more
 * noisy witness. Natural logarithms of amperes at the plate's rated volts.
 */
final class RatedLevel {
    /** Common practice: a sound 13,500 Btu/h unit draws about 10.2 A at 75 °F outdoors, that is 12.0 A at 95 °F by the measured slope. */
    private static final double AMPS_OF_13500 = 12.0;
    private static final double BTUH_OF_DEFAULT = 13_500;
    private static final double USUAL_VOLTS = 115;
    private static final double U_OF_DEFAULT = 0.10;
    private static final double U_WITHOUT_SIZE = 0.20;

    private RatedLevel() {}

    /** @return ln A with its standard uncertainty, the unit's own spread left out */
    static Uncertain lnAmps(Plate plate) {
        double volts = plate.ratedVolts().map(v -> v.volts()).orElse(USUAL_VOLTS);
        double btuh = plate.nominal().map(CoolingCapacity::btuPerHour).orElse(BTUH_OF_DEFAULT);
        Weighted witnesses = new Weighted();
        witnesses.add(Math.log(AMPS_OF_13500 * btuh / BTUH_OF_DEFAULT * USUAL_VOLTS / volts),
                plate.nominal().isPresent() ? U_OF_DEFAULT : U_WITHOUT_SIZE);
        plate.ratedAmps().ifPresent(amps -> witnesses.add(Math.log(amps.amperes() * shareOf(plate)), uncertaintyOf(plate)));
        return witnesses.mean();
    }

    /** What a sound unit draws at the rating point, over the plate's figure; practice: plates are ceilings more often than readings. */
    private static double shareOf(Plate plate) {
        return switch (plate.ratedAmpsKind()) {
            case INPUT -> 0.95;
            case RLA -> 0.97;
            case RLA_PLUS_FAN -> 0.80;
            case UNKNOWN -> 0.93;
        };
    }

    private static double uncertaintyOf(Plate plate) {
        return switch (plate.ratedAmpsKind()) {
            case INPUT -> 0.06;
            case RLA, RLA_PLUS_FAN -> 0.08;
            case UNKNOWN -> 0.12;
        };
    }
}
