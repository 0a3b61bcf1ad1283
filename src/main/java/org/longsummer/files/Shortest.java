package org.longsummer.files;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.DoubleFunction;

/** Writes numbers with the fewest digits that read back as exactly the same quantity. */
final class Shortest {
    private static final int MOST_DIGITS = 17;

    private Shortest() {}

    static String text(double number) {
        return text(number, number, Double::valueOf);
    }

    /**
     * @param number in the column's unit
     * @param quantity what must be read back
     * @param read makes the quantity from a number in the column's unit
     */
    static <Q> String text(double number, Q quantity, DoubleFunction<Q> read) {
        BigDecimal exact = new BigDecimal(number);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits));
            if (read.apply(rounded.doubleValue()).equals(quantity)) {
                return plain(rounded);
            }
        }
        return plain(exact.round(new MathContext(MOST_DIGITS)));
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
