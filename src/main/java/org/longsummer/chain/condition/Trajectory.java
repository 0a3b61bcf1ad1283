package org.longsummer.chain.condition;

/** One possible history of a unit: which fault, since when, growing how fast, and what the sound unit would then be like. */
final class Trajectory {
    static final double MOST_SEVERE = 1.6;
    /** Below this a fault is as good as none: a coil just cleaned. */
    static final double AS_GOOD_AS_NONE = 0.04;

    /** Null for the history without any fault. */
    final Fault fault;
    /** Growth of severity per season of running; 0 after a sudden step. */
    final double rate;
    /** Day of onset, counted from 1970. */
    final long onset;
    /** Means of the states of the unit's baseline, sound; may be shared with the history it branched from, so never moved in place. */
    double[] mean;
    /** What the sound unit would show on each channel at the visit in hand, by this history's mean. */
    double[] sound;
    /** What its fault does to split and amps at the visit in hand, ln. */
    double onSplit;
    double onAmps;
    /** Probability that the readings of the visit in hand are no mistake. */
    double honest = 1;
    double severity;
    /** Share of all histories, after the last normalisation. */
    double weight;

    Trajectory(Fault fault, double rate, long onset, double severity, double weight, double[] mean) {
        this.fault = fault;
        this.rate = rate;
        this.onset = onset;
        this.severity = severity;
        this.weight = weight;
        this.mean = mean;
    }

    Trajectory copy() {
        return new Trajectory(fault, rate, onset, severity, weight, mean.clone());
    }

    boolean isSound() {
        return fault == null || severity < AS_GOOD_AS_NONE;
    }

    Condition condition() {
        return isSound() ? Condition.NONE : fault.condition();
    }

    void grow(double seasons) {
        severity = Math.min(MOST_SEVERE, severity + rate * seasons);
    }
}
