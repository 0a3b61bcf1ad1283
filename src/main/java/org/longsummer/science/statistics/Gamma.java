package org.longsummer.science.statistics;

/**
 * The gamma function for positive arguments.
 *
 * <p>Source: Lanczos, C. (1964), SIAM J. Numer. Anal. B 1, 86-96, with g = 5 and the six coefficients as printed in Press et al.,
 * Numerical Recipes, section 6.1; stated error below 2e-10 relative.
 */
final class Gamma {
    private static final double[] C = {76.18009172947146, -86.50532032941677, 24.01409824083091, -1.231739572450155,
        0.1208650973866179e-2, -0.5395239384953e-5};
    private static final double C0 = 1.000000000190015;
    private static final double ROOT_OF_TWO_PI = 2.5066282746310005;

    private Gamma() {}

    /** @param x above 0 and below 170 */
    static double of(double x) {
        double y = x - 1;
        double series = C0;
        for (int i = 0; i < C.length; i++) {
            series += C[i] / (y + i + 1);
        }
        double shifted = y + 5.5;
        return Math.exp((y + 0.5) * Math.log(shifted) - shifted) * ROOT_OF_TWO_PI * series;
    }
}
