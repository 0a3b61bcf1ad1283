package org.longsummer.demo;

import java.util.Random;

/**
 * An invented person with instruments that are a little off, each season anew.
 *
 * @param name who
 */
record Technician(String name) {
    private static final int ANY = 7_919;

    /** What their thermometer shows too much, °F. */
    double thermometerBias(int season) {
        return 0.5 * chance(season).nextGaussian();
    }

    /** By what share their clamp meter shows too much. */
    double clampBias(int season) {
        Random chance = chance(season);
        chance.nextGaussian();
        return 0.01 * chance.nextGaussian();
    }

    private Random chance(int season) {
        return new Random((long) name.hashCode() * ANY + season);
    }
}
