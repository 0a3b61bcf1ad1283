package org.longsummer.quantity;

/**
 * Rounds a number to a fixed count of decimals for a sentence, by integer arithmetic, so that a server and a phone print
 * the same digits. Halves round away from zero.
 */
public final class Decimal {
    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};
    private static final double LARGEST = 9e11;

    private Decimal() {}

    /**
     * @param value any finite number below 9e11 in magnitude
     * @param decimals 0 to 6
     * @return for example {@code -0.5} for (−0.46, 1); never {@code -0.0}
     * @throws IllegalArgumentException for a number that is not finite or too large to print, or other decimals
     */
    public static String text(double value, int decimals) {
        if (!(Math.abs(value) < LARGEST) || decimals < 0 || decimals >= POWERS.length) {
            throw new IllegalArgumentException("cannot print " + value + " with " + decimals + " decimals");
        }
        long scale = POWERS[decimals];
        long units = (long) (Math.abs(value) * scale + 0.5 + 1e-9);
        String sign = value < 0 && units > 0 ? "-" : "";
        if (decimals == 0) {
            return sign + units;
        }
        String fraction = Long.toString(units % scale);
        return sign + units / scale + "." + "0".repeat(decimals - fraction.length()) + fraction;
    }
}
