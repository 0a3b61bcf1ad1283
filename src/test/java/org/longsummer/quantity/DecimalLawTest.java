package org.longsummer.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers in sentences: halves away from zero, no minus on a zero, the same digits everywhere. */
class DecimalLawTest {

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "0, 1, 0.0", "-0.0, 1, 0.0", "0.5, 0, 1", "-0.5, 0, -1", "1.005, 2, 1.01", "2.675, 2, 2.68", "-0.04, 1, 0.0",
            "-0.05, 1, -0.1", "0.05, 1, 0.1", "9.96, 1, 10.0", "99.95, 1, 100.0", "0.000001, 6, 0.000001", "123456789.125, 2, 123456789.13",
            "1000000, 0, 1000000", "0.1, 2, 0.10", "-12.34, 1, -12.3"})
    void knownDigits(double value, int decimals, String text) {
        assertEquals(text, Decimal.text(value, decimals));
    }

    /** Against the JDK's exact decimal of the number's shortest form, which is what a person typed. */
    @Test
    void everyTypedNumberRoundsAsOnPaper() {
        Random random = new Random(3);
        for (int i = 0; i < 50_000; i++) {
            int decimals = random.nextInt(5);
            double typed = new BigDecimal(random.nextInt(2_000_000) - 1_000_000).movePointLeft(random.nextInt(6)).doubleValue();
            BigDecimal paper = new BigDecimal(Double.toString(typed)).setScale(decimals, RoundingMode.HALF_UP);
            String expected = paper.signum() == 0 ? paper.abs().toPlainString() : paper.toPlainString();
            assertEquals(expected, Decimal.text(typed, decimals), typed + " to " + decimals);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e12, -9e11})
    void whatCannotBePrintedIsRefusedByName(double value) {
        String message = assertThrows(IllegalArgumentException.class, () -> Decimal.text(value, 1)).getMessage();
        assertEquals("cannot print " + value + " with 1 decimals", message);
        assertThrows(IllegalArgumentException.class, () -> Decimal.text(1, 7));
        assertThrows(IllegalArgumentException.class, () -> Decimal.text(1, -1));
    }

    /** Nine hundred billion with six decimals does not fit a long: it must not print something else. */
    @Test
    void largeNumbersWithManyDecimalsKeepTheirDigits() {
        assertEquals("800000000000.000000", Decimal.text(8e11, 6));
        assertEquals("899999999999.500", Decimal.text(899_999_999_999.5, 3));
    }
}
