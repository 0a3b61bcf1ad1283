package org.longsummer.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Prints a number with two significant digits, the same on every machine. */
final class Significant {
    private static final MathContext TWO = new MathContext(2, RoundingMode.HALF_UP);

    private Significant() {}

    static String two(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(TWO);
        BigDecimal stripped = rounded.stripTrailingZeros();
        int exponent = stripped.precision() - stripped.scale() - 1;
        if (exponent >= -4 && exponent <= 6) {
            return stripped.toPlainString();
        }
        return stripped.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
    }
}
