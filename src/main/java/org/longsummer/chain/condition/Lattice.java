package org.longsummer.chain.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longsummer.chain.departure.UnitBaseline;
import org.longsummer.chain.visit.Work;

/**
 * A deterministic set of weighted fault histories of one unit. Histories are born at the middle of each interval between visits,
 * grow at one of a few rates or stand after a sudden step, are weighed by every visit, and are dropped when they no longer matter.
 * No random numbers: the same visits give the same set.
 */
final class Lattice {
    /** Growth per season of running and how often (practice). */
    static final double[] RATES = {0.3, 0.6, 1.2, 2.4};
    static final double[] RATE_SHARES = {0.25, 0.35, 0.30, 0.10};
    static final double[] STEPS = {0.35, 0.7, 1.1, 1.6};
    static final double STEP_SHARE = 0.25;
    private static final double HAZARDS;

    static {
        double sum = 0;
        for (Fault fault : Fault.ALL) {
            sum += fault.hazard();
        }
        HAZARDS = sum;
    }

    /** Share of units that come with a fault to their first visit: small, since a large one does more harm than any error of physics. */
    private static final double ARRIVES_FAULTY = 0.06;
    private static final double[] ARRIVAL_SEVERITIES = {0.25, 0.5, 0.75, 1.0};
    private static final double[] ARRIVAL_SHARES = {0.35, 0.3, 0.2, 0.15};
    private static final double ARRIVAL_RATE = 0.5;
    private static final double LONG_INTERVAL = 0.35;
    private static final double LOG_NEGLIGIBLE = Math.log(1e5);
    private static final int STEPS_PER_UNIT = 10;
    private static final int STEPS_COUNTED = (int) (LOG_NEGLIGIBLE * STEPS_PER_UNIT) + 1;
    /** The furthest step's end. */
    private static final double FURTHEST = Math.exp(-(double) STEPS_COUNTED / STEPS_PER_UNIT);
    /** About so many histories are kept. */
    private static final int MOST = 150;

    private List<Trajectory> trajectories = new ArrayList<>();
    /** Probability of no fault by time alone, had nothing ever been read. */
    private double soundByTime = 1 - ARRIVES_FAULTY;

    /** A unit at its first visit. */
    Lattice(double[] start, long day) {
        trajectories.add(new Trajectory(null, 0, day, 0, 1 - ARRIVES_FAULTY, start));
        for (Fault fault : Fault.ALL) {
            for (int i = 0; i < ARRIVAL_SEVERITIES.length; i++) {
                double share = ARRIVES_FAULTY * fault.hazard() / HAZARDS * ARRIVAL_SHARES[i];
                trajectories.add(new Trajectory(fault, ARRIVAL_RATE, day, ARRIVAL_SEVERITIES[i], share, start));
            }
        }
        normalise();
    }

    private Lattice() {}

    Lattice copy() {
        Lattice copy = new Lattice();
        copy.soundByTime = soundByTime;
        for (Trajectory t : trajectories) {
            copy.trajectories.add(t.copy());
        }
        return copy;
    }

    List<Trajectory> trajectories() {
        return trajectories;
    }

    /** By how much the readings have raised the odds of a fault over what time alone makes of them. */
    double evidenceOfFault(double soundNow) {
        return (1 - soundNow) / Math.max(soundNow, 1e-12) * soundByTime / (1 - soundByTime);
    }

    List<Hypothesis> hypotheses() {
        List<Hypothesis> hypotheses = new ArrayList<>(trajectories.size());
        for (Trajectory t : trajectories) {
            hypotheses.add(new Hypothesis(t.weight, t.fault == null ? Optional.empty() : t.fault.supposed(), t.severity, t.rate));
        }
        return hypotheses;
    }

    void renew(List<UnitBaseline.Renewal> renewals) {
        double[] mean = null;
        for (Trajectory trajectory : trajectories) {
            if (trajectory.mean != mean) {
                mean = trajectory.mean;
                for (UnitBaseline.Renewal renewal : renewals) {
                    mean[renewal.state()] = renewal.mean();
                }
            }
        }
    }

    /** Time passes: faults grow, and new ones may have begun. */
    void advance(double seasons, long from, long to) {
        if (seasons <= 0) {
            scale();
            return;
        }
        double stillSound = Math.exp(-HAZARDS * seasons);
        soundByTime *= stillSound;
        int pieces = seasons > LONG_INTERVAL ? (int) Math.min(4, Math.ceil(seasons / LONG_INTERVAL)) : 1;
        List<Trajectory> born = new ArrayList<>(MOST);
        for (Trajectory trajectory : trajectories) {
            trajectory.grow(seasons);
            if (trajectory.fault == null) {
                for (int piece = 0; piece < pieces; piece++) {
                    double middle = (piece + 0.5) / pieces;
                    spawn(born, trajectory, seasons / pieces, seasons * (1 - middle), from + (long) ((to - from) * middle));
                }
                trajectory.carried *= stillSound;
            }
        }
        trajectories.addAll(born);
        scale();
    }

