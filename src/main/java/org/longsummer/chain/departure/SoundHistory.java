package org.longsummer.chain.departure;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.chain.expectation.Expecter;
import org.longsummer.chain.expectation.UsualVolts;
import org.longsummer.chain.learning.ClassLevel;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Known;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.learning.SiteMoisture;
import org.longsummer.chain.learning.TechnicianOffset;
import org.longsummer.chain.screening.Screener;
import org.longsummer.chain.screening.Screening;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.science.moistair.HylandWexler1983;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.statistics.SharedKalmanFilter;

/**
 * One unit as its visits come in, taken to be sound: what each visit teaches across units. No fault is named here, so that what a
 * fleet learns does not feed on its own verdicts: a drifting unit is followed by a faster walk, and a reading far off counts little.
 *
 * <p>Small: a fleet of any size can be held in memory at once.
 */
public final class SoundHistory {
    /** Degrees of freedom of the long-tailed residuals by which odd readings are weighed down. */
    private static final double TAIL = 4;
    /** How fast a unit that may be failing is followed, ln per season. */
    private static final double EXTRA_WALK = 0.04;
    /** What work may change of a unit's offsets, ln. */
    private static final double WORK_CHANGES = 0.06;
    private static final double FIRST_MODEL_SPLIT = 0.0015;
    private static final double FIRST_MODEL_AMPS = 0.0004;

    private Unit unit;
    private UnitBaseline baseline;
    private double[] mean;
    private LocalDate lastDay;
    private FilterAge filterAge = FilterAge.UNKNOWN;
    private UsualVolts usualVolts = UsualVolts.UNKNOWN;
    private Hemisphere hemisphere = Hemisphere.UNSEEN;

    public SoundHistory(Unit unit) {
        this.unit = unit;
    }

    /** Takes one visit in, in order of time. */
    public Lesson learn(Visit visit, Closings closings) {
        Screening screening = Screener.screen(unit, visit);
        Known known = Known.before(closings, unit, visit);
        Expectation expectation = Expecter.expect(screening, closings, usualVolts);
        boolean first = baseline == null;
        prepare(visit, expectation, known);
        Observation observation = Observation.of(expectation, known);
        boolean usable = !screening.isRetake() && !screening.compressorOff() && !visit.icedCoil();
        Lesson lesson = usable ? taught(screening, expectation, observation, first) : moistureOnly(screening, expectation);
        usualVolts = usualVolts.with(visit);
        lastDay = visit.localDay();
        work(visit);
        return lesson;
    }

    private void prepare(Visit visit, Expectation expectation, Known known) {
        hemisphere = hemisphere.seen(visit);
        double seasons = 0;
        if (baseline == null) {
            baseline = new UnitBaseline(expectation, known);
            mean = baseline.start();
        } else {
            seasons = Math.max(0, hemisphere.clock().seasonsBetween(lastDay, visit.localDay()));
            filterAge = filterAge.older(seasons);
            baseline.widen(EXTRA_WALK * EXTRA_WALK * seasons);
        }
        for (UnitBaseline.Renewal renewal : baseline.prepare(visit, expectation, known, seasons)) {
            mean[renewal.state()] = renewal.mean();
        }
    }

    private Lesson taught(Screening screening, Expectation expectation, Observation observation, boolean first) {
        double[][] design = baseline.design(expectation);
        double[] residual = residuals(design, observation);
        SharedKalmanFilter.Foresight foresight = baseline.foresee(design, baseline.asEvidence(observation.noise()));
        double weight = weight(foresight.predicted(), observation, residual);
        Lesson lesson = lesson(screening, expectation, observation, residual, foresight.predicted(), first, weight);
        int[] made = observation.made();
        if (made.length > 0) {
            double[][] noise = baseline.asEvidence(observation.noise());
            for (double[] row : noise) {
                for (int i = 0; i < row.length; i++) {
                    row[i] /= weight;
                }
            }
            SharedKalmanFilter.Step step = baseline.foresee(design, noise).whenMade(made);
            for (int i = 0; i < mean.length; i++) {
                for (int k = 0; k < made.length; k++) {
                    mean[i] += step.gain()[i][k] * residual[made[k]];
                }
            }
            baseline.accept(step, design, made);
        }
        return lesson;
    }

