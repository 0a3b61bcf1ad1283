package org.longsummer.chain.condition;

import java.util.Optional;
import org.longsummer.chain.condition.BeforeAfter.Outcome;
import org.longsummer.chain.departure.Channel;
import org.longsummer.chain.departure.Observation;
import org.longsummer.chain.visit.Visit;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * A visit before work, kept to be compared with the reading after it. Two visits of one technician on one day share probes, meter
 * and model error, so that their difference is surer than either.
 */
final class Comparison {
    /** Share of a reading's variance that is new at the second reading of one day with the same instruments (practice). */
    private static final double NEW_ON_ONE_DAY = 0.5;
    private static final double MODEL_VARIANCE = 0.0005;
    private static final double INSTRUMENT_VARIANCE = 0.0004;
    private static final int MOST_DAYS = 14;
    private static final double DECISIVE = 1.5;
    private static final double LEAST_SUSPICION = 0.2;

    private final Visit before;
    private final Observation observation;
    private final double suspected;
    private final double[] effect;

    /** Keeps what was read and believed at a visit after which work was done. */
    Comparison(BayesUpdate update, Visit visit) {
        this.before = visit;
        this.observation = update.observation;
        double share = 0;
        double[] sum = new double[2];
        for (Trajectory t : update.lattice.trajectories()) {
            if (!t.isSound() && visit.workDone().contains(t.fault.cure())) {
                share += t.weight;
                sum[0] += t.weight * update.effect(t, 0);
                sum[1] += t.weight * update.effect(t, 1);
            }
        }
        suspected = share;
        effect = share > 0 ? new double[] {sum[0] / share, sum[1] / share} : sum;
    }

    /** What the work changed; empty when the reading again came too late to be compared. */
    Optional<BeforeAfter> with(Observation after, Visit again) {
        long days = again.localDay().toEpochDay() - before.localDay().toEpochDay();
        if (days > MOST_DAYS || days < 0) {
            return Optional.empty();
        }
        Optional<Uncertain> split = change(after, again, Channel.SPLIT);
        Optional<Uncertain> amps = change(after, again, Channel.AMPS);
        if (split.isEmpty() && amps.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new BeforeAfter(before.id(), before.workDone(), split, amps, outcome(split, amps)));
    }

    private Optional<Uncertain> change(Observation after, Visit again, Channel channel) {
        int c = channel.ordinal();
        if (!observation.present()[c] || !after.present()[c]) {
            return Optional.empty();
        }
        boolean oneDay = again.localDay().equals(before.localDay());
        boolean same = !again.technician().isEmpty() && again.technician().equals(before.technician());
        double variance = (observation.noise()[c][c] + after.noise()[c][c]) * (oneDay && same ? NEW_ON_ONE_DAY : 1)
                + (oneDay ? 0 : 2 * MODEL_VARIANCE) + (same ? 0 : 2 * INSTRUMENT_VARIANCE);
        return Optional.of(new Uncertain(after.values()[c] - observation.values()[c], Math.sqrt(variance)));
    }

    private Outcome outcome(Optional<Uncertain> split, Optional<Uncertain> amps) {
        double cured = logLikelihood(split, -effect[0]) + logLikelihood(amps, -effect[1]);
        double unchanged = logLikelihood(split, 0) + logLikelihood(amps, 0);
        if (suspected < LEAST_SUSPICION) {
            return isNothing(split) && isNothing(amps) ? Outcome.NOTHING_TO_HELP : Outcome.CANNOT_TELL;
        }
        return cured - unchanged > DECISIVE ? Outcome.HELPED : unchanged - cured > DECISIVE ? Outcome.DID_NOT_HELP : Outcome.CANNOT_TELL;
    }

    private static boolean isNothing(Optional<Uncertain> change) {
        return change.isEmpty() || Math.abs(change.get().value()) < 2 * change.get().standardUncertainty();
    }

    private static double logLikelihood(Optional<Uncertain> change, double mean) {
        return change.map(c -> {
            double z = (c.value() - mean) / c.standardUncertainty();
            return -0.5 * z * z;
        }).orElse(0.0);
    }
}
