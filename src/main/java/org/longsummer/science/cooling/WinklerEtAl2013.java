package org.longsummer.science.cooling;

import org.longsummer.quantity.Temperature;

/**
 * Capacity and energy-input ratio of a 115 V window air conditioner (10.7 EER) against return wet bulb and outdoor dry bulb:
 * the nearest published machine to a roof unit.
 *
 * <p>Source: Winkler et al. 2013, NREL laboratory tests of window air conditioners, coefficients as quoted in public NREL model
 * repositories; see {@code winkler-2013} in {@code reference/sources.md}. Rounded coefficients miss 1 at the rating point by 0.5 %.
 * Below about 62 °F wet bulb the curves turn unphysical (the coil is dry there): callers hold the wet bulb at which the coil just
 * goes dry. Measured range about 12.8 to 23.9 °C wet bulb and 18 to 46 °C outdoors.
 */
public final class WinklerEtAl2013 {
    private static final Biquadratic CAPACITY = new Biquadratic(0.6405, 0.01568, 0.0004531, 0.001615, -0.0001825, 6.614e-05);
    private static final Biquadratic ENERGY_INPUT_RATIO = new Biquadratic(2.287, -0.1732, 0.004745, 0.01662, 0.000484, -0.001306);

    private WinklerEtAl2013() {}

    /** Total cooling capacity over that at the rating point. */
    public static double capacityRatio(Temperature returnWetBulb, Temperature outdoor) {
        return CAPACITY.at(returnWetBulb.celsius(), outdoor.celsius());
    }

    /** Energy-input ratio over that at the rating point. */
    public static double energyInputRatio(Temperature returnWetBulb, Temperature outdoor) {
        return ENERGY_INPUT_RATIO.at(returnWetBulb.celsius(), outdoor.celsius());
    }

    /** Electric power over that at the rating point: capacity times energy-input ratio. */
    public static double powerRatio(Temperature returnWetBulb, Temperature outdoor) {
        return capacityRatio(returnWetBulb, outdoor) * energyInputRatio(returnWetBulb, outdoor);
    }
}
