package org.longsummer.chain.outlook;

import java.util.List;
import java.util.OptionalDouble;
import org.longsummer.chain.condition.Growth;

/**
 * Distribution of the time, in seasons of running, at which a unit reaches the limit: a histogram to which every hypothesis adds the
 * times of its own growth, its rate uncertain within what the history's grid of rates resolves.
 */
final class FirstPassage {
    private static final int BINS = 256;
    /** Ln standard deviation of a rate: half a step of a grid of factor two, as a uniform, and the season's weather and use. Ours. */
    private static final double RATE_SPREAD = 0.25;
    /** The same of what does not extrapolate: a dying compressor. Ours. */
    private static final double COMPRESSOR_SPREAD = 0.6;
    /** Mean of each ninth of a standard normal distribution, for equal weights. */
    private static final double[] NINTHS = {-1.7046, -0.9757, -0.5922, -0.2832, 0, 0.2832, 0.5922, 0.9757, 1.7046};
    /** Ascending, so that what lies beyond the horizon comes last. */
    private static final double[] NARROW = factors(RATE_SPREAD);
    private static final double[] WIDE = factors(COMPRESSOR_SPREAD);

    private final double horizon;
    private final double[] mass;
    private final double already;

    private FirstPassage(double horizon, double[] mass, double already) {
        this.horizon = horizon;
        this.mass = mass;
        this.already = already;
    }

    /** What a fault model brings to every unit alike: its limits, and the passage of a unit that is sound now. */
    static final class Ahead {
        private final double horizon;
        private final double[] limits = new double[Variant.COUNT];
        private final double[] sound = new double[BINS];

        /** @param horizon seasons of running to look ahead, above 0 */
        Ahead(FaultModel model, double horizon) {
            this.horizon = horizon;
            for (Variant variant : Variant.values()) {
                limits[variant.ordinal()] = model.effects(variant).severityAtLimit();
                addNewFaults(model, variant);
            }
        }

        FirstPassage of(List<Hypothesis> hypotheses) {
            double[] mass = new double[BINS];
            double already = 0;
            double nothing = 0;
            for (Hypothesis hypothesis : hypotheses) {
                double left = limits[hypothesis.variant().ordinal()] - hypothesis.severity();
                if (hypothesis.variant() == Variant.NONE) {
                    nothing += hypothesis.weight();
                } else if (left <= 0) {
                    already += hypothesis.weight();
                } else if (hypothesis.ratePerSeason() > 0) {
                    grow(mass, left / hypothesis.ratePerSeason(), hypothesis);
                }
            }
            for (int bin = 0; bin < BINS; bin++) {
                mass[bin] += nothing * sound[bin];
            }
            return new FirstPassage(horizon, mass, already);
        }

        private void grow(double[] mass, double time, Hypothesis hypothesis) {
            double share = hypothesis.weight() / NINTHS.length;
            for (double factor : hypothesis.variant() == Variant.COMPRESSOR ? WIDE : NARROW) {
                double position = time * factor / horizon * BINS;
                if (!(position < BINS)) {
                    return;
                }
                mass[(int) position] += share;
            }
        }

        /** A sound unit: a fault may come at any time ahead, at an even hazard, and then take its time to grow. */
        private void addNewFaults(FaultModel model, Variant variant) {
            double total = model.onsets();
            double hazard = model.onsetsPerSeason().get(variant.ordinal());
            double limit = limits[variant.ordinal()];
            for (Growth way : model.growth()) {
                double lag = way.step() >= limit ? 0 : way.ratePerSeason() > 0 ? (limit - way.step()) / way.ratePerSeason() : horizon;
                if (hazard > 0 && lag < horizon) {
                    spread(hazard / total * way.share(), total, lag);
                }
            }
        }

        private void spread(double share, double hazard, double lag) {
            double width = horizon / BINS;
            double before = 0;
            for (int bin = (int) (lag / width); bin < BINS; bin++) {
                double reached = 1 - Math.exp(-hazard * Math.max(0, (bin + 1) * width - lag));
                sound[bin] += share * (reached - before);
                before = reached;
            }
        }
    }

    double already() {
        return already;
    }

    /** Probability of reaching the limit by the horizon. */
    double withinHorizon() {
        double sum = already;
        for (double share : mass) {
            sum += share;
        }
        return sum;
    }

    /** Seasons of running until the probability is reached: 0 when it is already, empty when the horizon does not reach it. */
    OptionalDouble seasonsUntil(double probability) {
        double sum = already;
        if (sum >= probability) {
            return OptionalDouble.of(0);
        }
        for (int bin = 0; bin < BINS; bin++) {
            if (sum + mass[bin] >= probability) {
                return OptionalDouble.of((bin + (probability - sum) / mass[bin]) * horizon / BINS);
            }
            sum += mass[bin];
        }
        return OptionalDouble.empty();
    }

    private static double[] factors(double spread) {
        double[] factors = new double[NINTHS.length];
        for (int i = 0; i < factors.length; i++) {
            factors[i] = Math.exp(spread * NINTHS[i]);
        }
        return factors;
    }
}
