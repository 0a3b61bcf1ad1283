package org.longsummer.chain.condition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.longsummer.chain.departure.Channel;
import org.longsummer.chain.departure.Observation;
import org.longsummer.chain.departure.UnitBaseline;
import org.longsummer.chain.expectation.Expecter;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.chain.expectation.UsualVolts;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Known;
import org.longsummer.chain.screening.Screener;
import org.longsummer.chain.screening.Screening;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.science.statistics.Normal;

/**
 * The mixture of fault histories written a second time, the slow way: every history is kept for ever, with a mean and a full covariance
 * of its own, and every formula is spelled out. What it shares with the product is what a history means (physics, looks, prior
 * numbers), not how the mixture is carried along.
 */
final class NaiveMixture {
    private static final double WALK = 0.01;
    private static final double SIGNATURE_U = 0.18;
    private static final double ARRIVES_FAULTY = 0.06;

    private final Unit unit;
    private final Closings closings = new Closings();
    private final Looks looks = new Looks();
    private final List<Hypothesis> hypotheses = new ArrayList<>();
    private UsualVolts usualVolts = UsualVolts.UNKNOWN;
    private UnitBaseline renewals;
    private LocalDate lastDay;
    private double expectedLnSplit;
    private double expectedLnAmps;
    private double impact;

    /** One history, complete. */
    private static final class Hypothesis {
        final Fault fault;
        final double rate;
        double severity;
        double weight;
        double[] mean;
        double[][] covariance;
        double honest;
        final double[] scatter = {1, 1};
        final double[] freedom = {12.5, 12.5};

        Hypothesis(Fault fault, double rate, double severity, double weight, double[] mean, double[][] covariance) {
            this.fault = fault;
            this.rate = rate;
            this.severity = severity;
            this.weight = weight;
            this.mean = mean.clone();
            this.covariance = copy(covariance);
        }

        Hypothesis bornOf(Hypothesis parent) {
            System.arraycopy(parent.scatter, 0, scatter, 0, 2);
            System.arraycopy(parent.freedom, 0, freedom, 0, 2);
            return this;
        }

        boolean isSound() {
            return fault == null || severity < 0.04;
        }
    }

    NaiveMixture(Unit unit) {
        this.unit = unit;
    }

    private static double[][] copy(double[][] matrix) {
        double[][] copy = new double[matrix.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = matrix[i].clone();
        }
        return copy;
    }

    void judge(Visit visit) {
        Screening screening = Screener.screen(unit, visit);
        Known known = Known.before(closings, unit, visit);
        Expectation expectation = Expecter.expect(screening, closings, usualVolts);
        double seasons = lastDay == null ? 0 : SeasonClock.NORTHERN.seasonsBetween(lastDay, visit.localDay());
        if (lastDay == null) {
            begin(expectation, known);
        } else {
            looks.advance(seasons);
            pass(seasons);
        }
        renew(visit, expectation, known, seasons);
        Observation observation = Observation.of(expectation, known);
        weigh(screening, expectation, observation);
        looks.remember(screening);
        usualVolts = usualVolts.with(visit);
        lastDay = visit.localDay();
    }

    private void begin(Expectation expectation, Known known) {
        renewals = new UnitBaseline(expectation, known);
        double[] mean = renewals.start();
        double[][] covariance = covarianceOf(renewals, mean.length);
        hypotheses.add(new Hypothesis(null, 0, 0, 1 - ARRIVES_FAULTY, mean, covariance));
        double hazards = 0;
        for (Fault fault : Fault.values()) {
            hazards += fault.hazard();
        }
        double[] severities = {0.25, 0.5, 0.75, 1.0};
        double[] shares = {0.35, 0.3, 0.2, 0.15};
        for (Fault fault : Fault.values()) {
            for (int i = 0; i < severities.length; i++) {
                hypotheses.add(new Hypothesis(fault, 0.5, severities[i], ARRIVES_FAULTY * fault.hazard() / hazards * shares[i], mean, covariance));
            }
        }
    }