    private double[] residuals(double[][] design, Observation observation) {
        double[] residual = new double[Channel.COUNT];
        for (int c = 0; c < residual.length; c++) {
            residual[c] = observation.values()[c];
            for (int i = 0; i < mean.length; i++) {
                residual[c] -= design[c][i] * mean[i];
            }
        }
        residual[Channel.SPLIT.ordinal()] -= filterAge.lnSplit();
        residual[Channel.AMPS.ordinal()] -= filterAge.lnAmps();
        return residual;
    }

    /** Student's weight of the visit by the larger of its two standardised residuals: 1 near the expectation, small far off. */
    private static double weight(double[][] predicted, Observation observation, double[] residual) {
        double largest = 0;
        for (int c = 0; c < 2; c++) {
            if (observation.present()[c]) {
                largest = Math.max(largest, residual[c] * residual[c] / predicted[c][c]);
            }
        }
        return Math.min(1, (TAIL + 1) / (TAIL + largest));
    }

    private Lesson lesson(Screening screening, Expectation expectation, Observation observation, double[] residual,
            double[][] predicted, boolean first, double weight) {
        Visit visit = screening.visit();
        boolean[] present = observation.present();
        return new Lesson(visit.id(), visit.utcDay(), weight, first ? Optional.of(ClassLevel.key(screening.unit())) : Optional.empty(),
                residual(present[0], residual[0], predicted[0][0]), residual(present[1], residual[1], predicted[1][1]),
                residual(first && present[0], observation.values()[0] - filterAge.lnSplit(),
                        observation.noise()[0][0] + FIRST_MODEL_SPLIT),
                residual(first && present[1], observation.values()[1] - filterAge.lnAmps(), observation.noise()[1][1] + FIRST_MODEL_AMPS),
                visit.technician().isEmpty() ? Optional.empty() : Optional.of(TechnicianOffset.key(visit)),
                Math.exp(observation.lnExpected()[0]), UnitBaseline.features(expectation), moistureKey(screening),
                lnVapourPressure(expectation));
    }

    private Lesson moistureOnly(Screening screening, Expectation expectation) {
        return new Lesson(screening.visit().id(), screening.visit().utcDay(), 0, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), 1, new double[UnitBaseline.features(expectation).length],
                screening.isRetake() ? Optional.empty() : moistureKey(screening), lnVapourPressure(expectation));
    }

    private static Optional<String> moistureKey(Screening screening) {
        Visit visit = screening.visit();
        return visit.readings().returnMoisture().isPresent()
                ? Optional.of(SiteMoisture.key(screening.unit().site(), visit.localDay().getMonthValue())) : Optional.empty();
    }

    private static double lnVapourPressure(Expectation expectation) {
        MoistAir air = expectation.surroundings().returnAir();
        return Math.log(air.relativeHumidity().fraction() * HylandWexler1983.saturationPressure(air.dryBulb()).pascals());
    }

    private static Optional<Lesson.Residual> residual(boolean present, double value, double variance) {
        return present ? Optional.of(new Lesson.Residual(value, variance)) : Optional.empty();
    }

    private void work(Visit visit) {
        if (visit.workDone().contains(Work.UNIT_REPLACED)) {
            unit = unit.replacedOn(visit.localDay());
            baseline = null;
            filterAge = FilterAge.UNKNOWN;
        } else if (!visit.workDone().isEmpty()) {
            filterAge = filterAge.after(visit.workDone());
            baseline.widen(WORK_CHANGES * WORK_CHANGES);
        }
    }
}
