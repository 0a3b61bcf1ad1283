package org.longsummer.chain.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.departure.Channel;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Visit;
import org.longsummer.science.statistics.Normal;

/**
 * Finds the optional reading with the largest expected drop of the conditions' entropy per minute of work, among those that could
 * change what is done. Outcomes are cut into a few cells whose probabilities under each history are exact.
 */
final class NextReading {
    private static final double LEAST_GAIN = 0.04;
    private static final int CELLS = 9;

    private final BayesUpdate update;
    private final Looks looks;
    private final Visit visit;

    NextReading(BayesUpdate update, Looks looks) {
        this.update = update;
        this.looks = looks;
        this.visit = update.expectation.screening().visit();
    }

    Optional<NextBestReading> best() {
        double now = entropy(shares(1, null));
        Optional<NextBestReading> best = Optional.empty();
        double bestRate = 0;
        for (Candidate candidate : candidates()) {
            double gain = 0;
            boolean matters = false;
            int decided = decision(shares(1, null));
            for (int cell = 0; cell < candidate.cells; cell++) {
                double[] after = shares(cell, candidate);
                double p = sum(after);
                if (p > 1e-6) {
                    gain += p * (now - entropy(after));
                    matters |= p > 0.04 && decision(after) != decided;
                }
            }
            double rate = gain / candidate.kind.minutes();
            if (matters && gain > LEAST_GAIN && rate > bestRate) {
                bestRate = rate;
                best = Optional.of(new NextBestReading(candidate.kind, candidate.kind.minutes(), candidate.kind.settles()));
            }
        }
        return best;
    }

    /** What would be done: the class with the largest share, filter and coil apart. */
    private static int decision(double[] shares) {
        int best = 0;
        for (int i = 1; i < shares.length; i++) {
            best = shares[i] > shares[best] ? i : best;
        }
        return best;
    }

    /** Shares of none and of each fault when the outcome falls into one cell; the sum is that cell's probability. */
    private double[] shares(int cell, Candidate candidate) {
        double[] shares = new double[Fault.ALL.length + 1];
        for (Trajectory t : update.lattice.trajectories()) {
            double p = candidate == null ? 1 : candidate.outcome.of(t, cell);
            shares[t.isSound() ? 0 : 1 + t.fault.ordinal()] += t.weight * p;
        }
        return shares;
    }

    private static double sum(double[] shares) {
        double sum = 0;
        for (double share : shares) {
            sum += share;
        }
        return sum;
    }

    private static double entropy(double[] shares) {
        double total = sum(shares);
        double entropy = 0;
        for (double share : shares) {
            if (share > 0) {
                entropy -= share / total * Math.log(share / total);
            }
        }
        return entropy;
    }

    private List<Candidate> candidates() {
        List<Candidate> all = new ArrayList<>();
        if (visit.filter() == FilterLook.NOT_LOOKED) {
            all.add(new Candidate(NextBestReading.Kind.LOOK_AT_FILTER, 2, (t, cell) -> looks.filter(
                    cell == 0 ? FilterLook.CLEAN : FilterLook.DIRTY, t.fault == Fault.FILTER ? t.severity : 0)));
        }
        if (visit.coil() == CoilLook.NOT_LOOKED) {
            CoilLook[] seen = {CoilLook.CLEAN, CoilLook.LIGHT, CoilLook.HEAVY};
            all.add(new Candidate(NextBestReading.Kind.LOOK_AT_COILS, 3, (t, cell) -> Looks.coil(seen[cell],
                    Looks.dirt(t.fault, t.severity))));
        }
        if (visit.readings().roomDryBulb().isEmpty() && visit.readings().returnDryBulb().isPresent()) {
            all.add(new Candidate(NextBestReading.Kind.ROOM_AIR, CELLS, (t, cell) -> cell(cell, -3, 7,
                    t.fault == Fault.DIVIDER ? Looks.ROOM_PER_SEVERITY * t.severity : 0, Looks.ROOM_SPREAD)));
        }
        channel(all, NextBestReading.Kind.CONDENSER_LEAVING, Channel.CONDENSER_RISE, 0.9);
        channel(all, NextBestReading.Kind.FAN_ONLY_AMPS, Channel.FAN_ONLY, 0.5);
        if (!update.expectation.screening().unit().plate().variableSpeed()) {
            channel(all, NextBestReading.Kind.AMPS, Channel.AMPS, 0.35);
        }
        if (visit.readings().capacitor().isEmpty()) {
            all.add(new Candidate(NextBestReading.Kind.CAPACITOR, CELLS, (t, cell) -> cell(cell, 0.45, 1.1,
                    t.fault == Fault.CAPACITOR ? 1 - Looks.CAPACITOR_LOSS * Math.min(t.severity, 1.3) : 1, 0.06)));
        }
        return all;
    }

    private void channel(List<Candidate> all, NextBestReading.Kind kind, Channel channel, double halfWidth) {
        int c = channel.ordinal();
        if (!update.observation.present()[c]) {
            double u = update.soundUnit(channel).standardUncertainty();
            all.add(new Candidate(kind, CELLS, (t, cell) -> cell(cell, -halfWidth, halfWidth, update.effect(t, c), u)));
        }
    }

    /** Probability that a normal value falls into one of {@link #CELLS} cells; the outer ones are open. */
    private static double cell(int cell, double low, double high, double mean, double spread) {
        double width = (high - low) / CELLS;
        double from = cell == 0 ? 0 : Normal.cumulative((low + cell * width - mean) / spread);
        double to = cell == CELLS - 1 ? 1 : Normal.cumulative((low + (cell + 1) * width - mean) / spread);
        return to - from;
    }

    private record Candidate(NextBestReading.Kind kind, int cells, Outcome outcome) {}

    private interface Outcome {
        double of(Trajectory trajectory, int cell);
    }
}
