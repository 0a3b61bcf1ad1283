package org.longsummer.science.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The normal distribution by its definition: the area under the density. */
class NormalLawTest {
    /** Area from a to b by Simpson's rule. */
    private static double area(double a, double b) {
        int pieces = 2_000;
        double h = (b - a) / pieces;
        double sum = density(a) + density(b);
        for (int i = 1; i < pieces; i++) {
            sum += (i % 2 == 1 ? 4 : 2) * density(a + i * h);
        }
        return sum * h / 3;
    }

    private static double density(double x) {
        return Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    }

    @Test
    void itIsTheAreaUnderTheDensity() {
        for (double x = -7; x <= 7; x += 0.07) {
            assertEquals(0.5 + (x < 0 ? -area(x, 0) : area(0, x)), Normal.cumulative(x), 1e-13, "at " + x);
        }
    }

    /** Far out, where a difference from 1 or from a half would have no digits left: the tail by itself. */
    @Test
    void itsTailIsTheAreaOfTheTail() {
        for (double x = 3; x <= 36; x += 0.11) {
            double tail = area(x, x + 12 / Math.sqrt(x));
            assertEquals(tail, Normal.cumulative(-x), 1e-7 * tail, "at " + -x);
        }
    }

    @Test
    void bothSidesAreAlikeAndItEndsAtNothingAndAll() {
        for (double x = 0.03; x < 45; x += 0.31) {
            assertEquals(1, Normal.cumulative(x) + Normal.cumulative(-x), 1e-15, "at " + x);
        }
        assertEquals(0.5, Normal.cumulative(0), 1e-15);
        assertEquals(1, Normal.cumulative(38), 0);
        assertEquals(0, Normal.cumulative(-38), 0);
        assertTrue(Normal.cumulative(-37) > 0, "the last that is worked out");
    }
}
