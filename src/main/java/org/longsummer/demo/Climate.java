package org.longsummer.demo;

import java.time.LocalDateTime;
import java.util.Random;

/**
 * Invented summers of one place, in degrees Fahrenheit.
 *
 * @param summerMean mean of a day at the height of summer
 * @param yearSwing how much colder midwinter is
 * @param daySwing half the difference between afternoon and night
 * @param dewPoint mean dew point at the height of summer
 */
record Climate(double summerMean, double yearSwing, double daySwing, double dewPoint) {
    private static final int WARMEST_DAY = 202;
    private static final double WARMEST_HOUR = 15.5;

    /**
     * The air at one moment.
     *
     * @param dryBulb °F
     * @param dewPoint °F
     */
    record Air(double dryBulb, double dewPoint) {}

    Air at(LocalDateTime moment, Random chance) {
        double year = (StrictMath.cos(2 * Math.PI * (moment.getDayOfYear() - WARMEST_DAY) / 365.0) - 1) / 2;
        double hour = moment.getHour() + moment.getMinute() / 60.0;
        double day = StrictMath.cos(2 * Math.PI * (hour - WARMEST_HOUR) / 24);
        double dryBulb = summerMean + yearSwing * year + daySwing * day + 3.5 * chance.nextGaussian();
        double dew = Math.min(dewPoint + 0.6 * yearSwing * year + 3 * chance.nextGaussian(), dryBulb - 5);
        return new Air(dryBulb, dew);
    }
}
