package org.longsummer.quantity;

/**
 * Time since the compressor started.
 *
 * @param minutes min
 */
public record RunTime(double minutes) implements Quantity {
    @Override
    public String text(UnitSystem system) {
        return Decimal.text(minutes, 0) + " min";
    }
}