    /** The covariance that a baseline would foresee for its own states, read without noise. */
    private static double[][] covarianceOf(UnitBaseline baseline, int states) {
        double[][] unitDesign = new double[states][states];
        for (int i = 0; i < states; i++) {
            unitDesign[i][i] = 1;
        }
        return baseline.foresee(unitDesign, new double[states][states]).predicted();
    }

    private void pass(double seasons) {
        if (seasons <= 0) {
            return;
        }
        int pieces = seasons > 0.35 ? (int) Math.min(4, Math.ceil(seasons / 0.35)) : 1;
        List<Hypothesis> born = new ArrayList<>();
        for (Hypothesis h : hypotheses) {
            if (h.fault == null) {
                double hazards = 0;
                for (Fault fault : Fault.values()) {
                    hazards += fault.hazard();
                    for (int piece = 0; piece < pieces; piece++) {
                        double since = seasons * (1 - (piece + 0.5) / pieces);
                        double onset = h.weight * fault.hazard() * seasons / pieces;
                        for (int i = 0; i < 4; i++) {
                            double rate = new double[] {0.3, 0.6, 1.2, 2.4}[i];
                            double share = new double[] {0.25, 0.35, 0.30, 0.10}[i];
                            double step = new double[] {0.35, 0.7, 1.1, 1.6}[i];
                            born.add(new Hypothesis(fault, rate, Math.min(1.6, rate * since), onset * 0.75 * share, h.mean, h.covariance)
                                    .bornOf(h));
                            born.add(new Hypothesis(fault, 0, step, onset * 0.25 / 4, h.mean, h.covariance).bornOf(h));
                        }
                    }
                }
                h.weight *= Math.exp(-hazards * seasons);
            } else {
                h.severity = Math.min(1.6, h.severity + h.rate * seasons);
            }
        }
        hypotheses.addAll(born);
    }

    private void renew(Visit visit, Expectation expectation, Known known, double seasons) {
        List<UnitBaseline.Renewal> news = renewals.prepare(visit, expectation, known, seasons);
        int states = hypotheses.get(0).mean.length;
        double[][] fresh = covarianceOf(renewals, states);
        for (Hypothesis h : hypotheses) {
            h.covariance[0][0] += WALK * WALK * seasons;
            h.covariance[1][1] += WALK * WALK * seasons;
            for (UnitBaseline.Renewal renewal : news) {
                int s = renewal.state();
                for (int i = 0; i < states; i++) {
                    h.covariance[s][i] = 0;
                    h.covariance[i][s] = 0;
                }
                h.covariance[s][s] = fresh[s][s];
                h.mean[s] = renewal.mean();
            }
        }
    }

    private void weigh(Screening screening, Expectation expectation, Observation observation) {
        double[][] design = renewals.design(expectation);
        double[][] noise = renewals.asEvidence(observation.noise());
        Map<Fault, Signature> signatures = new EnumMap<>(Fault.class);
        for (Fault fault : Fault.values()) {
            signatures.put(fault, Signature.of(fault, expectation.machine(), expectation.surroundings().condenserAir()));
        }
        foresee(observation, design);
        double mistaken = new Mistakes(observation, screening.visit()).density();
        double believed = 0;
        double total = 0;
        for (Hypothesis h : hypotheses) {
            double[] effect = effect(h, signatures);
            double good = departures(h, observation, design, noise, effect);
            double mixed = (1 - Mistakes.SHARE) * good + Mistakes.SHARE * mistaken;
            h.honest = (1 - Mistakes.SHARE) * good / mixed;
            h.weight *= mixed * side(h, observation, design, noise, effect, screening);
            total += h.weight;
            believed += h.weight * h.honest;
        }
        for (Hypothesis h : hypotheses) {
            h.weight /= total;
        }
        if (believed / total < 0.5) {
            throw new IllegalStateException("a retake: leave those to the laws");
        }
        for (Hypothesis h : hypotheses) {
            learn(h, observation, design, noise, effect(h, signatures), !screening.visit().icedCoil());
        }
        impact = impact(signatures);
    }

    private double[] effect(Hypothesis h, Map<Fault, Signature> signatures) {
        double[] effect = new double[Channel.COUNT];
        for (int c = 0; h.fault != null && c < effect.length; c++) {
            effect[c] = signatures.get(h.fault).onChannel(c, h.severity);
        }
        return effect;
    }

