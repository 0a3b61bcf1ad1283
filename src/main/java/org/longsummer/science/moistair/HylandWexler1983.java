package org.longsummer.science.moistair;

import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.Temperature;

/**
 * Saturation pressure of water vapour over ice and over liquid water.
 *
 * <p>Source: Hyland and Wexler (1983) as printed in ASHRAE Handbook - Fundamentals (2017), ch. 1, eq. 5 (ice, −100 to 0 °C)
 * and eq. 6 (liquid, 0 to 200 °C). Stated error: 0.03 % against the printed table 3.
 */
public final class HylandWexler1983 {
    private static final double TRIPLE_POINT = 273.16;

    private HylandWexler1983() {}

    public static Pressure saturationPressure(Temperature temperature) {
        return new Pressure(pascals(temperature.kelvins()));
    }

    static double pascals(double kelvins) {
        double t = kelvins;
        double logarithm = t <= TRIPLE_POINT ? overIce(t) : overLiquid(t);
        return Math.exp(logarithm);
    }

    private static double overIce(double t) {
        return -5.6745359e3 / t + 6.3925247 + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 + t * -9.484024e-13)))
                + 4.1635019 * Math.log(t);
    }

    private static double overLiquid(double t) {
        return -5.8002206e3 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 + t * -1.4452093e-8))
                + 6.5459673 * Math.log(t);
    }

    /** d ln p / d T of eq. 5 and 6, 1/K; used by the solvers below. */
    static double logarithmicSlope(double kelvins) {
        double t = kelvins;
        return t <= TRIPLE_POINT
                ? 5.6745359e3 / (t * t) - 9.677843e-3 + t * (2 * 6.2215701e-7 + t * (3 * 2.0747825e-9 + t * 4 * -9.484024e-13)) + 4.1635019 / t
                : 5.8002206e3 / (t * t) - 4.8640239e-2 + t * (2 * 4.1764768e-5 + t * 3 * -1.4452093e-8) + 6.5459673 / t;
    }
}
