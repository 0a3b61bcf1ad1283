package org.longsummer.demo;

import java.util.Random;
import org.longsummer.store.FleetUnit;

/**
 * An invented machine as it really is.
 *
 * @param unit what its owner knows of it
 * @param splitAtRating split of the sound machine at 80 °F and 50 % return air and 95 °F outdoors, °F
 * @param ampsAtRating amps of the sound machine there at rated volts
 * @param fanAmps amps of its fan alone
 * @param capacitor microfarads of its sound capacitor
 */
record Machine(FleetUnit unit, double splitAtRating, double ampsAtRating, double fanAmps, double capacitor) {
    /** A machine drawn around what is usual for its size. */
    static Machine drawn(FleetUnit unit, double usualAmps, Random chance) {
        return new Machine(unit, 20.4 + 1.1 * chance.nextGaussian(), usualAmps * (1 + 0.035 * chance.nextGaussian()),
                2.7 + 0.1 * chance.nextGaussian(), 45 + 1.0 * chance.nextGaussian());
    }

    boolean hasSoftStarter() {
        return unit.unit().plate().softStarter();
    }
}
