package org.longsummer.science.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WeibullLawTest {
    private static final Weibull LIFE = Weibull.through(5, 0.9, 15, 0.1);

    @Test
    void goesThroughTheTwoPointsItWasMadeFrom() {
        Weibull life = Weibull.through(5, 0.9, 15, 0.1);
        assertEquals(0.9, life.survival(5), 1e-12);
        assertEquals(0.1, life.survival(15), 1e-12);
    }

    @Test
    void whatIsNoDistributionIsRefused() {
        for (double[] wrong : new double[][] {{0, 9, 0}, {-1, 9, 0}, {1e3, 9, 0}, {2, 0, 0}, {2, -1, 0}, {2, 1e12, 0}, {2, 9, 1e12}, {2, 9, -1e12},
                {Double.NaN, 9, 0}, {2, Double.NaN, 0}, {2, 9, Double.NaN}}) {
            assertThrows(IllegalArgumentException.class, () -> new Weibull(wrong[0], wrong[1], wrong[2]));
        }
    }

    @Test
    void stretchedItLivesThroughTheSameAtTimesSoManyTimesAsLate() {
        Weibull life = new Weibull(2.2, 9, 1.5);
        for (double t = 0; t < 30; t += 0.7) {
            assertEquals(life.survival(t), life.stretched(0.75).survival(0.75 * t), 1e-12);
        }
    }

    /** By shape: from nothing, at a constant rate, and from without bound. */
    @Test
    void theRateAtTheLocationFollowsTheShape() {
        assertEquals(0, new Weibull(2, 8, 3).hazard(3), 0);
        assertEquals(1 / 8.0, new Weibull(1, 8, 3).hazard(3), 0);
        assertEquals(0, new Weibull(1, 8, 3).hazard(2.999), 0);
        assertEquals(Double.POSITIVE_INFINITY, new Weibull(0.5, 8, 3).hazard(3), 0);
    }

    /** A series takes over where the difference from 1 would lose its digits. */
    @Test
    void failingWithinAMomentKeepsItsDigits() {
        for (double span = 1e-9; span < 2; span *= 1.3) {
            double added = LIFE.cumulativeHazard(7 + span) - LIFE.cumulativeHazard(7);
            double exact = -StrictMath.expm1(-added);
            assertEquals(exact, LIFE.failingWithin(span, 7), 2e-11 * exact, "within " + span);
        }
    }

    @Test
    void shapeOneIsTheExponentialWithoutMemory() {
        Weibull exponential = new Weibull(1, 8);
        assertEquals(1 / 8.0, exponential.hazard(3), 1e-15);
        assertEquals(exponential.failingWithin(2, 0), exponential.failingWithin(2, 11), 1e-12);
        assertEquals(8, exponential.mean(), 1e-8);
        assertEquals(exponential.median(), exponential.medianResidual(30), 1e-9);
    }

    @Test
    void quantileIsTheInverseOfSurvival() {
        Weibull late = new Weibull(2.2, 9, 1.5);
        for (double p = 0.01; p < 1; p += 0.07) {
            assertEquals(1 - p, late.survival(late.quantile(p)), 1e-12);
        }
        assertEquals(1, late.survival(1.4), 0);
        assertEquals(0, late.hazard(1.4), 0);
    }

    @Test
    void hazardIsTheSlopeOfItsCumulative() {
        for (double t = 0.5; t < 20; t += 0.9) {
            double slope = (LIFE.cumulativeHazard(t + 1e-5) - LIFE.cumulativeHazard(t - 1e-5)) / 2e-5;
            assertEquals(slope, LIFE.hazard(t), 1e-6 * slope);
        }
    }

    @Test
    void meanIsTheAreaUnderTheSurvival() {
        double area = 0;
        for (int i = 0; i < 100_000; i++) {
            area += LIFE.survival((i + 0.5) * 0.0006) * 0.0006;
        }
        assertEquals(area, LIFE.mean(), 1e-6);
    }

    @Test
    void gammaHasItsKnownValuesAndRecurrence() {
        assertEquals(Math.sqrt(Math.PI) / 2, Gamma.of(1.5), 1e-9);
        assertEquals(1, Gamma.of(1), 1e-9);
        for (double x = 0.7; x < 12; x += 0.31) {
            assertEquals(x * Gamma.of(x), Gamma.of(x + 1), 1e-9 * Gamma.of(x + 1));
        }
    }

    @Test
    void halfOfThoseOfAnAgeLiveLongerThanTheMedianResidual() {
        for (double age = 0; age < 25; age += 2.5) {
            assertEquals(0.5, LIFE.failingWithin(LIFE.medianResidual(age), age), 1e-12);
        }
    }

    @Test
    void theOlderTheLikelierWhenThingsWearOut() {
        double before = 0;
        for (double age = 0.5; age < 25; age++) {
            double now = LIFE.failingWithin(1, age);
            assertTrue(now > before);
            before = now;
        }
    }

    @Test
    void fitFindsTheCurveThatMadeTheLives() {
        Weibull fit = WeibullFit.of(lives(0)).orElseThrow();
        assertEquals(LIFE.shape(), fit.shape(), 0.02 * LIFE.shape());
        assertEquals(LIFE.scale(), fit.scale(), 0.01 * LIFE.scale());
    }

    /** Units first seen at six years: whoever ignored it would take the survivors for the whole. */
    @Test
    void fitKnowsThatLateEntriesHadToSurvive() {
        List<Lifetime> late = new ArrayList<>(lives(6));
        late.addAll(lives(0));
        Weibull fit = WeibullFit.of(late).orElseThrow();
        isAtTheTop(fit, late);
        assertEquals(LIFE.shape(), fit.shape(), 0.03 * LIFE.shape());
        assertEquals(LIFE.scale(), fit.scale(), 0.02 * LIFE.scale());
        List<Lifetime> naive = lives(6).stream().map(life -> new Lifetime(0, life.left(), life.failed())).toList();
        assertTrue(WeibullFit.of(naive).orElseThrow().shape() > 1.3 * LIFE.shape());
    }

    @Test
    void fitIsAtTheTopOfTheLikelihoodAndFollowsTheUnitOfTime() {
        List<Lifetime> lives = lives(0);
        Weibull fit = WeibullFit.of(lives).orElseThrow();
        isAtTheTop(fit, lives);
        Weibull days = WeibullFit.of(lives.stream().map(life -> new Lifetime(0, life.left() * 365.25, life.failed())).toList()).orElseThrow();
        assertEquals(fit.shape(), days.shape(), 1e-9);
        assertEquals(fit.scale() * 365.25, days.scale(), 1e-6);
    }

    @Test
    void nothingIsFittedToLessThanTwoFailures() {
        assertTrue(WeibullFit.of(List.of()).isEmpty());
        assertTrue(WeibullFit.of(List.of(Lifetime.failedAt(7), Lifetime.runningAt(9))).isEmpty());
        assertTrue(WeibullFit.of(List.of(Lifetime.failedAt(7), Lifetime.failedAt(7))).isEmpty());
    }

    /** Lives of which one ends a thousand powers of ten after the other wear neither out nor in at a shape that is looked for. */
    @Test
    void nothingIsFittedWhereTheLikelihoodHasNoTop() {
        assertTrue(WeibullFit.of(List.of(Lifetime.failedAt(1e-300), Lifetime.failedAt(1e10))).isEmpty());
        assertTrue(WeibullFit.of(List.of(Lifetime.failedAt(6), Lifetime.failedAt(8))).isPresent(), "two failures are enough");
    }

    @Test
    void whatIsNoLifeIsRefused() {
        for (double[] wrong : new double[][] {{3, 3}, {3, 2}, {-1, 2}, {0, 0}, {0, 1e12}, {Double.NaN, 2}, {0, Double.NaN}}) {
            assertThrows(IllegalArgumentException.class, () -> new Lifetime(wrong[0], wrong[1], true));
        }
    }

    private static void isAtTheTop(Weibull fit, List<Lifetime> lives) {
        double top = WeibullFit.logLikelihood(fit, lives);
        for (double factor : new double[] {0.98, 1.02}) {
            assertTrue(WeibullFit.logLikelihood(new Weibull(fit.shape() * factor, fit.scale()), lives) < top);
            assertTrue(WeibullFit.logLikelihood(new Weibull(fit.shape(), fit.scale() * factor), lives) < top);
        }
    }

    /** Evenly spaced quantiles of the life of units seen from an age on, watched for at most nine years. */
    private static List<Lifetime> lives(double entered) {
        List<Lifetime> lives = new ArrayList<>();
        int count = 2000;
        for (int i = 0; i < count; i++) {
            double alive = LIFE.survival(entered) * (i + 0.5) / count;
            double end = LIFE.quantile(1 - alive);
            lives.add(new Lifetime(entered, Math.min(end, entered + 9), end <= entered + 9));
        }
        return lives;
    }
}
