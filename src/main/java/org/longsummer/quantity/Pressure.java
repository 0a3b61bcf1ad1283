package org.longsummer.quantity;

/**
 * An absolute pressure.
 *
 * @param pascals Pa
 */
public record Pressure(double pascals) {
    private static final double PASCALS_PER_PSI = 6894.757293168;

    public static Pressure psi(double poundsPerSquareInch) {
        return new Pressure(poundsPerSquareInch * PASCALS_PER_PSI);
    }

    public double psi() {
        return pascals / PASCALS_PER_PSI;
    }
}
