package org.longsummer.science.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class PropagationLawTest {
    private static final double[] PLUS_MINUS = {1, -1};
    private static final double[] SAME = {0.7, 0.7};

    /** One probe for two readings: its own error cancels in the difference and doubles in the sum. */
    @Test
    void aSharedErrorCancelsInADifference() {
        Correlation whole = Correlation.none(2).with(0, 1, 1);
        assertEquals(0, Propagation.standardUncertainty(PLUS_MINUS, SAME, whole), 1e-12);
        assertEquals(1.4, Propagation.standardUncertainty(new double[] {1, 1}, SAME, whole), 1e-12);
        assertEquals(0.7 * Math.sqrt(2), Propagation.standardUncertainty(PLUS_MINUS, SAME, Correlation.none(2)), 1e-12);
    }

    @Test
    void aBudgetIsThePropagationOfIndependentInputs() {
        Budget budget = new Budget(List.of(new Component("return probe", Component.Source.MEASUREMENT, 0.5, "K", -0.06),
                new Component("supply probe", Component.Source.MEASUREMENT, 0.4, "K", 0.09),
                new Component("curves", Component.Source.MODEL, 0.012, "1", 1)));
        double propagated = Propagation.standardUncertainty(new double[] {-0.06, 0.09, 1}, new double[] {0.5, 0.4, 0.012}, Correlation.none(3));
        assertEquals(propagated, budget.standardUncertainty(), 1e-15);
        assertEquals(budget.variance(), budget.variance(Component.Source.MEASUREMENT) + budget.variance(Component.Source.MODEL), 1e-15);
        assertEquals(0, budget.variance(Component.Source.CLASS));
    }

    @Test
    void aBudgetKeepsItsOwnCopy() {
        var lines = new java.util.ArrayList<>(List.of(new Component("a", Component.Source.UNIT, 1, "1", 1)));
        Budget budget = new Budget(lines);
        lines.clear();
        assertEquals(1, budget.variance());
    }

    /** Exact for a straight line; for a curve the error falls with the square of the step. */
    @Test
    void sensitivitiesAreDerivatives() {
        double[] line = Propagation.sensitivities(x -> 3 * x[0] - 2 * x[1], new double[] {5, 7}, new double[] {0.1, 10});
        assertEquals(3, line[0], 1e-12);
        assertEquals(-2, line[1], 1e-12);
        double wide = Propagation.sensitivities(x -> Math.exp(x[0]), new double[] {0}, new double[] {0.2})[0] - 1;
        double narrow = Propagation.sensitivities(x -> Math.exp(x[0]), new double[] {0}, new double[] {0.1})[0] - 1;
        assertEquals(4, wide / narrow, 0.05);
    }

    @Test
    void effectiveDegreesOfFreedomLieBetweenTheSmallestAndTheSum() {
        double[] freedoms = {4, 9, 20};
        double effective = Propagation.effectiveDegreesOfFreedom(new double[] {1, 2, 3}, freedoms);
        assertTrue(effective >= 4 && effective <= 33, () -> "" + effective);
        assertEquals(9, Propagation.effectiveDegreesOfFreedom(new double[] {0, 2, 0}, freedoms), 1e-12);
        assertEquals(16 * 4.0, Propagation.effectiveDegreesOfFreedom(new double[] {1, Math.sqrt(3)},
                new double[] {4, Double.POSITIVE_INFINITY}), 1e-9);
    }

    @Test
    void repeatedObservations() {
        TypeA typeA = TypeA.of(10, 12, 14);
        assertEquals(12, typeA.mean());
        assertEquals(2 / Math.sqrt(3), typeA.standardUncertainty(), 1e-15);
        assertEquals(2, typeA.degreesOfFreedom());
        assertEquals(2, TypeA.of(10, 14).standardUncertainty(), 1e-15, "two say something of their spread");
        assertEquals(1, TypeA.correlation(new double[] {1, 2, 4}, new double[] {3, 5, 9}), 1e-12);
        assertEquals(-1, TypeA.correlation(new double[] {1, 2, 4}, new double[] {-1, -2, -4}), 1e-12);
    }

    @Test
    void whatCannotBeIsRefusedByName() {
        assertThrows(IllegalArgumentException.class, () -> TypeA.of(1));
        assertThrows(IllegalArgumentException.class, () -> TypeA.correlation(new double[2], new double[3]));
        assertThrows(IllegalArgumentException.class, () -> Correlation.none(2).with(0, 1, 1.1));
        assertThrows(IllegalArgumentException.class, () -> Correlation.none(2).with(0, 0, 0.5));
        assertThrows(IllegalArgumentException.class, () -> Propagation.standardUncertainty(PLUS_MINUS, SAME, Correlation.none(3)));
        assertThrows(IllegalArgumentException.class, () -> Propagation.standardUncertainty(PLUS_MINUS, new double[3], Correlation.none(2)));
        assertThrows(IllegalArgumentException.class, () -> Propagation.covariance(PLUS_MINUS, new double[3], SAME, Correlation.none(2)));
        assertThrows(IllegalArgumentException.class, () -> Propagation.covariance(new double[3], PLUS_MINUS, SAME, Correlation.none(2)));
    }
}
