package org.longsummer.quantity;

/**
 * A difference between two temperatures, such as a split or the uncertainty of a thermometer.
 *
 * @param kelvins difference, K
 */
public record TemperatureDifference(double kelvins) implements Quantity {
    public static TemperatureDifference fahrenheit(double degrees) {
        return new TemperatureDifference(degrees / 1.8);
    }

    public double fahrenheit() {
        return kelvins * 1.8;
    }

    @Override
    public String text(UnitSystem system) {
        return Decimal.text(system.number(this), 1) + " " + system.temperatureSymbol();
    }
}
