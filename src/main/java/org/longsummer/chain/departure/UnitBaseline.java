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
    private LocalDate day;
    private int visitsToday;
    private String technician = "";

    /** A unit never seen: its class is all that is known, as of its first visit. */
    public UnitBaseline(Expectation first, Known known) {
        start = new double[STATES];
        start[SPLIT] = known.classLevel().split().value();
        start[AMPS] = known.classLevel().amps().value();
        double[] variances = new double[STATES];
        variances[SPLIT] = square(known.classLevel().split().standardUncertainty()) + square(Closer.UNIT_SPLIT);
        variances[AMPS] = square(known.classLevel().amps().standardUncertainty()) + square(Closer.UNIT_AMPS)
                + Math.max(0, square(first.lnAmpsLevelU()) - square(USUAL_PLATE_U));
        variances[SPLIT_DEW_POINT] = square(SLOPE_DEW_POINT);
        variances[AMPS_AMBIENT] = square(SLOPE_AMBIENT);
        variances[RISE] = square(RISE_SPREAD);
        variances[FAN_ONLY] = square(FAN_ONLY_SPREAD);
        filter = new SharedKalmanFilter(variances);
    }

    private UnitBaseline(UnitBaseline other) {
        filter = other.filter.copy();
        start = other.start;
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
                expectation.surroundings().returnDewPoint().fahrenheit(),
                expectation.surroundings().returnAir().dryBulb().fahrenheit(), expectation.surroundings().sunHeight());
    }

    /** Lines of the split's budget that come from the class, the unit and the instruments. */
    public List<Component> splitComponents(double[] design) {
        return components(design, new int[] {SPLIT, SPLIT_DEW_POINT}, TECHNICIAN_SPLIT);
    }

    /** Lines of the amps' budget that come from the class, the unit and the instruments. */
    public List<Component> ampsComponents(double[] design) {
        return components(design, new int[] {AMPS, AMPS_AMBIENT}, TECHNICIAN_AMPS);
    }

    private List<Component> components(double[] design, int[] own, int instruments) {
        double unit = 0;
        for (int i : own) {
            for (int j : own) {
                unit += design[i] * design[j] * filter.covariance(i, j);
            }
        }
        double both = 0;
        for (int i : own) {
            both += 2 * design[i] * design[instruments] * filter.covariance(i, instruments);
        }
        double instrument = square(design[instruments]) * filter.covariance(instruments, instruments) + both;
        return List.of(new Component("this unit's own level and slope, as learned so far", Component.Source.UNIT,
                Math.sqrt(Math.max(0, unit)), "1", 1),
                new Component("the technician's instruments this season", Component.Source.INSTRUMENT,
                        Math.sqrt(Math.max(0, instrument)), "1", 1));
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

    /** Takes the observations into account. */
    public void accept(SharedKalmanFilter.Step step) {
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