    private static void spawn(List<Trajectory> born, Trajectory parent, double piece, double since, long onset) {
        for (Fault fault : Fault.ALL) {
            double begun = parent.carried * fault.hazard() * piece;
            for (int i = 0; i < RATES.length; i++) {
                born.add(new Trajectory(fault, RATES[i], onset, Math.min(Trajectory.MOST_SEVERE, RATES[i] * since),
                        begun * (1 - STEP_SHARE) * RATE_SHARES[i], parent.mean).scatteringLike(parent));
            }
            for (double step : STEPS) {
                born.add(new Trajectory(fault, 0, onset, step, begun * STEP_SHARE / STEPS.length, parent.mean).scatteringLike(parent));
            }
        }
    }

    /** Work resets what it resets: dirt gathers again at its own rate, anything else that was mended is gone. */
    void work(Set<Work> done) {
        for (int i = 0; i < trajectories.size(); i++) {
            Trajectory t = trajectories.get(i);
            if (t.fault != null && done.contains(t.fault.cure())) {
                t.severity = 0;
                if (!t.fault.comesBack(t.rate)) {
                    trajectories.set(i, new Trajectory(null, 0, t.onset, 0, t.carried, t.mean).scatteringLike(t));
                }
            }
        }
        normalise();
    }

    /** Drops what no longer matters and scales the weights to add up to one. */
    void normalise() {
        double best = 0;
        for (Trajectory trajectory : trajectories) {
            best = Math.max(best, trajectory.carried);
        }
        double least = best * Math.exp(-reach(best));
        List<Trajectory> kept = new ArrayList<>(MOST + 40);
        for (Trajectory trajectory : trajectories) {
            if (trajectory.carried > least) {
                kept.add(trajectory);
            }
        }
        trajectories = kept;
        scale();
    }

    /** How far below the best, ln, a history may lie so that about {@link #MOST} stay: by counting them in steps of a tenth. */
    private double reach(double best) {
        double[] below = new double[trajectories.size()];
        int count = 0;
        for (Trajectory trajectory : trajectories) {
            if (trajectory.carried > best * FURTHEST) {
                below[count++] = best / trajectory.carried;
            }
        }
        return count <= MOST ? LOG_NEGLIGIBLE : reach(below, count);
    }

    private static double reach(double[] below, int count) {
        int[] counts = new int[STEPS_COUNTED];
        for (int i = 0; i < count; i++) {
            counts[Math.min(STEPS_COUNTED - 1, (int) (Math.log(below[i]) * STEPS_PER_UNIT))]++;
        }
        int sum = 0;
        for (int step = 0; step < STEPS_COUNTED; step++) {
            sum += counts[step];
            if (sum > MOST) {
                return (step + 1.0) / STEPS_PER_UNIT;
            }
        }
        return LOG_NEGLIGIBLE;
    }

    /** Probability over all histories that the readings of the visit in hand are no mistake. */
    double honesty() {
        double sum = 0;
        double honest = 0;
        for (Trajectory trajectory : trajectories) {
            double weight = trajectory.carried * trajectory.news;
            sum += weight;
            honest += weight * trajectory.honest;
        }
        return honest / sum;
    }

    /** Every history is weighed by what was read. */
    void takeNews() {
        for (Trajectory trajectory : trajectories) {
            trajectory.carried *= trajectory.news;
        }
        normalise();
    }

    /**
     * Until time passes, weights are those under which the readings of the visit in hand are no mistake: a verdict that takes them for
     * good must not find the unit sounder the further they are off. What is carried on allows for a mistake again.
     */
    void takeAtTheirWord() {
        double sum = 0;
        for (Trajectory trajectory : trajectories) {
            trajectory.weight *= trajectory.honest;
            sum += trajectory.weight;
        }
        for (Trajectory trajectory : trajectories) {
            trajectory.weight /= sum;
        }
    }

    /** Scales the weights to add up to one. */
    private void scale() {
        double sum = 0;
        for (Trajectory trajectory : trajectories) {
            sum += trajectory.carried;
        }
        for (Trajectory trajectory : trajectories) {
            trajectory.carried /= sum;
            trajectory.weight = trajectory.carried;
        }
    }
}
