package org.longsummer.quantity;

/**
 * An electric current, as a clamp meter around one conductor reads it.
 *
 * @param amperes A
 */
public record Current(double amperes) implements Quantity {
    @Override
    public String text(UnitSystem system) {
        return Decimal.text(amperes, Math.abs(amperes) < 1 ? 2 : 1) + " A";
    }
}
