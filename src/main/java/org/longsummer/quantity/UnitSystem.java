package org.longsummer.quantity;

/** The system of units a person reads and types in. */
public enum UnitSystem {
    /** Degrees Fahrenheit, feet, pounds. */
    US,
    /** Degrees Celsius, metres, kilograms. */
    SI;

    public String temperatureSymbol() {
        return this == US ? "°F" : "°C";
    }

    public Temperature temperature(double typed) {
        return this == US ? Temperature.fahrenheit(typed) : Temperature.celsius(typed);
    }

    public double number(Temperature temperature) {
        return this == US ? temperature.fahrenheit() : temperature.celsius();
    }

    public double number(TemperatureDifference difference) {
        return this == US ? difference.fahrenheit() : difference.kelvins();
    }
}
