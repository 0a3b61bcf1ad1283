package org.longsummer.science.moistair;

/**
 * Humidity ratio from dry bulb and thermodynamic wet bulb, and back.
 *
 * <p>Source: [hof-2017] ch. 1, eq. 33 (wet bulb at or above 0 °C: a wet wick) and eq. 35 (below: an iced one), SI. Just below 0 °C
 * an iced wick reads colder than a wet one would in the same air, so the two leave a step: air that a wet wick can show at 0 °C or
 * above is shown by a wet wick here, and only drier air by an iced one.
 */
final class AdiabaticSaturation {
    private static final double ICE_POINT = 273.15;
    /** kg/kg; about 10⁻⁷ K of wet bulb. */
    private static final double CLOSE_ENOUGH = 1e-10;
    private static final int MOST_STEPS = 60;

    private AdiabaticSaturation() {}

    /** Eq. 33 or 35; negative where no air is so dry. Temperatures in °C, pressure in Pa. */
    static double humidityRatio(double dryBulb, double wetBulb, double pressure) {
        double saturated = MoistAir.ratio(HylandWexler1983.pascals(wetBulb + ICE_POINT), pressure);
        return humidityRatio(dryBulb, wetBulb, saturated, wetBulb >= 0);
    }

    static double humidityRatio(double t, double wetBulb, double saturated, boolean liquid) {
        return liquid
                ? ((2501 - 2.326 * wetBulb) * saturated - 1.006 * (t - wetBulb)) / (2501 + 1.86 * t - 4.186 * wetBulb)
                : ((2830 - 0.24 * wetBulb) * saturated - 1.006 * (t - wetBulb)) / (2830 + 1.86 * t - 2.1 * wetBulb);
    }

    /** Slope of eq. 33 or 35 with wet bulb, given their value and the slope of the saturated ratio. */
    static double slope(double t, double wetBulb, double saturated, double slopeOfSaturated, double value, boolean liquid) {
        return liquid
                ? ((2501 - 2.326 * wetBulb) * slopeOfSaturated - 2.326 * saturated + 1.006 + 4.186 * value) / (2501 + 1.86 * t - 4.186 * wetBulb)
                : ((2830 - 0.24 * wetBulb) * slopeOfSaturated - 0.24 * saturated + 1.006 + 2.1 * value) / (2830 + 1.86 * t - 2.1 * wetBulb);
    }

    /**
     * Wet bulb, °C: Newton's method inside a bracket, until eq. 33 or 35 gives back the humidity ratio. Air that is more than
     * saturated (fog) has its own temperature as wet bulb.
     *
     * @param start where to begin, °C
     */
    static double wetBulb(double dryBulb, double humidityRatio, double pressure, double start) {
        if (humidityRatio >= humidityRatio(dryBulb, dryBulb, pressure)) {
            return dryBulb;
        }
        boolean liquid = dryBulb > 0 && humidityRatio >= humidityRatio(dryBulb, 0, pressure);
        double low = liquid ? 0 : HylandWexler1983.COLDEST - ICE_POINT;
        double high = liquid ? dryBulb : Math.min(dryBulb, 0);
        double wetBulb = Math.max(low, Math.min(high, start));
        for (int step = 0; step < MOST_STEPS; step++) {
            double kelvins = wetBulb + ICE_POINT;
            double saturated = MoistAir.ratio(HylandWexler1983.pascals(kelvins), pressure);
            double value = humidityRatio(dryBulb, wetBulb, saturated, liquid);
            double miss = value - humidityRatio;
            if (Math.abs(miss) < CLOSE_ENOUGH) {
                return wetBulb;
            }
            if (miss > 0) {
                high = wetBulb;
            } else {
                low = wetBulb;
            }
            double slope = slope(dryBulb, wetBulb, saturated, MoistAir.slopeOfRatio(saturated, kelvins), value, liquid);
            double next = wetBulb - miss / slope;
            wetBulb = next >= low && next <= high ? next : (low + high) / 2;
        }
        throw new IllegalStateException("no wet bulb found for " + dryBulb + " °C, " + humidityRatio + " kg/kg, " + pressure + " Pa");
    }
}
