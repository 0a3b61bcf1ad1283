package org.longsummer.science.uncertainty;

/**
 * A Type A evaluation: what repeated observations of one quantity say about it.
 *
 * <p>Source: [jcgm-100-2008] 4.2.
 *
 * @param mean eq. 3
 * @param standardUncertainty experimental standard deviation of the mean, eq. 5
 * @param degreesOfFreedom n − 1
 */
public record TypeA(double mean, double standardUncertainty, int degreesOfFreedom) {

    /** @throws IllegalArgumentException for fewer than two observations, which say nothing of their spread */
    public static TypeA of(double... observations) {
        if (observations.length < 2) {
            throw new IllegalArgumentException("a Type A evaluation needs two observations or more, not " + observations.length);
        }
        int freedom = observations.length - 1;
        double variance = crossProduct(observations, observations) / freedom / observations.length;
        return new TypeA(mean(observations), Math.sqrt(variance), freedom);
    }

    /**
     * Correlation of the means of two quantities observed together, eq. 14 and 17.
     *
     * @throws IllegalArgumentException when they were not observed equally often
     */
    public static double correlation(double[] first, double[] second) {
        if (first.length != second.length) {
            throw new IllegalArgumentException("observed " + first.length + " and " + second.length + " times, so not together");
        }
        return crossProduct(first, second) / Math.sqrt(crossProduct(first, first) * crossProduct(second, second));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double crossProduct(double[] first, double[] second) {
        double meanOfFirst = mean(first);
        double meanOfSecond = mean(second);
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            sum += (first[i] - meanOfFirst) * (second[i] - meanOfSecond);
        }
        return sum;
    }
}
