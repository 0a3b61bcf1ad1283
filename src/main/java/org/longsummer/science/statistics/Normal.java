package org.longsummer.science.statistics;

/** The normal distribution. */
public final class Normal {
    private Normal() {}

    /**
     * Probability that a standard normal variable is below x.
     *
     * <p>Source: Cody 1969 as tabulated by West 2005 (Hart's double-precision algorithm); absolute error below 1e-14.
     */
    public static double cumulative(double x) {
        double z = Math.abs(x);
        if (z > 37) {
            return x > 0 ? 1 : 0;
        }
        double e = Math.exp(-z * z / 2);
        double tail;
        if (z < 7.07106781186547) {
            double up = ((((((3.52624965998911e-02 * z + 0.700383064443688) * z + 6.37396220353165) * z + 33.912866078383) * z
                    + 112.079291497871) * z + 221.213596169931) * z + 220.206867912376);
            double down = (((((((8.83883476483184e-02 * z + 1.75566716318264) * z + 16.064177579207) * z + 86.7807322029461) * z
                    + 296.564248779674) * z + 637.333633378831) * z + 793.826512519948) * z + 440.413735824752);
            tail = e * up / down;
        } else {
            double fraction = z + 1 / (z + 2 / (z + 3 / (z + 4 / (z + 0.65))));
            tail = e / fraction / 2.506628274631;
        }
        return x > 0 ? 1 - tail : tail;
    }
}