    private double load(int channel) {
        return channel == 0 ? looks.filterAge().lnSplit() : channel == 1 ? looks.filterAge().lnAmps() : 0;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private void foresee(Observation observation, double[][] design) {
        double split = 0;
        double amps = 0;
        double total = 0;
        for (Hypothesis h : hypotheses) {
            split += h.weight * dot(design[0], h.mean);
            amps += h.weight * dot(design[1], h.mean);
            total += h.weight;
        }
        expectedLnSplit = observation.lnExpected()[0] + split / total;
        expectedLnAmps = observation.lnExpected()[1] + amps / total;
    }

    private double surprise(Hypothesis h, Observation observation, double[][] design, double[] effect, int c) {
        return observation.values()[c] - dot(design[c], h.mean) - load(c) - effect[c];
    }

    private static double foreseen(Hypothesis h, double[][] design, double[][] noise, int k, int l) {
        double sum = noise[k][l];
        for (int i = 0; i < h.mean.length; i++) {
            sum += design[k][i] * dot(h.covariance[i], design[l]);
        }
        return sum;
    }

    private static double normal(double x, double variance) {
        return Math.exp(-0.5 * x * x / variance) / Math.sqrt(2 * Math.PI * variance);
    }

    /** Density of split and amps: that of amps times that of split given amps. */
    private double departures(Hypothesis h, Observation o, double[][] design, double[][] noise, double[] effect) {
        double split = foreseen(h, design, noise, 0, 0) + (h.scatter[0] - 1) * anew(h, noise, 0);
        double amps = foreseen(h, design, noise, 1, 1) + (h.scatter[1] - 1) * anew(h, noise, 1);
        double correlation = foreseen(h, design, noise, 0, 1)
                / Math.sqrt(foreseen(h, design, noise, 0, 0) * foreseen(h, design, noise, 1, 1));
        double both = correlation * Math.sqrt(split * amps);
        double s = split + Math.pow(SIGNATURE_U * effect[0], 2);
        double a = amps + Math.pow(SIGNATURE_U * effect[1], 2);
        double x = surprise(h, o, design, effect, 0);
        double y = surprise(h, o, design, effect, 1);
        if (o.present()[0] && o.present()[1]) {
            return normal(y, a) * normal(x - both / a * y, s - both * both / a);
        }
        return o.present()[0] ? normal(x, s) : o.present()[1] ? normal(y, a) : 1;
    }

    /** What is new at a visit: the readings' noise and the day's own error of the model (states 4 and 5). */
    private static double anew(Hypothesis h, double[][] noise, int c) {
        return noise[c][c] + h.covariance[4 + c][4 + c];
    }

    private void rescatter(Hypothesis h, Observation o, double[][] design, double[][] noise, double[] effect) {
        for (int c = 0; c < 2; c++) {
            if (o.present()[c]) {
                double own = h.scatter[c] * anew(h, noise, c);
                double variance = foreseen(h, design, noise, c, c) - anew(h, noise, c) + own + Math.pow(SIGNATURE_U * effect[c], 2);
                double share = own / variance;
                double square = Math.min(9, Math.pow(surprise(h, o, design, effect, c), 2) / variance);
                double counts = h.honest * share * share;
                h.scatter[c] *= 1 + h.honest * share * (square - 1) / (h.freedom[c] + counts);
                h.scatter[c] = Math.max(0.4, Math.min(6, h.scatter[c]));
                h.freedom[c] = Math.min(40, h.freedom[c] + counts);
            }
        }
    }

    private double side(Hypothesis h, Observation o, double[][] design, double[][] noise, double[] effect, Screening screening) {
        double density = 1;
        for (int c = 2; c < Channel.COUNT; c++) {
            if (o.present()[c]) {
                density *= normal(surprise(h, o, design, effect, c),
                        foreseen(h, design, noise, c, c) + Math.pow(SIGNATURE_U * effect[c], 2));
            }
        }
        for (Looks.Look look : looks.of(screening)) {
            density *= look.likelihood().of(h.isSound() ? null : h.fault, h.severity);
        }
        return density;
    }

    /** One reading after another, decorrelated by hand: gain from the whole foreseen covariance of the readings made. */
    private void learn(Hypothesis h, Observation o, double[][] design, double[][] noise, double[] effect, boolean narrows) {
        int[] made = o.made();
        int n = h.mean.length;
        double[][] foreseen = new double[made.length][made.length];
        for (int k = 0; k < made.length; k++) {
            for (int l = 0; l < made.length; l++) {
                foreseen[k][l] = foreseen(h, design, noise, made[k], made[l]);
            }
        }
        double[][] inverse = GaussJordan.inverse(foreseen);
        double[][] gain = new double[n][made.length];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < made.length; k++) {
                for (int l = 0; l < made.length; l++) {
                    gain[i][k] += dot(h.covariance[i], design[made[l]]) * inverse[l][k];
                }
            }
        }
        double[] surprise = new double[made.length];
        for (int k = 0; k < made.length; k++) {
            double own = foreseen[k][k];
            surprise[k] = h.honest * own / (own + Math.pow(SIGNATURE_U * effect[made[k]], 2)) * surprise(h, o, design, effect, made[k]);
        }
        rescatter(h, o, design, noise, effect);
        for (int i = 0; i < n; i++) {
            h.mean[i] += dot(gain[i], surprise);
        }
        if (narrows) {
            narrow(h, gain, foreseen);
        }
    }

    private static void narrow(Hypothesis h, double[][] gain, double[][] foreseen) {
        int n = h.mean.length;
        double[][] narrowed = copy(h.covariance);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < foreseen.length; k++) {
                    narrowed[i][j] -= gain[i][k] * dot(foreseen[k], gain[j]);
                }
            }
        }
        h.covariance = narrowed;
    }

    private double impact(Map<Fault, Signature> signatures) {
        double sum = 0;
        double total = 0;
        for (Hypothesis h : hypotheses) {
            double lnCapacity = looks.filterAge().lnCapacity() + (h.fault == null ? 0 : signatures.get(h.fault).lnCapacity(h.severity));
            double lnAmps = load(1) + effect(h, signatures)[1];
            double weak = Normal.cumulative((Math.log(0.9) - lnCapacity) / (0.012 + 0.15 * Math.abs(lnCapacity)));
            double hungry = Normal.cumulative((lnAmps - Math.log(1.1)) / (0.012 + 0.15 * Math.abs(lnAmps)));
            sum += h.weight * h.honest * (weak + hungry - weak * hungry);
            total += h.weight * h.honest;
        }
        return sum / total;
    }

    void workDone(Set<Work> done) {
        looks.work(done);
        List<Hypothesis> after = new ArrayList<>();
        for (Hypothesis h : hypotheses) {
            boolean cured = h.fault == Fault.CONDENSER_COIL && done.contains(Work.CONDENSER_COIL)
                    || h.fault == Fault.EVAPORATOR_COIL && done.contains(Work.EVAPORATOR_COIL)
                    || h.fault == Fault.FILTER && done.contains(Work.FILTER) || h.fault == Fault.CAPACITOR && done.contains(Work.CAPACITOR);
            if (cured) {
                h.severity = 0;
            }
            after.add(cured && (h.rate == 0 || h.fault == Fault.CAPACITOR) ? new Hypothesis(null, 0, 0, h.weight, h.mean, h.covariance).bornOf(h) : h);
        }
        hypotheses.clear();
        hypotheses.addAll(after);
    }

    /** Under the condition that the readings are no mistake. */
    Map<Condition, Double> probabilities() {
        Map<Condition, Double> all = new EnumMap<>(Condition.class);
        double total = 0;
        for (Hypothesis h : hypotheses) {
            all.merge(h.isSound() ? Condition.NONE : h.fault.condition(), h.weight * h.honest, Double::sum);
            total += h.weight * h.honest;
        }
        double sum = total;
        all.replaceAll((condition, weight) -> weight / sum);
        return all;
    }

    int size() {
        return hypotheses.size();
    }

    double impact() {
        return impact;
    }

    double expectedSplitKelvins() {
        return Math.exp(expectedLnSplit);
    }

    double expectedAmps() {
        return Math.exp(expectedLnAmps);
    }
}
