package org.longsummer.chain.condition;

import java.util.List;
import org.longsummer.chain.departure.Channel;
import org.longsummer.chain.departure.Observation;
import org.longsummer.chain.departure.UnitBaseline;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.science.statistics.SharedKalmanFilter;
import org.longsummer.science.uncertainty.Uncertain;

/** Weighs every fault history of a unit by one visit. */
final class Weighing {
    private static final int S = Channel.SPLIT.ordinal();
    private static final int A = Channel.AMPS.ordinal();
    /** Share of a fault's effect by which the signature itself may be wrong. */
    private static final double SIGNATURE_U = 0.18;
    /** Iced coils tell of the ice: by channel, the variance with which their departures count. */
    private static final double[] ICED_VARIANCE = {0.09, 0.004, 0.02, 0};

    final Lattice lattice;
    final UnitBaseline baseline;
    final Expectation expectation;
    final Observation observation;
    final List<Looks.Look> looks;
    final Signature[] signatures = new Signature[Fault.ALL.length];
    final double[][] design;
    final double[] load = new double[Channel.COUNT];
    final double lnLoadCapacity;
    private final SharedKalmanFilter.Foresight foresight;
    private final double[][] predicted;
    private final double[][] evidenceNoise;

    Weighing(Lattice lattice, UnitBaseline baseline, Looks looks, Expectation expectation, Observation observation) {
        this.lattice = lattice;
        this.baseline = baseline;
        this.expectation = expectation;
        this.observation = observation;
        this.looks = looks.of(expectation.screening());
        for (Fault fault : Fault.ALL) {
            signatures[fault.ordinal()] = Signature.of(fault, expectation.machine(), expectation.surroundings().condenserAir());
        }
        design = baseline.design(expectation);
        evidenceNoise = baseline.asEvidence(observation.noise());
        foresight = baseline.foresee(design, evidenceNoise);
        predicted = foresight.predicted();
        load[S] = looks.filterAge().lnSplit();
        load[A] = looks.filterAge().lnAmps();
        lnLoadCapacity = looks.filterAge().lnCapacity();
        foresee();
    }

    /** ln(measured / bare expectation) of the sound unit on one channel, over all histories, with its standard uncertainty. */
    Uncertain soundUnit(Channel channel) {
        int c = channel.ordinal();
        double mean = 0;
        double square = 0;
        for (Trajectory t : lattice.trajectories()) {
            double value = t.sound[c];
            mean += t.weight * value;
            square += t.weight * value * value;
        }
        double spread = Math.max(0, square - mean * mean);
        double variance = predicted[c][c] - evidenceNoise[c][c] + observation.noise()[c][c];
        return new Uncertain(mean, Math.sqrt(variance + spread));
    }

    /**
     * What every history says of this visit before its readings count. Histories that branched from one another share their means
     * until they have learned: what those give is worked out once.
     */
    private void foresee() {
        double[] mean = null;
        double[] sound = null;
        for (Trajectory t : lattice.trajectories()) {
            if (t.mean != mean) {
                mean = t.mean;
                sound = UnitBaseline.sound(design, mean);
            }
            t.sound = sound;
            t.onSplit = t.fault == null ? 0 : signatures[t.fault.ordinal()].onChannel(S, t.severity);
            t.onAmps = t.fault == null ? 0 : signatures[t.fault.ordinal()].onChannel(A, t.severity);
        }
    }

    /** What the history's fault does to a channel now. */
    double effect(Trajectory t, int channel) {
        return channel == S ? t.onSplit : channel == A ? t.onAmps
                : t.fault == null ? 0 : signatures[t.fault.ordinal()].onChannel(channel, t.severity);
    }

    double lnCapacity(Trajectory t) {
        return lnLoadCapacity + (t.fault == null ? 0 : signatures[t.fault.ordinal()].lnCapacity(t.severity));
    }

    private double surprise(Trajectory t, int channel) {
        return observation.values()[channel] - t.sound[channel] - load[channel] - effect(t, channel);
    }

    /** Density of the visit's split and amps under one history; 1 when neither was read. */
    double departures(Trajectory t) {
        boolean[] present = observation.present();
        return present[S] && present[A] ? both(t) : present[S] ? single(t, S) : present[A] ? single(t, A) : 1;
    }

    /** Likelihood of the side readings and looks under one history. */
    double side(Trajectory t) {
        double likelihood = 1;
        for (int c = 2; c < Channel.COUNT; c++) {
            if (observation.present()[c]) {
                likelihood *= single(t, c);
            }
        }
        for (Looks.Look look : looks) {
            likelihood *= t.isSound() || !look.tellsOf(t.fault) ? look.ofSound() : look.likelihood().of(t.fault, t.severity);
        }
        return likelihood;
    }

    /** Density of one channel's departure under one history. */
    double single(Trajectory t, int channel) {
        double variance = predicted[channel][channel] + extra(t, channel);
        double e = surprise(t, channel);
        return Math.exp(-0.5 * e * e / variance) / Math.sqrt(2 * Math.PI * variance);
    }

    private double both(Trajectory t) {
        double a = predicted[S][S] + extra(t, S);
        double b = predicted[S][A];
        double c = predicted[A][A] + extra(t, A);
        double determinant = a * c - b * b;
        double x = surprise(t, S);
        double y = surprise(t, A);
        double quadratic = (c * x * x - 2 * b * x * y + a * y * y) / determinant;
        return Math.exp(-0.5 * quadratic) / (2 * Math.PI * Math.sqrt(determinant));
    }

    private double extra(Trajectory t, int channel) {
        double u = SIGNATURE_U * effect(t, channel);
        double iced = expectation.screening().visit().icedCoil() ? ICED_VARIANCE[channel] : 0;
        return u * u + iced;
    }

    /**
     * Every history learns what the sound unit must be like if it is the true one; the shared covariance narrows.
     *
     * @param believed the readings are more likely honest than not
     */
    void learn(boolean believed) {
        int[] made = observation.made();
        if (made.length == 0) {
            return;
        }
        SharedKalmanFilter.Step step = foresight.whenMade(made);
        double[][] gain = transposed(step.gain());
        for (Trajectory t : lattice.trajectories()) {
            double[] moved = new double[t.mean.length];
            for (int k = 0; k < made.length; k++) {
                double variance = predicted[made[k]][made[k]];
                add(moved, gain[k], t.honest * (variance / (variance + extra(t, made[k]))) * surprise(t, made[k]));
            }
            add(moved, t.mean, 1);
            t.mean = moved;
        }
        if (believed && !expectation.screening().visit().icedCoil()) {
            baseline.accept(step);
        }
    }

    /** Rows for columns, so that what is added up lies side by side. */
    private static double[][] transposed(double[][] matrix) {
        double[][] transposed = new double[matrix[0].length][matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int k = 0; k < transposed.length; k++) {
                transposed[k][i] = matrix[i][k];
            }
        }
        return transposed;
    }

    private static void add(double[] sum, double[] row, double factor) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += row[i] * factor;
        }
    }
}
