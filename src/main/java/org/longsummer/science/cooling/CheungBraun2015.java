package org.longsummer.science.cooling;

import org.longsummer.quantity.Temperature;

/**
 * Capacity and energy-input ratio of a faulted over a sound air conditioner in the same conditions.
 *
 * <p>FIR = 1 + F (c1 + c2 (Twb/273.15 + 1) + c3 (To/273.15 + 1) + c4 F + c5 F² + c6 COP). Source: Cheung and Braun 2015,
 * NREL/SR-5500-65030; Kim et al. 2019, Buildings 9(11):233 ({@code cheung-braun-2015} in {@code reference/sources.md}). Range: wet bulb
 * 12.8 to 23.9 °C, outdoors 18.3 to 46.1 °C, held at its ends beyond; the fault's size to {@link #largest()}.
 */
public enum CheungBraun2015 {
    UNDERCHARGE(0.3, new double[] {7.7179, -10.765, 3.129, -0.88403, 0.30043, -0.036993},
            new double[] {-5.7419, 8.6709, -4.4104, 1.2489, 1.2095, 0.36051}),
    CONDENSER_FLOW(0.5, new double[] {-2.2162, 5.6315, -3.1199, 0.22492, -0.76245, -0.072843},
            new double[] {-5.9806, 0.9479, 4.3816, -1.0667, 2.9142, 0.090476}),
    EVAPORATOR_FLOW(0.5, new double[] {-1.680856, 1.955241, 0.013734, 1.944498, -0.958203, -0.367406},
            new double[] {1.075997, -1.609711, 0.054396, -1.58432, 0.803225, 0.356159});

    /** The lowest rated coefficient of performance of the fits: roof units are near it. */
    private static final double RATED_COP = 3.74;

    private final double largest;
    private final double[] capacity;
    private final double[] energyInput;

    CheungBraun2015(double largest, double[] capacity, double[] energyInput) {
        this.largest = largest;
        this.capacity = capacity;
        this.energyInput = energyInput;
    }

    /** The largest fault of the fit: share of charge or air flow missing. */
    public double largest() {
        return largest;
    }

    public double capacityRatio(double missingShare, Temperature returnWetBulb, Temperature outdoor) {
        return ratio(capacity, missingShare, returnWetBulb, outdoor);
    }

    public double powerRatio(double missingShare, Temperature returnWetBulb, Temperature outdoor) {
        return capacityRatio(missingShare, returnWetBulb, outdoor) * ratio(energyInput, missingShare, returnWetBulb, outdoor);
    }

    private double ratio(double[] c, double missingShare, Temperature returnWetBulb, Temperature outdoor) {
        double f = Math.min(missingShare, largest);
        double wet = Math.max(12.8, Math.min(23.9, returnWetBulb.celsius())) / 273.15 + 1;
        double out = Math.max(18.3, Math.min(46.1, outdoor.celsius())) / 273.15 + 1;
        return 1 + f * (c[0] + c[1] * wet + c[2] * out + f * (c[3] + c[4] * f) + c[5] * RATED_COP);
    }
}
