package org.longsummer.chain.departure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.chain.learning.Closer;
import org.longsummer.chain.learning.FleetSlopes;
import org.longsummer.chain.learning.Known;
import org.longsummer.chain.learning.TechnicianOffset;
import org.longsummer.chain.visit.Visit;
import org.longsummer.science.statistics.SharedKalmanFilter;
import org.longsummer.science.uncertainty.Component;

/**
 * What is learned of one very unit: how it differs, sound, from its class. A small Kalman filter whose covariance is shared by all
 * fault histories; each history keeps its own mean.
 *
 * <p>States: the unit's offsets of split and amps, its slopes of split with dew point and of amps with outdoor air, the offsets
 * shared by all visits of one day (model error of that day's conditions), those of the present technician's instruments, and the
 * levels of condenser air rise and fan-only amps.
 */
public final class UnitBaseline {
    static final int SPLIT = 0;
    static final int AMPS = 1;
    static final int SPLIT_DEW_POINT = 2;
    static final int AMPS_AMBIENT = 3;
    static final int DAY_SPLIT = 4;
    static final int DAY_AMPS = 5;
    static final int TECHNICIAN_SPLIT = 6;
    static final int TECHNICIAN_AMPS = 7;
    static final int RISE = 8;
    static final int FAN_ONLY = 9;
    static final int STATES = 10;

    /** Own slopes, ln per 10 °F (practice). */
    private static final double SLOPE_DEW_POINT = 0.015;
    private static final double SLOPE_AMBIENT = 0.012;
    /** A sound unit's offsets walk by this much a season, ln. */
    private static final double WALK = 0.01;
    private static final double RISE_SPREAD = 0.18;
    private static final double FAN_ONLY_SPREAD = 0.13;
    /** The plate's uncertainty that a class level already contains, ln. */
    private static final double USUAL_PLATE_U = 0.078;

    private final SharedKalmanFilter filter;
    private final double[] start;
    /** Standard uncertainty of the class level of split and amps at the unit's first visit, ln. */
    private final double[] classU;
    /** By how much each state's estimate is still off when the class level of split or amps was off by one. */
    private final double[][] ofClass;
    private LocalDate day;
    private int visitsToday;
    private String technician = "";

    /** A unit never seen: its class is all that is known, as of its first visit. */
    public UnitBaseline(Expectation first, Known known) {
        start = new double[STATES];
        start[SPLIT] = known.classLevel().split().value();
        start[AMPS] = known.classLevel().amps().value();
        classU = new double[] {known.classLevel().split().standardUncertainty(),
            Math.sqrt(square(known.classLevel().amps().standardUncertainty())
                    + Math.max(0, square(first.lnAmpsLevelU()) - square(USUAL_PLATE_U)))};
        ofClass = new double[2][STATES];
        ofClass[0][SPLIT] = 1;
        ofClass[1][AMPS] = 1;
        double[] variances = new double[STATES];
        variances[SPLIT] = square(classU[0]) + square(Closer.UNIT_SPLIT);
        variances[AMPS] = square(classU[1]) + square(Closer.UNIT_AMPS);
        variances[SPLIT_DEW_POINT] = square(SLOPE_DEW_POINT);
        variances[AMPS_AMBIENT] = square(SLOPE_AMBIENT);
        variances[RISE] = square(RISE_SPREAD);
        variances[FAN_ONLY] = square(FAN_ONLY_SPREAD);
        filter = new SharedKalmanFilter(variances);
    }

    private UnitBaseline(UnitBaseline other) {
        filter = other.filter.copy();
        start = other.start;
        classU = other.classU;
        ofClass = new double[][] {other.ofClass[0].clone(), other.ofClass[1].clone()};
        day = other.day;
        visitsToday = other.visitsToday;
        technician = other.technician;
    }

    /** The same baseline, to go on from here without changing this one. */
    public UnitBaseline copy() {
        return new UnitBaseline(this);
    }

    private static double square(double x) {
        return x * x;
    }

    /** The mean with which every history of the unit begins. */
    public double[] start() {
        return start.clone();
    }

    /**
     * Makes ready for a visit: time passes, a new day and other instruments bring offsets of their own.
     *
     * @param seasons running seasons since the last visit
     * @return which states start anew and at which means; to be written into every history's mean
     */
    public List<Renewal> prepare(Visit visit, Expectation expectation, Known known, double seasons) {
        List<Renewal> renewals = new ArrayList<>(4);
        filter.diffuse(SPLIT, square(WALK) * seasons);
        filter.diffuse(AMPS, square(WALK) * seasons);
        visitsToday++;
        if (!visit.localDay().equals(day)) {
            visitsToday = 1;
            day = visit.localDay();
            double[] model = modelVariances(expectation);
            renew(renewals, DAY_SPLIT, 0, model[0]);
            renew(renewals, DAY_AMPS, 0, model[1]);
        }
        String instruments = visit.technician() + "/" + visit.localDay().getYear();
        if (!instruments.equals(technician)) {
            technician = instruments;
            TechnicianOffset offset = known.technician();
            renew(renewals, TECHNICIAN_SPLIT, offset.split().value(), square(offset.split().standardUncertainty()));
            renew(renewals, TECHNICIAN_AMPS, offset.amps().value(), square(offset.amps().standardUncertainty()));
        }
        return renewals;
    }

    /** The unit's own offsets become less sure by a variance. */
    void widen(double variance) {
        filter.diffuse(SPLIT, variance);
        filter.diffuse(AMPS, variance);
    }

