package org.longsummer.science.statistics;

/**
 * Between which shares the true one lies, by how often something happened in so many trials: the score interval.
 *
 * <p>Source: wilson-1927 (E. B. Wilson, Probable inference, the law of succession, and statistical inference, J. Am. Stat. Assoc. 22, 1927,
 * 209-212). Holds from few trials on, and at 0 and at all of them.
 */
public final class Wilson1927 {
    private Wilson1927() {}

    /** @param low lower end, 0 to 1
     *  @param high upper end, 0 to 1 */
    public record Interval(double low, double high) {}

    /**
     * The shares p for which the observed one lies within z standard deviations of p.
     *
     * @param happened how often, 0 to {@code trials}
     * @param trials 1 or more
     * @param z half width in standard deviations, positive
     */
    public static Interval interval(int happened, int trials, double z) {
        if (trials < 1 || happened < 0 || happened > trials || !(z > 0)) {
            throw new IllegalArgumentException("share: " + happened + " of " + trials + " at " + z + " given; give 0 to all of one or more, at a positive width");
        }
        double n = trials;
        double p = happened / n;
        double scale = 1 + z * z / n;
        double middle = (p + z * z / (2 * n)) / scale;
        double half = z * Math.sqrt(p * (1 - p) / n + z * z / (4 * n * n)) / scale;
        return new Interval(Math.max(0, middle - half), Math.min(1, middle + half));
    }
}
