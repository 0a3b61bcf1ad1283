package org.longsummer.chain.expectation;

import java.time.Instant;
import java.time.ZoneOffset;
import org.longsummer.chain.visit.Visit;

/**
 * How high the sun stands, for the heat over a roof and in a ceiling.
 *
 * <p>Declination by Cooper (1969), hour angle from the place's clock; the latitude of a depot is not known and 36° is taken, which
 * is within 0.15 of the sine of the height between 25° and 48° at any working hour.
 */
final class Sun {
    private static final double LATITUDE = Math.toRadians(36);
    private static final double CLOCK_AHEAD_OF_SUN_HOURS = 0.7;

    private Sun() {}

    /** Sine of the sun's height above the horizon; 0 at night. */
    static double sineOfHeight(Visit visit) {
        Instant at = visit.at();
        ZoneOffset offset = visit.offset();
        long seconds = Math.floorMod(at.getEpochSecond() + offset.getTotalSeconds(), 86_400L);
        double hourAngle = Math.toRadians(15 * (seconds / 3600.0 - 12 - CLOCK_AHEAD_OF_SUN_HOURS));
        double declination = Math.toRadians(23.45) * Math.sin(2 * Math.PI * (284 + visit.localDay().getDayOfYear()) / 365);
        double sine = Math.sin(LATITUDE) * Math.sin(declination) + Math.cos(LATITUDE) * Math.cos(declination) * Math.cos(hourAngle);
        return Math.max(0, sine);
    }
}
