package org.longsummer.demo;

/**
 * What an invented machine may suffer from, and what that does to its readings when it is fully grown.
 *
 * <p>Sizes are round numbers of our own in the directions that the trade and published measurements give.
 */
enum Fault {
    NONE(0, 0),
    CONDENSER_FOULING(-0.06, 0.24),
    FILTER(0.22, -0.05),
    EVAPORATOR_COIL(0.20, -0.06),
    REFRIGERANT_LOSS(-0.34, -0.11),
    COMPRESSOR_WEAR(-0.28, -0.03),
    CAPACITOR(-0.01, 0.17),
    DIVIDER_LEAK(-0.30, -0.01),
    FAN_DRAG(0.09, 0.14);

    private final double split;
    private final double amps;

    Fault(double split, double amps) {
        this.split = split;
        this.amps = amps;
    }

    /** Factor on the split at a severity of 0 to 1. */
    double onSplit(double severity) {
        return 1 + split * severity;
    }

    /** Factor on the amps at a severity of 0 to 1. */
    double onAmps(double severity) {
        return 1 + amps * severity;
    }
}
