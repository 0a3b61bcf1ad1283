package org.longsummer.chain.outlook;

import java.util.List;
import java.util.OptionalDouble;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Growth;
import org.longsummer.chain.condition.Hypothesis;

/**
 * Distribution of the time, in seasons of running, at which the fault that a unit has now reaches the limit: a histogram to which every
 * hypothesis adds the times of its own growth, its rate uncertain within what the history's grid of rates resolves. What may yet begin
 * is counted apart: it has a chance, and no date worth planning with.
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
    private final double ofPresentFault;
    private final double newFaults;

    private FirstPassage(double horizon, double[] mass, double already, double newFaults) {
        this.horizon = horizon;
        this.mass = mass;
        this.already = already;
        double sum = already;
        for (double share : mass) {
            sum += share;
        }
        this.ofPresentFault = sum;
        this.newFaults = newFaults;
    }

    /** What a fault model brings to every unit alike: its limits, and the chance of a unit that is sound now. */
    static final class Ahead {
        private final double horizon;
        private final double[] limits = new double[Fault.COUNT];
        private double sound;

        /** @param horizon seasons of running to look ahead, above 0 */
        Ahead(FaultModel model, double horizon) {
            this.horizon = horizon;
            for (Fault fault : Fault.values()) {
                limits[fault.ordinal()] = model.effects(fault).severityAtLimit();
                addNewFaults(model, fault);
            }
        }

        FirstPassage of(List<Hypothesis> hypotheses) {
            double[] mass = new double[BINS];
            double already = 0;
            double nothing = 0;
            for (Hypothesis hypothesis : hypotheses) {
                if (hypothesis.isSound()) {
                    nothing += hypothesis.weight();
                    continue;
                }
                double left = limits[hypothesis.fault().get().ordinal()] - hypothesis.severity();
                if (left <= 0) {
                    already += hypothesis.weight();
                } else if (hypothesis.ratePerSeason() > 0) {
                    grow(mass, left / hypothesis.ratePerSeason(), hypothesis);
                }
            }
            return new FirstPassage(horizon, mass, already, nothing * sound);
        }

        private void grow(double[] mass, double time, Hypothesis hypothesis) {
            double share = hypothesis.weight() / NINTHS.length;
            double bins = time / horizon * BINS;
            for (double factor : hypothesis.isOf(Fault.COMPRESSOR) ? WIDE : NARROW) {
                double position = bins * factor;
                if (!(position < BINS)) {
                    return;
                }
                mass[(int) position] += share;
            }
        }

        /** A sound unit: a fault may come at any time ahead, at an even hazard, and then take its time to grow. */
        private void addNewFaults(FaultModel model, Fault fault) {
            double total = model.onsets();
            double hazard = model.onsetsPerSeason().get(fault.ordinal());
            double limit = limits[fault.ordinal()];
            for (Growth way : model.growth()) {
                double lag = way.step() >= limit ? 0 : way.ratePerSeason() > 0 ? (limit - way.step()) / way.ratePerSeason() : horizon;
                if (hazard > 0 && lag < horizon) {
                    sound += hazard / total * way.share() * (1 - Math.exp(-total * (horizon - lag)));
                }
            }
        }
    }

    double already() {
        return already;
    }

    /** Probability that the fault that is there now is at the limit by the horizon. */
    double ofPresentFault() {
        return ofPresentFault;
    }

    /** Probability of being at the limit by the horizon, by what is there now or by what may come. */
    double withinHorizon() {
        return ofPresentFault() + newFaults;
    }

    /** Seasons of running until a share of what reaches the limit by the horizon is there; 0 for what is there already. */
    OptionalDouble seasonsUntil(double share) {
        double wanted = share * ofPresentFault();
        double sum = already;
        if (wanted > 0 && sum >= wanted) {
            return OptionalDouble.of(0);
        }
        for (int bin = 0; bin < BINS && wanted > 0; bin++) {
            if (sum + mass[bin] >= wanted) {
                return OptionalDouble.of((bin + (wanted - sum) / mass[bin]) * horizon / BINS);
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
