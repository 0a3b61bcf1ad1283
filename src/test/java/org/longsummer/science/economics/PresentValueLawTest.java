package org.longsummer.science.economics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class PresentValueLawTest {
    @Test
    void aUniformSeriesIsTheSumOfItsSinglePayments() {
        for (double rate : new double[] {0, 1e-12, 1e-9, 1e-6, 1e-5, 1e-4, 0.03, 0.2, -0.01}) {
            double sum = 0;
            for (int n = 1; n <= 30; n++) {
                sum += PresentValue.ofSingle(rate, n);
                assertEquals(sum, PresentValue.ofUniform(rate, n), 1e-9 * sum, rate + ", " + n);
            }
        }
    }

    @Test
    void withoutDiscountItCountsThePeriods() {
        assertEquals(17, PresentValue.ofUniform(0, 17), 0);
        assertEquals(1, PresentValue.ofSingle(0, 17), 0);
    }

    @Test
    void recoveryIsTheInverseOfTheUniformFactor() {
        assertEquals(1, PresentValue.capitalRecovery(0.05, 9) * PresentValue.ofUniform(0.05, 9), 1e-12);
    }

    @Test
    void refusesRatesInPercentAndNegativePeriods() {
        for (double rate : new double[] {-1, 10, 12, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> PresentValue.ofSingle(rate, 2));
            assertThrows(IllegalArgumentException.class, () -> PresentValue.ofUniform(rate, 0));
        }
        for (double periods : new double[] {-2, 1e6, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> PresentValue.ofSingle(0.05, periods));
            assertThrows(IllegalArgumentException.class, () -> PresentValue.ofUniform(0, periods));
        }
        assertEquals(1, PresentValue.ofSingle(0.05, 0), 0);
    }
}
