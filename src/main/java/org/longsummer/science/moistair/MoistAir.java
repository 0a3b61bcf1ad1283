package org.longsummer.science.moistair;

import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;

/**
 * A state of moist air: dry bulb, humidity ratio and pressure; everything else follows.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2017), ch. 1, SI relations, ideal-gas mixture. Every inversion puts its answer
 * back into the forward relation.
 *
 * @param dryBulb dry-bulb temperature
 * @param humidityRatio kg water vapour per kg dry air
 * @param pressure total pressure
 */
public record MoistAir(Temperature dryBulb, double humidityRatio, Pressure pressure) {
    private static final double MOLAR_MASS_RATIO = 0.621945;
    private static final double GAS_CONSTANT_DRY_AIR = 287.042;
    private static final double LOWEST_HUMIDITY_RATIO = 1e-7;
    private static final int MOST_STEPS = 100;

    /** From dry bulb and relative humidity, eq. 12 and 20 to 22. */
    public static MoistAir of(Temperature dryBulb, RelativeHumidity humidity, Pressure pressure) {
        double vapour = humidity.fraction() * HylandWexler1983.pascals(dryBulb.kelvins());
        return new MoistAir(dryBulb, ratio(vapour, pressure.pascals()), pressure);
    }

    /** From dry bulb and dew point: the humidity ratio of saturation at the dew point. */
    public static MoistAir ofDewPoint(Temperature dryBulb, Temperature dewPoint, Pressure pressure) {
        return new MoistAir(dryBulb, ratio(HylandWexler1983.pascals(dewPoint.kelvins()), pressure.pascals()), pressure);
    }

    /** From dry bulb and thermodynamic wet bulb, eq. 33 (above freezing) and 35 (below). */
    public static MoistAir ofWetBulb(Temperature dryBulb, Temperature wetBulb, Pressure pressure) {
        double w = humidityRatioAtWetBulb(dryBulb.celsius(), wetBulb.celsius(), pressure.pascals());
        return new MoistAir(dryBulb, Math.max(w, LOWEST_HUMIDITY_RATIO), pressure);
    }

    /** Saturated air. */
    public static MoistAir saturated(Temperature temperature, Pressure pressure) {
        return ofDewPoint(temperature, temperature, pressure);
    }

    /** Saturated air of the given enthalpy, J/kg dry air: the apparatus dew point of a coil. */
    public static MoistAir saturatedAtEnthalpy(double enthalpy, Pressure pressure) {
        double low = 173.15;
        double high = 373.15;
        double t = 283.15;
        for (int step = 0; step < MOST_STEPS; step++) {
            double w = ratio(HylandWexler1983.pascals(t), pressure.pascals());
            double miss = enthalpy(t - 273.15, w) - enthalpy;
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            if (Math.abs(miss) < 1e-6 * (1000 + Math.abs(enthalpy))) {
                return saturated(new Temperature(t), pressure);
            }
            double slopeOfRatio = w * (1 + w / MOLAR_MASS_RATIO) * HylandWexler1983.logarithmicSlope(t);
            double next = t - miss / (1006 + 1860 * w + slopeOfRatio * (2501000 + 1860 * (t - 273.15)));
            t = next > low && next < high ? next : (low + high) / 2;
        }
        throw new IllegalArgumentException("no saturated air has an enthalpy of " + enthalpy + " J/kg at " + pressure);
    }

    /** Enthalpy per kg dry air, eq. 30, J/kg; zero at 0 °C dry air. */
    public double enthalpy() {
        return enthalpy(dryBulb.celsius(), humidityRatio);
    }

    private static double enthalpy(double celsius, double w) {
        return 1006 * celsius + w * (2501000 + 1860 * celsius);
    }

    /** Volume per kg dry air, eq. 26, m³/kg. */
    public double specificVolume() {
        return GAS_CONSTANT_DRY_AIR * dryBulb.kelvins() * (1 + humidityRatio / MOLAR_MASS_RATIO) / pressure.pascals();
    }

    /** Heat capacity per kg dry air, J/(kg K): the slope of eq. 30 with dry bulb. */
    public double heatCapacity() {
        return 1006 + 1860 * humidityRatio;
    }

    public RelativeHumidity relativeHumidity() {
        return new RelativeHumidity(vapourPressure() / HylandWexler1983.pascals(dryBulb.kelvins()));
    }

    private double vapourPressure() {
        return pressure.pascals() * humidityRatio / (MOLAR_MASS_RATIO + humidityRatio);
    }

    /** Temperature at which the vapour would be saturated; Newton's method on the logarithm, guarded by a bracket. */
    public Temperature dewPoint() {
        double target = Math.log(Math.max(vapourPressure(), 1e-3));
        double low = 150;
        double high = 420;
        double t = Math.min(dryBulb.kelvins(), 373.15);
        for (int step = 0; step < MOST_STEPS; step++) {
            double miss = Math.log(HylandWexler1983.pascals(t)) - target;
            if (Math.abs(miss) < 1e-10 || high - low < 1e-9) {
                return new Temperature(t);
            }
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - miss / HylandWexler1983.logarithmicSlope(t);
            t = next > low && next < high ? next : (low + high) / 2;
        }
        throw new IllegalStateException("no dew point found for " + this);
    }

    /** Thermodynamic wet bulb: the secant between a bracket's ends, until the forward relation gives this humidity ratio. */
    public Temperature wetBulb() {
        double t = dryBulb.celsius();
        double p = pressure.pascals();
        double w = Math.max(humidityRatio, LOWEST_HUMIDITY_RATIO);
        double high = t;
        double low = Math.min(dewPoint().celsius(), t) - 1e-6;
        double missHigh = humidityRatioAtWetBulb(t, high, p) - w;
        double missLow = humidityRatioAtWetBulb(t, low, p) - w;
        if (missHigh < 0) {
            return dryBulb;
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            double guess = step % 3 == 2 ? (low + high) / 2 : high - missHigh * (high - low) / (missHigh - missLow);
            double miss = humidityRatioAtWetBulb(t, guess, p) - w;
            if (Math.abs(miss) < 1e-12 || high - low < 1e-9) {
                return Temperature.celsius(guess);
            }
            if (miss > 0) {
                high = guess;
                missHigh = miss;
            } else {
                low = guess;
                missLow = miss;
            }
        }
        throw new IllegalStateException("no wet bulb found for " + this);
    }

    private static double humidityRatioAtWetBulb(double t, double wetBulb, double pascals) {
        double saturated = ratio(HylandWexler1983.pascals(wetBulb + 273.15), pascals);
        return wetBulb >= 0
                ? ((2501 - 2.326 * wetBulb) * saturated - 1.006 * (t - wetBulb)) / (2501 + 1.86 * t - 4.186 * wetBulb)
                : ((2830 - 0.24 * wetBulb) * saturated - 1.006 * (t - wetBulb)) / (2830 + 1.86 * t - 2.1 * wetBulb);
    }

    private static double ratio(double vapour, double pascals) {
        return Math.max(MOLAR_MASS_RATIO * vapour / (pascals - vapour), LOWEST_HUMIDITY_RATIO);
    }
}
