package org.longsummer.quantity;

/**
 * A supply voltage.
 *
 * @param volts V
 */
public record Voltage(double volts) implements Quantity {
    @Override
    public String text(UnitSystem system) {
        return Decimal.text(volts, 0) + " V";
    }
}
