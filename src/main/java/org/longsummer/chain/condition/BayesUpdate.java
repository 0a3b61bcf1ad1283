package org.longsummer.chain.condition;

import java.util.List;
import java.util.Set;
import org.longsummer.chain.departure.Channel;
import org.longsummer.chain.departure.ExpectationBudget;
import org.longsummer.chain.departure.Observation;
import org.longsummer.chain.departure.UnitBaseline;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.science.statistics.SharedKalmanFilter;
import org.longsummer.science.uncertainty.Budget;
import org.longsummer.science.uncertainty.Uncertain;

/** Weighs every fault history of a unit by one visit: likelihoods before, what each history learns after. */
final class BayesUpdate {
    private static final int S = Channel.SPLIT.ordinal();
    private static final int A = Channel.AMPS.ordinal();
    /** Share of a fault's effect by which the signature itself may be wrong. */
    private static final double SIGNATURE_U = 0.18;
    /** Far below any density that counts; keeps a sum of shares above nothing where all of them would vanish. */
    private static final double NOTHING_IS_IMPOSSIBLE = 1e-200;
    private static final double NOTICEABLE = 0.02;
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
    /** Variance of split and amps that is new at this visit: their own noise, and the model's on this day. */
    private final double[] anew;
    private final boolean learns;
    private final boolean learnsScatter;
    /** Share of readings that are a mistake nobody recognised. */
    final double mistakes;

    BayesUpdate(Lattice lattice, UnitBaseline baseline, Looks looks, Expectation expectation, Observation observation,
            Set<Ingredient> without) {
        learns = !without.contains(Ingredient.UNIT_BASELINE);
        learnsScatter = !without.contains(Ingredient.SCATTER);
        mistakes = without.contains(Ingredient.MISTAKES) ? 0 : Mistakes.SHARE;
        this.lattice = lattice;
        this.baseline = baseline;
        this.expectation = expectation;
        this.observation = observation;
        this.looks = looks.of(expectation.screening());
        // a starved evaporator shows alike whether its coil or its filter is dirty
        for (Fault fault : Fault.ALL) {
            signatures[fault.ordinal()] = fault == Fault.FILTER ? signatures[Fault.EVAPORATOR_COIL.ordinal()]
                    : Signature.of(fault, expectation.machine(), expectation.surroundings().condenserAir());
        }
        design = baseline.design(expectation);
        evidenceNoise = without.contains(Ingredient.SAME_DAY) ? observation.noise() : baseline.asEvidence(observation.noise());
        foresight = baseline.foresee(design, evidenceNoise);
        predicted = foresight.predicted();
        anew = new double[] {evidenceNoise[S][S] + baseline.dayVariance(Channel.SPLIT),
            evidenceNoise[A][A] + baseline.dayVariance(Channel.AMPS)};
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
        return new Uncertain(mean, Math.sqrt(ofOneReading(c) + spread));
    }

    /** The lines of {@link #soundUnit}'s uncertainty. */
    Budget budget(Channel channel, Uncertain sound) {
        int c = channel.ordinal();
        double spread = sound.standardUncertainty() * sound.standardUncertainty() - ofOneReading(c);
        return ExpectationBudget.of(channel, expectation, baseline, design[c], scatter(c), spread);
    }

    /** Foreseen variance of one reading by itself, repeated on one day or not, by how this unit's readings scatter. */
    private double ofOneReading(int c) {
        double repeated = evidenceNoise[c][c] - observation.noise()[c][c];
        return predicted[c][c] - repeated + (c <= A ? (scatter(c) - 1) * (anew[c] - repeated) : 0);
    }

