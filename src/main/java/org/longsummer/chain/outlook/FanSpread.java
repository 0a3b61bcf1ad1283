package org.longsummer.chain.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Growth;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.outlook.Outlook.FanPoint;
import org.longsummer.chain.outlook.Outlook.Percentiles;

/** Percentiles, on a date, of what all the courses of a unit's possible faults do to it. */
final class FanSpread {
    private static final int ONSET_QUANTILES = 5;

    /** One course of one fault: severity is {@code severity + rate t}, from the onset on. */
    private record Course(double weight, Effects effects, double severity, double rate, double onset) {}

    private final FaultModel model;
    private final List<Course> courses = new ArrayList<>();

    FanSpread(FaultModel model, List<Hypothesis> hypotheses) {
        this.model = model;
        double nothing = 0;
        for (Hypothesis hypothesis : hypotheses) {
            if (hypothesis.isSound()) {
                nothing += hypothesis.weight();
            } else {
                courses.add(new Course(hypothesis.weight(), model.effects(hypothesis.fault().get()), hypothesis.severity(), hypothesis.ratePerSeason(), 0));
            }
        }
        addNewFaults(nothing);
    }

    FanPoint on(LocalDate day, double seasons) {
        double[] weights = new double[courses.size()];
        double[] limit = new double[courses.size()];
        double[] split = new double[courses.size()];
        double[] amps = new double[courses.size()];
        for (int i = 0; i < weights.length; i++) {
            Course course = courses.get(i);
            double running = seasons - course.onset;
            double severity = running < 0 ? 0 : course.severity + course.rate * running;
            weights[i] = course.weight;
            limit[i] = course.effects.shareOfLimit(severity);
            split[i] = course.effects.split(severity);
            amps[i] = course.effects.amps(severity);
        }
        return new FanPoint(day, percentiles(limit, weights), percentiles(split, weights), percentiles(amps, weights));
    }

    /** New faults of a sound unit: their onsets at evenly spaced quantiles within the horizon, the rest stays sound. */
    private void addNewFaults(double weight) {
        double total = model.onsets();
        double within = 1 - Math.exp(-total * Outlooker.HORIZON_SEASONS);
        courses.add(new Course(weight * (1 - within), Effects.NONE, 0, 0, 0));
        for (int i = 0; total > 0 && i < ONSET_QUANTILES; i++) {
            double onset = -Math.log(1 - within * (i + 0.5) / ONSET_QUANTILES) / total;
            for (Fault fault : Fault.values()) {
                double share = weight * within / ONSET_QUANTILES * model.onsetsPerSeason().get(fault.ordinal()) / total;
                for (Growth way : model.growth()) {
                    courses.add(new Course(share * way.share(), model.effects(fault), way.step(), way.ratePerSeason(), onset));
                }
            }
        }
    }

    private static Percentiles percentiles(double[] values, double[] weights) {
        Integer[] order = new Integer[values.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        Arrays.sort(order, (a, b) -> Double.compare(values[a], values[b]));
        return new Percentiles(at(0.1, values, weights, order), at(0.5, values, weights, order), at(0.9, values, weights, order));
    }

    private static double at(double share, double[] values, double[] weights, Integer[] order) {
        double total = 0;
        for (double weight : weights) {
            total += weight;
        }
        double sum = 0;
        for (int index : order) {
            sum += weights[index];
            if (sum >= share * total) {
                return values[index];
            }
        }
        return values[order[order.length - 1]];
    }
}
