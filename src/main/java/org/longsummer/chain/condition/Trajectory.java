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
    /** How widely split and amps scatter, by this history. */
    Scatter splitScatter = Scatter.FORESEEN;
    Scatter ampsScatter = Scatter.FORESEEN;
    /** What the sound unit would show on each channel at the visit in hand, by this history's mean. */
    double[] sound;
    /** What its fault does to split and amps at the visit in hand, ln. */
    double onSplit;
    double onAmps;
    /** Probability that the readings of the visit in hand are no mistake. */
    double honest = 1;
    /** How likely this history makes all that was read and seen at the visit in hand. */
    double news;
    double severity;
    /** Share of all histories that is carried on to the next visit. */
    double carried;
    /** Share of all histories now. */
    double weight;

    Trajectory(Fault fault, double rate, long onset, double severity, double carried, double[] mean) {
        this.fault = fault;
        this.rate = rate;
        this.onset = onset;
        this.severity = severity;
        this.carried = carried;
        this.mean = mean;
    }

    Trajectory copy() {
        Trajectory copy = new Trajectory(fault, rate, onset, severity, carried, mean.clone());
        copy.weight = weight;
        return copy.scatteringLike(this);
    }

    /** This history, which branched from another, with what that one knew of the readings' scatter. */
    Trajectory scatteringLike(Trajectory other) {
        splitScatter = other.splitScatter;
        ampsScatter = other.ampsScatter;
        return this;
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