    private void renew(List<Renewal> renewals, int state, double mean, double variance) {
        filter.renew(state, variance);
        ofClass[0][state] = 0;
        ofClass[1][state] = 0;
        renewals.add(new Renewal(state, mean));
    }

    private static double[] modelVariances(Expectation expectation) {
        double split = 0;
        double amps = 0;
        for (Expectation.Influence i : expectation.influences()) {
            if (i.source() == Component.Source.MODEL) {
                split += square(i.onSplit() * i.u());
                amps += square(i.onAmps() * i.u());
            }
        }
        return new double[] {split, amps};
    }

    /** How each observation depends on the states. */
    public double[][] design(Expectation expectation) {
        double[] features = features(expectation);
        double[][] design = new double[Channel.COUNT][STATES];
        double[] split = design[Channel.SPLIT.ordinal()];
        split[SPLIT] = 1;
        split[SPLIT_DEW_POINT] = features[1];
        split[DAY_SPLIT] = 1;
        split[TECHNICIAN_SPLIT] = Math.exp(-expectation.lnSplit());
        double[] amps = design[Channel.AMPS.ordinal()];
        amps[AMPS] = 1;
        amps[AMPS_AMBIENT] = features[0];
        amps[DAY_AMPS] = 1;
        amps[TECHNICIAN_AMPS] = 1;
        design[Channel.CONDENSER_RISE.ordinal()][RISE] = 1;
        design[Channel.FAN_ONLY.ordinal()][FAN_ONLY] = 1;
        return design;
    }

    /** What the sound unit shows on each channel by a mean of the states: the design's rows times the mean, without their zeros. */
    public static double[] sound(double[][] design, double[] mean) {
        double[] split = design[Channel.SPLIT.ordinal()];
        double[] amps = design[Channel.AMPS.ordinal()];
        double[] sound = new double[Channel.COUNT];
        sound[Channel.SPLIT.ordinal()] = split[SPLIT] * mean[SPLIT] + split[SPLIT_DEW_POINT] * mean[SPLIT_DEW_POINT]
                + split[DAY_SPLIT] * mean[DAY_SPLIT] + split[TECHNICIAN_SPLIT] * mean[TECHNICIAN_SPLIT];
        sound[Channel.AMPS.ordinal()] = amps[AMPS] * mean[AMPS] + amps[AMPS_AMBIENT] * mean[AMPS_AMBIENT]
                + amps[DAY_AMPS] * mean[DAY_AMPS] + amps[TECHNICIAN_AMPS] * mean[TECHNICIAN_AMPS];
        sound[Channel.CONDENSER_RISE.ordinal()] = design[Channel.CONDENSER_RISE.ordinal()][RISE] * mean[RISE];
        sound[Channel.FAN_ONLY.ordinal()] = design[Channel.FAN_ONLY.ordinal()][FAN_ONLY] * mean[FAN_ONLY];
        return sound;
    }

    /** The fleet slopes' features of a visit. */
    public static double[] features(Expectation expectation) {
        return FleetSlopes.features(expectation.surroundings().condenserAir().fahrenheit(),
                expectation.machine().returnDewPoint().fahrenheit(),
                expectation.surroundings().returnAir().dryBulb().fahrenheit(), expectation.surroundings().sunHeight());
    }

    /** Variance of the model's error on this day, as far as it is not known yet: of split or amps, ln². */
    public double dayVariance(Channel channel) {
        int state = channel == Channel.SPLIT ? DAY_SPLIT : DAY_AMPS;
        return filter.covariance(state, state);
    }

    /** Covariance of two states. */
    double covariance(int i, int j) {
        return filter.covariance(i, j);
    }

    /** What of a foreseen channel's uncertainty, ln, still comes from the class level known at the first visit. */
    double fromClass(Channel channel, double[] design) {
        int c = channel.ordinal();
        double left = 0;
        for (int i = 0; i < STATES; i++) {
            left += design[i] * ofClass[c][i];
        }
        return Math.abs(left) * classU[c];
    }

    /** Foresees the observations of one visit. */
    public SharedKalmanFilter.Foresight foresee(double[][] design, double[][] noise) {
        return filter.foresee(design, noise);
    }

    /**
     * The noise with which a visit's readings count as evidence. Readings of one day are no independent witnesses: probes, clamp and
     * weather are the same, so that the noise of the second counts twice, of the third three times.
     */
    public double[][] asEvidence(double[][] noise) {
        if (visitsToday == 1) {
            return noise;
        }
        double[][] repeated = new double[noise.length][noise.length];
        for (int i = 0; i < noise.length; i++) {
            for (int j = 0; j < noise.length; j++) {
                repeated[i][j] = visitsToday * noise[i][j];
            }
        }
        return repeated;
    }

    /**
     * Takes the observations into account.
     *
     * @param design of all channels
     * @param made the channels that were read
     */
    public void accept(SharedKalmanFilter.Step step, double[][] design, int[] made) {
        for (double[] off : ofClass) {
            double[] seen = new double[made.length];
            for (int k = 0; k < made.length; k++) {
                for (int i = 0; i < STATES; i++) {
                    seen[k] += design[made[k]][i] * off[i];
                }
            }
            for (int i = 0; i < STATES; i++) {
                for (int k = 0; k < made.length; k++) {
                    off[i] -= step.gain()[i][k] * seen[k];
                }
            }
        }
        filter.accept(step);
    }

    /**
     * A state that starts anew.
     *
     * @param state index
     * @param mean its mean in every history
     */
    public record Renewal(int state, double mean) {}
}
