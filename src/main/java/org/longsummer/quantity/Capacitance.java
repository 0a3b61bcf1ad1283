package org.longsummer.quantity;

/**
 * Capacitance of a run capacitor.
 *
 * @param microfarads µF
 */
public record Capacitance(double microfarads) implements Quantity {
    @Override
    public String text(UnitSystem system) {
        return Decimal.text(microfarads, 1) + " µF";
    }
}
