package org.longsummer.chain.learning;

import java.util.List;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * What rooms at one depot hold of moisture in one month of the year: the natural logarithm of the return air's vapour pressure in
 * pascals, as earlier visits there read it.
 */
public final class SiteMoisture {
    /** Spread from day to day within one month at one place (practice: 0.1 on a humid coast, 0.25 in a desert). */
    private static final double DAY_TO_DAY = 0.20;

    private SiteMoisture() {}

    public static String key(String site, int month) {
        return "moisture/" + site + "/" + month;
    }

    /** What to expect of one more visit: numbers are the count and the mean. */
    public static Uncertain of(Learned learned) {
        double count = learned.numbers().get(0);
        return new Uncertain(learned.numbers().get(1), DAY_TO_DAY * Math.sqrt(1 + 1 / count));
    }

    /** One more reading. */
    static Learned updated(String key, Learned before, double lnVapourPressure) {
        double count = before == null ? 0 : before.numbers().get(0);
        double mean = before == null ? 0 : before.numbers().get(1);
        double next = Math.min(count + 1, 40);
        return new Learned(key, List.of(next, mean + (lnVapourPressure - mean) / next));
    }
}
