package org.longsummer.quantity;

/**
 * A temperature on a thermometer, kept in kelvins.
 *
 * <p>Not to be confused with a {@link TemperatureDifference}: a split of 20 °F is 11.1 K, never −6.7 °C.
 *
 * @param kelvins absolute temperature, K
 */
public record Temperature(double kelvins) implements Quantity, Comparable<Temperature> {
    private static final double ICE_POINT = 273.15;
    private static final double FAHRENHEIT_AT_ABSOLUTE_ZERO = -459.67;

    public static Temperature celsius(double degrees) {
        return new Temperature(degrees + ICE_POINT);
    }

    public static Temperature fahrenheit(double degrees) {
        return new Temperature((degrees - FAHRENHEIT_AT_ABSOLUTE_ZERO) / 1.8);
    }

    public double celsius() {
        return kelvins - ICE_POINT;
    }

    public double fahrenheit() {
        return kelvins * 1.8 + FAHRENHEIT_AT_ABSOLUTE_ZERO;
    }

    /** How much warmer this is than the other; negative when it is colder. */
    public TemperatureDifference minus(Temperature other) {
        return new TemperatureDifference(kelvins - other.kelvins);
    }

    public Temperature plus(TemperatureDifference difference) {
        return new Temperature(kelvins + difference.kelvins());
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(kelvins, other.kelvins);
    }

    @Override
    public String text(UnitSystem system) {
        return Decimal.text(system.number(this), 1) + " " + system.temperatureSymbol();
    }
}
