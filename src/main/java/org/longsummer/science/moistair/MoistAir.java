package org.longsummer.science.moistair;

import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;

/**
 * A state of moist air: dry bulb, humidity ratio and pressure; everything else follows.
 *
 * <p>Source: [hof-2017] ch. 1, SI relations, ideal-gas mixture. Range: that of {@link HylandWexler1983}. The ideal gas leaves the
 * printed table of saturated air (table 2) by up to 1 %. Every inversion puts its answer back into the forward relation.
 *
 * <p>Air is never quite dry here: the humidity ratio is at least 10⁻⁷ kg/kg, as in [psychrolib-2019], so that a dew point exists.
 *
 * @param dryBulb dry-bulb temperature
 * @param humidityRatio kg water vapour per kg dry air
 * @param pressure total pressure
 */
public record MoistAir(Temperature dryBulb, double humidityRatio, Pressure pressure) {
    private static final double ICE_POINT = 273.15;
    private static final double MOLAR_MASS_RATIO = 0.621945;
    private static final double GAS_CONSTANT_DRY_AIR = 287.042;
    private static final double DRIEST = 1e-7;
    private static final double STANDARD_PRESSURE = 101325;
    /** J/kg; about 10⁻⁷ K. */
    private static final double CLOSE_ENOUGH = 1e-4;
    private static final int MOST_STEPS = 60;

    /**
     * From dry bulb and relative humidity, eq. 12 and 20 to 22.
     *
     * @throws IllegalArgumentException for a negative humidity, or more vapour than the pressure can hold
     */
    public static MoistAir of(Temperature dryBulb, RelativeHumidity humidity, Pressure pressure) {
        return ofVapour(dryBulb, humidity.fraction() * HylandWexler1983.pascals(dryBulb.kelvins()), pressure);
    }

    /**
     * From dry bulb and dew point: the humidity ratio of saturation at the dew point.
     *
     * @throws IllegalArgumentException for a dew point at which water boils
     */
    public static MoistAir ofDewPoint(Temperature dryBulb, Temperature dewPoint, Pressure pressure) {
        return ofVapour(dryBulb, HylandWexler1983.pascals(dewPoint.kelvins()), pressure);
    }

    private static MoistAir ofVapour(Temperature dryBulb, double vapour, Pressure pressure) {
        if (!(vapour >= 0 && vapour < pressure.pascals())) {
            throw new IllegalArgumentException("air at " + pressure.pascals() + " Pa cannot hold water vapour of " + vapour + " Pa");
        }
        return new MoistAir(dryBulb, Math.max(ratio(vapour, pressure.pascals()), DRIEST), pressure);
    }

    /**
     * From dry bulb and thermodynamic wet bulb, eq. 33 (above freezing) and 35 (below). A wet bulb above the dry bulb gives fog.
     *
     * @throws IllegalArgumentException for a wet bulb below that of dry air
     */
    public static MoistAir ofWetBulb(Temperature dryBulb, Temperature wetBulb, Pressure pressure) {
        double w = AdiabaticSaturation.humidityRatio(dryBulb.celsius(), wetBulb.celsius(), pressure.pascals());
        if (!(w >= 0)) {
            throw new IllegalArgumentException("no air of " + dryBulb.celsius() + " °C has a wet bulb of " + wetBulb.celsius() + " °C");
        }
        return new MoistAir(dryBulb, Math.max(w, DRIEST), pressure);
    }

    /** Whether air of this dry bulb can have this wet bulb: at most the dry bulb, at least that of dry air. */
    public static boolean canHaveWetBulb(Temperature dryBulb, Temperature wetBulb, Pressure pressure) {
        return wetBulb.compareTo(dryBulb) <= 0
                && AdiabaticSaturation.humidityRatio(dryBulb.celsius(), wetBulb.celsius(), pressure.pascals()) >= 0;
    }

