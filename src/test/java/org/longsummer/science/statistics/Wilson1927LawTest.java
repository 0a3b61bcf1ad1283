package org.longsummer.science.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class Wilson1927LawTest {
    /** Each end is a share from which the observed one lies exactly z standard deviations away: the interval's definition. */
    @Test
    void eachEndLiesTheWidthAwayFromWhatWasSeen() {
        for (int n : new int[] {1, 7, 40, 1000}) {
            for (int k = 0; k <= n; k += Math.max(1, n / 7)) {
                for (double z : new double[] {1, 2, 3}) {
                    Wilson1927.Interval interval = Wilson1927.interval(k, n, z);
                    for (double p : new double[] {interval.low(), interval.high()}) {
                        double away = (double) k / n - p;
                        assertEquals(z * z * p * (1 - p) / n, away * away, 1e-12);
                    }
                    assertTrue(interval.low() >= 0 && interval.low() <= (double) k / n + 1e-12 && interval.high() <= 1 && interval.high() >= (double) k / n - 1e-12);
                }
            }
        }
    }

    @Test
    void itIsNarrowerWithMoreTrialsAndTurnsWithWhatIsCounted() {
        Wilson1927.Interval few = Wilson1927.interval(3, 10, 2);
        Wilson1927.Interval many = Wilson1927.interval(30, 100, 2);
        assertTrue(many.high() - many.low() < few.high() - few.low());
        Wilson1927.Interval turned = Wilson1927.interval(7, 10, 2);
        assertEquals(1 - few.low(), turned.high(), 1e-12);
        assertEquals(1 - few.high(), turned.low(), 1e-12);
    }

    @Test
    void whatIsNoShareIsRefused() {
        for (int[] wrong : new int[][] {{0, 0}, {-1, 4}, {5, 4}}) {
            assertThrows(IllegalArgumentException.class, () -> Wilson1927.interval(wrong[0], wrong[1], 2));
        }
        for (double width : new double[] {0, -1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> Wilson1927.interval(1, 4, width));
        }
    }
}
