package org.longsummer.science.cooling;

import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.science.moistair.MoistAir;

/**
 * A cooling coil described by its bypass factor: part of the air leaves at the apparatus dew point on the saturation line, the rest
 * leaves as it came.
 *
 * <p>h_adp = h_in − (Q/m)/(1 − BF), BF = exp(−A0/m), t_out = BF t_in + (1 − BF) t_adp. Source: EnergyPlus Engineering Reference,
 * Single-Speed Electric DX Air Cooling Coil ({@code energyplus-dx} in {@code reference/sources.md}). The rated triple of split,
 * sensible heat ratio and inlet state fixes Q/m and BF together: BF is not chosen freely.
 *
 * @param ratedEnthalpyDrop Q/m at the rating point, J per kg dry air
 * @param ratedBypassFactor BF at the rated mass flow
 */
public record BypassFactorCoil(double ratedEnthalpyDrop, double ratedBypassFactor) {
    private static final int MOST_STEPS = 60;

    /**
     * The coil that shows a given split and sensible heat ratio with a given return air.
     *
     * @param sensibleHeatRatio 0.6 to 0.95
     * @throws IllegalArgumentException when no coil can: the line from the inlet state misses the saturation line
     */
    public static BypassFactorCoil ratedAt(MoistAir returnAir, TemperatureDifference split, double sensibleHeatRatio) {
        double drop = returnAir.heatCapacity() * split.kelvins() / sensibleHeatRatio;
        double low = 0;
        double high = 0.6;
        for (int step = 0; step < MOST_STEPS; step++) {
            double guess = (low + high) / 2;
            if (splitOf(returnAir, drop, guess) > split.kelvins()) {
                low = guess;
            } else {
                high = guess;
            }
        }
        double found = (low + high) / 2;
        if (Math.abs(splitOf(returnAir, drop, found) - split.kelvins()) > 1e-6) {
            throw new IllegalArgumentException("no bypass factor gives a split of " + split + " with a sensible heat ratio of " + sensibleHeatRatio);
        }
        return new BypassFactorCoil(drop, found);
    }

    private static double splitOf(MoistAir air, double enthalpyDrop, double bypassFactor) {
        return (1 - bypassFactor) * (air.dryBulb().kelvins() - apparatusDewPoint(air, enthalpyDrop, bypassFactor).dryBulb().kelvins());
    }

    private static MoistAir apparatusDewPoint(MoistAir air, double enthalpyDrop, double bypassFactor) {
        return MoistAir.saturatedAtEnthalpy(air.enthalpy() - enthalpyDrop / (1 - bypassFactor), air.pressure());
    }

    /** The bypass factor at another mass flow: exp(−A0/m). */
    public double bypassFactor(double massFlowRatio) {
        return Math.pow(ratedBypassFactor, 1 / massFlowRatio);
    }

    /**
     * What the coil does with the air it gets.
     *
     * @param air entering air
     * @param enthalpyDrop Q/m, J per kg dry air
     * @param bypassFactor BF at the mass flow there is
     */
    public static Leaving leaving(MoistAir air, double enthalpyDrop, double bypassFactor) {
        MoistAir apparatus = apparatusDewPoint(air, enthalpyDrop, bypassFactor);
        if (apparatus.humidityRatio() >= air.humidityRatio()) {
            return new Leaving(new TemperatureDifference(enthalpyDrop / air.heatCapacity()), apparatus.dryBulb(), true);
        }
        double split = (1 - bypassFactor) * (air.dryBulb().kelvins() - apparatus.dryBulb().kelvins());
        return new Leaving(new TemperatureDifference(split), apparatus.dryBulb(), false);
    }

    /**
     * Air leaving the coil.
     *
     * @param split entering minus leaving dry bulb
     * @param apparatusDewPoint mean surface temperature
     * @param dry no water is taken out: all of the capacity is sensible
     */
    public record Leaving(TemperatureDifference split, Temperature apparatusDewPoint, boolean dry) {}
}
