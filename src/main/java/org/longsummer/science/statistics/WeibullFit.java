package org.longsummer.science.statistics;

import java.util.List;
import java.util.Optional;

/**
 * Maximum likelihood fit of a two-parameter Weibull to failed and right-censored lives, also ones first seen at an age.
 *
 * <p>The scale that belongs to a shape is l^k = sum(t^k - e^k)/r over all lives (r failures, entered at e); put back, the derivative of
 * the likelihood by the shape alone has to vanish: 1/k + mean(ln t of the failed) - sum(t^k ln t - e^k ln e)/sum(t^k - e^k) = 0. Without
 * late entries this is the equation of NIST/SEMATECH e-Handbook 8.4.1.3 [nist-ehandbook].
 */
public final class WeibullFit {
    private static final double LEAST_SHAPE = 0.05;
    private static final double LARGEST_SHAPE = 50;
    private static final int HALVINGS = 100;

    private WeibullFit() {}

    /** @return empty when fewer than two lives failed, or when the likelihood has no maximum at a shape of 0.05 to 50 */
    public static Optional<Weibull> of(List<Lifetime> lives) {
        int failures = 0;
        double longest = 0;
        double meanLog = 0;
        for (Lifetime life : lives) {
            longest = Math.max(longest, life.left());
            if (life.failed()) {
                failures++;
                meanLog += Math.log(life.left());
            }
        }
        if (failures < 2) {
            return Optional.empty();
        }
        meanLog = meanLog / failures - Math.log(longest);
        if (!(slope(lives, longest, meanLog, LEAST_SHAPE) > 0 && slope(lives, longest, meanLog, LARGEST_SHAPE) < 0)) {
            return Optional.empty();
        }
        double shape = root(lives, longest, meanLog);
        return Optional.of(new Weibull(shape, longest * Math.pow(sums(lives, longest, shape)[0] / failures, 1 / shape)));
    }

    /** Log-likelihood of a Weibull given the lives. */
    public static double logLikelihood(Weibull weibull, List<Lifetime> lives) {
        double sum = 0;
        for (Lifetime life : lives) {
            sum -= weibull.cumulativeHazard(life.left()) - weibull.cumulativeHazard(life.entered());
            if (life.failed()) {
                sum += Math.log(weibull.hazard(life.left()));
            }
        }
        return sum;
    }

    private static double root(List<Lifetime> lives, double longest, double meanLog) {
        double low = LEAST_SHAPE;
        double high = LARGEST_SHAPE;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (slope(lives, longest, meanLog, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double slope(List<Lifetime> lives, double longest, double meanLog, double shape) {
        double[] sums = sums(lives, longest, shape);
        return 1 / shape + meanLog - sums[1] / sums[0];
    }

    /** Sums of t^k - e^k and of t^k ln t - e^k ln e, times in units of the longest life so that no power overflows. */
    private static double[] sums(List<Lifetime> lives, double longest, double shape) {
        double plain = 0;
        double weighted = 0;
        for (Lifetime life : lives) {
            double left = Math.log(life.left() / longest);
            double power = Math.exp(shape * left);
            plain += power;
            weighted += power * left;
            if (life.entered() > 0) {
                double entered = Math.log(life.entered() / longest);
                double entryPower = Math.exp(shape * entered);
                plain -= entryPower;
                weighted -= entryPower * entered;
            }
        }
        return new double[] {plain, weighted};
    }
}