    /** How widely the readings scatter, over all histories: ratio of variances. */
    private double scatter(int c) {
        double ratio = 0;
        for (Trajectory t : lattice.trajectories()) {
            ratio += t.weight * (c == S ? t.splitScatter : t.ampsScatter).ratio();
        }
        return ratio;
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

    /** What the unit shows on a channel against the sound unit, ln, over all histories. */
    Uncertain faultEffect(Channel channel) {
        double mean = 0;
        double square = 0;
        for (Trajectory t : lattice.trajectories()) {
            double value = effect(t, channel.ordinal());
            mean += t.weight * value;
            square += t.weight * value * value;
        }
        return new Uncertain(mean, Math.sqrt(Math.max(0, square - mean * mean)));
    }

    /** A fault that takes a fiftieth of the capacity, or moves the amps by as much: below that no owner and hardly a meter can tell. */
    boolean isNoticeable(Trajectory t) {
        return !t.isSound() && Math.max(Math.abs(signatures[t.fault.ordinal()].lnCapacity(t.severity)), Math.abs(effect(t, A))) > NOTICEABLE;
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
        double variance = variance(t, channel);
        double e = surprise(t, channel);
        return Math.exp(-0.5 * e * e / variance) / Math.sqrt(2 * Math.PI * variance) + NOTHING_IS_IMPOSSIBLE;
    }

    /** Split and amps share errors of humidity and weather: their correlation stays when they scatter otherwise than foreseen. */
    private double both(Trajectory t) {
        double a = foreseen(t, S);
        double c = foreseen(t, A);
        double b = predicted[S][A] * Math.sqrt(a * c / (predicted[S][S] * predicted[A][A]));
        a += extra(t, S);
        c += extra(t, A);
        double determinant = a * c - b * b;
        double x = surprise(t, S);
        double y = surprise(t, A);
        double quadratic = (c * x * x - 2 * b * x * y + a * y * y) / determinant;
        return Math.exp(-0.5 * quadratic) / (2 * Math.PI * Math.sqrt(determinant)) + NOTHING_IS_IMPOSSIBLE;
    }

    /** Like {@link #single}, had the unit no fault: only what the history says of the sound unit counts. */
    double singleIfSound(Trajectory t, int channel) {
        double variance = foreseen(t, channel) + iced(channel);
        double e = observation.values()[channel] - t.sound[channel] - load[channel];
        return Math.exp(-0.5 * e * e / variance) / Math.sqrt(2 * Math.PI * variance) + NOTHING_IS_IMPOSSIBLE;
    }

    private double iced(int channel) {
        return expectation.screening().visit().icedCoil() ? ICED_VARIANCE[channel] : 0;
    }

    private double variance(Trajectory t, int channel) {
        return foreseen(t, channel) + extra(t, channel);
    }

    /** Foreseen variance of a channel by how the readings scatter under one history. */
    private double foreseen(Trajectory t, int channel) {
        return channel > A ? predicted[channel][channel]
                : predicted[channel][channel] + ((channel == S ? t.splitScatter : t.ampsScatter).ratio() - 1) * anew[channel];
    }

    private double extra(Trajectory t, int channel) {
        double u = SIGNATURE_U * effect(t, channel);
        return u * u + iced(channel);
    }

    /** Every history learns what the sound unit must be like if it is the true one; the shared covariance narrows. */
    void learn() {
        int[] made = observation.made();
        if (made.length == 0 || !learns) {
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
            learnScatter(t);
            add(moved, t.mean, 1);
            t.mean = moved;
        }
        if (!expectation.screening().visit().icedCoil()) {
            baseline.accept(step, design, made);
        }
    }

    private void learnScatter(Trajectory t) {
        if (learnsScatter && observation.present()[S]) {
            t.splitScatter = scatterAfter(t, S, t.splitScatter);
        }
        if (learnsScatter && observation.present()[A]) {
            t.ampsScatter = scatterAfter(t, A, t.ampsScatter);
        }
    }

    private Scatter scatterAfter(Trajectory t, int channel, Scatter before) {
        double variance = variance(t, channel);
        double e = surprise(t, channel);
        return before.after(before.ratio() * anew[channel] / variance, e * e / variance, t.honest);
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