    /** Saturated air. */
    public static MoistAir saturated(Temperature temperature, Pressure pressure) {
        return ofDewPoint(temperature, temperature, pressure);
    }

    /**
     * Saturated air of the given enthalpy, J/kg dry air: the apparatus dew point of a coil. Newton's method inside a bracket.
     *
     * @throws IllegalArgumentException for an enthalpy that no saturated air from −100 °C to near the boiling point has
     */
    public static MoistAir saturatedAtEnthalpy(double enthalpy, Pressure pressure) {
        double p = pressure.pascals();
        double low = HylandWexler1983.COLDEST;
        double high = ICE_POINT + 95;
        double t = Math.max(low, Math.min(high, ICE_POINT + startAtEnthalpy(enthalpy, p)));
        for (int step = 0; step < MOST_STEPS && high - low > 1e-9; step++) {
            double vapour = HylandWexler1983.pascals(t);
            if (vapour >= 0.99 * p) {
                high = t;
                t = (low + high) / 2;
                continue;
            }
            double w = ratio(vapour, p);
            double miss = enthalpy(t - ICE_POINT, w) - enthalpy;
            if (Math.abs(miss) < CLOSE_ENOUGH) {
                return new MoistAir(new Temperature(t), Math.max(w, DRIEST), pressure);
            }
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - miss / slopeOfEnthalpy(w, t);
            t = next > low && next < high ? next : (low + high) / 2;
        }
        throw new IllegalArgumentException("no saturated air has an enthalpy of " + enthalpy + " J/kg at " + p + " Pa");
    }

    /**
     * Only where a search begins: temperature of saturated air by its enthalpy, °C, nearly a straight line in a shifted logarithm;
     * within 1 K from −10 to 35 °C and from sea level to 10,000 ft.
     */
    static double startAtEnthalpy(double enthalpy, double pressure) {
        double thinness = STANDARD_PRESSURE / pressure;
        double shift = 35000 * Math.sqrt(thinness);
        double shifted = (enthalpy + shift) / (10060 + 19300 * thinness + shift);
        return shifted > 0 ? 10 + Math.log(shifted) / 0.0385 : -40;
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

    /** Eq. 12 and 22; above 1 for air that is more than saturated. */
    public RelativeHumidity relativeHumidity() {
        return new RelativeHumidity(vapourPressure() / HylandWexler1983.pascals(dryBulb.kelvins()));
    }

    private double vapourPressure() {
        return pressure.pascals() * humidityRatio / (MOLAR_MASS_RATIO + humidityRatio);
    }

    /** Temperature at which the vapour would be saturated, eq. 36. */
    public Temperature dewPoint() {
        return HylandWexler1983.saturationTemperature(new Pressure(vapourPressure()));
    }

    /** Thermodynamic wet bulb, eq. 33 and 35; a saturated state's own temperature. */
    public Temperature wetBulb() {
        double p = pressure.pascals();
        return Temperature.celsius(AdiabaticSaturation.wetBulb(dryBulb.celsius(), humidityRatio, p, startAtEnthalpy(enthalpy(), p)));
    }

    /** Humidity ratio of air whose vapour has this pressure, eq. 20; both in Pa. */
    static double ratio(double vapour, double pressure) {
        return MOLAR_MASS_RATIO * vapour / (pressure - vapour);
    }

    /** Slope of the enthalpy of saturated air with temperature, J/(kg K). */
    static double slopeOfEnthalpy(double saturated, double kelvins) {
        return 1006 + 1860 * saturated + slopeOfRatio(saturated, kelvins) * (2501000 + 1860 * (kelvins - ICE_POINT));
    }

    /** Slope of the saturated humidity ratio with temperature, 1/K. */
    static double slopeOfRatio(double saturated, double kelvins) {
        return saturated * (1 + saturated / MOLAR_MASS_RATIO) * HylandWexler1983.logarithmicSlope(kelvins);
    }
}
