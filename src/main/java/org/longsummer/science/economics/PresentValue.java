package org.longsummer.science.economics;

/**
 * Present-value factors: what a later amount is worth today.
 *
 * <p>Source: NIST Handbook 135 (1995), the single and the uniform present-value factor; ASTM E917. Rates are per period, 0.05 for 5 %;
 * a rate of zero gives plain sums.
 */
public final class PresentValue {
    /** Below this rate times periods the annuity is summed by its series, where the quotient would lose digits. */
    private static final double SERIES_BELOW = 1e-6;

    private PresentValue() {}

    /**
     * P/F, today's worth of 1 paid after n periods: (1 + i)^-n.
     *
     * @param rate i, above -1
     * @param periods n, 0 or more, also between whole periods
     */
    public static double ofSingle(double rate, double periods) {
        require(rate, periods);
        return Math.exp(-periods * Math.log(1 + rate));
    }

    /** P/A, today's worth of 1 paid at the end of each of n periods: (1 - (1 + i)^-n) / i. */
    public static double ofUniform(double rate, double periods) {
        require(rate, periods);
        return Math.abs(rate * periods) < SERIES_BELOW
                ? periods * (1 - rate * (periods + 1) / 2)
                : (1 - ofSingle(rate, periods)) / rate;
    }

    /** A/P, the uniform payment at the end of each of n periods that is worth 1 today; the inverse of {@link #ofUniform}. */
    public static double capitalRecovery(double rate, double periods) {
        return 1 / ofUniform(rate, periods);
    }

    private static void require(double rate, double periods) {
        if (!(rate > -1 && rate < 10)) {
            throw new IllegalArgumentException("discount rate per period: " + rate + " given; give a fraction such as 0.05");
        }
        if (!(periods >= 0 && periods < 1e6)) {
            throw new IllegalArgumentException("periods: " + periods + " given; give 0 or more");
        }
    }
}
