package org.longsummer.chain.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longsummer.science.statistics.Lifetime;

/** The default life curves beside what the trade says: 5 to about 15 years, a window unit's median of 10, rental duty shorter. */
class LifeCurvePracticeTest {
    @Test
    void theDefaultCoversWhatIsSaidOfRoofUnitsAndWindowUnits() {
        assertEquals(10, LifeCurve.PRIVATE.years().median(), 1);
        assertTrue(LifeCurve.PRIVATE.years().survival(15) < 0.15 && LifeCurve.PRIVATE.years().survival(5) > 0.85);
        assertTrue(LifeCurve.RENTAL.years().median() < LifeCurve.PRIVATE.years().median());
    }

    @Test
    void aFleetTakesOverOnceTenHaveFailed() {
        List<Lifetime> lives = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            lives.add(Lifetime.runningAt(3 + i % 7));
        }
        for (int i = 0; i < LifeCurve.ENOUGH_FAILURES - 1; i++) {
            lives.add(Lifetime.failedAt(4 + 0.5 * i));
        }
        assertSame(LifeCurve.RENTAL, LifeCurve.RENTAL.learnedFrom(lives));
        lives.add(Lifetime.failedAt(9));
        LifeCurve own = LifeCurve.RENTAL.learnedFrom(lives);
        assertEquals(LifeCurve.Origin.OWN_FLEET, own.origin());
        assertEquals(10, own.failures());
    }
}
