package org.longsummer.science.moistair;

import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.Temperature;

/**
 * Saturation pressure of water vapour over ice and over liquid water.
 *
 * <p>Source: Hyland and Wexler (1983) as printed in [hof-2017] ch. 1, eq. 5 (ice, −100 to 0 °C) and eq. 6 (liquid, 0 to 200 °C).
 * The two meet at the triple point, 0.01 °C, and that is where we change from one to the other, as [psychrolib-2019] does.
 * Stated error: 0.03 % against the printed table 3.
 */
public final class HylandWexler1983 {
    /** Ends of the published range, −100 and 200 °C, and what the rounding of a sum may add. */
    static final double COLDEST = 173.15 - 1e-9;
    static final double HOTTEST = 473.15 + 1e-9;
    private static final double TRIPLE_POINT = 273.16;
    private static final double LOGARITHM_AT_TRIPLE_POINT = 6.4161717;
    private static final int MOST_STEPS = 60;

    private HylandWexler1983() {}

    /** @throws IllegalArgumentException outside −100 to 200 °C, where nothing is published */
    public static Pressure saturationPressure(Temperature temperature) {
        return new Pressure(pascals(temperature.kelvins()));
    }

    /**
     * Temperature at which water vapour of this pressure is saturated: eq. 5 and 6 solved by Newton's method on the logarithm.
     *
     * @throws IllegalArgumentException for a pressure that no temperature from −100 to 200 °C gives
     */
    public static Temperature saturationTemperature(Pressure pressure) {
        double target = Math.log(pressure.pascals());
        double low = COLDEST;
        double high = HOTTEST;
        double t = start(target);
        for (int step = 0; step < MOST_STEPS && high - low > 1e-9; step++) {
            double miss = logarithm(t) - target;
            if (Math.abs(miss) < 1e-11) {
                return new Temperature(t);
            }
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - miss / logarithmicSlope(t);
            t = next > low && next < high ? next : (low + high) / 2;
        }
        throw new IllegalArgumentException("no temperature from -100 to 200 °C saturates water vapour of " + pressure.pascals() + " Pa");
    }

    /** Only where the search begins: the straight line in 1/T through the triple point, at the slope of eq. 5 or 6 there. */
    static double start(double logarithm) {
        double latentOverGas = logarithm < LOGARITHM_AT_TRIPLE_POINT ? 6140 : 5300;
        double inverse = 1 / TRIPLE_POINT - (logarithm - LOGARITHM_AT_TRIPLE_POINT) / latentOverGas;
        return Math.max(COLDEST, Math.min(HOTTEST, inverse > 0 ? 1 / inverse : HOTTEST));
    }

    static double pascals(double kelvins) {
        return Math.exp(logarithm(kelvins));
    }

    /** ln p of eq. 5 or 6. */
    private static double logarithm(double kelvins) {
        if (!(kelvins >= COLDEST && kelvins <= HOTTEST)) {
            throw new IllegalArgumentException("saturation pressure is published from -100 to 200 °C, not at " + (kelvins - 273.15) + " °C");
        }
        return kelvins <= TRIPLE_POINT ? overIce(kelvins) : overLiquid(kelvins);
    }

    private static double overIce(double t) {
        return -5.6745359e3 / t + 6.3925247 + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 + t * -9.484024e-13)))
                + 4.1635019 * Math.log(t);
    }

    private static double overLiquid(double t) {
        return -5.8002206e3 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 + t * -1.4452093e-8))
                + 6.5459673 * Math.log(t);
    }

    /** d ln p / d T of eq. 5 and 6, 1/K. */
    static double logarithmicSlope(double kelvins) {
        double t = kelvins;
        return t <= TRIPLE_POINT
                ? 5.6745359e3 / (t * t) - 9.677843e-3 + t * (2 * 6.2215701e-7 + t * (3 * 2.0747825e-9 + t * 4 * -9.484024e-13)) + 4.1635019 / t
                : 5.8002206e3 / (t * t) - 4.8640239e-2 + t * (2 * 4.1764768e-5 + t * 3 * -1.4452093e-8) + 6.5459673 / t;
    }
}
