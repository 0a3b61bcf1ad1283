package org.longsummer.science.cooling;

import org.longsummer.quantity.Temperature;

/**
 * Capacity and power of an undercharged over a correctly charged air conditioner in the same conditions.
 *
 * <p>Y = 1 + (a1 + a2 Ti + a3 To + a4 f) f with f = (charge − design)/design, Ti and To in °C. Source: Domanski, Henderson and Payne
 * 2014, NIST TN 1848 ({@code domanski-2014} in {@code reference/sources.md}); f from −0.3 to 0.
 */
public final class DomanskiEtAl2014 {
    private static final double[] CAPACITY = {-0.946, 0.0493, -0.00118, -1.15};
    private static final double[] POWER = {-0.313, 0.0115, 0.00266, -0.116};

    private DomanskiEtAl2014() {}

    /** @param missingShare share of the charge that is missing, 0 to 0.3 */
    public static double capacityRatio(double missingShare, Temperature indoor, Temperature outdoor) {
        return ratio(CAPACITY, -missingShare, indoor, outdoor);
    }

    /** @param missingShare share of the charge that is missing, 0 to 0.3 */
    public static double powerRatio(double missingShare, Temperature indoor, Temperature outdoor) {
        return ratio(POWER, -missingShare, indoor, outdoor);
    }

    private static double ratio(double[] a, double f, Temperature indoor, Temperature outdoor) {
        return 1 + (a[0] + a[1] * indoor.celsius() + a[2] * outdoor.celsius() + a[3] * f) * f;
    }
}
