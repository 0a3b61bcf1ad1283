package org.longsummer.demo;

/**
 * Rough humidity for invented air: vapour pressure by the Magnus form with the coefficients of Alduchov and Eskridge (1996), wet bulb
 * by Stull (2011), from the authors' abstracts by memory. Good enough to invent readings, not to judge them.
 */
final class Humidity {
    private Humidity() {}

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    private static double vapour(double celsius) {
        return 6.1094 * StrictMath.exp(17.625 * celsius / (243.04 + celsius));
    }

    /** Relative humidity, %, from dry bulb and dew point, °F. */
    static double percent(double dryBulb, double dewPoint) {
        return Math.min(99, 100 * vapour(celsius(dewPoint)) / vapour(celsius(dryBulb)));
    }

    /** Wet bulb, °F, from dry bulb, °F, and relative humidity, %. */
    static double wetBulb(double dryBulb, double percent) {
        double t = celsius(dryBulb);
        double wet = t * StrictMath.atan(0.151977 * Math.sqrt(percent + 8.313659)) + StrictMath.atan(t + percent)
                - StrictMath.atan(percent - 1.676331) + 0.00391838 * StrictMath.pow(percent, 1.5) * StrictMath.atan(0.023101 * percent)
                - 4.686035;
        return 32 + 1.8 * wet;
    }
}
